package linkwright.coach.wire;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.drawer.Lot;
import linkwright.plan.ChainWish;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Temper;
import linkwright.routine.PieceKind;

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
                Field.of(
                        "lengths",
                        "lengths",
                        "",
                        "{mm:412}, {mm:2000}; or by weight, {g:12}",
                        Measure.LENGTH,
                        model.settings().units())
                    .helped(
                        "What came, one length after the other, or its weight. It changes what is"
                            + " short and how sure it is that the wire will do."),
                Field.of(
                        "wire",
                        "thickness",
                        wire,
                        "measured, {wire:1}",
                        Measure.WIRE,
                        model.settings().units())
                    .helped("Its thickness as measured. Another than the plan's is told."),
                Field.choice(
                        "temper",
                        "temper",
                        temper,
                        "soft, as annealed, or hard, as drawn",
                        List.of("soft", "hard"))
                    .helped("As it came. Hard wire is annealed before it is bent."),
                Field.of("batch", "batch", "", "the maker's number, if you keep it")
                    .helped("It leads back to the maker's sheet, should the wire crack.")));
    List<String> lots = lots(model);
    if (!lots.isEmpty()) {
      fields.add(
          Field.choice(
                  "lot",
                  "out of lot",
                  "",
                  "left and right go through the drawer; empty: bought",
                  lots)
              .helped("The lot that it was taken from. It is counted off there."));
    }
    return Form.of(Form.Purpose.ADD_WIRE, "Wire that came", "enter it", fields);
  }

  /** Lots of the plan's metal in which wire is left, those of its thickness first. */
  private static List<String> lots(Model model) {
    return wish(model.job().orElseThrow())
        .map(
            known ->
                model.handbook().drawer().lots().stream()
                    .filter(lot -> lot.metal().equals(known.metal().id()))
                    .filter(lot -> lot.lengthMm().orElse(0) > 0)
                    .sorted(
                        Comparator.comparing(lot -> !lot.is(known.metal().id(), known.wireMm())))
                    .map(Lot::id)
                    .toList())
        .orElse(List.of());
  }

  /** The form with the lots to choose from that lie in the drawer now. */
  static Form fitted(Model model, Form form) {
    List<String> there =
        switch (form.purpose()) {
          case ADD_WIRE -> lots(model);
          case TAKE_SOLDER -> solders(model);
          case RETURN_WIRE -> model.handbook().drawer().lots().stream().map(Lot::id).toList();
          default -> List.of();
        };
    return there.isEmpty()
        ? form
        : form.mapFields(
            field ->
                field.id().equals("lot") && !field.choices().isEmpty()
                    ? Field.choice("lot", field.label(), field.text(), field.hint(), there)
                        .with(field.trouble())
                    : field);
  }

  /** Lots that are solder. */
  static List<String> solders(Model model) {
    return model.handbook().drawer().lots().stream()
        .filter(lot -> lot.what().equals("solder"))
        .map(Lot::id)
        .toList();
  }

  /** Solder that this job takes; which, is known by its lot when the chain comes back. */
  static Form soldered(Model model) {
    List<String> lots = solders(model);
    return Form.of(
        Form.Purpose.TAKE_SOLDER,
        "Solder out of the drawer",
        "take it",
        List.of(
            Field.choice("lot", "out of lot", lots.get(0), "left and right go through them", lots)
                .helped("The lot that it was taken from. It is counted off there."),
            Field.of(
                    "mass",
                    "mass",
                    "",
                    "what you took, {g:1.2}",
                    Measure.MASS,
                    model.settings().units())
                .helped("What the scale said of it. The job card names the lot.")));
  }

  /** Wire that goes back into the drawer. */
  static Form returned(Model model) {
    List<String> lots = model.handbook().drawer().lots().stream().map(Lot::id).toList();
    return Form.of(
        Form.Purpose.RETURN_WIRE,
        "Wire or solder that goes back into the drawer",
        "enter it",
        List.of(
            piece(model.job().orElseThrow()),
            Field.choice(
                    "lot",
                    "into lot",
                    lots.isEmpty() ? "" : lots.get(0),
                    "left and right go through the drawer",
                    lots)
                .helped("The lot into which it goes. It is counted there again."),
            Field.of(
                    "length",
                    "length",
                    "",
                    "of wire, {mm:60}; or its mass below",
                    Measure.LENGTH,
                    model.settings().units())
                .helped("The wire that goes back. It leaves what is on hand here."),
            Field.of("mass", "mass", "", "{g:0.4}", Measure.MASS, model.settings().units())
                .helped(
                    "What the scale says of it. Solder is weighed: what a job took and did not"
                        + " give back counts as used.")));
  }

  static Form cut(Model model) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    List<String> each = new ArrayList<>();
    job.standing()
        .eachMm()
        .forEach((piece, mm) -> each.add("a " + piece + " takes " + units.length(mm)));
    each.sort(String::compareTo);
    List<Field> fields = new ArrayList<>();
    fields.add(piece(job));
    job.standing()
        .counted()
        .plan()
        .filter(Plan::sized)
        .map(plan -> plan.sizes().stream().map(LinksOfSize::name).toList())
        .ifPresent(
            names ->
                fields.add(
                    Field.choice(
                            "size",
                            "of the size",
                            names.get(0),
                            "left and right go through the sizes",
                            names)
                        .helped("Which of the links was cut; each takes wire of its own length.")));
    fields.add(
        Field.of("count", "how many", "", "blanks cut, 12")
            .takes(Measure.NUMBER, units)
            .helped("The pieces that were cut. Their wire is gone from what is on hand."));
    return Form.of(
        Form.Purpose.CUT_WIRE, "Wire that was cut: " + String.join(", ", each), "enter it", fields);
  }

  /** Which of several sizes of link; none where links are alike or the pieces are none. */
  static Optional<LinksOfSize> size(OpenJob job, Form form) {
    return job.standing().counted().plan().filter(Plan::sized).stream()
        .flatMap(plan -> plan.sizes().stream())
        .filter(size -> piece(form).equals(PieceKind.LINK) && size.name().equals(form.text("size")))
        .findFirst();
  }

  static Form discarded(Model model) {
    return Form.of(
        Form.Purpose.DISCARD_WIRE,
        "Wire that was lost or went to scrap uncut",
        "enter it",
        List.of(
            piece(model.job().orElseThrow()),
            Field.of("length", "length", "", "{mm:60}", Measure.LENGTH, model.settings().units())
                .helped("The wire that is gone. It is missing from what is on hand."),
            Field.of("why", "why", "", "kinked, cracked, lent")
                .helped("It stands in the book beside the loss.")));
  }

  static Form drawnDown(Model model, double lengthMm) {
    return Form.of(
        Form.Purpose.DRAW_DOWN,
        "Draw thicker wire down; nothing is entered",
        "done",
        List.of(
            piece(model.job().orElseThrow()),
            Field.of(
                    "from",
                    "from",
                    "",
                    "the thicker wire, {wire:1.5}",
                    Measure.WIRE,
                    model.settings().units())
                .helped("The thickness of the wire you have. The passes begin there."),
            Field.of(
                    "holes",
                    "your holes",
                    "",
                    "of the plate, {mm:1.4}, {mm:1.3}, {mm:1.2}",
                    Measure.WIRE,
                    model.settings().units())
                .helped("The holes of your plate. The passes go through them."),
            Field.of(
                    "length",
                    "length wanted",
                    lengthMm > 0 ? model.settings().units().enough(lengthMm) : "",
                    "of the finished wire, {mm:400}",
                    Measure.LENGTH,
                    model.settings().units())
                .helped("The finished wire wanted. How much to start from follows from it."),
            Field.of(
                    "pointing",
                    "lost to a point",
                    model.settings().units().length(15),
                    "at each hole, filed and cut off, {mm:15}",
                    Measure.LENGTH,
                    model.settings().units())
                .helped("What is filed to a point and cut off again at each hole.")));
  }

  /** The kind of piece that the wire is for, said of one or of several. */
  static PieceKind piece(Form form) {
    String said = form.text("piece").strip().toLowerCase(Locale.ROOT);
    return Stream.of(PieceKind.LINK, PieceKind.RING)
        .filter(kind -> said.equals(kind.many()))
        .findFirst()
        .orElseGet(() -> new PieceKind(said));
  }

  /** What is wrong with the piece, where it is none of those that wire is for. */
  static Optional<String> pieceTrouble(Form form) {
    boolean asked = form.fields().stream().anyMatch(field -> field.id().equals("piece"));
    boolean known = List.of(PieceKind.LINK, PieceKind.RING).contains(piece(form));
    return !asked || known
        ? Optional.empty()
        : Optional.of("Say what the wire is for: link or ring.");
  }

  private static Field piece(OpenJob job) {
    String link = PieceKind.LINK.id();
    boolean rings = wish(job).map(known -> known.ring().isPresent()).orElse(true);
    Field field =
        rings
            ? Field.choice("piece", "for", link, WHICH, List.of(link, PieceKind.RING.id()))
            : Field.choice("piece", "for", link, "this chain has no rings", List.of(link));
    return field.helped("Whose wire it is, where rings are of another than links.");
  }

  static Optional<ChainWish> wish(OpenJob job) {
    return job.standing().counted().wish();
  }
}
