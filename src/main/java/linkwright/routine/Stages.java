package linkwright.routine;

import java.util.Map;

/** The stages that mean something to the checks; a routine may use others too. */
final class Stages {
  static final String SOLDERED = "soldered";
  static final String FUSED = "fused";
  static final String PICKLED = "pickled";
  static final String CHECKED = "checked";
  static final String TESTED = "tested";
  static final String JOINED = "joined";
  static final String OVALLED = "ovalled";

  /** A step that reaches this stage cannot help doing that. */
  static final Map<String, Hazard> BRING =
      Map.of(
          "annealed",
          Hazard.HEATS,
          SOLDERED,
          Hazard.HEATS,
          FUSED,
          Hazard.HEATS,
          PICKLED,
          Hazard.PICKLES,
          "cut",
          Hazard.CUTS,
          "trued",
          Hazard.HAMMERS,
          "planished",
          Hazard.HAMMERS,
          "drawn",
          Hazard.DRAWS);

  private Stages() {}
}
