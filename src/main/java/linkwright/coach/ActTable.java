package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;

/**
 * Which acts belong to which place, whether they are open at the moment or not. Within a place no
 * letter has two senses; the map of it stands in DEVELOPERS.md.
 */
public final class ActTable {
  private ActTable() {}

  /** All acts that a place may offer, without those of everywhere. */
  public static List<Act> of(PlaceId place) {
    return Places.of(place).allActs();
  }

  /** All acts with the place that each belongs to, a place after the other. */
  static List<Placed> placed() {
    List<Placed> all = new ArrayList<>();
    for (PlaceId place : PlaceId.values()) {
      of(place).forEach(act -> all.add(new Placed(place, act)));
    }
    return all;
  }

  /** An act at one of its places. */
  record Placed(PlaceId place, Act act) {}
}
