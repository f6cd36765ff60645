package linkwright.coach.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.plan.PartPlan;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.routine.TradeWords;
import linkwright.standing.Standing;

/** What is no chain: how many, and what its texts will be filled with. */
public final class PartContent {
  private PartContent() {}

  /** What it comes to: formers are told where the texts of its routine speak of one. */
  public static List<Part> of(
      PartPlan part,
      Standing standing,
      Optional<Routine> routine,
      UnitStyle units,
      TradeWords words) {
    boolean formers = routine.filter(known -> known.speaksOf(PlanFields.FORMER)).isPresent();
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of("wanted", Integer.toString(part.pieces())).with(Emphasis.MAIN));
    String toCut = toCut(standing);
    if (!toCut.isEmpty()) {
      rows.add(Row.of("to cut", words.show(toCut)));
    }
    part.wireMm().ifPresent(mm -> rows.add(Row.of("wire", units.wire(mm))));
    part.blankMm().ifPresent(mm -> rows.add(Row.of("blank", units.length(mm))));
    if (formers) {
      part.formersMm()
          .forEach((name, mm) -> rows.add(Row.of(words.show("former " + name), units.length(mm))));
    }
    part.ringInsideMm().ifPresent(mm -> rows.add(Row.of("ring inside", units.length(mm))));
    part.solderPieceMm().ifPresent(mm -> rows.add(Row.of("solder piece", units.length(mm))));
    part.ringBlankMm().ifPresent(mm -> rows.add(Row.of("ring blank", units.length(mm))));
    part.wireWithoutSparesMm()
        .ifPresent(
            mm -> rows.add(Row.of("wire without spares", units.length(mm)).with(Emphasis.MAIN)));
    List<Part> parts = new ArrayList<>(List.of(new Rows(rows)));
    part.metal()
        .ifPresent(
            metal ->
                metal.warnings().forEach(each -> parts.add(Prose.stop(SaidIn.units(each, units)))));
    return parts;
  }

  /** Blanks still to cut of each kind and the pieces they are for; empty where none are. */
  private static String toCut(Standing standing) {
    return standing.left().entrySet().stream()
        .filter(kind -> kind.getValue().toCutOrAsMany() > 0)
        .map(
            kind ->
                kind.getKey().counted(kind.getValue().toCutOrAsMany())
                    + " for "
                    + kind.getValue().more())
        .collect(Collectors.joining(", "));
  }
}
