package linkwright.cli.walk;

import java.time.InstantSource;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntSupplier;
import linkwright.cli.console.Teller;
import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.safety.OtherJobs;
import linkwright.text.Text;

/** Tells lines and waits for lines; while it waits, timers that run out are told. */
final class WalkLines {
  private static final long SECOND = 1000;
  private static final long IDLE = 30_000;

  private final Teller out;
  private final IntSupplier columns;
  private final LineSource typed;
  private final InstantSource clock;
  private final InstantSource steady;
  private final WalkCoach coach;
  private final Set<String> rung = new HashSet<>();
  private int width;

  /**
   * Lines told and lines read.
   *
   * @param columns tells at how many columns a line is broken between words, 2 or more; asked again
   *     after each line that was typed, for a terminal may have been made smaller
   */
  WalkLines(
      Teller out,
      IntSupplier columns,
      LineSource typed,
      InstantSource clock,
      InstantSource steady,
      WalkCoach coach) {
    this.out = out;
    this.columns = columns;
    this.width = columns.getAsInt();
    this.typed = typed;
    this.clock = clock;
    this.steady = steady;
    this.coach = coach;
  }

  void say(String line) {
    Text.wrap(line.replaceAll("\\s*\\R\\s*", " / "), width).forEach(out::say);
  }

  void sayAll(List<String> all) {
    all.forEach(this::say);
  }

  /** The next line, without spaces around it; empty when there will be none. */
  Optional<String> next() {
    while (true) {
      coach.tick(clock.instant(), steady.instant());
      tellTimers();
      LineSource.Came came = typed.await(running().isEmpty() ? IDLE : SECOND);
      if (came instanceof LineSource.Came.Line line) {
        width = columns.getAsInt();
        coach.tick(clock.instant(), steady.instant());
        return Optional.of(line.text().strip());
      }
      if (came instanceof LineSource.Came.Ended) {
        return Optional.empty();
      }
    }
  }

  private List<JobWait> running() {
    return coach.model().waits();
  }

  private void tellTimers() {
    for (JobWait wait : coach.model().due()) {
      if (rung.add(wait.slug() + " " + wait.run().id())) {
        say(
            "Timer: "
                + OtherJobs.told(coach.model(), wait).named()
                + " is due. "
                + (wait.held()
                    ? "Another window has that job open: it is quieted there."
                    : wait.elsewhere()
                        ? "An empty line goes there."
                        : "Type quiet once you have seen to it."));
      }
    }
  }
}
