package linkwright.job;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import linkwright.routine.StepId;

/**
 * Hours at the bench, by step. The time of a sitting belongs to the step that is open; it stops on
 * stepping away. Time per piece comes from these sums over the pieces that came through, never from
 * the gaps between keys: six links soldered in twenty minutes are counted in two seconds.
 *
 * @param secondsByStep step → seconds at the bench with that step open; no step collects what was
 *     done with no step open
 * @param throughByStep step → pieces that came through while it was open
 * @param timesByStep step → how often pieces came through it, however many at a time
 * @param step the step that is open now, empty if none
 * @param seenAt the last entry of the sitting that is going on; empty between sittings
 * @param atDesk whether that entry was desk work: prices, weighing in, the plan. From one such
 *     entry to the next no time counts: reading a price adds nothing to it
 */
public record TimeSheet(
    Map<StepId, Double> secondsByStep,
    Map<StepId, Integer> throughByStep,
    Map<StepId, Integer> timesByStep,
    StepId step,
    Optional<Instant> seenAt,
    boolean atDesk) {
  public static final TimeSheet EMPTY =
      new TimeSheet(Map.of(), Map.of(), Map.of(), StepId.NONE, Optional.empty(), false);

  /** A silence longer than this counts as a break: she left without telling the program. */
  public static final Duration LONGEST_SILENCE = Duration.ofMinutes(60);

  /** Seconds at the bench in all. */
  public double totalSeconds() {
    return secondsByStep.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  TimeSheet after(Entry entry) {
    Fact fact = entry.fact();
    boolean desk = isDeskWork(fact);
    TimeSheet later = elapsed(entry.at(), atDesk && desk, desk);
    if (fact instanceof Fact.SittingStarted) {
      return later.with(step, Optional.of(entry.at()));
    }
    if (fact instanceof Fact.SteppedAway
        || fact instanceof BenchFact.SittingEnded
        || fact instanceof Fact.JobClosed) {
      return later.with(step, Optional.empty());
    }
    if (fact instanceof Fact.StepOpened opened) {
      return later.with(opened.step(), later.seenAt);
    }
    if (fact instanceof Fact.PiecesThrough through) {
      int pieces = through.pieces().values().stream().mapToInt(Integer::intValue).max().orElse(0);
      boolean sameAct = seenAt.filter(entry.at()::equals).isPresent();
      return later.counted(through.step(), pieces, sameAct ? 0 : 1);
    }
    if (fact instanceof BenchFact.HoursCorrected hours) {
      return later.corrected(hours);
    }
    if (fact instanceof Fact.WireCut cut) {
      return later.counted(step, cut.count(), 1);
    }
    return later;
  }

  /**
   * What was put right by hand stands: of one step, or of the whole job, which no step has then.
   */
  private TimeSheet corrected(BenchFact.HoursCorrected hours) {
    Map<StepId, Double> seconds = new LinkedHashMap<>(secondsByStep);
    if (hours.step().isEmpty()) {
      double others = totalSeconds() - seconds.getOrDefault(StepId.NONE, 0.0);
      seconds.put(StepId.NONE, hours.isSeconds() - others);
    } else {
      seconds.put(hours.step(), hours.isSeconds());
    }
    return new TimeSheet(Map.copyOf(seconds), throughByStep, timesByStep, step, seenAt, atDesk);
  }

  /** Typing figures and reading what they come to is no work at the bench. */
  private static boolean isDeskWork(Fact fact) {
    return fact instanceof Fact.PlanSet
        || fact instanceof Fact.PricesSet
        || fact instanceof Fact.WeighedIn
        || fact instanceof Fact.Noted
        || fact instanceof BenchFact.CardSet
        || fact instanceof BenchFact.JobPutAway
        || fact instanceof Fact.JobClosed
        || fact instanceof Fact.JobReopened
        || fact instanceof Fact.LineAccepted;
  }

  private TimeSheet with(StepId nowOpen, Optional<Instant> nowSeen) {
    return new TimeSheet(secondsByStep, throughByStep, timesByStep, nowOpen, nowSeen, atDesk);
  }

  private TimeSheet counted(StepId at, int pieces, int times) {
    return new TimeSheet(
        secondsByStep,
        plus(throughByStep, at, pieces),
        plus(timesByStep, at, times),
        step,
        seenAt,
        atDesk);
  }

  private TimeSheet elapsed(Instant at, boolean idle, boolean desk) {
    if (seenAt.isEmpty()) {
      return this;
    }
    double spent = idle ? 0 : sinceSeen(at);
    Map<StepId, Double> seconds = secondsByStep;
    if (spent > 0) {
      seconds = MapSums.plus(secondsByStep, step, spent, Double::sum);
    }
    return new TimeSheet(seconds, throughByStep, timesByStep, step, Optional.of(latest(at)), desk);
  }

  private Instant latest(Instant at) {
    return seenAt.filter(at::isBefore).orElse(at);
  }

  /** Seconds since the last entry of the sitting; none if the clock went back or she had left. */
  private double sinceSeen(Instant at) {
    return seenAt
        .map(seen -> Duration.between(seen, at))
        .filter(since -> !since.isNegative() && since.compareTo(LONGEST_SILENCE) <= 0)
        .map(since -> since.toMillis() / 1000.0)
        .orElse(0.0);
  }

  /** Whether a sitting goes on at that moment: one was begun, and no long silence ended it. */
  public boolean sittingAt(Instant now) {
    return seenAt
        .filter(seen -> Duration.between(seen, now).compareTo(LONGEST_SILENCE) <= 0)
        .isPresent();
  }

  private static Map<StepId, Integer> plus(Map<StepId, Integer> counts, StepId key, int add) {
    return MapSums.plus(counts, key, add, Integer::sum);
  }
}
