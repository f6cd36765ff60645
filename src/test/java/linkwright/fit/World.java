package linkwright.fit;

import java.util.List;
import java.util.Map;

/**
 * A kind of maker and of bench, apart from what the fit believes of them.
 *
 * @param name the row's name
 * @param patternId the link's pattern
 * @param owned formers owned
 * @param growthSpread how far one maker's bends differ from another's, the same share for all
 *     formers
 * @param perFormerSpread how far each former of one maker differs by itself, as a share
 * @param stressShare how far the wire's stress differs from what the metal says, as a share
 * @param clearance how far the wire stands off its former, as a share of its thickness
 * @param curlSpreadDeg how far a maker's curls are turned wrong
 * @param driftDeg how much further an eye is turned with each piece
 * @param misread the piece whose length is misread by 1.5 mm; −1 for none
 * @param measuredAgain whether she measures again when she is asked
 * @param verdictsOnly whether pieces are judged and not measured
 */
record World(
    String name,
    String patternId,
    Map<String, List<Double>> owned,
    double growthSpread,
    double perFormerSpread,
    double stressShare,
    double clearance,
    double curlSpreadDeg,
    double driftDeg,
    int misread,
    boolean measuredAgain,
    boolean verdictsOnly) {
  private static final Map<String, Map<String, List<Double>>> OWNED =
      Map.of(
          "hook-link", Map.of("eye", List.of(2.0, 2.5, 3.0, 3.5, 4.0, 4.5)),
          "scroll", Map.of("tip", List.of(1.0), "bow", List.of(2.5, 3.0, 3.25, 3.5, 3.75, 4.0)),
          "oval", Map.of("end", List.of(2.0, 2.5, 3.0, 3.5, 4.0, 4.5)),
          "round", Map.of("ring", List.of(2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 5.5, 6.0)));

  static World alike(String id) {
    return new World("one growth", id, OWNED.get(id), 0.03, 0, 0, 0, 0, 0, -1, false, false);
  }

  static World stress(String id) {
    return new World(
        "stress and winding", id, OWNED.get(id), 0, 0, 0.25, 0.07, 0, 0, -1, false, false);
  }

  static World perFormer(String id) {
    return new World(
        "growth by former", id, OWNED.get(id), 0.03, 0.02, 0, 0, 0, 0, -1, false, false);
  }

  static World curls(String id) {
    return new World("curls wrong", id, OWNED.get(id), 0.03, 0, 0, 0, 15, 0, -1, false, false);
  }

  static World drift(String id) {
    return new World("turn drifts", id, OWNED.get(id), 0.03, 0, 0, 0, 0, 3, -1, false, false);
  }

  static World misread(String id, int piece, boolean again) {
    return new World(
        "misread " + (piece + 1) + (again ? " again" : " kept"),
        id,
        OWNED.get(id),
        0.03,
        0,
        0,
        0,
        0,
        0,
        piece,
        again,
        false);
  }

  static World verdicts(String id) {
    return new World("verdicts only", id, OWNED.get(id), 0.03, 0, 0, 0, 0, 0, -1, false, true);
  }

  boolean isRound() {
    return patternId.equals("round");
  }
}
