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
    return switch (place) {
      case TRAY ->
          List.of(
              Act.CHOOSE,
              Act.UP,
              Act.DOWN,
              Act.NEW_JOB,
              Act.MAKE_AGAIN,
              Act.SEARCH,
              Act.PUT_AWAY,
              Act.SHOW_ALL,
              Act.TO_RECKONER,
              Act.TO_CAUTIONS,
              Act.TO_HANDS,
              Act.TO_OWN_BENCH,
              Act.TO_DRAWER,
              Act.TO_EXCHANGE,
              Act.TO_LESSON,
              Act.TO_REHEARSAL,
              Act.MORE,
              Act.LESS);
      case ROUND ->
          List.of(
              Act.TO_PLAN,
              Act.TO_TESTS,
              Act.TO_TRIAL,
              Act.TO_BENCH,
              Act.TO_WIRE,
              Act.TO_WEIGH_IN,
              Act.TO_BOOK,
              Act.TO_CAUTIONS,
              Act.TO_TIMERS,
              Act.TO_RECKONER,
              Act.TO_TRAY,
              Act.TO_NEAREST,
              Act.TO_PILES,
              Act.MAKE_AGAIN,
              Act.TO_LESSON,
              Act.TO_REHEARSAL,
              Act.TO_WHAT_IF,
              Act.TO_REACH,
              Act.TO_CARD,
              Act.TO_EXCHANGE,
              Act.KEEP_FOR_ALL,
              Act.THROW_AWAY,
              Act.MORE,
              Act.LESS);
      case PLAN -> List.of(Act.KEEP);
      case NEAREST ->
          List.of(
              Act.FIT_RING,
              Act.FIT_LINK,
              Act.ONE_FEWER,
              Act.ONE_MORE,
              Act.JUMP_RINGS,
              Act.OTHER_CLASP,
              Act.TO_PLAN,
              Act.MORE,
              Act.LESS);
      case HANDS ->
          List.of(
              Act.LEAVE_OUT, Act.UP, Act.DOWN, Act.TO_EXCHANGE, Act.TO_TRAY, Act.MORE, Act.LESS);
      case EXCHANGE ->
          List.of(Act.WRITE_OUT, Act.TAKE_ROWS, Act.TO_BENCH, Act.TO_TRAY, Act.MORE, Act.LESS);
      case TEST_PIECES ->
          List.of(
              Act.DRAWN,
              Act.LOG,
              Act.SAMPLE,
              Act.UP,
              Act.DOWN,
              Act.TO_TRIAL,
              Act.TO_BENCH,
              Act.MORE,
              Act.LESS);
      case TRIAL_LENGTH ->
          List.of(
              Act.LOG,
              Act.CHOOSE_TRIAL,
              Act.UP,
              Act.DOWN,
              Act.TO_TESTS,
              Act.TO_BENCH,
              Act.MORE,
              Act.LESS);
      case BENCH ->
          List.of(
              Act.THROUGH,
              Act.DONE,
              Act.TOGETHER,
              Act.BEGIN_ONE,
              Act.CUT_ONE,
              Act.ONWARD,
              Act.WAIT_FIRST,
              Act.MEANWHILE,
              Act.TO_DUE,
              Act.WAIT_OVER,
              Act.HELD_REDO,
              Act.BACK_AT_BENCH,
              Act.LIT,
              Act.HOT_ON,
              Act.SHUT_FIRST,
              Act.NONE_OF_THEM,
              Act.SEEN,
              Act.LEAVE_QUESTION,
              Act.LOOK_ON,
              Act.LOOK_BACK,
              Act.OPEN_STEP,
              Act.BACK_FROM_LOOK,
              Act.PASS_ON,
              Act.AGAIN_NOW,
              Act.LOOKED,
              Act.ALL,
              Act.REDO,
              Act.SCRAP,
              Act.TAKE,
              Act.OTHER_SIZE,
              Act.NEXT_STEP,
              Act.PREVIOUS_STEP,
              Act.WAIT,
              Act.DRAWN,
              Act.TO_TESTS,
              Act.TO_TRIAL,
              Act.MORE,
              Act.LESS,
              Act.STEP_AWAY,
              Act.TO_PILES,
              Act.TO_JOINTS);
      case JOINTS -> List.of(Act.KEEP);
      case WIRE ->
          List.of(
              Act.ADD_WIRE,
              Act.CUT,
              Act.DISCARD,
              Act.DRAW,
              Act.WEIGH_OUT,
              Act.TO_BENCH,
              Act.RETURN_WIRE,
              Act.TAKE_SOLDER,
              Act.MORE,
              Act.LESS);
      case WEIGH_IN ->
          List.of(
              Act.WEIGH,
              Act.WEIGH_OUT,
              Act.PRICE,
              Act.HOURS,
              Act.CLOSE,
              Act.KEEP_FOR_ALL,
              Act.REOPEN,
              Act.MAKE_AGAIN,
              Act.TO_BENCH,
              Act.MORE,
              Act.LESS);
      case BOOK ->
          List.of(
              Act.NOTE,
              Act.STRIKE,
              Act.SEARCH,
              Act.ACCEPT,
              Act.SHOW_ALL,
              Act.UP,
              Act.DOWN,
              Act.NEWEST,
              Act.OLDEST,
              Act.TO_BENCH,
              Act.MORE,
              Act.LESS);
      case CAUTIONS ->
          List.of(
              Act.OPEN_CARD,
              Act.UP,
              Act.DOWN,
              Act.SEARCH,
              Act.TO_BENCH,
              Act.TO_TRAY,
              Act.MORE,
              Act.LESS);
      case TIMERS ->
          List.of(
              Act.STOP_TIMER, Act.SET_TIMER, Act.UP, Act.DOWN, Act.TO_BENCH, Act.MORE, Act.LESS);
      case RECKONER -> List.of(Act.CHOOSE, Act.UP, Act.DOWN, Act.TO_TRAY, Act.MORE, Act.LESS);
      case LOOKUP ->
          List.of(Act.OPEN_CARD, Act.UP, Act.DOWN, Act.SEARCH, Act.TO_TRAY, Act.MORE, Act.LESS);
      case OWN_BENCH -> List.of(Act.CHANGE_BENCH, Act.KEEP_TYPED, Act.TO_TRAY, Act.MORE, Act.LESS);
      case DRAWER ->
          List.of(
              Act.LOT_CAME,
              Act.LOT_COUNTED,
              Act.DRAW,
              Act.UP,
              Act.DOWN,
              Act.TO_EXCHANGE,
              Act.TO_TRAY,
              Act.MORE,
              Act.LESS);
      case WHAT_IF -> List.of(Act.VARY, Act.TO_PLAN, Act.TO_REACH, Act.MORE, Act.LESS);
      case REACH ->
          List.of(Act.SAY_WHAT_THERE_IS, Act.PLAN_SO_LONG, Act.TO_PLAN, Act.MORE, Act.LESS);
      case CARD -> List.of(Act.WRITE_CARD, Act.TO_WEIGH_IN, Act.TO_BENCH, Act.MORE, Act.LESS);
      case PILES ->
          List.of(Act.TAKE_UP, Act.SAY_WHERE, Act.UP, Act.DOWN, Act.TO_BENCH, Act.MORE, Act.LESS);
      case REHEARSAL ->
          List.of(
              Act.CHOOSE,
              Act.UP,
              Act.DOWN,
              Act.DRY_ON,
              Act.DRY_BACK,
              Act.TO_CAUTIONS,
              Act.TO_TRAY,
              Act.MORE,
              Act.LESS);
      case LESSON ->
          List.of(
              Act.CHOOSE,
              Act.UP,
              Act.DOWN,
              Act.NEXT_QUESTION,
              Act.MORE_QUESTIONS,
              Act.NEW_STUDENT,
              Act.TO_STUDENT,
              Act.TO_CLASS,
              Act.TO_TRAY,
              Act.MORE,
              Act.LESS);
      case SAYING -> List.of(Act.NEXT_QUESTION, Act.MORE, Act.LESS);
      case STUDENT ->
          List.of(
              Act.SIGN_STEP,
              Act.STUDY_PIECE,
              Act.SET_PRACTICE,
              Act.TO_LESSON,
              Act.TO_CLASS,
              Act.TO_TRAY,
              Act.MORE,
              Act.LESS);
      case CLASS_ROOM ->
          List.of(Act.CHOOSE, Act.UP, Act.DOWN, Act.TO_LESSON, Act.TO_TRAY, Act.MORE, Act.LESS);
      case SETTINGS, MADE_AGAIN -> List.of(Act.KEEP);
      case HELP -> List.of(Act.MORE, Act.LESS);
      case HOT_WORK -> List.of(Act.FLAMES_OUT, Act.STILL_LIT, Act.STAY);
      case PERSONS -> List.of(Act.KEEP, Act.TO_BENCH);
      case FIND -> List.of();
    };
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
