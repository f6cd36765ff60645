package linkwright.routine;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.quantity.Nearest;
import linkwright.reference.Reference;

/**
 * What a routine may refer to.
 *
 * @param cautions id → caution
 * @param formers id of a link pattern → the names of its formers
 * @param reference drawings and tools
 */
record Known(Map<String, Caution> cautions, Map<String, Set<String>> formers, Reference reference) {
  static Known of(
      Collection<Caution> cautions, Map<String, Set<String>> formers, Reference reference) {
    Map<String, Caution> byId = new LinkedHashMap<>();
    cautions.forEach(caution -> byId.put(caution.id(), caution));
    return new Known(byId, Map.copyOf(formers), reference);
  }

  /** The ids of the link patterns. */
  Set<String> patterns() {
    return formers.keySet();
  }

  /** The cautions that cover a hazard, by id. */
  List<String> covering(Hazard hazard) {
    return cautions.values().stream()
        .filter(caution -> caution.covers().contains(hazard))
        .map(Caution::id)
        .toList();
  }

  /** "Did you mean torch?", or what there is to choose from. */
  static String nearest(String typed, Collection<String> known) {
    Optional<String> near = Nearest.of(typed, known);
    if (near.isPresent()) {
      return "Did you mean " + near.get() + "?";
    }
    return known.isEmpty() ? "There is none yet." : "Known are: " + String.join(", ", known) + ".";
  }
}
