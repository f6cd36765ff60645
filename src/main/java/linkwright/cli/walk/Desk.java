package linkwright.cli.walk;

import java.time.InstantSource;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.cli.Teller;
import linkwright.coach.kernel.Clock;
import linkwright.job.EntryId;
import linkwright.job.TimerRun;

/** Tells lines and waits for lines; while it waits, timers that run out are told. */
final class Desk {
  private static final long SECOND = 1000;
  private static final long IDLE = 30_000;

  private final Teller out;
  private final LineSource lines;
  private final InstantSource clock;
  private final InstantSource steady;
  private final Hands hands;
  private final Set<EntryId> rung = new HashSet<>();

  Desk(Teller out, LineSource lines, InstantSource clock, InstantSource steady, Hands hands) {
    this.out = out;
    this.lines = lines;
    this.clock = clock;
    this.steady = steady;
    this.hands = hands;
  }

  void say(String line) {
    out.say(line);
  }

  void sayAll(List<String> all) {
    out.sayAll(all);
  }

  /** The next line, without spaces around it; empty when there will be none. */
  Optional<String> next() {
    while (true) {
      hands.tick(clock.instant(), steady.instant());
      tellTimers();
      LineSource.Came came = lines.await(running().isEmpty() ? IDLE : SECOND);
      if (came instanceof LineSource.Came.Line line) {
        hands.tick(clock.instant(), steady.instant());
        return Optional.of(line.text().strip());
      }
      if (came instanceof LineSource.Came.Ended) {
        return Optional.empty();
      }
    }
  }

  private List<TimerRun> running() {
    return hands.model().timers().running();
  }

  private void tellTimers() {
    for (TimerRun timer : running()) {
      if (timer.rings(hands.model().steady()) && rung.add(timer.id())) {
        say("Timer: " + timer.name() + " is due. Type answer once you have seen to it.");
      }
    }
  }

  /** Every timer that runs or is due. */
  List<String> timers() {
    return running().stream()
        .map(
            timer -> {
              long left = timer.left(hands.model().steady()).toSeconds();
              return left > 0
                  ? timer.name() + ": " + Clock.spoken((double) left) + " to go."
                  : timer.name() + ": due, " + Clock.spoken((double) -left) + " ago. Type answer.";
            })
        .toList();
  }
}
