package linkwright.reckon;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.link.ChainCount;
import linkwright.link.Joining;
import linkwright.link.Rings;
import linkwright.quantity.Length;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;

/** How many links and rings, or repeats, make a wished length. */
final class ChainSum implements Working {
  private static final List<String> JOINING =
      List.of("ring-at-each-end", "rings-between", "each-other");

  private static final Sum SUM =
      new Sum(
          "chain",
          "links for a length",
          "How many links and rings come nearest a finished length.",
          List.of(
              Ask.needed("length", "finished length", "45 cm or 18 in, clasp included"),
              Ask.optional("clasp", "clasp", "12 mm inside end to inside end, or its name; none"),
              Ask.optional("link-inside", "link inside", "12.2 mm"),
              Ask.optional("ring-inside", "ring inside", "3 mm"),
              Ask.optional("wire", "link's wire", "0.9 mm, which has to pass the ring twice"),
              Ask.words(
                  "joining",
                  "joining",
                  "ring-at-each-end, rings-between, or each-other; the first",
                  JOINING.toArray(String[]::new)),
              Ask.optional("repeat", "repeat", "3 round + 1 long; in place of a link's inside"),
              Ask.optional("inside", "inside by kind", "round=4 mm,long=12 mm").as(Ask.Kind.MANY)),
          List.of("link-inside", "ring-inside"));

  @Override
  public Sum sum() {
    return SUM;
  }

  @Override
  public void work(Answers answers, Outcome outcome) {
    Optional<Double> length = answers.size("length");
    double clasp = clasp(answers);
    Optional<Double> link = answers.size("link-inside");
    Optional<Double> ring = answers.size("ring-inside");
    Optional<Double> wire = answers.wire("wire");
    Optional<Joining> typed = answers.read("joining", ChainSum::joining);
    if (answers.has("repeat")) {
      answers.check(
          "link-inside",
          !answers.has("link-inside"),
          "A repeat names its links: write their lengths as inside, such as round=4 mm.");
      RepeatCount.work(answers, outcome, length, clasp, ring);
      return;
    }
    Joining joining = typed.orElse(Joining.RING_AT_EACH_END);
    boolean ringed = joining != Joining.EACH_OTHER;
    answers.ask(
        "link-inside",
        "Give the link's inside length, such as 12.2 mm, or a repeat, such as 3 round + 1 long.");
    if (ringed) {
      answers.ask(
          "ring-inside",
          "Give the ring's inside length, such as 3 mm; where links join each other, say so.");
    }
    answers.check(
        "inside", !answers.has("inside"), "Lengths by kind go with a repeat, which is missing.");
    if (answers.wrong()) {
      return;
    }
    Optional<ChainCount> count =
        answers.found(
            "length",
            ChainCount.of(
                link.orElseThrow(), ring.orElse(0.0), length.orElseThrow(), clasp, joining));
    count.ifPresent(found -> told(outcome, answers.units(), found, length.get(), ring, wire));
  }

  private static double clasp(Answers answers) {
    Optional<Double> typed =
        answers.read(
            "clasp",
            text ->
                text.matches("[-−+.,]?\\d.*")
                    ? Length.read(text).map(Length::mm)
                    : answers.given().reference().clasp(text).map(known -> known.insideLengthMm()));
    return typed.orElse(0.0);
  }

  private static Read<Joining> joining(String typed) {
    String word = typed.toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
    return switch (word) {
      case "ring-at-each-end" -> Read.good(Joining.RING_AT_EACH_END);
      case "rings-between" -> Read.good(Joining.RINGS_BETWEEN);
      case "each-other" -> Read.good(Joining.EACH_OTHER);
      default ->
          Read.bad(
              "“"
                  + typed
                  + "” is no way of joining."
                  + Nearest.of(word, JOINING).map(near -> " Did you mean " + near + "?").orElse("")
                  + " Write ring-at-each-end, rings-between or each-other.");
    };
  }

  private static void told(
      Outcome outcome,
      UnitStyle units,
      ChainCount count,
      double wishedMm,
      Optional<Double> ringMm,
      Optional<Double> wireMm) {
    OptionalDouble exact = count.exactRingInsideMm();
    boolean jams =
        exact.isPresent()
            && wireMm.isPresent()
            && !Rings.passesTwo(exact.getAsDouble(), exact.getAsDouble(), wireMm.get());
    put(
        outcome,
        Math.toIntExact(count.links()),
        Math.toIntExact(count.rings()),
        count.lengthMm(),
        count.oneFewerMm(),
        count.oneMoreMm(),
        jams ? OptionalDouble.empty() : exact);
    outcome.line(
        Figures.count(count.links(), "link")
            + (count.rings() > 0 ? " and " + Figures.count(count.rings(), "ring") : "")
            + " come to "
            + units.length(count.lengthMm())
            + ", "
            + apart(units, count.lengthMm() - wishedMm)
            + ".");
    besides(outcome, units, count.oneFewerMm(), count.oneMoreMm(), "link");
    if (ringMm.isPresent()
        && wireMm.isPresent()
        && count.rings() > 0
        && !Rings.passesTwo(ringMm.get(), ringMm.get(), wireMm.get())) {
      outcome.warn(
          "Two wires of "
              + units.wire(wireMm.get())
              + " do not pass a ring of "
              + units.length(ringMm.get())
              + " inside.");
    }
    if (exact.isPresent()) {
      String ring =
          "A ring of " + units.length(exact.getAsDouble()) + " inside would make it exact";
      outcome.line(
          jams
              ? ring + ", but two wires of " + units.wire(wireMm.get()) + " do not pass it."
              : ring + (wireMm.isPresent() ? "." : ", if the links' wire passes it twice."));
    }
    if (count.joining() == Joining.EACH_OTHER) {
      outcome.line(
          "Close and solder "
              + count.closedFirst()
              + " of the links before any are joined: every second one.");
    }
  }

  static void put(
      Outcome outcome,
      int links,
      int rings,
      double lengthMm,
      OptionalDouble oneFewerMm,
      double oneMoreMm,
      OptionalDouble exactRingInsideMm) {
    outcome.put("links", links);
    outcome.put("rings", rings);
    outcome.put("length_mm", lengthMm);
    outcome.put("one_fewer_mm", oneFewerMm);
    outcome.put("one_more_mm", oneMoreMm);
    outcome.put("exact_ring_inside_mm", exactRingInsideMm);
  }

  static void besides(
      Outcome outcome, UnitStyle units, OptionalDouble fewerMm, double moreMm, String what) {
    outcome.line(
        (fewerMm.isPresent()
                ? "One " + what + " fewer: " + units.length(fewerMm.getAsDouble()) + ". "
                : "")
            + "One "
            + what
            + " more: "
            + units.length(moreMm)
            + ".");
  }

  /** How far from the wish: "2.4 mm longer than wished". */
  static String apart(UnitStyle units, double overMm) {
    if (Math.abs(overMm) < 0.005) {
      return "as wished";
    }
    return units.length(Math.abs(overMm)) + (overMm > 0 ? " longer" : " shorter") + " than wished";
  }
}
