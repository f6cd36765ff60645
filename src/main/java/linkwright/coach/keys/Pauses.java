package linkwright.coach.keys;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;

/** How soon after an act counted the same key counts nothing. */
public final class Pauses {
  /** A key that comes again sooner bounces, or repeats because it is held. */
  public static final Duration BOUNCE = Duration.ofMillis(150);

  /** Sooner than this nobody has read what the press would end. */
  public static final Duration UNREAD = Duration.ofMillis(700);

  /** Sooner than this nobody has heated what she lit a torch for. */
  private static final Duration HEATED = Duration.ofSeconds(1);

  /** Quicker than this nobody presses twice to end something twice: it bounces, or is held. */
  private static final Duration BY_HAND = Duration.ofMillis(300);

  /** No burst of counts goes on so long behind the last piece: ten at two a second. */
  private static final Duration BURST = Duration.ofSeconds(5);

  /** What ends a step, a question, a card or a wait. */
  private static final Set<Act> ENDS =
      Set.of(
          Act.DONE,
          Act.TOGETHER,
          Act.ONWARD,
          Act.WAIT_FIRST,
          Act.MEANWHILE,
          Act.LIT,
          Act.HOT_ON,
          Act.SHUT_FIRST,
          Act.FLAMES_OUT,
          Act.STILL_LIT,
          Act.LOOKED,
          Act.TO_DUE,
          Act.WAIT_OVER,
          Act.HELD_REDO,
          Act.NEXT_QUESTION,
          Act.MORE_QUESTIONS,
          Act.BACK_AT_BENCH,
          Act.NONE_OF_THEM,
          Act.PASS_ON,
          Act.AGAIN_NOW,
          Act.ALL,
          Act.SEEN,
          Act.ANSWER,
          Act.STOP_TIMER,
          Act.TRY_AGAIN,
          Act.GIVE_UP);

  /** What says that it is hot from now on. */
  private static final Set<Act> LIGHTS = Set.of(Act.LIT, Act.HOT_ON);

  /** Where a bounce does no harm. */
  private static final Set<Act> HARMLESS =
      Set.of(
          Act.HELP,
          Act.NEW_STUDENT,
          Act.SIGN_STEP,
          Act.STUDY_PIECE,
          Act.SET_PRACTICE,
          Act.LOT_CAME,
          Act.LOT_COUNTED,
          Act.RETURN_WIRE,
          Act.TAKE_SOLDER,
          Act.CHANGE_BENCH,
          Act.VARY,
          Act.SAY_WHAT_THERE_IS,
          Act.WRITE_CARD,
          Act.WRITE_OUT,
          Act.TAKE_ROWS,
          Act.UP,
          Act.DOWN,
          Act.NEW_JOB,
          Act.LOG,
          Act.ADD_WIRE,
          Act.CUT,
          Act.DISCARD,
          Act.DRAW,
          Act.NOTE,
          Act.SEARCH,
          Act.SHOW_ALL,
          Act.FIND,
          Act.ACROSS,
          Act.COPY,
          Act.TURN,
          Act.LESS,
          Act.NEWEST,
          Act.OLDEST,
          Act.OPEN_CARD,
          Act.SET_TIMER,
          Act.WEIGH,
          Act.WEIGH_OUT,
          Act.PRICE,
          Act.HOURS,
          Act.CLOSE,
          Act.MORE,
          Act.DRAWN,
          Act.KEEP);

  private Pauses() {}

  /**
   * Whether the same key does something else now, for what it did ended something or will. A held
   * key that was let go has a question of its own, and that was read as it was held.
   */
  public static boolean leadsOn(Act last, Act now) {
    return last != now && now != Act.HELD_REDO && (ENDS.contains(last) || ENDS.contains(now));
  }

  /**
   * Whether a press that would end something belongs to the ones before it. A burst is over after a
   * look; whoever treads steadily and takes none has what came up before her for five seconds.
   *
   * @param act what the last press that counted did
   * @param last since the last press, whether it counted or not
   * @param counted since the last press that counted
   */
  public static boolean sameBurst(Optional<Act> act, Duration last, Duration counted) {
    Duration look = act.filter(LIGHTS::contains).isPresent() ? HEATED : UNREAD;
    return last.compareTo(BY_HAND) < 0
        || (last.compareTo(look) < 0 && counted.compareTo(BURST) < 0);
  }

  /** How soon after the last press, counted or not, one for that act is a bounce. */
  public static Duration bounce(Act act) {
    return ENDS.contains(act) ? BY_HAND : BOUNCE;
  }

  /** How long that is after an act; empty where a bounce does no harm. */
  public static Optional<Duration> after(Act act) {
    if (HARMLESS.contains(act)) {
      return Optional.empty();
    }
    return Optional.of(ENDS.contains(act) ? UNREAD : BOUNCE);
  }
}
