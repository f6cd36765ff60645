package linkwright.standing.reach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import linkwright.job.JobState;
import linkwright.plan.WishKeys;
import linkwright.reference.Metal;
import linkwright.standing.Handbook;
import linkwright.standing.Standing;

/**
 * The same wish in other metal, wire, ring or length: each variant planned anew, so that what is
 * told of it is what choosing it gives.
 *
 * @param says what is other, in a few words
 * @param standing what follows from it
 */
public record WhatIf(String says, Standing standing) {
  /** What may be other in a variant. */
  public static final List<String> ASKED =
      List.of(WishKeys.METAL, WishKeys.WIRE, WishKeys.RING_INSIDE, WishKeys.FINISHED);

  /** More than these have no room beside each other. */
  public static final int MOST = 4;

  /**
   * The plan as it is, then each variant.
   *
   * @param texts the wish as typed
   * @param state its job
   * @param variants what is other in each, by the keys of the wish; empty texts change nothing
   */
  public static List<WhatIf> of(
      Map<String, String> texts,
      JobState state,
      Handbook handbook,
      List<Map<String, String>> variants) {
    List<WhatIf> all = new ArrayList<>();
    all.add(new WhatIf("as planned", Standing.ofTyped(texts, state, handbook)));
    for (Map<String, String> variant : variants) {
      Map<String, String> changes = new LinkedHashMap<>(variant);
      changes
          .entrySet()
          .removeIf(
              each ->
                  each.getValue().isBlank()
                      || each.getValue().strip().equals(texts.get(each.getKey())));
      if (changes.isEmpty() || all.size() >= MOST) {
        continue;
      }
      Map<String, String> wish = changed(texts, changes);
      JobState fresh = Standing.newJob(wish, handbook, state.course().routine());
      all.add(new WhatIf(says(changes, handbook), Standing.ofTyped(wish, fresh, handbook)));
    }
    return List.copyOf(all);
  }

  /** In other metal or wire a link is bent anew: its look stays, its blank and inside do not. */
  private static Map<String, String> changed(
      Map<String, String> texts, Map<String, String> changes) {
    Map<String, String> wish = new LinkedHashMap<>(texts);
    boolean bent = changes.containsKey(WishKeys.METAL) || changes.containsKey(WishKeys.WIRE);
    if (bent && !texts.getOrDefault(WishKeys.LINK_LENGTH, "").isBlank()) {
      wish.remove(WishKeys.LINK_BLANK);
      wish.remove(WishKeys.LINK_INSIDE);
    }
    if (bent) {
      wish.remove(WishKeys.STOCK);
      wish.remove(WishKeys.RING_STOCK);
    }
    wish.putAll(changes);
    return wish;
  }

  /** A metal by its name. */
  private static String says(Map<String, String> changes, Handbook handbook) {
    return changes.entrySet().stream()
        .map(
            each ->
                each.getKey().equals(WishKeys.METAL)
                    ? handbook
                        .reference()
                        .metal(each.getValue())
                        .found()
                        .map(Metal::name)
                        .orElse(each.getValue().strip())
                    : each.getValue().strip())
        .collect(Collectors.joining(", "));
  }
}
