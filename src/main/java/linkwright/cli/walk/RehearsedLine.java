package linkwright.cli.walk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;

/** What a typed line may be in a rehearsal. */
final class RehearsedLine {
  /** What a rehearsal answers to; all else would leave it, or be about a job. */
  private static final Set<WalkWord> DRY =
      Set.of(
          WalkWord.HELP,
          WalkWord.REPEAT,
          WalkWord.WHERE,
          WalkWord.BRIEF,
          WalkWord.NEXT,
          WalkWord.BACK,
          WalkWord.LOOK,
          WalkWord.WHY,
          WalkWord.CARDS,
          WalkWord.CAUTIONS,
          WalkWord.WORDS,
          WalkWord.QUIT);

  /** The words by which a rehearsal in a job that is worked on is left for the job. */
  private static final Set<WalkWord> OUT = Set.of(WalkWord.BENCH, WalkWord.PLACES);

  private RehearsedLine() {}

  /** The words that mean something there; all of them outside a rehearsal. */
  static List<WalkWord> words(Model model) {
    boolean dry = model.held().place() == PlaceId.REHEARSAL;
    return Stream.of(WalkWord.values())
        // Its cautions have one word there: they are the step's.
        .filter(word -> !dry || (word != WalkWord.CAUTIONS && isWord(word, isAtWork(model))))
        .toList();
  }

  private static boolean isWord(WalkWord word, boolean atWork) {
    return DRY.contains(word) || (atWork && OUT.contains(word));
  }

  private static boolean isAtWork(Model model) {
    return model.job().filter(job -> !job.lookOnly()).isPresent();
  }

  /** Why a line is not heeded; empty where it is, as outside a rehearsal every line is. */
  static Optional<String> refused(String line, Model model) {
    boolean atWork = isAtWork(model);
    if (model.held().place() != PlaceId.REHEARSAL || isHeeded(line, model, atWork)) {
      return Optional.empty();
    }
    return Optional.of(
        "This is a rehearsal: nothing is entered, and nothing was. next and back walk on, "
            + (atWork ? "bench leads to the job" : "quit leaves")
            + ".");
  }

  /** Whether it means something there; what is no word at all is told as such. */
  private static boolean isHeeded(String line, Model model, boolean atWork) {
    String first = line.split("\\s+", 2)[0];
    if (first.matches("[0-9]+")) {
      return new WalkPage(model).table().isPresent();
    }
    Optional<WalkWord> word = WalkWord.of(first);
    return word.isPresent()
        ? isWord(word.get(), atWork)
        : Act.withId(first).map(new WalkPage(model)::opens).orElse(true);
  }
}
