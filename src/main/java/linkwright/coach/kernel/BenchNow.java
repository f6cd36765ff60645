package linkwright.coach.kernel;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.job.EntryId;
import linkwright.job.HotWork;
import linkwright.job.Sittings;
import linkwright.job.TimeSheet;
import linkwright.job.TimerRun;
import linkwright.job.Timers;
import linkwright.standing.Handbook;

/**
 * What is the bench's and no job's: hot work, the fire watch, and what waits in other jobs.
 *
 * @param device this machine's name in the books; empty before anything was read
 * @param others what the other books give, their timers by the steady clock
 * @param hotWork whether a flame may be lit
 * @param watch the fire watch by the steady clock, running or over
 * @param heats when it was heated last, by the steady clock
 * @param lookedAt the steady second at which the other books were looked at last; 0 for never
 * @param mind what is kept in mind of it between two presses
 */
public record BenchNow(
    String device,
    List<BenchBook> others,
    HotWork hotWork,
    Optional<Watch> watch,
    HeatTimes heats,
    long lookedAt,
    InMind mind) {
  /** Nothing is known yet. */
  public static final BenchNow UNKNOWN =
      new BenchNow(
          "", List.of(), HotWork.NOT_KNOWN, Optional.empty(), HeatTimes.NONE, 0, InMind.NOTHING);

  /** A prudent default, s: NFPA 51B of 2019, which has it watched an hour at least. */
  private static final long AN_HOUR = 3600;

  public BenchNow {
    others = List.copyOf(others);
  }

  /**
   * A fire watch.
   *
   * @param from with what it begins
   * @param run its time by the steady clock
   * @param heat whether that is the last heat; else the statement that every flame is out
   * @param under what would run still, were this ended: sooner over; empty for nothing
   */
  public record Watch(HotWork.From from, TimerRun run, boolean heat, Optional<Watch> under) {
    /** With what that of them begins which is over first. */
    public HotWork.From first() {
      return under.map(Watch::first).orElse(from);
    }
  }

  /** The same with the other books as they were read now. */
  BenchNow read(String on, List<BenchBook> books, Instant now, Instant steady) {
    List<BenchBook> steadied =
        books.stream()
            .map(
                book ->
                    book.with(
                        book.timers().steadied(timersOf(book.slug()), mind.moves(), now, steady)))
            .toList();
    long second = Math.max(1, steady.getEpochSecond());
    return new BenchNow(on, steadied, hotWork, watch, heats, second, mind);
  }

  /** The same with something else in mind. */
  BenchNow with(InMind next) {
    return new BenchNow(device, others, hotWork, watch, heats, lookedAt, next);
  }

  /** The same, a moment later than it was looked at last. */
  BenchNow lookedAt(long second) {
    return new BenchNow(device, others, hotWork, watch, heats, second, mind);
  }

  /** The timers of a book as they ran until now. */
  Timers timersOf(String slug) {
    return book(slug).map(BenchBook::timers).orElse(Timers.NONE);
  }

  /** That of the other books; empty of one that was not read yet. */
  public Optional<BenchBook> book(String slug) {
    return others.stream().filter(book -> book.slug().equals(slug)).findFirst();
  }

  /** The same with a book left among the others, as it stood. */
  BenchNow left(BenchBook book) {
    return new BenchNow(device, and(book), hotWork, watch, heats, lookedAt, mind);
  }

  private List<BenchBook> and(BenchBook book) {
    List<BenchBook> all = new ArrayList<>(others);
    all.removeIf(other -> other.slug().equals(book.slug()));
    all.add(book);
    return all;
  }

  /**
   * The same, hot work and watch reckoned anew with the book at hand.
   *
   * @param read whether the other books were read just now
   */
  BenchNow reckoned(
      Optional<BenchBook> atHand, Handbook handbook, Instant now, Instant steady, boolean read) {
    List<BenchBook> all = atHand.map(this::and).orElse(others);
    List<HotWork.OfBook> books = all.stream().map(BenchBook::flames).toList();
    HotWork next = HotWork.of(books);
    HeatTimes times = heats.seen(books, next, mind.moves(), now, steady, read);
    long seconds = handbook.own().fireWatchSeconds().orElse(AN_HOUR);
    Optional<Watch> runs = Optional.empty();
    if (next.isOut()) {
      for (HeatTimes.Noted begin : times.begins(from -> HotWork.ended(books, from))) {
        Optional<Watch> under = runs.filter(before -> !before.run().rings(steady));
        runs = Optional.of(watch(begin, seconds, times.isHeat(begin), under));
      }
    }
    return new BenchNow(device, others, next, runs, times, lookedAt, mind);
  }

  private static Watch watch(
      HeatTimes.Noted begin, long seconds, boolean heat, Optional<Watch> under) {
    EntryId id = begin.from().id();
    return new Watch(
        begin.from(),
        new TimerRun(id, "Fire watch", begin.steady(), seconds, Optional.empty(), Map.of()),
        heat,
        under);
  }

  /** The fire watch while it runs. */
  Optional<TimerRun> watchRunning(Instant steady) {
    return watch.map(Watch::run).filter(run -> !run.rings(steady));
  }

  /** Another job in which this machine's sitting goes on still, though it began before that. */
  public Optional<BenchBook> sitsElsewhere(String slug, Instant since, Instant now) {
    return others.stream()
        .filter(book -> !book.slug().equals(slug))
        .filter(
            book ->
                Optional.ofNullable(book.sittings().get(device))
                    .filter(sat -> !sat.over() && sat.since().isBefore(since))
                    .isPresent())
        .filter(
            book ->
                book.seenAt()
                    .filter(
                        seen ->
                            Duration.between(seen, now).compareTo(TimeSheet.LONGEST_SILENCE) <= 0)
                    .isPresent())
        .findFirst();
  }

  /** Whose sitting it was last at this machine, in whatever job; empty if nobody said. */
  Optional<String> lastPerson(Optional<BenchBook> atHand) {
    return atHand.map(this::and).orElse(others).stream()
        .flatMap(book -> Optional.ofNullable(book.sittings().get(device)).stream())
        .max(Comparator.comparing(Sittings.Sat::since))
        .map(Sittings.Sat::person);
  }
}
