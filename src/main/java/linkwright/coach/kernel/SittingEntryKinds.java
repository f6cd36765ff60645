package linkwright.coach.kernel;

import static linkwright.coach.kernel.EntryKind.counted;
import static linkwright.coach.kernel.EntryKind.noted;

import java.util.List;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;

/** Work at the bench: sittings, steps, cautions, hot work, waits. */
final class SittingEntryKinds {
  static final List<EntryKind<?>> ALL =
      List.of(
          EntryKind.beyondUndo(
              Fact.SittingStarted.class,
              (started, in) -> "at the bench" + noted(in.titles().person(started.person()))),
          EntryKind.beyondUndo(
              BenchFact.SittingEnded.class,
              (ended, in) -> "sitting ended" + noted(in.titles().person(ended.person()))),
          EntryKind.beyondUndo(
              Fact.SteppedAway.class,
              (away, in) ->
                  "stepped away"
                      + (away.torchOut() && away.gasShut() && away.hotWorkSafe()
                          ? ", torch out, gas shut, hot work looked to"
                          : ", not all was looked to")),
          EntryKind.beyondUndo(
              Fact.StepOpened.class,
              (opened, in) -> "step opened: " + in.titles().step(opened.step())),
          EntryKind.takenBackAt(
              PlaceId.BENCH,
              Fact.StepDone.class,
              (done, in) -> "step done: " + in.titles().step(done.step())),
          EntryKind.beyondUndo(
              BenchFact.StepSkipped.class,
              (skipped, in) ->
                  "step passed: " + in.titles().step(skipped.step()) + noted(skipped.why())),
          EntryKind.beyondUndo(
              Fact.CautionSeen.class,
              (seen, in) -> "caution seen: " + in.titles().caution(seen.caution())),
          EntryKind.beyondUndo(
              BenchFact.HotWorkSaid.class,
              (said, in) ->
                  "hot work: "
                      + (said.statement().isBlank() ? state(said.state()) : said.statement())
                      + (said.of().isEmpty() ? "" : ", lit in the book " + said.of())),
          EntryKind.beyondUndo(
              BenchFact.WatchEnded.class,
              (ended, in) -> "fire watch ended before its time" + noted(ended.why())),
          EntryKind.beyondUndo(
              Fact.TimerStarted.class,
              (timer, in) ->
                  "timer set: "
                      + timer.name()
                      + (timer.wentIn().isEmpty() ? "" : ", " + counted(timer.wentIn()))
                      + ", "
                      + Clock.spoken((double) timer.seconds())),
          EntryKind.beyondUndo(Fact.TimerAnswered.class, (answered, in) -> ended(answered)));

  private SittingEntryKinds() {}

  private static String state(HotWorkState state) {
    return switch (state) {
      case LIT -> "lit";
      case HOT -> "hot, no flame";
      case SHUT -> "every flame out, gas shut";
      case NOT_KNOWN -> "not known";
    };
  }

  private static String ended(Fact.TimerAnswered answered) {
    return switch (answered.how()) {
      case NOT_SAID -> "timer quieted";
      case TIME -> "wait over by its time";
      case LOOKED -> "wait over: looked, done";
      case REASON -> "wait ended before its time: " + answered.reason();
    };
  }
}
