package linkwright.coach.drawer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import linkwright.drawer.Taking;
import linkwright.quantity.UnitStyle;

/**
 * The lots, what stocktaking missed, and what came, went and is there of each metal.
 *
 * @param units how amounts are shown
 */
public record DrawerContent(UnitStyle units) {
  private static final String NONE = "-";

  /** All of it; at is the lot that is looked at, −1 for none; jobs are those at hand. */
  public List<Part> of(Drawer drawer, int at, List<TrayJob> jobs) {
    if (drawer.lots().isEmpty()) {
      return List.of(
          Prose.says(
              "Nothing is entered in the drawer yet. What comes is entered once as a lot; a job"
                  + " then takes its wire out of it."));
    }
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
        new Table(
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
    parts.add(account(drawer));
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
    double all = lacking.stream().mapToDouble(job -> job.wants().orElseThrow().lacksMm()).sum();
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

  private String mass(OptionalDouble grams) {
    return grams.isPresent() ? units.mass(grams.getAsDouble()) : NONE;
  }

  /** Of each metal what came, what jobs have, and what is there. */
  private Table account(Drawer drawer) {
    Map<String, double[]> metals = new LinkedHashMap<>();
    for (Lot lot : drawer.lots()) {
      double[] sums = metals.computeIfAbsent(lot.metal(), any -> new double[3]);
      sums[0] += lot.cameG();
      sums[1] += lot.massG().orElse(0);
      sums[2] += lot.unaccountedG().orElse(0);
    }
    List<Table.Line> lines = new ArrayList<>();
    metals.forEach(
        (metal, sums) -> {
          long jobs =
              drawer.takings().stream()
                  .filter(taking -> isOf(drawer, taking, metal))
                  .map(Taking::job)
                  .distinct()
                  .count();
          lines.add(
              Table.Line.of(
                  metal,
                  units.mass(sums[0]),
                  units.mass(sums[1]),
                  units.mass(sums[2]),
                  Long.toString(jobs)));
        });
    return new Table(
        List.of(
            Table.Column.words("metal account"),
            Table.Column.numbers("came"),
            Table.Column.numbers("there"),
            Table.Column.numbers("missed"),
            Table.Column.numbers("jobs that took")),
        lines,
        -1);
  }

  private static boolean isOf(Drawer drawer, Taking taking, String metal) {
    return drawer.lots().stream()
        .anyMatch(lot -> lot.id().equals(taking.lot()) && lot.metal().equals(metal));
  }
}
