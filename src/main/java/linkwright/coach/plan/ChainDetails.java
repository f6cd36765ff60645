package linkwright.coach.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.form.PriceWords;
import linkwright.job.Sourced;
import linkwright.link.Formed;
import linkwright.plan.ChainWish;
import linkwright.plan.HeldFigures;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.plan.SettledLink;
import linkwright.plan.WireToOrder;
import linkwright.plan.WishKeys;
import linkwright.plan.WishedRing;
import linkwright.quantity.Decimals;
import linkwright.quantity.Length;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.TradeWords;
import linkwright.standing.HeldFormers;
import linkwright.standing.JobPrices;
import linkwright.standing.Standing;
import linkwright.standing.WireStand;

/**
 * What a plan holds besides its first figures: the link, the ring, the wire to take, how to cut.
 */
record ChainDetails(UnitStyle units, TradeWords words, boolean solders) {
  List<Part> of(Standing standing, Plan plan) {
    List<Part> parts = new ArrayList<>();
    group(
        parts, plan.sized() ? "One " + plan.sizes().get(0).name() + ":" : "One link:", link(plan));
    plan.sizes().stream()
        .skip(1)
        .forEach(size -> group(parts, "One " + size.name() + ":", size(plan, size)));
    plan.wish().ring().ifPresent(ring -> group(parts, "One ring:", ring(plan, ring)));
    group(parts, "Wire to take:", wire(plan));
    standing
        .wire()
        .filter(wire -> wire.known() && !standing.made().closed())
        .ifPresent(wire -> group(parts, "Cut the wire on hand so:", cuts(standing, plan, wire)));
    group(parts, "Taken where nothing was typed:", taken(standing));
    String weighs =
        standing.made().weighed() ? "What it weighs, part by part as reckoned:" : "What it weighs:";
    group(parts, weighs, mass(plan));
    group(parts, "Joints:", joints(plan));
    return parts;
  }

  private void group(List<Part> parts, String head, List<Row> rows) {
    if (!rows.isEmpty()) {
      parts.add(new Prose(Prose.Kind.MAIN, words.show(head)));
      parts.add(new Rows(rows));
    }
  }

  private List<Row> taken(Standing standing) {
    List<Row> rows = new ArrayList<>();
    boolean formers = HeldFormers.chosenFrom(standing.taken());
    standing
        .taken()
        .forEach(
            (key, value) -> {
              String today = standing.since().getOrDefault(key, "");
              // The chance stands with the wire; of the files only what has changed is worth it.
              boolean told =
                  key.equals(WishKeys.CONFIDENCE) && value.from() == Sourced.Source.USUAL;
              if (HeldFigures.isBends(key)) {
                if (!today.isEmpty()) {
                  rows.add(row(key, "as they were kept").remark("the pattern was changed since"));
                }
              } else if (!today.isEmpty()
                  || key.startsWith(JobPrices.KEY)
                  || (!told && !HeldFigures.isOne(key))
                  || (formers && HeldFigures.isFormer(key))) {
                String since = today.isEmpty() ? "" : "; today it would be " + inUnits(today);
                rows.add(
                    row(called(key), inUnits(value.value()))
                        .remark(SourceWords.of(value.from()) + since));
              }
            });
    return rows;
  }

  private static String called(String key) {
    return key.startsWith(JobPrices.KEY)
        ? PriceWords.label(key.substring(JobPrices.KEY.length()))
        : key.replace('-', ' ').replace('.', ' ');
  }

  /** Lengths as they are held, in the units that are shown. */
  private String inUnits(String held) {
    return held.endsWith(" mm")
        ? Pattern.compile("([0-9.]+ mm)(?=,|$)")
            .matcher(held)
            .replaceAll(
                size ->
                    Length.read(size.group())
                        .map(mm -> Matcher.quoteReplacement(length(mm.mm())))
                        .found()
                        .orElse(Matcher.quoteReplacement(size.group())))
        : held;
  }

