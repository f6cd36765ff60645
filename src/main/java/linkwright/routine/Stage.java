package linkwright.routine;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a piece stands, in the order of its routine. The stages are the routine's own data; those
 * that mean something to checks and counts are named here, and nowhere else.
 *
 * @param id the word for it in routines and job books; none for no stage
 */
public record Stage(String id) {
  public static final Stage NONE = new Stage("");
  public static final Stage CUT = new Stage("cut");
  public static final Stage ANNEALED = new Stage("annealed");
  public static final Stage FORMED = new Stage("formed");
  public static final Stage SOLDERED = new Stage("soldered");
  public static final Stage FUSED = new Stage("fused");
  public static final Stage PICKLED = new Stage("pickled");
  public static final Stage CHECKED = new Stage("checked");
  public static final Stage TESTED = new Stage("tested");
  public static final Stage TRUED = new Stage("trued");
  public static final Stage PLANISHED = new Stage("planished");
  public static final Stage DRAWN = new Stage("drawn");

  /** From here on all pieces are one chain. */
  public static final Stage JOINED = new Stage("joined");

  public static final Stage OVALLED = new Stage("ovalled");

  /** A step that reaches this stage cannot help doing that. */
  private static final Map<Stage, Hazard> BRING =
      Map.of(
          ANNEALED,
          Hazard.HEATS,
          SOLDERED,
          Hazard.HEATS,
          FUSED,
          Hazard.HEATS,
          PICKLED,
          Hazard.PICKLES,
          CUT,
          Hazard.CUTS,
          TRUED,
          Hazard.HAMMERS,
          PLANISHED,
          Hazard.HAMMERS,
          DRAWN,
          Hazard.DRAWS);

  /** What reaching it cannot help doing. */
  Optional<Hazard> brings() {
    return Optional.ofNullable(BRING.get(this));
  }

  /** Whether a joint is made here. */
  public boolean makesAJoint() {
    return equals(SOLDERED) || equals(FUSED) || equals(JOINED);
  }

  /** The stages of those words, in their order. */
  public static List<Stage> all(List<String> words) {
    return words.stream().map(Stage::new).toList();
  }

  /** The words for some stages, in their order. */
  public static List<String> words(Collection<Stage> stages) {
    return stages.stream().map(Stage::id).toList();
  }

  // A record's own are slow in Java's quick compiler, and each entry of a book asks them often.
  @Override
  public boolean equals(Object other) {
    return other instanceof Stage same && id.equals(same.id);
  }

  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** The word for it, as it is shown. */
  @Override
  public String toString() {
    return id;
  }
}
