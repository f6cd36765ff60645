package linkwright.coach;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;

/** Where keys of the user's own lie over one another; a key of safety always stays with it. */
public final class KeyClashes {
  private KeyClashes() {}

  /** A sentence for each clash; empty where each key means one thing in each place. */
  public static List<String> of(Map<String, List<String>> wished) {
    KeyMap keys = new KeyMap(wished);
    Set<String> told = new LinkedHashSet<>();
    for (Act act : Act.values()) {
      for (String key : wished.getOrDefault(act.id(), List.of())) {
        if (KeyMap.isOfSafety(wished, act, key)) {
          told.add(
              "“" + key + "” stays with what is asked for safety's sake and is not " + act.id());
        }
      }
    }
    for (PlaceId place : PlaceId.values()) {
      List<Act> here = new ArrayList<>(ActTable.of(place));
      EverywhereActs.ALL.stream().filter(act -> !here.contains(act)).forEach(here::add);
      for (int i = 0; i < here.size(); i++) {
        for (int k = i + 1; k < here.size(); k++) {
          clash(told, wished, keys, here.get(i), here.get(k));
        }
      }
    }
    return List.copyOf(told);
  }

  private static void clash(
      Set<String> told, Map<String, List<String>> wished, KeyMap keys, Act one, Act other) {
    if (!wished.containsKey(one.id()) && !wished.containsKey(other.id())) {
      return;
    }
    for (String key : keys.keysOf(one)) {
      boolean usual = one.keys().contains(key) && other.keys().contains(key);
      if (keys.keysOf(other).contains(key) && !usual) {
        told.add(
            "“"
                + key
                + "” is "
                + one.id()
                + " and "
                + other.id()
                + " at one place: the first wins");
      }
    }
  }
}