  private List<Row> link(Plan plan) {
    ChainWish wish = plan.wish();
    List<Row> rows = new ArrayList<>();
    wish.link()
        .pattern()
        .ifPresent(pattern -> rows.add(row("pattern", pattern.id()).remark(pattern.says())));
    String wire = wish.wireSaid(units) + " " + wish.metal().name();
    rows.add(row("wire", wire + ", " + wish.temper().word()));
    plan.formed()
        .filter(formed -> !formed.pattern().formersMm().isEmpty())
        .ifPresent(formed -> rows.add(row("formers", formers(formed, plan))));
    OptionalDouble wide = wish.link().widthMm();
    wish.link()
        .lengthMm()
        .ifPresent(
            mm ->
                rows.add(
                    row(
                        "size wished",
                        length(mm)
                            + (wide.isPresent() ? " x " + length(wide.getAsDouble()) : ""))));
    return rows;
  }

  /** Another link of the chain: what is cut for it, what it adds, what it weighs. */
  private List<Row> size(Plan plan, LinksOfSize size) {
    SettledLink link = size.link();
    List<Row> rows = new ArrayList<>();
    rows.add(row("blank", length(link.blankMm())).remark(link.blankFrom().word()));
    rows.add(row("inside", length(link.insideMm())).remark(link.insideFrom().word()));
    if (!link.formersMm().isEmpty()) {
      rows.add(
          row(
              "formers",
              link.formersMm().entrySet().stream()
                  .map(each -> each.getKey() + " " + length(each.getValue()))
                  .collect(Collectors.joining(", "))));
    }
    rows.add(row("to cut", size.toCut() + " for " + size.links()));
    rows.add(row("wire", length(size.wireMm(plan.wish()))));
    rows.add(row("they weigh", units.mass(size.massG())));
    return rows;
  }

  private String formers(Formed formed, Plan plan) {
    return formed.pattern().formersMm().entrySet().stream()
        .map(
            each ->
                each.getKey()
                    + " "
                    + length(plan.link().formersMm().getOrDefault(each.getKey(), each.getValue())))
        .collect(Collectors.joining(", "));
  }

  private List<Row> ring(Plan plan, WishedRing ring) {
    List<Row> rows = new ArrayList<>();
    rows.add(row("wire", plan.wish().ringWireSaid(units)));
    rows.add(row("inside", length(ring.insideMm())));
    ring.ovalInsideMm().ifPresent(mm -> rows.add(row("squeezed to", length(mm))));
    rows.add(row("adds", length(plan.ringInsideLengthMm())));
    return rows;
  }

  private List<Row> mass(Plan plan) {
    List<Row> rows = new ArrayList<>();
    rows.add(row("links weigh", units.mass(plan.massLinksG())));
    if (plan.rings() > 0) {
      rows.add(row("rings weigh", units.mass(plan.massRingsG())));
    }
    if (solders) {
      rows.add(row("solder weighs", units.mass(plan.solderPlacedG())));
    }
    if (plan.wish().claspG() > 0) {
      rows.add(row("clasp weighs", units.mass(plan.wish().claspG())));
    }
    return rows;
  }

  private List<Row> wire(Plan plan) {
    ChainWish wish = plan.wish();
    List<Row> rows = new ArrayList<>();
    rows.add(row("for links", length(plan.wireLinksMm())));
    if (plan.rings() > 0) {
      rows.add(row("for rings", length(plan.wireRingsMm())));
    }
    if (plan.endRings().isPresent()) {
      rows.add(row("at the ends", length(plan.wireEndsMm())));
    }
    rows.add(row("for spares", length(plan.wireSpareMm())));
    if (plan.rings() > 0) {
      rows.add(row("spare rings", length(plan.wireSpareRingsMm())));
    }
    rows.add(
        row("all of that", units.mass(WireToOrder.of(plan).massG()))
            .remark("whatever of it is on hand"));
    if (plan.repeatPieces() > 1) {
      rows.add(
          row(plan.sized() ? "a repeat more" : "a link more", PlanWire.repeat(plan, units))
              .remark(repeat(plan)));
    }
    rows.add(row("usual loss", Decimals.percent(wish.usualLoss(), 1)));
    rows.add(
        row(
            "chance",
            Decimals.percent(wish.confidence(), 0)
                + (plan.sized()
                    ? " for each size that so many blanks are enough"
                    : " that so many blanks are enough")));
    return rows;
  }

