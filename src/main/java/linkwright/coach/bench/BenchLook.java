package linkwright.coach.bench;

import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Key;
import linkwright.job.Fact;
import linkwright.routine.Step;
import linkwright.routine.StepId;

/** A look at other steps: it writes nothing and changes no wait; opening one is another act. */
final class BenchLook {
  private BenchLook() {}

  /** The step that is looked at; empty if none is. */
  static Optional<AtBench> at(Model model, AtBench open) {
    return BenchPlace.screen(model).ask() instanceof BenchAsk.Looking looking
        ? open.routine()
            .step(looking.step())
            .map(step -> AtBench.of(open.routine(), model.job().orElseThrow(), step))
        : Optional.empty();
  }

  /** Whether the way on is closed: a student says what comes before it is shown. */
  static boolean isAheadClosed(Model model) {
    return model.job().filter(model.learning()::works).isPresent()
        && AtBench.of(model)
            .filter(
                open -> at(model, open).map(AtBench::number).orElse(open.number()) >= open.number())
            .isPresent();
  }

  /** Looks so many steps further on; back at the open one the look is over. */
  static Turn by(Model model, AtBench open, int by) {
    List<Step> steps = open.routine().steps();
    int next = at(model, open).map(AtBench::number).orElse(open.number()) - 1 + by;
    if (next < 0 || next >= steps.size()) {
      return Turn.to(model.told(next < 0 ? "This is the first step." : "This is the last step."));
    }
    BenchHeld screen = BenchHeld.PLAIN;
    return Turn.to(
        model.with(
            next == open.number() - 1
                ? screen
                : BenchScreens.asking(screen, new BenchAsk.Looking(steps.get(next).id()))));
  }

  /** Looks at the step of that name, from wherever; the open one is come to. */
  static Turn at(Model model, StepId id) {
    Model there = model.with(BenchHeld.PLAIN);
    Optional<AtBench> open = AtBench.of(there);
    Optional<Step> step = open.flatMap(at -> at.routine().step(id));
    if (step.isEmpty() || open.get().step().id().equals(id)) {
      return BenchSitting.enter(model);
    }
    Model looking = there.with(BenchScreens.asking(BenchHeld.PLAIN, new BenchAsk.Looking(id)));
    // Of what lies ahead a student sees nothing before she has said it.
    return isAheadClosed(looking)
        ? Turn.to(
            model.told(
                "Who learns says what comes before it is shown: at the bench {do:next-step} asks."))
        : Turn.to(looking);
  }

  /** Opens the step that is looked at; what is passed on the way is entered. */
  static Turn open(Model model, AtBench open) {
    Optional<AtBench> looked = at(model, open);
    if (looked.isEmpty()) {
      return Turn.to(model.with(BenchHeld.PLAIN));
    }
    if (BenchSitting.closed(model)) {
      return Turn.to(BenchSitting.reopenFirst(model));
    }
    Turn turn = BenchGate.jump(model, open, looked.get().step());
    return BenchSitting.away(model)
        ? BenchPassing.with(List.of(new Fact.SittingStarted(model.person())), turn)
        : turn;
  }

  static Content content(Model model, AtBench open, AtBench looked) {
    List<Part> parts = StepContent.of(model, BenchHeld.PLAIN, looked);
    parts.add(1, Prose.aside("Only a look: step " + open.number() + " stays open."));
    return new Content("a look at " + BenchContent.title(looked), parts);
  }

  /** A number typed while another step is looked at counts nothing, which is said. */
  static Turn typed(Model model, Key key) {
    return Turn.to(
        key.text().matches("[0-9]+")
            ? model.told(
                "Only a look: "
                    + key.text()
                    + " is not counted. {do:back-from-look} leads back to the open step.")
            : model);
  }
}
