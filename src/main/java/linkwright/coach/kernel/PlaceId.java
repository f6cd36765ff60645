package linkwright.coach.kernel;

import java.util.Arrays;
import java.util.Optional;
import linkwright.coach.keys.Act;

/**
 * The places there are, in the order of the work, each with the act that leads there and, but where
 * a job is needed for it, when it is found by its name.
 */
public enum PlaceId {
  TRAY(Act.TO_TRAY, Found.ALWAYS),
  ROUND(Act.ROUND),
  PLAN(Act.TO_PLAN),
  NEAREST(Act.TO_NEAREST),
  TEST_PIECES(Act.TO_TESTS),
  TRIAL_LENGTH(Act.TO_TRIAL),
  BENCH(Act.TO_BENCH),
  JOINTS(Act.TO_JOINTS),
  PILES(Act.TO_PILES),
  FAILED(Act.TO_FAILED),
  WIRE(Act.TO_WIRE),
  WEIGH_IN(Act.TO_WEIGH_IN),
  BOOK(Act.TO_BOOK),
  CAUTIONS(Act.TO_CAUTIONS, Found.ALWAYS),
  TIMERS(Act.TO_TIMERS),
  RECKONER(Act.TO_RECKONER, Found.ALWAYS),
  LOOKUP(Act.TO_LOOKUP, Found.ALWAYS),
  SETTINGS(Act.TO_SETTINGS, Found.ALWAYS),
  FIND(Act.FIND, Found.NEVER),
  MADE_AGAIN(Act.MAKE_AGAIN, Found.NEVER),
  HANDS(Act.TO_HANDS, Found.ALWAYS),
  OWN_BENCH(Act.TO_OWN_BENCH, Found.ALWAYS),
  WHAT_IF(Act.TO_WHAT_IF),
  REACH(Act.TO_REACH),
  CARD(Act.TO_CARD),
  DRAWER(Act.TO_DRAWER, Found.ALWAYS),
  EXCHANGE(Act.TO_EXCHANGE),
  REHEARSAL(Act.TO_REHEARSAL, Found.ALWAYS),
  LESSON(Act.TO_LESSON, Found.ALWAYS),
  SAYING(Act.TO_SAYING, Found.NEVER),
  STUDENT(Act.TO_STUDENT, Found.ALWAYS),
  CLASS_ROOM(Act.TO_CLASS, Found.ALWAYS),
  HELP(Act.HELP, Found.NEVER),
  HOT_WORK(Act.TO_HOT_WORK),
  PERSONS(Act.TO_PERSONS);

  /** When a place is found by its name. */
  private enum Found {
    ALWAYS,
    IN_A_JOB,
    NEVER
  }

  private final Act act;
  private final Found found;

  PlaceId(Act act) {
    this(act, Found.IN_A_JOB);
  }

  PlaceId(Act act, Found found) {
    this.act = act;
    this.found = found;
  }

  /** The act that leads there. */
  public Act act() {
    return act;
  }

  /** Whether it is found by its name now. */
  public boolean isFound(boolean inJob) {
    return found == Found.ALWAYS || (inJob && found == Found.IN_A_JOB);
  }

  /** The place that an act leads to; empty if it leads nowhere. */
  public static Optional<PlaceId> ledToBy(Act act) {
    return Arrays.stream(values()).filter(place -> place.act == act).findFirst();
  }

  /** Whether a customer may look on there: at plan, price, card, weighing and what is given out. */
  public boolean isLookedAt() {
    return switch (this) {
      case PLAN, NEAREST, WHAT_IF, REACH, CARD, WEIGH_IN, EXCHANGE -> true;
      default -> false;
    };
  }
}