  /** What one more is made of: a link with its ring, or a whole repeat. */
  private static String repeat(Plan plan) {
    String links =
        plan.sized()
            ? plan.sizes().stream()
                .map(size -> size.perRepeat() + " " + size.name())
                .collect(Collectors.joining(", "))
            : PieceKind.LINK.counted(1);
    return plan.rings() > 0
        ? links + " and " + PieceKind.RING.counted(plan.linksPerRepeat())
        : links;
  }

  private List<Row> cuts(Standing standing, Plan plan, WireStand wire) {
    List<Row> rows = new ArrayList<>();
    standing
        .chance()
        .ifPresent(
            chance ->
                rows.add(
                    row("will do", Decimals.percent(chance, 0) + " sure")
                        .remark(
                            "if it is cut so and what is over goes to what falls short, links"
                                + " first")));
    wire.links()
        .forEach(
            bar ->
                rows.add(row(length(bar.usedUp() ? bar.mm() : bar.leftMm()), pieces(plan, bar))));
    wire.rings()
        .ifPresent(
            bars ->
                bars.forEach(
                    bar ->
                        rows.add(
                            row(
                                length(bar.usedUp() ? bar.mm() : bar.leftMm()) + " (rings)",
                                pieces(plan, bar)))));
    return rows;
  }

  private String pieces(Plan plan, WireStand.Bar bar) {
    if (bar.usedUp()) {
      return "used up";
    }
    if (bar.next().none()) {
      return "stays whole";
    }
    List<String> parts = new ArrayList<>();
    int blanks = bar.next().links();
    int rings = bar.next().rings() - bar.ends();
    if (plan.sized()) {
      for (int i = 0; i < bar.blanks().size(); i++) {
        if (bar.blanks().get(i) > 0) {
          parts.add(bar.blanks().get(i) + " " + plan.sizes().get(i).name());
        }
      }
    } else if (blanks > 0) {
      parts.add(blanks + (blanks == 1 ? " blank" : " blanks"));
    }
    if (rings > 0) {
      parts.add("a coil for " + rings + (rings == 1 ? " ring" : " rings"));
    }
    if (bar.ends() > 0) {
      parts.add(bar.ends() + " for the ends");
    }
    parts.add(length(bar.overMm()) + " left");
    return String.join(", ", parts);
  }

  private List<Row> joints(Plan plan) {
    List<Row> rows = new ArrayList<>();
    if (solders) {
      rows.add(row("solder", pallions(plan)));
      plan.solderWarnings().forEach(each -> rows.add(row("mind", SaidIn.units(each, units))));
      if (plan.pullIsKnown()) {
        rows.add(row("unsoldered", units.pull(plan.pull().buttedN())));
      }
    } else {
      rows.add(row("joints", Integer.toString(plan.joints())));
    }
    if (plan.pullIsKnown()) {
      rows.add(row("gives first", plan.pull().what()));
    }
    return rows;
  }

  /** How many pallions of which length; each wire has its own. */
  private String pallions(Plan plan) {
    return plan.solderPieces().stream()
        .map(pieces -> pieces.joints() + " of " + length(pieces.pieceMm()))
        .collect(Collectors.joining(", "));
  }

  private String length(double mm) {
    return units.length(mm);
  }

  private Row row(String label, String value) {
    return Row.of(words.show(label), words.show(value));
  }
}
