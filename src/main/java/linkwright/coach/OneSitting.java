package linkwright.coach;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.Sittings;

/**
 * She sits at one job: as her work begins at another, her sitting in the first is ended in its
 * book, so that no hour counts in both.
 */
final class OneSitting {
  private OneSitting() {}

  /** The same turn, the sitting in another job ended if one goes on there. */
  static Turn here(Turn turn) {
    Model model = turn.model();
    boolean busy =
        !(model.writing() instanceof Writing.Nothing)
            || model.held().place() != PlaceId.BENCH
            || turn.effects().stream().anyMatch(Effect::writes);
    if (busy) {
      return turn;
    }
    return model
        .job()
        .filter(job -> !job.lookOnly() && job.state().times().sittingAt(model.now()))
        .flatMap(job -> ending(model, job))
        .map(turn::and)
        .orElse(turn);
  }

  private static Optional<Effect> ending(Model model, OpenJob job) {
    return Optional.ofNullable(job.state().sittings().last().get(job.device()))
        .map(Sittings.Sat::since)
        .flatMap(since -> model.bench().sitsElsewhere(job.slug(), since, model.now()))
        .map(
            book ->
                new Effect.KeepElsewhere(
                    book.slug(),
                    List.<Fact>of(
                        new BenchFact.SittingEnded(book.sittings().get(job.device()).person()))));
  }

  /**
   * Whether that was asked for: where another program holds the book, its sitting is that one's.
   */
  static boolean isEnding(Effect asked) {
    return asked instanceof Effect.KeepElsewhere keep
        && keep.facts().stream().allMatch(BenchFact.SittingEnded.class::isInstance);
  }

  /** On from there, whether it could be entered or not: nothing that is typed is touched. */
  static Turn ended(Model model, Writing.Pending pending) {
    Model next = model.with(new Writing.Nothing()).with(pending.held()).with(pending.notice());
    return UserMessages.read(Turn.to(next), pending.waiting());
  }
}
