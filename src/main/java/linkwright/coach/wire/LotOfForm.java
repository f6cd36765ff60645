package linkwright.coach.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.form.Amounts;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.drawer.Lot;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plan.ChainWish;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.stock.LotQuestions;
import linkwright.standing.stock.PlannedWire;

/**
 * The lot that a form names: what is taken out of it, and what goes back into it, wire by its
 * length or mass, all else by its mass.
 */
final class LotOfForm {
  private LotOfForm() {}

  private static Optional<Lot> lot(Model model, Form form) {
    return LotQuestions.lot(form.text("lot"), model.handbook().drawer());
  }

  static boolean isWire(Model model, Form form) {
    return lot(model, form).map(lot -> lot.wireMm().isPresent()).orElse(true);
  }

  /** The entry of what is no wire; empty for wire, which has to be on hand. */
  static Optional<Fact> of(Model model, Form form) {
    return isWire(model, form)
        ? Optional.empty()
        : Optional.of(
            new LotFact.StockReturned(
                form.text("lot"),
                PieceKind.NONE,
                OptionalDouble.empty(),
                new Amounts(form).grams("mass"),
                ""));
  }

  /** How much wire is gone from what is on hand, mm. */
  static double wireMm(Model model, Form form) {
    Amounts amounts = new Amounts(form);
    return amounts
        .mm("length")
        .orElseGet(
            () ->
                PlannedWire.lengthMm(
                    amounts.grams("mass").orElse(0),
                    WireForms.piece(form),
                    WireForms.wish(model.job().orElseThrow()).orElseThrow()));
  }

  /** What is wrong with what is to go back. */
  static Map<String, String> returned(Model model, Form form) {
    Amounts amounts = new Amounts(form);
    Map<String, String> troubles = new LinkedHashMap<>();
    troubles.putAll(amounts.troubles(List.of("length"), ""));
    troubles.putAll(amounts.massTroubles(List.of("mass")));
    boolean length = !form.text("length").isEmpty();
    boolean mass = !form.text("mass").isEmpty();
    if (!isWire(model, form) && length) {
      troubles.put("length", form.text("lot") + " is no wire: give the mass that goes back.");
    } else if (length && mass) {
      troubles.put("mass", "Give the length or the mass, not both.");
    }
    return troubles;
  }

  /** What is wrong with the lot that wire is taken out of: other wire, or not enough left. */
  static Optional<String> wrong(Model model, Form form, ChainWish wish) {
    UnitStyle units = model.settings().units();
    String name = form.text("lot");
    Optional<Lot> lot = lot(model, form);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (lot.isEmpty()) {
      return Optional.of("There is no lot “" + name + "” in the drawer.");
    }
    double wire = PlannedWire.read(form.text("wire")).orThrow();
    if (!lot.get().is(wish.metal().id(), wire)) {
      boolean draws = lot.get().metal().equals(wish.metal().id());
      return Optional.of(
          name
              + " is "
              + lot.get().metal()
              + " of "
              + units.wire(lot.get().wireMm().orElse(0))
              + (draws ? ": draw it down first, or" : ", no " + wish.metal().id() + ":")
              + " take another lot.");
    }
    List<Fact> came =
        form.text("lengths").isEmpty()
            ? List.of()
            : WireCame.facts(form, wish, model.handbook().drawer());
    return LotQuestions.beyond(came, lot.get(), units);
  }

  static Optional<String> tooMuch(Model model, Form form) {
    double left =
        model.handbook().drawer().lots().stream()
            .filter(lot -> lot.id().equals(form.text("lot")))
            .findFirst()
            .map(lot -> lot.massG().orElse(0))
            .orElse(0.0);
    return new Amounts(form).grams("mass").orElse(0) > left
        ? Optional.of(
            model.settings().units().mass(left)
                + " are left of it by the books: weigh the lot, or take less.")
        : Optional.empty();
  }
}
