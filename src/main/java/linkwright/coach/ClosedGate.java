package linkwright.coach;

import java.util.Set;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.job.BenchFact;
import linkwright.job.Fact;

/** Nothing is worked at, measured or planned in a closed job before it is opened again. */
final class ClosedGate {
  private static final Set<Class<? extends Fact>> WORK =
      Set.of(
          Fact.PlanSet.class,
          Fact.MetalWeighedOut.class,
          Fact.TestPieceTried.class,
          Fact.SampleChosen.class,
          Fact.TrialMeasured.class,
          Fact.TrialChosen.class,
          Fact.SittingStarted.class,
          Fact.SteppedAway.class,
          Fact.CautionSeen.class,
          Fact.StepOpened.class,
          Fact.StepDone.class,
          Fact.PiecesTaken.class,
          Fact.PiecesThrough.class,
          Fact.PiecesSentBack.class,
          Fact.PiecesScrapped.class,
          Fact.WireCut.class,
          Fact.WireAdded.class,
          Fact.WireDiscarded.class,
          Fact.TimerStarted.class,
          Fact.WeighedIn.class,
          Fact.PricesSet.class,
          BenchFact.StepSkipped.class,
          BenchFact.JointsChecked.class,
          BenchFact.RedoPlanned.class);

  private ClosedGate() {}

  /** The turn, unless it would enter work; what is typed stays where it is. */
  static Turn held(Model model, Turn turn) {
    boolean closed = model.job().filter(job -> job.state().course().closed()).isPresent();
    boolean sits = turn.next().filter(PlaceId.PERSONS::equals).isPresent();
    return closed && (sits || turn.effects().stream().anyMatch(ClosedGate::works))
        ? Turn.to(BenchAnswers.reopenFirst(model))
        : turn;
  }

  private static boolean works(Effect effect) {
    return effect instanceof Effect.KeepFacts keep
        && keep.facts().stream().noneMatch(Fact.JobReopened.class::isInstance)
        && keep.facts().stream().anyMatch(fact -> WORK.contains(fact.getClass()));
  }
}
