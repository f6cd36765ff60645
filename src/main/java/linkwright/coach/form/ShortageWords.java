package linkwright.coach.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import linkwright.routine.PieceKind;
import linkwright.standing.Standing;
import linkwright.standing.StillToDo;

/** Wire that will not do, in words. */
public final class ShortageWords {
  private ShortageWords() {}

  /** What is short, in a few words each. */
  public static List<String> of(Standing standing) {
    List<String> shortages = new ArrayList<>();
    standing
        .missing()
        .forEach(
            (piece, missing) ->
                shortages.add("wire for " + missing + " more " + piece.word(missing)));
    return shortages;
  }

  /**
   * What to say when so many are cut and the wire will not do for the rest; empty if it will.
   *
   * @param standing before they are cut
   * @param cut the same after that
   * @param size of which size they are; empty where all are alike
   */
  public static String after(
      Standing standing, Standing cut, PieceKind piece, String size, int count) {
    if (!standing.left().containsKey(piece) || !standing.wireKnown()) {
      return "";
    }
    StillToDo todo = standing.left().get(piece).of(size);
    if (count > todo.canCut()) {
      return "By the book the wire on hand gives "
          + (todo.canCut() == 0 ? "none" : "only " + todo.canCut() + " more")
          + ": enter wire that came ({do:to-wire}), or undo.";
    }
    int missing = cut.missing().getOrDefault(piece, 0);
    return missing > 0
        ? "The wire on hand will not do: it lacks " + lacks(cut.missing()) + "."
        : "";
  }

  /** What it lacks of every kind: 22 rings may be of the step after this. */
  private static String lacks(Map<PieceKind, Integer> missing) {
    return missing.entrySet().stream()
        .map(piece -> piece.getKey().counted(piece.getValue()))
        .collect(Collectors.joining(" and "));
  }
}
