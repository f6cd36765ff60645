package linkwright.coach.kernel;

import java.util.Arrays;
import java.util.Optional;
import linkwright.coach.keys.Act;

/** The places there are, in the order of the work, each with the act that leads there. */
public enum PlaceId {
  TRAY(Act.TO_TRAY),
  ROUND(Act.ROUND),
  PLAN(Act.TO_PLAN),
  NEAREST(Act.TO_NEAREST),
  TEST_PIECES(Act.TO_TESTS),
  TRIAL_LENGTH(Act.TO_TRIAL),
  BENCH(Act.TO_BENCH),
  JOINTS(Act.TO_JOINTS),
  PILES(Act.TO_PILES),
  WIRE(Act.TO_WIRE),
  WEIGH_IN(Act.TO_WEIGH_IN),
  BOOK(Act.TO_BOOK),
  CAUTIONS(Act.TO_CAUTIONS),
  TIMERS(Act.TO_TIMERS),
  RECKONER(Act.TO_RECKONER),
  LOOKUP(Act.TO_LOOKUP),
  SETTINGS(Act.TO_SETTINGS),
  FIND(Act.FIND),
  MADE_AGAIN(Act.MAKE_AGAIN),
  HANDS(Act.TO_HANDS),
  OWN_BENCH(Act.TO_OWN_BENCH),
  WHAT_IF(Act.TO_WHAT_IF),
  REACH(Act.TO_REACH),
  CARD(Act.TO_CARD),
  DRAWER(Act.TO_DRAWER),
  EXCHANGE(Act.TO_EXCHANGE),
  REHEARSAL(Act.TO_REHEARSAL),
  LESSON(Act.TO_LESSON),
  SAYING(Act.TO_SAYING),
  STUDENT(Act.TO_STUDENT),
  CLASS_ROOM(Act.TO_CLASS),
  HELP(Act.HELP),
  HOT_WORK(Act.TO_HOT_WORK),
  PERSONS(Act.TO_PERSONS);

  private final Act act;

  PlaceId(Act act) {
    this.act = act;
  }

  /** The act that leads there. */
  public Act act() {
    return act;
  }

  /** The place that an act leads to; empty if it leads nowhere. */
  public static Optional<PlaceId> ledToBy(Act act) {
    return Arrays.stream(values()).filter(place -> place.act == act).findFirst();
  }
}
