package linkwright.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.quantity.Read;
import linkwright.quantity.Share;
import linkwright.quantity.Span;
import linkwright.routine.AfterFault;
import linkwright.routine.ChainEnds;
import linkwright.routine.Finding;
import linkwright.routine.Hazard;
import linkwright.routine.Makes;
import linkwright.routine.PieceKind;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.RoutineDetail;
import linkwright.routine.RoutinePart;
import linkwright.routine.Stage;
import linkwright.routine.Step;
import linkwright.routine.StepCounting;
import linkwright.routine.StepDetail;
import linkwright.routine.StepId;
import linkwright.routine.Wait;
import linkwright.routine.WaitEnds;
import linkwright.routine.WaitId;

/** A routine from its file. How its steps hang together is for the routine room's checks. */
final class RoutineYaml {
  private static final Span NO_TIME = new Span(1);

  /** Many times the longest that ships; the checks hold each step against the others. */
  private static final int MOST_STEPS = 500;

  private RoutineYaml() {}

  static void read(YamlFields file, DataRead shelves) {
    routine(file)
        .ifPresent(routine -> shelves.routines().put(routine.id(), routine, file, "routine"));
  }

  private static Optional<Routine> routine(YamlFields from) {
    String id = from.value("routine", Values::id, "");
    String title = from.text("title");
    String says = from.text("says");
    Makes makes = from.value("makes", Values.word(Makes::of, Makes.words()), Makes.CHAIN);
    String plan = from.textOrEmpty("plan");
    List<String> patterns = from.texts("patterns");
    ChainEnds ends =
        from.optional("ends", Values.word(ChainEnds::of, ChainEnds.words())).orElse(ChainEnds.NONE);
    if (makes == Makes.CHAIN) {
      from.require("ends", "Write ends: rings, or ends: links.");
    }
    double usualLoss = from.optional("usual-loss", Share::read).map(Share::value).orElse(0.0);
    double usualRedo = from.optional("usual-redo", Share::read).map(Share::value).orElse(0.0);
    Map<PieceKind, List<Stage>> pieces = new LinkedHashMap<>();
    from.group("pieces", "the pieces")
        .ifPresent(
            group -> {
              for (String kind : group.names()) {
                pieces.put(new PieceKind(kind), Stage.all(group.list(kind, Values::id)));
              }
              group.sound();
            });
    List<Step> steps = new ArrayList<>();
    RoutineDetail detail = DetailYaml.ofRoutine(from);
    from.require("steps", "Write steps: and under it the steps, each after a hyphen.");
    List<YamlFields> all = from.groups("steps", "a step");
    if (all.size() > MOST_STEPS) {
      from.wrong(
          "steps",
          "A routine of " + all.size() + " steps is not read: nobody could follow it.",
          MOST_STEPS + " at most; part it into several routines.");
    }
    all.stream().limit(MOST_STEPS).forEach(one -> step(one).ifPresent(steps::add));
    return from.sound()
        ? Optional.of(
            new Routine(
                id, title, says, makes, plan, patterns, ends, usualLoss, usualRedo, pieces, steps,
                detail))
        : Optional.empty();
  }

  static Read<StepId> stepId(String text) {
    return Values.id(text).map(StepId::new);
  }

  private static Optional<Step> step(YamlFields from) {
    StepId id = from.value("step", RoutineYaml::stepId, StepId.NONE);
    String title = from.text("title");
    RoutinePart part =
        from.value("part", Values.word(RoutinePart::of, RoutinePart.words()), RoutinePart.RUN);
    Map<PieceKind, Stage> stage = DetailYaml.stages(from, "stage", "the stage");
    StepCounting counts =
        from.optional("counts", Values.word(StepCounting::of, StepCounting.words()))
            .orElse(StepCounting.NOTHING);
    List<Hazard> does = from.list("does", Values.word(Hazard::of, Hazard.words()));
    boolean rinses = from.flag("rinse");
    String doText = from.text("do");
    String lookFor = from.textOrEmpty("look-for");
    String why = from.textOrEmpty("why");
    String mind = from.textOrEmpty("mind");
    Optional<Span> usual = from.optional("usual-time", Span::read);
    List<Wait> waits = new ArrayList<>();
    WaitEnds usualEnd = does.contains(Hazard.PICKLES) ? WaitEnds.LOOK : WaitEnds.TIME;
    for (YamlFields one : from.groups("waits", "a wait")) {
      String number = waits.isEmpty() ? "" : "-" + (waits.size() + 1);
      wait(one, id + "-wait" + number, usualEnd).ifPresent(waits::add);
    }
    String measure = from.textOrEmpty("measure");
    List<String> cautions = from.texts("cautions");
    List<Remedy> wrong = new ArrayList<>();
    from.groups("wrong", "something that goes wrong")
        .forEach(one -> remedy(one).ifPresent(wrong::add));
    StepDetail detail = DetailYaml.ofStep(from);
    if (!from.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        new Step(
            id,
            title,
            part,
            stage,
            counts,
            new HashSet<>(does),
            rinses,
            doText,
            lookFor,
            why,
            mind,
            usual.map(span -> OptionalLong.of(span.seconds())).orElse(OptionalLong.empty()),
            waits,
            measure,
            cautions,
            wrong,
            detail));
  }

  /** A wait; without an id of its own books know it by its step's, whatever it is called. */
  private static Optional<Wait> wait(YamlFields from, String usualId, WaitEnds usualEnd) {
    WaitId id = new WaitId(from.optional("id", Values::id).orElse(usualId));
    String name = from.text("name");
    WaitEnds ends =
        from.optional("ends", Values.word(WaitEnds::of, WaitEnds.words())).orElse(usualEnd);
    Span span =
        from.value(
            "for",
            text ->
                Span.read(text)
                    .flatMap(
                        read ->
                            read.seconds() > 0
                                ? Read.good(read)
                                : Read.bad("A wait of nothing is none. Write 8 min.")),
            NO_TIME);
    return from.sound() ? Optional.of(new Wait(id, name, span.seconds(), ends)) : Optional.empty();
  }

  private static Optional<Remedy> remedy(YamlFields from) {
    String sees = from.text("sees");
    String means = from.text("means");
    String remedy = from.text("remedy");
    AfterFault then =
        from.value("then", Values.word(AfterFault::of, AfterFault.words()), AfterFault.CARRY_ON);
    Stage backTo = new Stage(from.textOrEmpty("back-to"));
    String reason = from.textOrEmpty("reason");
    return from.sound()
        ? Optional.of(new Remedy(sees, means, remedy, then, backTo, reason))
        : Optional.empty();
  }

  /** Tells what checks found, each at the place in the file that it is about. */
  static void tell(YamlFields file, List<Finding> findings) {
    if (findings.isEmpty()) {
      return;
    }
    List<YamlFields> steps = file.groupsAgain("steps");
    for (Finding finding : findings) {
      // What only adds to a number needs no place.
      boolean placed = !finding.step().isEmpty() && !file.problems().full();
      (placed ? steps : List.<YamlFields>of())
          .stream()
              .filter(step -> step.saysPlainly("step", finding.step().word()))
              .findFirst()
              .orElse(file)
              .wrong(finding.key(), finding.wrong(), finding.expected());
    }
  }
}
