package linkwright.routine;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import linkwright.reference.Picture;
import linkwright.reference.Reference;
import linkwright.reference.Tool;

/** A small sound routine for the tests, step by step changeable. */
final class SoundRoutine {
  static final Caution FLAME = caution("flame", Hazard.HEATS, Hazard.BURNS_GAS);
  static final Caution ACID = caution("acid", Hazard.PICKLES);
  static final Caution BLOW = caution("blow", Hazard.HAMMERS);
  static final Caution BLADE = caution("blade", Hazard.CUTS);
  static final List<Caution> CAUTIONS = List.of(FLAME, ACID, BLOW, BLADE);
  static final Map<String, Set<String>> PATTERNS =
      Map.of("hoop", Set.of("ring"), "bar", Set.of("eye"));

  private static final Reference REFERENCE =
      new Reference(
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(new Picture("gap", "A gap", "Two ends.", List.of())),
          List.of(new Tool("saw", List.of("fretsaw"), List.of("cuts"))));

  private final Map<PieceKind, List<Stage>> pieces = new LinkedHashMap<>();
  private final List<Step> steps = new ArrayList<>();
  private List<String> patterns = List.of("hoop");
  private ChainEnds ends = ChainEnds.LINKS;

  /** Cut, soldered, pickled, checked, trued: every check is content with it. */
  static SoundRoutine sound() {
    SoundRoutine bench = new SoundRoutine();
    bench.pieces("link", "cut", "soldered", "pickled", "checked", "trued");
    bench.steps.add(step("cut").stage("cut").does(Hazard.CUTS).cautions("blade").build());
    bench.steps.add(step("solder").stage("soldered").does(Hazard.HEATS).cautions("flame").build());
    bench.steps.add(
        step("pickle").stage("pickled").does(Hazard.PICKLES).rinses().cautions("acid").build());
    bench.steps.add(step("check").stage("checked").build());
    bench.steps.add(step("true").stage("trued").does(Hazard.HAMMERS).cautions("blow").build());
    return bench;
  }

  SoundRoutine pieces(String kind, String... stages) {
    pieces.put(new PieceKind(kind), Stage.all(List.of(stages)));
    return this;
  }

  SoundRoutine put(Draft step) {
    Step built = step.build();
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).id().equals(built.id())) {
        steps.set(i, built);
        return this;
      }
    }
    steps.add(built);
    return this;
  }

  SoundRoutine add(Draft step) {
    steps.add(step.build());
    return this;
  }

  SoundRoutine first(Draft step) {
    steps.add(0, step.build());
    return this;
  }

  SoundRoutine without(String id) {
    steps.removeIf(step -> step.id().word().equals(id));
    return this;
  }

  SoundRoutine patterns(String... ids) {
    patterns = List.of(ids);
    return this;
  }

  SoundRoutine ends(ChainEnds wanted) {
    ends = wanted;
    return this;
  }

  Routine routine() {
    return new Routine(
        "small",
        "Small",
        "A small one.",
        Makes.CHAIN,
        "",
        patterns,
        ends,
        0.05,
        0.1,
        pieces,
        steps,
        RoutineDetail.NONE);
  }

  /** What the checks say, one sentence a line. */
  List<String> sentences() {
    return RoutineChecks.check(routine(), CAUTIONS, PATTERNS, REFERENCE).stream()
        .map(found -> (found.wrong() + " " + found.expected()).strip())
        .toList();
  }

  static Draft step(String id) {
    return new Draft(id);
  }

  static Caution caution(String id, Hazard... covers) {
    Set<Hazard> all = EnumSet.noneOf(Hazard.class);
    all.addAll(List.of(covers));
    return new Caution(
        id,
        id,
        all,
        "Mind it.",
        "It hurts.",
        List.of("Take care."),
        List.of(),
        List.of(),
        List.of(new Gear("M004", "eye protection")),
        "common practice, no source",
        "Local rules come first.",
        When.ALWAYS,
        List.of(),
        false);
  }

  /** A step being written. */
  static final class Draft {
    private final String id;
    private final Map<PieceKind, Stage> stage = new LinkedHashMap<>();
    private RoutinePart part = RoutinePart.RUN;
    private StepCounting counts = StepCounting.NOTHING;
    private final Set<Hazard> does = EnumSet.noneOf(Hazard.class);
    private boolean rinses;
    private final List<Wait> waits = new ArrayList<>();
    private String doText = "Do it.";
    private List<String> cautions = List.of();
    private StepDetail detail = StepDetail.NONE;
    private final List<Remedy> wrong = new ArrayList<>();

    private Draft(String id) {
      this.id = id;
    }

    Draft stage(String reached) {
      return stage("link", reached);
    }

    Draft stage(String kind, String reached) {
      stage.put(new PieceKind(kind), new Stage(reached));
      counts = StepCounting.EACH;
      return this;
    }

    Draft part(RoutinePart wanted) {
      part = wanted;
      return this;
    }

    Draft counts(StepCounting wanted) {
      counts = wanted;
      return this;
    }

    Draft does(Hazard... hazards) {
      does.addAll(List.of(hazards));
      return this;
    }

    Draft solder(Map<String, String> grades) {
      detail =
          new StepDetail(
              List.of(),
              When.ALWAYS,
              grades,
              Optional.empty(),
              Map.of(),
              List.of(),
              List.of(),
              List.of());
      return this;
    }

    Draft when(When condition) {
      detail =
          new StepDetail(
              List.of(),
              condition,
              Map.of(),
              Optional.empty(),
              Map.of(),
              List.of(),
              List.of(),
              List.of());
      return this;
    }

    Draft rinses() {
      rinses = true;
      return this;
    }

    Draft waits(String name, WaitEnds ends) {
      waits.add(new Wait(new WaitId(name), name, 60, ends));
      return this;
    }

    Draft says(String text) {
      doText = text;
      return this;
    }

    Draft cautions(String... ids) {
      cautions = List.of(ids);
      return this;
    }

    Draft wrong(AfterFault then, String backTo, String reason) {
      wrong.add(new Remedy("it shows", "It is so.", "Mend it.", then, new Stage(backTo), reason));
      return this;
    }

    Step build() {
      return new Step(
          new StepId(id),
          id,
          part,
          stage,
          counts,
          does,
          rinses,
          doText,
          "",
          "",
          "",
          OptionalLong.empty(),
          waits,
          "",
          cautions,
          wrong,
          detail);
    }
  }
}
