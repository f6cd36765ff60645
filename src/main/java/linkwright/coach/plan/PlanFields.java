package linkwright.coach.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.PriceWords;
import linkwright.coach.kernel.JobWords;
import linkwright.coach.kernel.Model;
import linkwright.job.Sourced;
import linkwright.link.Pattern;
import linkwright.link.Usual;
import linkwright.plan.PartPlan;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.routine.Ends;
import linkwright.routine.Makes;
import linkwright.routine.Routine;
import linkwright.routine.TradeWords;
import linkwright.standing.PlanDefaults;

/**
 * The plan as a form: a field for each key of the wish, in the order in which one decides. What a
 * routine has no use for is not asked.
 */
final class PlanFields {
  /** How the placeholders of formers begin. */
  static final String FORMER = "former ";

  private PlanFields() {}

  /** What the job's routine makes usual: offered while nothing is planned. */
  static Map<String, String> usual(Model model) {
    Map<String, String> usual = new LinkedHashMap<>();
    routine(model)
        .ifPresent(
            routine -> {
              if (routine.makes() == Makes.CHAIN && !routine.patterns().isEmpty()) {
                usual.put(WishKeys.LINK_PATTERN, routine.patterns().get(0));
              }
              boolean known =
                  PlanDefaults.of(Map.of(), Map.of(), model.handbook())
                      .containsKey(WishKeys.USUAL_LOSS);
              if (routine.usualLoss() > 0 && !known) {
                usual.put(WishKeys.USUAL_LOSS, PriceWords.plain(100 * routine.usualLoss()) + " %");
              }
              if (routine.makes() != Makes.CHAIN) {
                usual.put(PartPlan.PIECES, "1");
                usualPart(model, routine).ifPresent(sizes -> put(usual, model, routine, sizes));
              }
            });
    return usual;
  }

  private static Optional<Usual> usualPart(Model model, Routine routine) {
    return routine.patterns().stream()
        .findFirst()
        .flatMap(model.handbook()::pattern)
        .flatMap(Pattern::usual);
  }

  private static void put(Map<String, String> usual, Model model, Routine routine, Usual sizes) {
    UnitStyle units = model.settings().units();
    if (routine.speaksOf("blank")) {
      usual.put(WishKeys.WIRE, units.length(sizes.wireMm()));
      usual.put(WishKeys.LINK_BLANK, units.length(sizes.blankMm()));
    }
  }

  private static Optional<Routine> routine(Model model) {
    return model.job().flatMap(job -> model.handbook().routine(job.state().course().routine()));
  }

  static Form form(Model model, Map<String, String> texts) {
    Optional<Routine> routine = routine(model);
    boolean chain = routine.map(known -> known.makes() == Makes.CHAIN).orElse(true);
    List<Field> asked =
        (chain ? chain(model) : part(model, routine.orElseThrow()))
            .stream().filter(field -> wanted(field, routine, texts)).toList();
    TradeWords words = JobWords.tradeWords(model);
    Map<String, Sourced> taken =
        model
            .job()
            .map(
                job ->
                    PlanDefaults.of(
                        Map.of(), job.state().course().reckonedWith(), model.handbook()))
            .orElse(Map.of());
    return Form.of(Form.Purpose.PLAN, "The plan", "keep this plan", asked)
        .mapFields(field -> field.inWords(words))
        .mapFields(field -> hers(field, taken))
        .withTexts(texts);
  }

  /** What is taken where a field stays empty, and whose that is. */
  private static Field hers(Field field, Map<String, Sourced> taken) {
    Sourced value = taken.get(field.id());
    return value == null
        ? field
        : new Field(
            field.id(),
            field.label(),
            field.text(),
            field.caret(),
            "empty: " + value.value() + ", " + SourceWords.of(value.from()),
            field.choices(),
            field.trouble());
  }

  /** Rings are not asked for where links join each other, unless some were entered. */
  private static boolean wanted(Field field, Optional<Routine> routine, Map<String, String> texts) {
    boolean ring =
        List.of(WishKeys.RING_INSIDE, WishKeys.RING_WIRE, WishKeys.RING_OVAL, WishKeys.RING_STOCK)
            .contains(field.id());
    boolean linked = routine.map(known -> known.ends() == Ends.LINKS).orElse(false);
    return !ring || !linked || !texts.getOrDefault(field.id(), "").isBlank();
  }

