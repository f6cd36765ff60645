package linkwright.coach.bench;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.quantity.Decimals;
import linkwright.routine.Stage;
import linkwright.standing.StillToDo;

/** Why the number still to cut moves when pieces are lost. */
final class ScrapWords {
  private ScrapWords() {}

  /** In a sentence; empty where it does not move. */
  static Optional<String> of(Model model, AtBench at, Fact scrapped) {
    OpenJob job = model.job().orElseThrow();
    int number = job.entries().size() + 1;
    Entry entry = new Entry(number, model.now(), job.device(), scrapped);
    OpenJob then = job.after(List.of(entry), model.handbook(), model.settings());
    Optional<StillToDo> before = left(job, at);
    Optional<StillToDo> after = left(then, at);
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    int was = before.get().toCutOrAsMany();
    int is = after.get().toCutOrAsMany();
    if (was == is) {
      return Optional.empty();
    }
    int lost = after.get().scrapped() - before.get().scrapped();
    String moved =
        "To %s: %d%s, not %d"
            .formatted(
                at.pile().begins(Stage.CUT) ? "cut" : "begin",
                is,
                at.size().isEmpty() ? "" : " " + at.size(),
                was);
    String share =
        "a loss of %s is reckoned with, habit and this run together, not %s"
            .formatted(
                Decimals.percent(after.get().lossShare(), 0),
                Decimals.percent(before.get().lossShare(), 0));
    return Optional.of(
        moved + ", for " + lost + (lost == 1 ? " is" : " are") + " scrapped and " + share + ".");
  }

  private static Optional<StillToDo> left(OpenJob job, AtBench at) {
    return at.left(job);
  }
}
