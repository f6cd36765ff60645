package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.job.Fact;
import linkwright.routine.Step;

/** Coming to the bench and leaving it: sittings begin and end, cards are seen before the step. */
final class BenchSitting {
  static final String CLOSED =
      "This job is closed. Open it again where it was weighed in: {do:to-weigh-in}, there"
          + " {do:reopen}.";

  private BenchSitting() {}

  /**
   * Comes to the bench: a sitting begins, and the step that was open is open again. After a long
   * pause it is told first how the work stands.
   */
  static Turn enter(Model model) {
    Model there = model.toward(Optional.empty()).with(BenchHeld.PLAIN);
    if (AtBench.of(there).isEmpty()) {
      return Turn.to(noRoutine(there));
    }
    if (closed(model) || model.job().map(OpenJob::lookOnly).orElse(true)) {
      return Turn.to(there);
    }
    Optional<Step> toward = BenchWait.toward(model);
    List<Fact> facts = new ArrayList<>();
    if (away(model)) {
      if (toward.isEmpty() && BenchAway.toldFirst(model)) {
        return Turn.to(there);
      }
      facts.add(new Fact.SittingStarted(model.person()));
    }
    toward.ifPresent(step -> facts.add(new Fact.StepOpened(step.id())));
    return facts.isEmpty() ? BenchGate.settle(there) : Turn.keep(there, facts);
  }

  static Model noRoutine(Model model) {
    return model.trouble(
        "The routine of this job is not among the files at hand. Put it back into the"
            + " routines folder and open the job again.");
  }

  static boolean closed(Model model) {
    return model.job().map(job -> job.state().course().closed()).orElse(false);
  }

  static Model reopenFirst(Model model) {
    return model.trouble(CLOSED);
  }

  static Turn seen(Model model, BenchHeld screen) {
    if (screen.ask() instanceof BenchAsk.Why) {
      return Turn.to(model.with(BenchScreens.plain(screen)).told("Nothing was counted."));
    }
    if (closed(model)) {
      return Turn.to(reopenFirst(model));
    }
    if (away(model)) {
      return Turn.keep(model, new Fact.SittingStarted(model.person()));
    }
    Optional<Cards.Card> card = BenchGate.caution(model);
    return card.map(seen -> seen(model, screen, seen)).orElseGet(() -> BenchGate.settle(model));
  }

  /** A card is seen once its last page was. */
  private static Turn seen(Model model, BenchHeld screen, Cards.Card card) {
    return screen.cardPage() + 1 < cardPages(model, screen)
        ? Turn.to(model.with(BenchScreens.turned(screen, screen.cardPage() + 1)))
        : Turn.keep(
            model.with(BenchScreens.firstPage(screen)),
            Cards.of(model, AtBench.of(model).orElseThrow()).seen(card));
  }

  /** On how many pages the card stands that is to be seen. */
  static int cardPages(Model model, BenchHeld screen) {
    return model.parts(BenchContent.of(model, screen));
  }

  /** The card turned over, on and round, or back; that alone is not its having been seen. */
  static BenchHeld cardTurned(Model model, BenchHeld screen, Act act) {
    return BenchScreens.turned(
        screen, Turning.to(screen.cardPage(), act) % cardPages(model, screen));
  }

  /** What was asked of the flames before is entered with it. */
  static Turn stepAway(Model model, BenchHeld screen) {
    boolean out = model.hotWork().lit().isEmpty();
    return Turn.keep(
        model.with(BenchScreens.plain(screen)),
        new Fact.SteppedAway(out, out, !model.hotWork().open()));
  }

  /** Whether the bench was left, told or by a long silence, or no sitting was begun yet. */
  static boolean away(Model model) {
    return closed(model)
        || model.job().map(job -> !job.state().times().sittingAt(model.now())).orElse(true);
  }
}
