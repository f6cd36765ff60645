package linkwright.job;

import java.util.List;

/**
 * What the entries of a book add up to.
 *
 * @param course how far the routine has come
 * @param trials test pieces and trial lengths
 * @param piles where the pieces stand
 * @param wire wire that came and went
 * @param timers timers that run or ring
 * @param times hours at the bench
 * @param accounts weighing and prices
 */
public record JobState(
    Course course,
    Trials trials,
    Piles piles,
    WireLedger wire,
    Timers timers,
    TimeSheet times,
    Accounts accounts) {

  private static final JobState BLANK =
      new JobState(
          Course.BLANK,
          Trials.NONE,
          Piles.NONE,
          WireLedger.EMPTY,
          Timers.NONE,
          TimeSheet.EMPTY,
          Accounts.EMPTY);

  /**
   * Replays a whole book. Struck entries are passed over; a strike that was struck itself does not
   * count. {@code replay(a + b)} equals {@code b} replayed from {@code replay(a)} as long as {@code
   * b} strikes nothing in {@code a}.
   */
  public static JobState replay(List<Entry> entries, StagesByKind order) {
    Strikes strikes = Strikes.in(entries);
    JobState state = BLANK;
    for (Entry entry : entries) {
      if (!strikes.has(entry)) {
        state = state.after(entry, order);
      }
    }
    return state;
  }

  /** The state after one more entry that strikes nothing. */
  public JobState after(Entry entry, StagesByKind order) {
    Fact fact = entry.fact();
    Piles before =
        fact instanceof Fact.JobOpened opened ? Piles.of(order.of(opened.routine())) : piles;
    return new JobState(
        course.after(fact),
        trials.after(entry),
        piles(before, fact),
        wire.after(fact),
        timers.after(entry),
        times.after(entry),
        accounts.after(fact));
  }

  private Piles piles(Piles before, Fact fact) {
    return fact instanceof Fact.SampleChosen chosen
        ? before.sampled(
            trials.sample().filter(Fact.SampleChosen::firstLink).isPresent(), chosen.firstLink())
        : before.after(fact);
  }
}
