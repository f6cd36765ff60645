package linkwright.coach;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.LessonFact;
import linkwright.job.LotFact;
import linkwright.job.Strikes;

/**
 * A place whose entries undo takes back there, and nowhere else. What no place holds, such as a
 * plan, a wait or a caution seen, undo does not reach: it has an act of its own.
 */
enum EnteredAt {
  TESTS("test pieces"),
  TRIAL("trial length"),
  BENCH("bench"),
  WIRE("wire"),
  WEIGH_IN("weigh in"),
  BOOK("book");

  /** Every kind of fact answers here, those that undo never reaches with no place. */
  static final Map<Class<? extends Fact>, Set<EnteredAt>> PLACES =
      Map.ofEntries(
          nowhere(Fact.JobOpened.class),
          nowhere(Fact.PlanSet.class),
          at(Fact.MetalWeighedOut.class, WIRE, WEIGH_IN),
          at(Fact.TestPieceTried.class, TESTS),
          nowhere(Fact.SampleChosen.class),
          at(Fact.TrialMeasured.class, TRIAL),
          nowhere(Fact.TrialChosen.class),
          nowhere(Fact.StepOpened.class),
          at(Fact.StepDone.class, BENCH),
          nowhere(Fact.CautionSeen.class),
          at(Fact.PiecesTaken.class, BENCH),
          at(Fact.PiecesThrough.class, BENCH),
          at(Fact.PiecesSentBack.class, BENCH),
          at(Fact.PiecesScrapped.class, BENCH),
          at(Fact.WireCut.class, BENCH, WIRE),
          at(Fact.WireAdded.class, WIRE),
          at(Fact.WireDiscarded.class, WIRE),
          nowhere(Fact.SittingStarted.class),
          nowhere(Fact.SteppedAway.class),
          nowhere(Fact.TimerStarted.class),
          nowhere(Fact.TimerAnswered.class),
          at(Fact.WeighedIn.class, WEIGH_IN),
          at(Fact.PricesSet.class, WEIGH_IN),
          at(Fact.Noted.class, BOOK),
          at(Fact.Struck.class, BOOK),
          nowhere(Fact.LineAccepted.class),
          nowhere(Fact.JobClosed.class),
          nowhere(Fact.JobReopened.class),
          nowhere(Fact.Unread.class),
          nowhere(BenchFact.HotWorkSaid.class),
          nowhere(BenchFact.SittingEnded.class),
          nowhere(BenchFact.StepSkipped.class),
          at(BenchFact.JointsChecked.class, BENCH),
          at(BenchFact.CountCorrected.class, BENCH),
          nowhere(BenchFact.HoursCorrected.class),
          at(BenchFact.PilePlaced.class, BENCH),
          nowhere(BenchFact.CardSet.class),
          nowhere(BenchFact.JobPutAway.class),
          nowhere(LotFact.LotArrived.class),
          nowhere(LotFact.LotCounted.class),
          nowhere(LotFact.LotTurned.class),
          at(LotFact.StockTaken.class, WIRE),
          at(LotFact.StockReturned.class, WIRE),
          nowhere(LessonFact.StudentBookOpened.class),
          nowhere(LessonFact.QuestionAsked.class),
          nowhere(LessonFact.QuestionAnswered.class),
          nowhere(LessonFact.Signed.class),
          nowhere(LessonFact.PieceStudied.class),
          nowhere(LessonFact.PracticeSet.class));

  private final String words;

  EnteredAt(String words) {
    this.words = words;
  }

  private static Map.Entry<Class<? extends Fact>, Set<EnteredAt>> at(
      Class<? extends Fact> kind, EnteredAt first, EnteredAt... more) {
    return Map.entry(kind, EnumSet.of(first, more));
  }

  private static Map.Entry<Class<? extends Fact>, Set<EnteredAt>> nowhere(
      Class<? extends Fact> kind) {
    return Map.entry(kind, EnumSet.noneOf(EnteredAt.class));
  }

  /** Where undo takes it back; empty where it has an act of its own. */
  static Set<EnteredAt> of(Fact fact) {
    return Strikes.isOfUndo(fact) ? Set.of() : PLACES.get(fact.getClass());
  }

  /** The place that is shown, if undo has something to do there. */
  static Optional<EnteredAt> shown(Screen screen) {
    if (screen instanceof Screen.Tests) {
      return Optional.of(TESTS);
    }
    if (screen instanceof Screen.Trial) {
      return Optional.of(TRIAL);
    }
    if (screen instanceof Screen.Bench) {
      return Optional.of(BENCH);
    }
    if (screen instanceof Screen.Wire) {
      return Optional.of(WIRE);
    }
    if (screen instanceof Screen.WeighIn) {
      return Optional.of(WEIGH_IN);
    }
    return screen instanceof Screen.Book ? Optional.of(BOOK) : Optional.empty();
  }

  /** What the place is called. */
  String words() {
    return words;
  }
}
