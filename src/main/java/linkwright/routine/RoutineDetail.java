package linkwright.routine;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What a routine may say besides; an older file says nothing of it.
 *
 * @param level how much it asks of whoever makes it
 * @param kinds kind of piece → its pattern and how many come in a repeat
 * @param questions what a student can be asked of it as a whole
 * @param pictures names of drawings that show it
 * @param suits the jobs it is meant for; empty if for all
 * @param linkAdds what a link adds where that is not its inside; empty where it is
 * @param usualPieces how many are planned of what is no chain while nothing was typed, 1 or more
 */
public record RoutineDetail(
    Optional<Level> level,
    Map<PieceKind, PieceDetail> kinds,
    List<StudyQuestion> questions,
    List<String> pictures,
    Optional<Suits> suits,
    Optional<LinkAdds> linkAdds,
    int usualPieces) {
  /** Nothing of all that. */
  public static final RoutineDetail NONE =
      new RoutineDetail(
          Optional.empty(), Map.of(), List.of(), List.of(), Optional.empty(), Optional.empty(), 1);

  public RoutineDetail {
    kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
    questions = List.copyOf(questions);
    pictures = List.copyOf(pictures);
  }

  /**
   * What a link adds where that is not its inside; not of a job that the routine does not suit:
   * there round links that no routine was chosen for may simply hang in each other.
   *
   * @param met whether a job is one of those
   */
  public Optional<LinkAdds> adding(Predicate<When> met) {
    return linkAdds.filter(adds -> suits.map(Suits::when).filter(met.negate()).isEmpty());
  }

  /**
   * What one repeat of the chain takes, a ring to each link: "2 links + 2 round rings"; empty if it
   * is not said.
   */
  public String repeat() {
    int links =
        Optional.ofNullable(kinds.get(PieceKind.LINK)).map(PieceDetail::perRepeat).orElse(1);
    return kinds.entrySet().stream()
        .map(
            each ->
                each.getValue()
                    .counted(
                        each.getKey(),
                        each.getKey().equals(PieceKind.RING) ? links : each.getValue().perRepeat()))
        .collect(Collectors.joining(" + "));
  }
}
