package linkwright.coach.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.drawer.Lot;
import linkwright.plan.ChainWish;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Temper;

/** The forms of the wire's screen as they open. */
final class WireForms {
  private static final String WHICH = "left and right: for links or for rings";

  private WireForms() {}

  static Form added(Model model) {
    OpenJob job = model.job().orElseThrow();
    String wire = job.state().course().wish().getOrDefault(WishKeys.WIRE, "");
    String temper =
        wish(job).map(known -> known.temper() == Temper.HARD ? "hard" : "soft").orElse("soft");
    List<Field> fields =
        new ArrayList<>(
            List.of(
                piece(job),
                Field.of("lengths", "lengths", "", "412 mm, 2 m; or by weight, 12 g"),
                Field.of("wire", "wire", wire, "measured, 1.0 mm, 0.04 in or 18 AWG"),
                Field.choice(
                    "temper",
                    "temper",
                    temper,
                    "soft (annealed) or hard (drawn)",
                    List.of("soft", "hard")),
                Field.of("batch", "batch", "", "the maker's number, if you keep it")));
    List<String> lots = lots(model);
    if (!lots.isEmpty()) {
      fields.add(
          Field.choice(
              "lot",
              "out of lot",
              "",
              "left and right go through the drawer; empty: bought",
              lots));
    }
    return Form.of(Form.Purpose.ADD_WIRE, "Wire that came", "enter it", fields);
  }

  /** Lots of the plan's metal in which wire is left. */
  private static List<String> lots(Model model) {
    return wish(model.job().orElseThrow())
        .map(
            known ->
                model.handbook().drawer().lots().stream()
                    .filter(lot -> lot.metal().equals(known.metal().id()))
                    .filter(lot -> lot.lengthMm().orElse(0) > 0)
                    .map(Lot::id)
                    .toList())
        .orElse(List.of());
  }

  /** Wire that goes back into the drawer. */
  static Form returned(Model model) {
    List<String> lots = model.handbook().drawer().lots().stream().map(Lot::id).toList();
    return Form.of(
        Form.Purpose.RETURN_WIRE,
        "Wire that goes back into the drawer",
        "enter it",
        List.of(
            piece(model.job().orElseThrow()),
            Field.choice(
                "lot",
                "into lot",
                lots.isEmpty() ? "" : lots.get(0),
                "left and right go through the drawer",
                lots),
            Field.of("length", "length", "", "60 mm")));
  }

  static Form cut(Model model) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    List<String> each = new ArrayList<>();
    job.standing()
        .eachMm()
        .forEach((piece, mm) -> each.add("a " + piece + " takes " + units.length(mm)));
    each.sort(String::compareTo);
    return Form.of(
        Form.Purpose.CUT_WIRE,
        "Wire that was cut: " + String.join(", ", each),
        "enter it",
        List.of(piece(job), Field.of("count", "how many", "", "blanks cut, 12")));
  }

  static Form discarded(Model model) {
    return Form.of(
        Form.Purpose.DISCARD_WIRE,
        "Wire that was lost or went to scrap uncut",
        "enter it",
        List.of(
            piece(model.job().orElseThrow()),
            Field.of("length", "length", "", "60 mm"),
            Field.of("why", "why", "", "kinked, cracked, lent")));
  }

  static Form weighedOut() {
    return Form.of(
        Form.Purpose.WEIGH_OUT,
        "Metal weighed out for this job",
        "weigh out",
        List.of(
            Field.of("mass", "mass", "", "what you took, 14.5 g"),
            Field.of("what", "what", "wire", "wire, solder, sheet")));
  }

  static Form drawnDown(Model model, double lengthMm) {
    return Form.of(
        Form.Purpose.DRAW_DOWN,
        "Draw thicker wire down; nothing is entered by this",
        "done",
        List.of(
            piece(model.job().orElseThrow()),
            Field.of("from", "from", "", "the thicker wire, 1.5 mm or 15 AWG"),
            Field.of("holes", "your holes", "", "of the plate, 1.4 mm, 1.3 mm, 1.2 mm"),
            Field.of("length", "length wanted", text(lengthMm), "of the finished wire, 400 mm"),
            Field.of("pointing", "lost to a point", "15 mm", "at each hole, filed and cut off")));
  }

  /** Millimetres rounded up to the whole one: what is typed back must be enough. */
  private static String text(double mm) {
    return mm > 0 ? (long) Math.ceil(mm) + " mm" : "";
  }

  private static Field piece(OpenJob job) {
    boolean rings = wish(job).map(known -> known.ring().isPresent()).orElse(true);
    return rings
        ? Field.choice("piece", "for", "link", WHICH, List.of("link", "ring"))
        : Field.choice("piece", "for", "link", "this chain has no rings", List.of("link"));
  }

  static Optional<ChainWish> wish(OpenJob job) {
    return job.standing().counted().wish();
  }
}
