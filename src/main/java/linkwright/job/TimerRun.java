package linkwright.job;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.routine.PieceKind;
import linkwright.routine.StepId;

/**
 * A timer that was set and not answered yet. It holds its end, not its rest, so it goes on while
 * the program is away.
 *
 * @param id the entry that set it
 * @param name what it is for
 * @param startedAt when it was set
 * @param seconds how long it runs
 * @param step the step whose wait it is; empty for one of her own
 * @param pieces kind → how many went into it; none where that was not said
 */
public record TimerRun(
    EntryId id,
    String name,
    Instant startedAt,
    long seconds,
    Optional<StepId> step,
    Map<PieceKind, Integer> pieces) {
  private static final Duration LONG_OVER = Duration.ofHours(1);

  /** A wait ended before this share of its time was hardly meant; our own choice. */
  private static final double BARELY = 0.25;

  /** The timer that an entry set. */
  public static TimerRun of(Fact.TimerStarted started, Entry entry) {
    return new TimerRun(
        entry.id(),
        started.name(),
        entry.at(),
        started.seconds(),
        Optional.of(started.step()).filter(named -> !named.isEmpty()),
        started.wentIn());
  }

  /** Whether it has run for so small a share of its time that nothing can have come of it. */
  public boolean barelyBegun(Instant now) {
    return Duration.between(startedAt, now).toSeconds() < BARELY * seconds;
  }

  /**
   * What is left at that moment; negative once it has run out. Never more than was set, for a clock
   * that was set back adds nothing; and over for an hour, or for as long again, it counts no
   * further.
   */
  public Duration left(Instant now) {
    Duration most = Duration.ofSeconds(seconds);
    Duration left = Duration.between(now, end());
    if (left.compareTo(most) > 0) {
      return most;
    }
    return left.negated().compareTo(longest()) > 0 ? longest().negated() : left;
  }

  /** Over for longer than this, nobody reads how long. */
  public Duration longest() {
    return Duration.ofSeconds(Math.max(seconds, LONG_OVER.toSeconds()));
  }

  /** When it runs out. */
  public Instant end() {
    return startedAt.plusSeconds(seconds);
  }

  /** Whether it is the wait of that step. */
  public boolean isOf(StepId stepId) {
    return step.filter(stepId::equals).isPresent();
  }

  TimerRun startedAt(Instant moment) {
    return new TimerRun(id, name, moment, seconds, step, pieces);
  }

  /** What it is for, with what went into it: {@code Pickle the links, 6 links}. */
  public String named() {
    String what =
        pieces.entrySet().stream()
            .map(each -> each.getKey().counted(each.getValue()))
            .sorted()
            .collect(Collectors.joining(", "));
    return what.isEmpty() ? name : name + ", " + what;
  }

  /** Whether it has run out and rings until it is answered. */
  public boolean rings(Instant now) {
    return left(now).compareTo(Duration.ZERO) <= 0;
  }
}
