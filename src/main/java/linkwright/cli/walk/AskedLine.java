package linkwright.cli.walk;

import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.asking.AskedContent;
import linkwright.coach.keys.Act;

/** What a typed line may be while a student's question stands, or what she said is told. */
final class AskedLine {
  /** What leads nowhere; that the flames are out is said at any time. */
  private static final Set<WalkWord> STAYS =
      Set.of(
          WalkWord.HELP,
          WalkWord.REPEAT,
          WalkWord.WHERE,
          WalkWord.BRIEF,
          WalkWord.QUIET,
          WalkWord.SHUT,
          WalkWord.QUIT);

  /** The words by which a lesson in a job that is worked on is left for the job. */
  private static final Set<WalkWord> OUT = Set.of(WalkWord.BENCH, WalkWord.PLACES, WalkWord.LIT);

  /** What is told where neither a number nor a word is one that answers. */
  static final String FIRST = AskedContent.FIRST + " A number answers it, repeat says it again.";

  private AskedLine() {}

  /** Why a line is not heeded in a lesson; empty where it is. */
  static Optional<String> refused(String line, WalkCoach coach) {
    Model model = coach.model();
    if (coach.place() != PlaceId.LESSON || coach.failing() || model.held().form().isPresent()) {
      return Optional.empty();
    }
    WalkPage page = new WalkPage(model);
    boolean stands = page.asks() || page.tellsAnswer();
    boolean atWork = model.job().filter(job -> !job.lookOnly()).isPresent();
    if (!stands || isHeeded(line, page, atWork)) {
      return Optional.empty();
    }
    return Optional.of(
        (page.asks()
                ? "The question stands: a number answers it, repeat says it again; "
                : "First what was said: an empty line goes on, repeat says it again; ")
            + (atWork ? "bench leads to the job." : "quit leaves."));
  }

  /** Whether it leads nowhere else but where the page itself says; what is no word is told so. */
  private static boolean isHeeded(String line, WalkPage page, boolean atWork) {
    String first = line.split("\\s+", 2)[0];
    Optional<WalkWord> word = WalkWord.of(first);
    if (word.isPresent()) {
      return STAYS.contains(word.get())
          || (atWork && OUT.contains(word.get()))
          || page.offered().anyMatch(act -> WalkWord.of(act).equals(word.get().word()));
    }
    return page.called(line)
        .or(() -> Act.withId(first))
        .map(act -> act == Act.HELP || page.offered().anyMatch(act::equals))
        .orElse(true);
  }
}
