package linkwright.coach.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.form.Choosing;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Offered;
import linkwright.coach.form.PlanHelp;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.job.Sourced;
import linkwright.link.Pattern;
import linkwright.link.UsualSizes;
import linkwright.plan.PartPlan;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.routine.ChainEnds;
import linkwright.routine.Makes;
import linkwright.routine.PieceDetail;
import linkwright.routine.PieceKind;
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
              if (routine.makes() == Makes.CHAIN && routine.ends() != ChainEnds.LINKS) {
                usualPart(model, routine)
                    .ifPresent(
                        sizes ->
                            sizes
                                .ringInsideMm()
                                .ifPresent(
                                    mm ->
                                        usual.put(
                                            WishKeys.RING_INSIDE,
                                            model.settings().units().length(mm))));
              }
              if (routine.makes() != Makes.CHAIN) {
                usual.put(PartPlan.PIECES, "" + routine.detail().usualPieces());
                usualPart(model, routine).ifPresent(sizes -> put(usual, model, routine, sizes));
              }
            });
    return usual;
  }

  private static Optional<UsualSizes> usualPart(Model model, Routine routine) {
    return routine.patterns().stream()
        .findFirst()
        .flatMap(model.handbook()::pattern)
        .flatMap(Pattern::usual);
  }

  private static void put(
      Map<String, String> usual, Model model, Routine routine, UsualSizes sizes) {
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
            .map(job -> PlanDefaults.of(Map.of(), job.state(), model.handbook()))
            .orElse(Map.of());
    return Form.of(Form.Purpose.PLAN, "The plan", "keep this plan", asked)
        .mapFields(field -> field.inWords(words))
        .mapFields(field -> hers(field, taken))
        .withTexts(texts);
  }

  /** What is taken where a field stays empty, and whose that is. */
  private static Field hers(Field field, Map<String, Sourced> taken) {
    Sourced value = taken.get(field.id());
    return value == null || value.from() == Sourced.Source.USUAL
        ? field
        : field.hinted("empty: " + value.value() + ", " + SourceWords.of(value.from()));
  }

  /** Rings are not asked for where links join each other, unless some were entered. */
  private static boolean wanted(Field field, Optional<Routine> routine, Map<String, String> texts) {
    boolean ring =
        List.of(WishKeys.RING_INSIDE, WishKeys.RING_WIRE, WishKeys.RING_OVAL, WishKeys.RING_STOCK)
            .contains(field.id());
    boolean linked = routine.map(known -> known.ends() == ChainEnds.LINKS).orElse(false);
    return !ring || !linked || !texts.getOrDefault(field.id(), "").isBlank();
  }

  /** What is no chain: only what the routine's texts speak of, and how many. */
  private static List<Field> part(Model model, Routine routine) {
    List<Field> fields = new ArrayList<>();
    fields.add(metal(model));
    fields.add(field(model, WishKeys.WIRE));
    fields.add(field(model, PartPlan.PIECES, "how many"));
    if (routine.speaksOf("blank")) {
      fields.add(field(model, WishKeys.LINK_BLANK).hinted(blankOfPart(model)));
    }
    if (routine.speaksOf(FORMER)) {
      fields.add(field(model, WishKeys.LINK_FORMERS));
    }
    if (routine.speaksOf("ring inside")) {
      fields.add(field(model, WishKeys.RING_INSIDE));
    }
    fields.add(field(model, WishKeys.USUAL_LOSS).aside());
    return fields;
  }

  private static String blankOfPart(Model model) {
    return "what you cut for one, " + model.settings().units().length(36);
  }

  /** What decides a chain stands open; the rest is folded away until somebody wants it. */
  private static List<Field> chain(Model model) {
    return List.of(
        metal(model),
        field(model, WishKeys.WIRE),
        choice(WishKeys.TEMPER, Stream.of("soft", "hard").map(Offered::of).toList()).aside(),
        choice(WishKeys.LINK_PATTERN, Choosing.patterns(model.handbook().patterns())),
        field(model, WishKeys.LINK_LENGTH),
        field(model, WishKeys.LINK_WIDTH),
        field(model, WishKeys.LINK_BLANK).aside(),
        field(model, WishKeys.LINK_FORMERS).aside(),
        field(model, WishKeys.LINK_INSIDE).aside(),
        repeat(model),
        field(model, WishKeys.RING_INSIDE),
        field(model, WishKeys.RING_WIRE).aside(),
        field(model, WishKeys.RING_OVAL).aside(),
        field(model, WishKeys.RING_ENDS).aside(),
        field(model, WishKeys.FINISHED),
        field(model, WishKeys.EXTENDER).aside(),
        field(model, WishKeys.CLASP_LENGTH).aside(),
        field(model, WishKeys.CLASP_MASS).aside(),
        field(model, WishKeys.STOCK).aside(),
        field(model, WishKeys.RING_STOCK).aside(),
        field(model, WishKeys.KERF).aside(),
        field(model, WishKeys.COIL_TAIL).aside(),
        field(model, WishKeys.USUAL_LOSS).aside(),
        field(model, WishKeys.CONFIDENCE).aside());
  }

  /** Stands open where the routine's links are of several sizes: its plan is none without it. */
  private static Field repeat(Model model) {
    Field repeat = field(model, WishKeys.LINK_REPEAT);
    return routine(model)
        .flatMap(known -> Optional.ofNullable(known.detail().kinds().get(PieceKind.LINK)))
        .map(PieceDetail::perRepeat)
        .filter(links -> links > 1)
        .map(
            links ->
                repeat.hinted(
                    links
                        + " links by this routine: 1 link + "
                        + (links - 1)
                        + " round ring="
                        + model.settings().units().length(3)))
        .orElseGet(repeat::aside);
  }

  private static Field metal(Model model) {
    List<Metal> metals =
        model.handbook().reference().metals().stream()
            .filter(metal -> metal.notPlanned().isEmpty())
            .toList();
    return choice(WishKeys.METAL, Choosing.metals(metals));
  }

  private static Field field(Model model, String key) {
    return field(model, key, WishKeys.label(key));
  }

  private static Field field(Model model, String key, String label) {
    PlanHelp.FieldHelp entry = PlanHelp.of(key);
    return Field.of(key, label, "", entry.hint(), entry.measure(), model.settings().units())
        .helped(entry.help());
  }

  private static Field choice(String key, List<Offered> choices) {
    PlanHelp.FieldHelp entry = PlanHelp.of(key);
    return Field.choiceOf(key, WishKeys.label(key), "", entry.hint(), choices).helped(entry.help());
  }
}
