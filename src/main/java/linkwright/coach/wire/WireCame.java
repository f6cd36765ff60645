package linkwright.coach.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.form.Form;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.job.Fact;
import linkwright.plan.ChainWish;
import linkwright.quantity.Length;
import linkwright.quantity.Mass;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.stock.PlannedWire;

/** Wire that came, as typed: its lengths or its weight, and whether it is the plan's wire. */
final class WireCame {
  private WireCame() {}

  static Map<String, String> troubles(Form form, ChainWish wish, UnitStyle units) {
    Map<String, String> troubles = new LinkedHashMap<>();
    if (!form.text("lengths").isEmpty()) {
      lengths(form, wish).problem().ifPresent(sentence -> troubles.put("lengths", sentence));
    }
    double planned = PlannedWire.mm(WireForms.piece(form), wish);
    if (form.text("wire").isEmpty()) {
      troubles.put("wire", "Give the wire's thickness; the plan's is " + units.wire(planned) + ".");
      return troubles;
    }
    Read<Double> wire = PlannedWire.read(form.text("wire"));
    wire.problem().ifPresent(sentence -> troubles.put("wire", sentence));
    if (wire.map(mm -> !PlannedWire.is(mm, WireForms.piece(form), wish)).found().orElse(false)) {
      troubles.put("wire", another(wire.orThrow(), planned, WireForms.piece(form), units));
    }
    return troubles;
  }

  private static String another(double mm, double planned, PieceKind piece, UnitStyle units) {
    String what = "The plan's wire for " + piece.many() + " is " + units.wire(planned) + ". ";
    return mm > planned
        ? what + "Draw this one down first (esc, then draw), and enter what it gives."
        : what + "This one is thinner: change the plan, or keep it for another job.";
  }

  /** The batch of wire that was taken out of a lot is the lot's, where none was typed. */
  static List<Fact> facts(Form form, ChainWish wish, Drawer drawer) {
    String batch =
        form.text("batch").isBlank()
            ? drawer.lots().stream()
                .filter(lot -> lot.id().equals(form.text("lot")))
                .map(Lot::batch)
                .findFirst()
                .orElse("")
            : form.text("batch");
    double wireMm = PlannedWire.read(form.text("wire")).orThrow();
    return lengths(form, wish).orThrow().stream()
        .map(
            mm ->
                (Fact)
                    new Fact.WireAdded(
                        WireForms.piece(form),
                        wireMm,
                        mm,
                        form.text("temper"),
                        batch,
                        form.text("lot")))
        .toList();
  }

  private static Read<List<Double>> lengths(Form form, ChainWish wish) {
    String text = form.text("lengths");
    Read<List<Double>> lengths =
        Length.readList(text).map(list -> list.stream().map(Length::mm).toList());
    Read<Mass> mass = Mass.read(text);
    if (!lengths.isGood() && mass.isGood()) {
      double mm = PlannedWire.lengthMm(mass.orThrow().grams(), WireForms.piece(form), wish);
      return positive(List.of(mm));
    }
    return lengths.flatMap(WireCame::positive);
  }

  private static Read<List<Double>> positive(List<Double> lengths) {
    return lengths.stream().allMatch(mm -> mm > 0)
        ? Read.good(lengths)
        : Read.bad("One of these lengths is nothing. Each has to be more than 0 mm.");
  }
}
