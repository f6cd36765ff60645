package linkwright.coach.drawer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.TrayJob;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.drawer.MetalAccount;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;
import linkwright.standing.reach.WireWanted;

/**
 * The lots, what stocktaking missed, and what came, went and is there of each metal.
 *
 * @param units how amounts are shown
 */
public record DrawerContent(UnitStyle units) {
  private static final String NONE = "-";

  /** What no scale of a bench shows, g. */
  private static final double LEAST_G = 0.005;

  /** All of it; at is the lot that is looked at, −1 for none; jobs are those at hand. */
  public List<Part> of(Drawer drawer, int at, List<TrayJob> jobs, Reference reference) {
    List<Table.Line> lines = new ArrayList<>();
    for (Lot lot : drawer.lots()) {
      boolean over = lot.massG().orElse(0) < 0 || lot.lengthMm().orElse(0) < 0;
      lines.add(
          Table.Line.of(
                  lot.id() + (lot.batch().isBlank() ? "" : " (" + lot.batch() + ")"),
                  lot.metal() + (lot.temper().isBlank() ? "" : ", " + lot.temper()),
                  lot.wireMm().isPresent() ? units.wire(lot.wireMm().getAsDouble()) : lot.what(),
                  lot.lengthMm().isPresent() ? units.length(lot.lengthMm().getAsDouble()) : NONE,
                  mass(lot.massG()),
                  mass(lot.unaccountedG()))
              .with(over ? Emphasis.TROUBLE : Emphasis.PLAIN));
    }
    List<Part> parts = new ArrayList<>();
    parts.add(
        drawer.lots().isEmpty()
            ? Prose.says(
                "Nothing is entered in the drawer yet. What comes is entered once as a lot; a job"
                    + " then takes its wire out of it.")
            : new Table(
                List.of(
                    Table.Column.words("lot"),
                    Table.Column.words("metal"),
                    Table.Column.words("size"),
                    Table.Column.numbers("left"),
                    Table.Column.numbers("weighs"),
                    Table.Column.numbers("missed")),
                lines,
                at));
    drawer.lots().forEach(lot -> wanted(lot, jobs).ifPresent(parts::add));
    List<MetalAccount> accounts = MetalAccount.of(drawer, reference);
    accounts.forEach(account -> parts.add(account(account)));
    accounts.stream()
        .filter(account -> account.atBenchG() >= LEAST_G)
        .forEach(account -> parts.add(Prose.stop(atClosed(account))));
    drawer.lots().stream()
        .filter(lot -> lot.lengthMm().orElse(0) < 0)
        .forEach(
            lot ->
                parts.add(
                    Prose.stop(
                        "More was taken out of "
                            + lot.id()
                            + " than came: weigh what is there, or strike an entry of a job.")));
    return parts;
  }

  /** Several jobs that lack the same wire, where the lot will not do for all. */
  private Optional<Part> wanted(Lot lot, List<TrayJob> jobs) {
    List<TrayJob> lacking =
        jobs.stream()
            .filter(
                job -> job.wants().filter(wire -> lot.is(wire.metal(), wire.wireMm())).isPresent())
            .toList();
    double all = WireWanted.allMm(lacking.stream().map(job -> job.wants().orElseThrow()).toList());
    if (lacking.size() < 2 || all <= lot.lengthMm().orElse(0)) {
      return Optional.empty();
    }
    String each =
        lacking.stream()
            .map(job -> job.name() + " " + units.length(job.wants().orElseThrow().lacksMm()))
            .collect(Collectors.joining(", "));
    return Optional.of(
        Prose.stop(
            lacking.size()
                + " jobs lack the wire of "
                + lot.id()
                + ", and it will not do for all: "
                + each
                + "; "
                + units.length(lot.lengthMm().orElse(0))
                + " left."));
  }

  private String atClosed(MetalAccount account) {
    return units.mass(account.atBenchG())
        + " of "
        + account.metal()
        + " was still at the bench when its job was closed, and nothing says where it went. Open"
        + " the job again, give it back or weigh it in, and close it.";
  }

  private String mass(OptionalDouble grams) {
    return grams.isPresent() ? units.mass(grams.getAsDouble()) : NONE;
  }

  /** Of one metal what came, what went into work and what came of that, in alloy and fine. */
  private Table account(MetalAccount account) {
    List<Table.Line> lines = new ArrayList<>();
    line(lines, account, "came", account.cameG());
    line(lines, account, "into work", account.workG());
    line(lines, account, "in work still", account.openG());
    line(lines, account, "in chains", account.chainG());
    line(lines, account, "back as wire", account.backG());
    line(lines, account, "clean scrap", account.cleanG());
    line(lines, account, "soldered scrap", account.solderedG());
    line(lines, account, "filings", account.filingsG());
    line(lines, account, "sweeps", account.sweepsG());
    line(lines, account, "at closed jobs, not told", account.atBenchG());
    line(lines, account, "pieces over", account.overG());
    line(lines, account, "lost", account.lostG());
    line(lines, account, "missed by the scale", account.missedG());
    line(lines, account, "back, in no lot", account.looseG());
    lines.add(cells(account, "there", account.thereG()));
    return new Table(
        List.of(
            Table.Column.words(""), Table.Column.numbers("alloy"), Table.Column.numbers("fine")),
        lines,
        -1);
  }

  private void line(List<Table.Line> lines, MetalAccount account, String label, double grams) {
    if (Math.abs(grams) >= LEAST_G) {
      lines.add(cells(account, label, grams));
    }
  }

  private Table.Line cells(MetalAccount account, String label, double grams) {
    String of = account.metal() + ": " + label;
    return Table.Line.of(of, units.mass(grams), mass(account.fine(grams)));
  }
}
