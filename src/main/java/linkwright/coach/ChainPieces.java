package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Pieces;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.Pile;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.standing.StillToDo;

/** The job's chain as its progress: every wanted link, with how far it has come. */
final class ChainPieces {
  private ChainPieces() {}

  static Optional<Pieces> of(OpenJob job) {
    Pile links = job.state().piles().of(PieceKind.LINK);
    StillToDo left = job.standing().left().get(PieceKind.LINK);
    boolean none = left == null || left.wanted() == 0 || links.stages().isEmpty();
    return none
        ? Optional.of(new Pieces("links", List.of(), 1))
        : Optional.of(new Pieces("links", portions(links, left.wanted()), links.stages().size()));
  }

  /** Links that have come furthest first; more than the chain takes are spares and not drawn. */
  private static List<Pieces.Portion> portions(Pile links, int wanted) {
    List<Pieces.Portion> portions = new ArrayList<>();
    int room = wanted;
    for (int i = links.stages().size() - 1; i >= 0; i--) {
      Stage stage = links.stages().get(i);
      int here = links.standing().getOrDefault(stage, 0);
      int drawn = Math.min(room, here);
      portions.add(new Pieces.Portion(stage.id(), drawn, i + 1, false));
      room -= drawn;
      int redo = i + 1 < links.stages().size() ? links.redoAt(links.stages().get(i + 1)) : 0;
      int again = Math.min(room, redo);
      if (again > 0) {
        portions.add(new Pieces.Portion(stage.id(), again, i + 1, true));
        room -= again;
      }
    }
    // Blanks to cut are more: their spares are no part of the chain.
    portions.add(new Pieces.Portion("to make", room, 0, false));
    return portions;
  }
}
