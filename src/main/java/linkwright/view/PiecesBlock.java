package linkwright.view;

import java.util.List;
import linkwright.coach.content.Pieces;

/** Pieces by stage, drawn one by one as far as there is room. */
final class PiecesBlock implements Block {
  private final Pieces pieces;

  PiecesBlock(Pieces pieces) {
    this.pieces = pieces;
  }

  @Override
  public int wanted() {
    return 1;
  }

  @Override
  public int least() {
    return 1;
  }

  @Override
  public GivesWay yields() {
    return GivesWay.SHRINKS;
  }

  @Override
  public void draw(Canvas area, int turned) {
    List<ChainBar.Portion> portions =
        pieces.portions().stream()
            .map(each -> new ChainBar.Portion(each.count(), each.reached(), each.redo()))
            .toList();
    ChainBar.draw(area, 0, portions, pieces.stages());
  }
}
