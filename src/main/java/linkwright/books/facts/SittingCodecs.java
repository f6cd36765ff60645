package linkwright.books.facts;

import java.util.List;
import linkwright.job.BenchFact;
import linkwright.job.CautionMet;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.job.StepLeft;
import linkwright.job.WaitEnd;
import linkwright.routine.StepId;

/** Work at the bench: sittings, steps, cautions, hot work, waits and hours. */
final class SittingCodecs {
  private static final Words<CautionMet> MET =
      Words.of(CautionMet.WHOLE, "", CautionMet.LINE, "line")
          .and(CautionMet.ASKED_RIGHT, "asked-right")
          .and(CautionMet.ASKED_WRONG, "asked-wrong");

  private static final Words<WaitEnd> ENDED =
      Words.of(WaitEnd.NOT_SAID, "", WaitEnd.TIME, "time")
          .and(WaitEnd.LOOKED, "looked")
          .and(WaitEnd.REASON, "reason");

  private static final Words<StepLeft> LEFT =
      Words.of(StepLeft.OPEN, "", StepLeft.NOT_DUE, "not-due");

  /** By which books before 2026-11-27 told that a mark was not due. */
  private static final String NOT_DUE_BEFORE = "no mark is due";

  private static final Words<HotWorkState> HOT_WORK =
      Words.of(HotWorkState.NOT_KNOWN, "not-known", HotWorkState.LIT, "lit")
          .and(HotWorkState.HOT, "hot")
          .and(HotWorkState.SHUT, "shut");

  static final List<FactCodec<?>> ALL =
      List.of(
          new FactCodec<>(
              "sitting-started",
              Fact.SittingStarted.class,
              (fact, out) -> out.some("person", fact.person()),
              in -> new Fact.SittingStarted(in.some("person"))),
          new FactCodec<>(
              "sitting-ended",
              BenchFact.SittingEnded.class,
              (fact, out) -> out.some("person", fact.person()),
              in -> new BenchFact.SittingEnded(in.some("person"))),
          new FactCodec<>(
              "stepped-away",
              Fact.SteppedAway.class,
              (fact, out) ->
                  out.flag("torch-out", fact.torchOut())
                      .flag("gas-shut", fact.gasShut())
                      .flag("hot-work-safe", fact.hotWorkSafe()),
              in ->
                  new Fact.SteppedAway(
                      in.flag("torch-out"), in.flag("gas-shut"), in.flag("hot-work-safe"))),
          new FactCodec<>(
              "step-opened",
              Fact.StepOpened.class,
              (fact, out) -> out.step(fact.step()),
              in -> new Fact.StepOpened(in.step())),
          new FactCodec<>(
              "step-done",
              Fact.StepDone.class,
              (fact, out) -> out.step(fact.step()),
              in -> new Fact.StepDone(in.step())),
          new FactCodec<>(
              "step-skipped",
              BenchFact.StepSkipped.class,
              (fact, out) ->
                  out.step(fact.step())
                      .some("why", fact.why())
                      .some("left", LEFT.word(fact.left())),
              in -> skipped(in.step(), in.some("why"), in.word("left", LEFT, true))),
          new FactCodec<>(
              "caution-seen",
              Fact.CautionSeen.class,
              (fact, out) ->
                  out.text("caution", fact.caution())
                      .some("how", MET.word(fact.how()))
                      .some("digest", fact.digest())
                      .someStep(fact.step()),
              in ->
                  new Fact.CautionSeen(
                      in.text("caution"),
                      in.word("how", MET, true),
                      in.some("digest"),
                      in.someStep())),
          new FactCodec<>(
              "hot-work",
              BenchFact.HotWorkSaid.class,
              (fact, out) ->
                  out.text("state", HOT_WORK.word(fact.state()))
                      .someStep(fact.step())
                      .some("statement", fact.statement())
                      .someEntries("answers", fact.answers())
                      .some("of", fact.of()),
              in ->
                  new BenchFact.HotWorkSaid(
                      in.word("state", HOT_WORK, false),
                      in.someStep(),
                      in.some("statement"),
                      in.someEntries("answers"),
                      in.some("of"))),
          new FactCodec<>(
              "watch-ended",
              BenchFact.WatchEnded.class,
              (fact, out) -> out.entry("from", fact.from()).text("why", fact.why()),
              in -> new BenchFact.WatchEnded(in.entry("from"), in.text("why"))),
          new FactCodec<>(
              "timer-started",
              Fact.TimerStarted.class,
              (fact, out) ->
                  out.text("name", fact.name())
                      .whole("seconds", fact.seconds())
                      .someWait(fact.waitId())
                      .someStep(fact.step())
                      .someCounts("pieces", fact.pieces())
                      .someCounts("redo", fact.redo())
                      .someStages("stages", fact.stages())
                      .sizes("sizes", fact.sizes())
                      .sizes("redo-sizes", fact.redoSizes()),
              in ->
                  new Fact.TimerStarted(
                      in.text("name"),
                      in.seconds("seconds"),
                      in.someWait(),
                      in.someStep(),
                      in.someCounted("pieces"),
                      in.someCounted("redo"),
                      in.someStages("stages"),
                      in.sizes("sizes"),
                      in.sizes("redo-sizes"))),
          new FactCodec<>(
              "timer-answered",
              Fact.TimerAnswered.class,
              (fact, out) ->
                  out.entry("timer", fact.timer())
                      .some("ended", ENDED.word(fact.how()))
                      .some("reason", fact.reason()),
              in ->
                  new Fact.TimerAnswered(
                      in.entry("timer"), in.word("ended", ENDED, true), in.some("reason"))),
          new FactCodec<>(
              "hours-corrected",
              BenchFact.HoursCorrected.class,
              (fact, out) ->
                  out.someStep(fact.step())
                      .decimal("was-s", fact.wasSeconds())
                      .decimal("is-s", fact.isSeconds())
                      .text("why", fact.why()),
              in ->
                  new BenchFact.HoursCorrected(
                      in.someStep(), in.decimal("was-s"), in.decimal("is-s"), in.text("why"))));

  private SittingCodecs() {}

  private static BenchFact.StepSkipped skipped(StepId step, String why, StepLeft left) {
    boolean before = left == StepLeft.OPEN && why.equals(NOT_DUE_BEFORE);
    return new BenchFact.StepSkipped(step, why, before ? StepLeft.NOT_DUE : left);
  }
}
