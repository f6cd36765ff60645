package linkwright.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;

/**
 * All pieces of a job: link and ring piles and what is in hand.
 *
 * @param byPiece kind of piece → its pile
 * @param hand what is in hand
 * @param lies where piles lie, in her own words
 */
public record Piles(Map<PieceKind, Pile> byPiece, InHand hand, Map<PileSpot, String> lies) {
  static final Piles NONE = new Piles(Map.of(), InHand.EMPTY, Map.of());

  static Piles of(Map<PieceKind, List<Stage>> stages) {
    Map<PieceKind, Pile> piles = new LinkedHashMap<>();
    stages.forEach((piece, order) -> piles.put(piece, Pile.empty(order)));
    return new Piles(piles, InHand.EMPTY, Map.of());
  }

  /** The pile of that kind of piece; an empty one without stages for a kind the job has not. */
  public Pile of(PieceKind piece) {
    return byPiece.getOrDefault(piece, Pile.empty(List.of()));
  }

  Piles after(Fact fact) {
    if (fact instanceof Fact.WireCut cut) {
      return change(cut.piece(), pile -> pile.begun(cut.count()));
    }
    if (fact instanceof Fact.PiecesTaken taken) {
      return new Piles(byPiece, new InHand(taken.stage(), taken.pieces(), taken.redo()), lies);
    }
    if (fact instanceof Fact.PiecesThrough through) {
      return through(through);
    }
    if (fact instanceof Fact.PiecesSentBack back) {
      return change(
              back.piece(),
              pile ->
                  pile.sentBack(back.from(), back.to(), back.count(), back.redo(), back.reason())
                      .saidAgain(
                          pile.stages().contains(back.to()) ? back.to() : back.from(),
                          back.again()))
          .lessInHand(back.from(), Map.of(back.piece(), back.count()));
    }
    if (fact instanceof Fact.PiecesScrapped scrapped) {
      return change(
              scrapped.piece(),
              pile ->
                  pile.scrapped(
                      scrapped.stage(), scrapped.count(), scrapped.redo(), scrapped.reason()))
          .lessInHand(scrapped.stage(), Map.of(scrapped.piece(), scrapped.count()));
    }
    if (fact instanceof BenchFact.RedoPlanned planned) {
      return change(planned.piece(), pile -> pile.saidAgain(planned.stage(), planned.again()));
    }
    if (fact instanceof BenchFact.PilePlaced placed) {
      Map<PileSpot, String> more = new LinkedHashMap<>(lies);
      more.put(new PileSpot(placed.piece(), placed.stage(), placed.redo()), placed.place());
      return new Piles(byPiece, hand, Map.copyOf(more));
    }
    return this;
  }

  /** Where a pile lies; empty if she never said. */
  public String lies(PileSpot spot) {
    return lies.getOrDefault(spot, "");
  }

  /**
   * After a sample was chosen: it may be link 1, and there is one of it however often it is chosen.
   *
   * @param wasFirst whether the sample before it was link 1
   * @param isFirst whether this one is
   */
  Piles sampled(boolean wasFirst, boolean isFirst) {
    if (wasFirst == isFirst) {
      return this;
    }
    return change(
        PieceKind.LINK,
        pile -> {
          Stage stage = whereASampleStands(pile.stages());
          return isFirst ? pile.placed(stage, 1) : pile.withdrawn(stage);
        });
  }

  /**
   * After a trial length was chosen: its links and rings are part of the chain, finished but for
   * what is done to the whole of it.
   */
  Piles hung(Fact.TrialMeasured trial) {
    return hung(PieceKind.LINK, trial.links()).hung(PieceKind.RING, trial.rings());
  }

  private Piles hung(PieceKind piece, int count) {
    List<Stage> stages = of(piece).stages();
    return stages.size() < 2 || count == 0
        ? this
        : change(piece, pile -> pile.atLeast(stages.get(stages.size() - 2), count));
  }

  private Piles through(Fact.PiecesThrough through) {
    Piles moved = this;
    for (Map.Entry<PieceKind, Integer> piece : through.pieces().entrySet()) {
      moved =
          moved.change(
              piece.getKey(),
              pile ->
                  pile.begins(through.stage()) && !through.redo()
                      ? pile.begun(piece.getValue())
                      : pile.moved(through.stage(), piece.getValue(), through.redo()));
    }
    return moved.lessInHand(through.stage(), through.pieces());
  }

  /** A sample link is finished but for the joining: it waits where links wait for that. */
  private static Stage whereASampleStands(List<Stage> stages) {
    int joined = stages.indexOf(Stage.JOINED);
    if (joined > 0) {
      return stages.get(joined - 1);
    }
    return stages.isEmpty() ? Stage.NONE : stages.get(Math.max(0, stages.size() - 2));
  }

  private Piles lessInHand(Stage stage, Map<PieceKind, Integer> gone) {
    if (!hand.stage().equals(stage)) {
      return this;
    }
    Map<PieceKind, Integer> left = new LinkedHashMap<>();
    hand.pieces()
        .forEach(
            (piece, count) -> {
              int rest = count - gone.getOrDefault(piece, 0);
              if (rest > 0) {
                left.put(piece, rest);
              }
            });
    return new Piles(
        byPiece, left.isEmpty() ? InHand.EMPTY : new InHand(stage, left, hand.redo()), lies);
  }

  private Piles change(PieceKind piece, UnaryOperator<Pile> change) {
    Map<PieceKind, Pile> piles = new LinkedHashMap<>(byPiece);
    piles.put(piece, change.apply(of(piece)));
    return new Piles(piles, hand, lies);
  }
}
