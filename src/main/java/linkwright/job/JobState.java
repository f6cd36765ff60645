package linkwright.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;

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
 * @param flames what was said of hot work, and what was heated when
 * @param sittings whose sitting it was last on each machine
 * @param cautions which cautions were met, and by whom
 * @param card what was agreed for the job, and whether it was put away
 */
public record JobState(
    Course course,
    Trials trials,
    Piles piles,
    WireLedger wire,
    Timers timers,
    TimeSheet times,
    Accounts accounts,
    FlameLog flames,
    Sittings sittings,
    CautionsMet cautions,
    JobCard card) {

  private static final JobState BLANK =
      new JobState(
          Course.BLANK,
          Trials.NONE,
          Piles.NONE,
          WireLedger.EMPTY,
          Timers.NONE,
          TimeSheet.EMPTY,
          Accounts.EMPTY,
          FlameLog.NONE,
          Sittings.NONE,
          CautionsMet.NONE,
          JobCard.BLANK);

  /**
   * Replays a whole book. Struck entries are passed over; a strike that was struck itself does not
   * count. {@code replay(a + b)} equals {@code b} replayed from {@code replay(a)} as long as {@code
   * b} strikes nothing in {@code a}.
   */
  public static JobState replay(List<Entry> entries, StagesByKind order) {
    Strikes strikes = Strikes.in(entries);
    JobState state = BLANK;
    for (Entry entry : entries) {
      state =
          strikes.has(entry)
              ? state.with(state.flames.after(entry, state.course))
              : state.after(entry, order);
    }
    return state;
  }

  /** The state after one more entry that strikes nothing. */
  public JobState after(Entry entry, StagesByKind order) {
    Fact fact = entry.fact();
    Piles before =
        fact instanceof Fact.JobOpened opened ? Piles.of(order.of(opened.routine())) : piles;
    Piles now = piles(before, fact);
    WireLedger wireNow =
        fact instanceof Fact.TrialChosen chosen
            ? wire.uncut(chosen(before, chosen), now, UncutWire.of(chosen, trials, course.wish()))
            : wire.after(fact);
    return new JobState(
        course.after(entry).within(now),
        trials.after(entry, course.wish()),
        now,
        wireNow,
        timers.after(entry),
        times.after(entry),
        accounts.after(fact),
        flames.after(entry, course),
        sittings.after(entry),
        cautions.after(entry),
        card.after(fact));
  }

  private JobState with(FlameLog said) {
    return new JobState(
        course, trials, piles, wire, timers, times, accounts, said, sittings, cautions, card);
  }

  /** The same with other money. */
  public JobState with(Accounts others) {
    return new JobState(
        course, trials, piles, wire, timers, times, others, flames, sittings, cautions, card);
  }

  /** The same with its timers by another clock. */
  public JobState with(Timers others) {
    return new JobState(
        course, trials, piles, wire, others, times, accounts, flames, sittings, cautions, card);
  }

  /** The same as if that wish were kept: rings that hung in a trial may be others than wished. */
  public JobState wished(Map<String, String> wish) {
    Piles then =
        trials
            .chosen()
            .map(
                hung ->
                    piles.ringsSince(hung.rings(), RingSince.is(hung, trials.wishAtChoice(), wish)))
            .orElse(piles);
    return new JobState(
        course, trials, then, wire, timers, times, accounts, flames, sittings, cautions, card);
  }

  /** The rings of a length that is chosen again are those that hung, and were counted then. */
  private Piles chosen(Piles before, Fact.TrialChosen choice) {
    return trials.chosenLength().filter(choice.trial()::equals).isPresent()
        ? before.ringsSince(0, false)
        : before.noneAside();
  }

  private Piles piles(Piles before, Fact fact) {
    if (fact instanceof Fact.PlanSet plan) {
      return wished(plan.wish()).piles();
    }
    if (fact instanceof Fact.SampleChosen chosen) {
      return before.sampled(
          trials.before(chosen).filter(Fact.SampleChosen::firstLink).isPresent(),
          chosen.firstLink(),
          chosen.size());
    }
    if (fact instanceof Fact.TrialChosen chosen) {
      return Optional.ofNullable(trials.lengths().get(chosen.trial()))
          .map(trial -> chosen(before, chosen).hung(trial, chosen.sizes()))
          .orElse(before);
    }
    return before.after(fact);
  }
}