  /** What is no chain: only what the routine's texts speak of, and how many. */
  private static List<Field> part(Model model, Routine routine) {
    List<Field> fields = new ArrayList<>();
    fields.add(choice(WishKeys.METAL, "metal", "left and right go through them", metals(model)));
    fields.add(field(WishKeys.WIRE, "wire", "0.9 mm, 0.035 in, 19 AWG or 20 SWG"));
    fields.add(field(PartPlan.PIECES, "how many", "1; of each kind of piece"));
    if (routine.speaksOf("blank")) {
      fields.add(field(WishKeys.LINK_BLANK, "blank", "what you cut for one, 36 mm"));
    }
    if (routine.speaksOf(FORMER)) {
      fields.add(
          field(WishKeys.LINK_FORMERS, "formers", "name=size, name=size; empty: those shown"));
    }
    if (routine.speaksOf("ring inside")) {
      fields.add(field(WishKeys.RING_INSIDE, "ring inside", "3 mm"));
    }
    fields.add(field(WishKeys.USUAL_LOSS, "usual loss", "pieces lost for good, 5 %"));
    return fields;
  }

  private static List<String> metals(Model model) {
    return model.handbook().reference().metals().stream()
        .filter(metal -> metal.notPlanned().isEmpty())
        .map(Metal::id)
        .toList();
  }

  private static List<Field> chain(Model model) {
    List<String> patterns =
        new ArrayList<>(model.handbook().patterns().stream().map(Pattern::id).toList());
    return List.of(
        choice(WishKeys.METAL, "metal", "left and right go through them", metals(model)),
        field(WishKeys.WIRE, "wire", "0.9 mm, 0.035 in, 19 AWG or 20 SWG"),
        choice(
            WishKeys.TEMPER, "temper", "soft (annealed) or hard (drawn)", List.of("soft", "hard")),
        choice(WishKeys.LINK_PATTERN, "link pattern", "left and right go through them", patterns),
        field(WishKeys.LINK_LENGTH, "link length", "the look you want, 14 mm"),
        field(WishKeys.LINK_WIDTH, "link width", "5 mm"),
        field(WishKeys.LINK_BLANK, "blank", "38 mm; empty: found from the length"),
        field(WishKeys.LINK_FORMERS, "formers", "name=size, name=size; empty: the pattern's own"),
        field(WishKeys.LINK_INSIDE, "link inside", "only if measured: what it adds to the chain"),
        field(WishKeys.RING_INSIDE, "ring inside", "3 mm; the ring between two links"),
        field(WishKeys.RING_WIRE, "ring wire", "empty: the links' wire"),
        field(WishKeys.RING_OVAL, "oval inside", "width once squeezed, 2.4 mm; empty: round"),
        field(WishKeys.FINISHED, "finished length", "clasp and its rings in it, 45 cm or 18 in"),
        field(
            WishKeys.CLASP_LENGTH,
            "clasp length",
            "inside end to inside end, pulled, 14 mm; or its name"),
        field(WishKeys.CLASP_MASS, "clasp mass", "1.2 g"),
        field(WishKeys.STOCK, "wire on hand", "2 m, 412 mm or by weight 12 g"),
        field(WishKeys.RING_STOCK, "wire for rings", "on hand, only if it is another wire"),
        field(WishKeys.KERF, "kerf", "0 mm with cutters, 0.3 mm with a saw blade"),
        field(WishKeys.COIL_TAIL, "coil tail", "what you hold of a coil, 10 mm"),
        field(WishKeys.USUAL_LOSS, "usual loss", "links lost for good, 5 %"),
        field(WishKeys.CONFIDENCE, "chance", "of having cut enough, 90 %"));
  }

  private static Field field(String key, String label, String hint) {
    return Field.of(key, label, "", hint);
  }

  private static Field choice(String key, String label, String hint, List<String> choices) {
    return Field.choice(key, label, "", hint, choices);
  }
}
