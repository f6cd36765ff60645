package linkwright.coach.kernel;

import static linkwright.coach.kernel.EntryKind.noted;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.quantity.Span;

/** The job as a whole: its plan, test pieces, prices, weighing, notes, closing. */
final class JobEntryKinds {
  static final List<EntryKind<?>> ALL =
      List.of(
          EntryKind.beyondUndo(
              Fact.JobOpened.class,
              (opened, in) ->
                  "job begun: "
                      + opened.name()
                      + ", by the routine "
                      + in.titles().routine(opened.routine())
                      + (opened.again().isEmpty()
                          ? ""
                          : ", again from the job begun " + opened.again())),
          EntryKind.beyondUndo(
              Fact.PlanSet.class, (plan, in) -> "plan set: " + joined(plan.wish(), in)),
          EntryKind.takenBackAt(
                  PlaceId.WIRE,
                  Fact.MetalWeighedOut.class,
                  (out, in) -> "weighed out: " + in.mass(out.massG()) + " " + out.what())
              .andAt(PlaceId.WEIGH_IN),
          EntryKind.takenBackAt(
              PlaceId.TEST_PIECES, Fact.TestPieceTried.class, JobEntryKinds::tested),
          EntryKind.beyondUndo(
              Fact.SampleChosen.class,
              (sample, in) ->
                  "sample link chosen: entry "
                      + in.label().apply(sample.piece())
                      + (sample.firstLink() ? ", and it is link 1" : "")),
          EntryKind.takenBackAt(
              PlaceId.TRIAL_LENGTH,
              Fact.TrialMeasured.class,
              (trial, in) ->
                  "trial length: "
                      + trial.links()
                      + " links hang "
                      + in.length(trial.hungMm())
                      + noted(trial.note())),
          EntryKind.beyondUndo(
              Fact.TrialChosen.class,
              (chosen, in) -> "the chain follows trial length " + in.label().apply(chosen.trial())),
          EntryKind.takenBackAt(
              PlaceId.WEIGH_IN,
              Fact.WeighedIn.class,
              (weighed, in) ->
                  "weighed in"
                      + in.mass(", chain ", weighed.chainG())
                      + in.length(", length ", weighed.lengthMm())),
          EntryKind.takenBackAt(
              PlaceId.WEIGH_IN, Fact.PricesSet.class, (prices, in) -> "prices set"),
          EntryKind.takenBackAt(
              PlaceId.WEIGH_IN,
              BenchFact.HoursCorrected.class,
              (hours, in) ->
                  "hours put right: "
                      + Span.minutes(hours.isSeconds())
                      + " min"
                      + " and not "
                      + Span.minutes(hours.wasSeconds())
                      + " min"
                      + noted(hours.why())),
          EntryKind.takenBackAt(
              PlaceId.CARD, BenchFact.CardSet.class, (card, in) -> "job card set"),
          EntryKind.beyondUndo(
              BenchFact.JobPutAway.class,
              (put, in) -> put.away() ? "job put away" : "job brought back"),
          EntryKind.takenBackAt(
              PlaceId.BOOK, Fact.Noted.class, (note, in) -> "note: " + note.text()),
          EntryKind.takenBackAt(
              PlaceId.BOOK,
              Fact.Struck.class,
              (struck, in) ->
                  "struck entry " + in.label().apply(struck.entry()) + noted(struck.why())),
          EntryKind.beyondUndo(
              Fact.LineAccepted.class,
              (line, in) -> "a line was accepted as it stands (check " + line.lineCrc() + ")"),
          EntryKind.beyondUndo(
              Fact.JobClosed.class, (closed, in) -> "job closed" + noted(closed.nextTime())),
          EntryKind.beyondUndo(
              Fact.JobReopened.class, (opened, in) -> "job opened again" + noted(opened.why())),
          EntryKind.beyondUndo(
              Fact.Unread.class,
              (unread, in) -> unread.kind() + " (this version cannot use it; kept, not counted)"));

  private JobEntryKinds() {}

  private static String tested(Fact.TestPieceTried tried, EntryKind.InBook in) {
    String measured =
        tried.lengthMm().isPresent() ? in.length(" came out ", tried.lengthMm()) : " not measured";
    String verdict =
        tried.verdicts().isEmpty() ? "" : ": next " + String.join(" and ", tried.verdicts());
    return "test piece: blank " + in.length(tried.blankMm()) + measured + verdict;
  }

  private static String joined(Map<String, String> wish, EntryKind.InBook in) {
    return wish.entrySet().stream()
        .filter(each -> !each.getValue().isBlank())
        .map(each -> in.words().show(WishKeys.label(each.getKey())) + " " + each.getValue())
        .collect(Collectors.joining(", "));
  }
}
