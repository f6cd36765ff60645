package linkwright.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The formers that a wish names, as a choice of one each. */
final class FormersOwned {
  private FormersOwned() {}

  static Map<String, List<Double>> of(WishedLink link) {
    Map<String, List<Double>> owned = new LinkedHashMap<>();
    link.formersMm().forEach((name, mm) -> owned.put(name, List.of(mm)));
    return owned;
  }
}
