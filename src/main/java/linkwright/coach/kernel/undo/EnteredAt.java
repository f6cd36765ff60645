package linkwright.coach.kernel.undo;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import linkwright.coach.kernel.PlaceId;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.LessonFact;
import linkwright.job.LotFact;
import linkwright.job.Strikes;

/**
 * The places whose entries undo takes back there, and nowhere else. What no place holds, such as a
 * plan, a wait or a caution seen, undo does not reach: it has an act of its own.
 */
public final class EnteredAt {
  /** Every kind of fact answers here, those that undo never reaches with no place. */
  public static final Map<Class<? extends Fact>, Set<PlaceId>> PLACES =
      Map.ofEntries(
          nowhere(Fact.JobOpened.class),
          nowhere(Fact.PlanSet.class),
          at(Fact.MetalWeighedOut.class, PlaceId.WIRE, PlaceId.WEIGH_IN),
          at(Fact.TestPieceTried.class, PlaceId.TEST_PIECES),
          nowhere(Fact.SampleChosen.class),
          at(Fact.TrialMeasured.class, PlaceId.TRIAL_LENGTH),
          nowhere(Fact.TrialChosen.class),
          nowhere(Fact.StepOpened.class),
          at(Fact.StepDone.class, PlaceId.BENCH),
          nowhere(Fact.CautionSeen.class),
          at(Fact.PiecesTaken.class, PlaceId.BENCH),
          at(Fact.PiecesThrough.class, PlaceId.BENCH),
          at(Fact.PiecesSentBack.class, PlaceId.BENCH),
          at(Fact.PiecesScrapped.class, PlaceId.BENCH),
          at(Fact.WireCut.class, PlaceId.BENCH, PlaceId.WIRE),
          at(Fact.WireAdded.class, PlaceId.WIRE),
          at(Fact.WireDiscarded.class, PlaceId.WIRE),
          nowhere(Fact.SittingStarted.class),
          nowhere(Fact.SteppedAway.class),
          nowhere(Fact.TimerStarted.class),
          nowhere(Fact.TimerAnswered.class),
          at(Fact.WeighedIn.class, PlaceId.WEIGH_IN),
          at(Fact.PricesSet.class, PlaceId.WEIGH_IN),
          at(Fact.Noted.class, PlaceId.BOOK),
          at(Fact.Struck.class, PlaceId.BOOK),
          nowhere(Fact.LineAccepted.class),
          nowhere(Fact.JobClosed.class),
          nowhere(Fact.JobReopened.class),
          nowhere(Fact.Unread.class),
          nowhere(BenchFact.HotWorkSaid.class),
          nowhere(BenchFact.WatchEnded.class),
          nowhere(BenchFact.SittingEnded.class),
          nowhere(BenchFact.StepSkipped.class),
          at(BenchFact.JointsChecked.class, PlaceId.BENCH),
          at(BenchFact.HoursCorrected.class, PlaceId.WEIGH_IN),
          nowhere(BenchFact.RedoPlanned.class),
          at(BenchFact.PilePlaced.class, PlaceId.PILES),
          at(BenchFact.CardSet.class, PlaceId.CARD),
          nowhere(BenchFact.JobPutAway.class),
          nowhere(LotFact.LotArrived.class),
          nowhere(LotFact.LotCounted.class),
          nowhere(LotFact.LotTurned.class),
          at(LotFact.StockTaken.class, PlaceId.WIRE),
          at(LotFact.StockReturned.class, PlaceId.WIRE),
          nowhere(LessonFact.StudentBookOpened.class),
          nowhere(LessonFact.QuestionAsked.class),
          nowhere(LessonFact.QuestionAnswered.class),
          nowhere(LessonFact.Signed.class),
          nowhere(LessonFact.PieceStudied.class),
          nowhere(LessonFact.PracticeSet.class),
          nowhere(LessonFact.PiecesMade.class),
          nowhere(LessonFact.MetalCounted.class));

  private EnteredAt() {}

  private static Map.Entry<Class<? extends Fact>, Set<PlaceId>> at(
      Class<? extends Fact> kind, PlaceId first, PlaceId... more) {
    return Map.entry(kind, EnumSet.of(first, more));
  }

  private static Map.Entry<Class<? extends Fact>, Set<PlaceId>> nowhere(
      Class<? extends Fact> kind) {
    return Map.entry(kind, EnumSet.noneOf(PlaceId.class));
  }

  /** Where undo takes it back; empty where it has an act of its own. */
  static Set<PlaceId> of(Fact fact) {
    return Strikes.isOfUndo(fact) ? Set.of() : PLACES.get(fact.getClass());
  }
}
