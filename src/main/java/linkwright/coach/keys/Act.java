package linkwright.coach.keys;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Something the user can do with one key. The words are shown, the keys can be changed in a file by
 * the act's id.
 */
public enum Act {
  ROUND("round", "places of the job", "esc"),
  HELP("help", "all keys", "?"),
  FIND("find", "find", "f", "ctrl-f"),
  ACROSS("across", "across the room", "="),
  COPY("copy", "copy what stands here", "ctrl-y"),
  UNDO("undo", "undo", "u", "ctrl-z"),
  BRING_BACK("bring-back", "bring it back", "z"),
  ANSWER("answer", "quiet the timer", "."),
  LEAVE("leave", "leave", "q"),
  TO_SETTINGS("to-settings", "settings", ","),
  STEP_AWAY("step-away", "step away", "y"),

  TRY_AGAIN("try-again", "try the same again", "space", "page-down", "enter"),
  GIVE_UP("give-up", "give it up", "esc"),

  UP("up", "up", "up"),
  DOWN("down", "down", "down"),
  CHOOSE("choose", "open", "enter"),
  NEW_JOB("new-job", "new job", "n"),
  MAKE_AGAIN("make-again", "make it again", "j"),

  THROUGH("through", "one done", "space", "page-down", "enter"),
  DONE("done", "done", "space", "page-down", "enter"),
  TOGETHER("together", "all done", "space", "page-down", "enter"),
  BEGIN_ONE("begin-one", "one begun", "space", "page-down", "enter"),
  CUT_ONE("cut-one", "one cut", "space", "page-down", "enter"),
  ONWARD("onward", "on to the next step", "space", "page-down", "enter"),
  WAIT_FIRST("wait-first", "start its timer", "space", "page-down", "enter"),
  MEANWHILE("not-yet", "other work meanwhile", "space", "page-down", "enter"),
  LIT("lit", "torch lit: hot work is open", "space", "page-down", "enter"),
  HOT_ON("hot-on", "kiln or hotplate on", "space", "page-down", "enter"),
  TO_PERSONS("to-persons", "who works", "@"),
  TO_HOT_WORK("to-hot-work", "every flame out?", "!"),
  SHUT_FIRST("shut-first", "every flame out?", "space", "page-down", "enter"),
  FLAMES_OUT("flames-out", "yes: every flame out, gas shut", "space", "page-down"),
  STILL_LIT("still-lit", "no: it stays so, someone stays with it", "n"),
  STAY("stay", "stay here", "esc"),
  LOOKED("looked", "looked: done", "d"),
  TO_DUE("to-due", "to the wait that is over", "space", "page-down", "enter"),
  WAIT_OVER("wait-over", "its wait is over", "space", "page-down", "enter"),
  HELD_REDO("held-redo", "to be redone", "space", "page-down", "enter"),
  LEAVE_QUESTION("leave-question", "back to the bench", "esc"),
  BACK_AT_BENCH("back-at-bench", "back at the bench", "space", "page-down", "enter"),
  NONE_OF_THEM("none-of-them", "none of them", "space", "page-down", "enter"),
  ALL("all", "all that wait", "a"),
  REDO("redo", "redo", "r"),
  SCRAP("scrap", "scrap", "s"),
  TAKE("take", "new or redo", "x"),
  NEXT_STEP("next-step", "next step", "n"),
  PREVIOUS_STEP("previous-step", "step before", "b"),
  LOOK_ON("look-on", "look ahead", "right"),
  LOOK_BACK("look-back", "look back", "left"),
  OPEN_STEP("open-step", "open this step", "g"),
  BACK_FROM_LOOK("back-from-look", "back to the open step", "space", "page-down", "enter", "esc"),
  PASS_ON("pass-on", "go on past", "space", "page-down", "enter"),
  AGAIN_NOW("again-now", "now", "space", "page-down", "enter"),
  TAKE_UP("take-up", "to its step", "enter", "space", "page-down"),
  SAY_WHERE("say-where", "say where it lies", "l"),
  WAIT("wait", "start its timer", "w"),
  DRAWN("drawn", "see it drawn", "p"),
  SEEN("seen", "seen", "space", "page-down", "enter"),

  TO_PLAN("to-plan", "plan", "p"),
  TO_TESTS("to-tests", "test pieces", "t"),
  TO_TRIAL("to-trial", "trial length", "l"),
  TO_BENCH("to-bench", "bench", "b", "enter"),
  TO_PILES("to-piles", "piles", "o"),
  TO_WIRE("to-wire", "wire", "w"),
  TO_BOOK("to-book", "book", "k"),
  TO_CAUTIONS("to-cautions", "cautions", "c"),
  TO_TIMERS("to-timers", "timers", "m"),
  TO_RECKONER("to-reckoner", "reckoner", "r"),
  TO_LOOKUP("to-lookup", "look it up", "e"),
  TO_WEIGH_IN("to-weigh-in", "weigh in", "i"),
  TO_TRAY("to-tray", "tray", "a"),
  TO_HANDS("to-hands", "hands", "h"),
  TO_DRAWER("to-drawer", "the drawer", "d"),
  LOT_CAME("lot-came", "what came", "n"),
  LOT_COUNTED("lot-counted", "set it right by the scale", "s", "enter"),
  RETURN_WIRE("return-wire", "back into the drawer", "g"),
  TAKE_SOLDER("take-solder", "solder out of the drawer", "s"),
  TO_OWN_BENCH("to-my-bench", "your bench", "o"),
  TO_WHAT_IF("what-if", "what if", "x"),
  CHANGE_BENCH("change-bench", "change it", "n", "enter"),
  KEEP_TYPED("keep-typed", "keep what was typed twice", "k"),
  KEEP_FOR_ALL("keep-for-all", "keep it at your bench", "+"),
  VARY("vary", "what is to be other", "n", "enter"),
  TO_REACH("what-there-is", "from what there is", "h"),
  SAY_WHAT_THERE_IS("say-what-there-is", "say what there is", "n", "enter"),
  PLAN_SO_LONG("plan-so-long", "plan it so long", "k"),
  TO_CARD("to-card", "job card", "d"),
  WRITE_CARD("write-card", "write the card", "n", "enter"),
  PUT_AWAY("put-away", "put it away", "x"),
  TO_LESSON("to-lesson", "lesson", "s"),
  TO_REHEARSAL("to-rehearsal", "rehearse it", "y"),
  TO_SAYING("to-saying", "say what comes", "ctrl-s"),
  TO_STUDENT("to-student", "her book", "t"),
  TO_CLASS("to-class", "the class", "c"),
  SIGN_STEP("sign-step", "sign a step or a piece", "g", "enter"),
  STUDY_PIECE("study-piece", "study a piece", "p"),
  SET_PRACTICE("set-practice", "set practice", "x"),
  NEXT_QUESTION("next-question", "go on", "space", "page-down", "enter"),
  MORE_QUESTIONS("more-questions", "twelve more", "space", "page-down", "enter"),
  NEW_STUDENT("new-student", "a new student", "n"),
  DRY_ON("dry-on", "the next step", "space", "page-down", "enter", "right"),
  DRY_BACK("dry-back", "the step before", "b", "left"),

  TO_JOINTS("to-joints", "by joints", "j"),
  TO_NEAREST("to-nearest", "nearest", "n"),
  FIT_RING("fit-ring", "other rings", "r"),
  FIT_LINK("fit-link", "other links", "l"),
  ONE_FEWER("one-fewer", "one fewer", "o"),
  ONE_MORE("one-more", "one more", "m"),
  JUMP_RINGS("jump-rings", "jump rings", "j"),
  OTHER_CLASP("other-clasp", "another clasp", "c"),

  LOG("log", "log one", "n", "enter"),
  SAMPLE("sample", "make it the sample link", "s"),
  CHOOSE_TRIAL("choose-trial", "the chain follows it", "s"),
  ADD_WIRE("add-wire", "wire came", "n"),
  CUT("cut", "wire was cut", "c"),
  DISCARD("discard", "wire lost", "x"),
  DRAW("draw", "draw it down", "d"),
  STRIKE("strike", "strike it", "x"),
  NOTE("note", "write a note", "n"),
  SEARCH("search", "narrow the list", "/"),
  ACCEPT("accept", "accept the line", "g"),
  LEAVE_OUT("leave-out", "leave it out", "x"),
  SHOW_ALL("show-all", "show all", "a"),
  NEWEST("newest", "newest", "home"),
  OLDEST("oldest", "oldest", "end"),
  OPEN_CARD("open-card", "open or shut it", "enter"),
  SET_TIMER("set-timer", "set one", "n"),
  STOP_TIMER("stop-timer", "quiet or stop it", "enter", "space", "page-down"),
  WEIGH("weigh", "weigh and measure", "n", "enter"),
  WEIGH_OUT("weigh-out", "weigh out", "o"),
  PRICE("price", "prices", "p"),
  HOURS("hours", "put the hours right", "h"),
  CLOSE("close", "close the job", "c"),
  TURN("turn", "the rest of it", "page-down"),
  MORE("more", "the next page", "v", "space", "page-down"),
  LESS("less", "the page before", "page-up"),
  REOPEN("reopen", "open it again", "g"),
  KEEP("keep", "keep", "ctrl-k"),
  THROW_AWAY("throw-away", "throw away what is typed", "ctrl-x");

  private final String id;
  private final String words;

  /** With spaces between: an enum holds no list. */
  private final String keys;

  Act(String id, String words, String... keys) {
    this.id = id;
    this.words = words;
    this.keys = String.join(" ", keys);
  }

  /** The act of that name; empty if there is none. */
  public static Optional<Act> withId(String id) {
    return Arrays.stream(values()).filter(act -> act.id.equals(id)).findFirst();
  }

  /** The name in the keys file. */
  public String id() {
    return id;
  }

  /** What it does, in a few words. */
  public String words() {
    return words;
  }

  /**
   * How soon after it counted the same key counts nothing, for it bounced; empty where a bounce
   * does no harm. Longer where it ends a step, a question, a card or a wait, that nobody could have
   * read in so short a time.
   */
  public Optional<Duration> pause() {
    return switch (this) {
      case DONE,
          TOGETHER,
          ONWARD,
          WAIT_FIRST,
          MEANWHILE,
          LIT,
          HOT_ON,
          SHUT_FIRST,
          FLAMES_OUT,
          STILL_LIT,
          LOOKED,
          TO_DUE,
          WAIT_OVER,
          HELD_REDO,
          NEXT_QUESTION,
          MORE_QUESTIONS,
          BACK_AT_BENCH,
          NONE_OF_THEM,
          PASS_ON,
          AGAIN_NOW,
          ALL,
          SEEN,
          ANSWER,
          STOP_TIMER,
          TRY_AGAIN,
          GIVE_UP ->
          Optional.of(Pauses.UNREAD);
      case THROUGH,
          BEGIN_ONE,
          CUT_ONE,
          UNDO,
          BRING_BACK,
          TAKE,
          NEXT_STEP,
          PREVIOUS_STEP,
          LOOK_ON,
          LOOK_BACK,
          OPEN_STEP,
          BACK_FROM_LOOK,
          TAKE_UP,
          SAY_WHERE,
          TO_PILES,
          WAIT,
          STEP_AWAY,
          LEAVE_QUESTION,
          TO_PERSONS,
          TO_HOT_WORK,
          STAY,
          ROUND,
          LEAVE,
          CHOOSE,
          REDO,
          SCRAP,
          TO_PLAN,
          TO_TESTS,
          TO_TRIAL,
          TO_BENCH,
          TO_WIRE,
          TO_BOOK,
          TO_CAUTIONS,
          TO_TIMERS,
          TO_RECKONER,
          TO_WEIGH_IN,
          TO_TRAY,
          TO_JOINTS,
          TO_NEAREST,
          FIT_RING,
          FIT_LINK,
          ONE_FEWER,
          ONE_MORE,
          JUMP_RINGS,
          OTHER_CLASP,
          MAKE_AGAIN,
          TO_HANDS,
          TO_LESSON,
          TO_SAYING,
          TO_STUDENT,
          TO_CLASS,
          TO_REHEARSAL,
          DRY_ON,
          DRY_BACK,
          LEAVE_OUT,
          TO_OWN_BENCH,
          TO_DRAWER,
          TO_WHAT_IF,
          TO_REACH,
          PLAN_SO_LONG,
          TO_CARD,
          PUT_AWAY,
          KEEP_TYPED,
          KEEP_FOR_ALL,
          SAMPLE,
          CHOOSE_TRIAL,
          STRIKE,
          TO_LOOKUP,
          TO_SETTINGS,
          ACCEPT,
          THROW_AWAY,
          REOPEN ->
          Optional.of(Pauses.BOUNCE);
      case HELP,
          NEW_STUDENT,
          SIGN_STEP,
          STUDY_PIECE,
          SET_PRACTICE,
          LOT_CAME,
          LOT_COUNTED,
          RETURN_WIRE,
          TAKE_SOLDER,
          CHANGE_BENCH,
          VARY,
          SAY_WHAT_THERE_IS,
          WRITE_CARD,
          UP,
          DOWN,
          NEW_JOB,
          LOG,
          ADD_WIRE,
          CUT,
          DISCARD,
          DRAW,
          NOTE,
          SEARCH,
          SHOW_ALL,
          FIND,
          ACROSS,
          COPY,
          TURN,
          LESS,
          NEWEST,
          OLDEST,
          OPEN_CARD,
          SET_TIMER,
          WEIGH,
          WEIGH_OUT,
          PRICE,
          HOURS,
          CLOSE,
          MORE,
          DRAWN,
          KEEP ->
          Optional.empty();
    };
  }

  /** The keys it has unless the user changes them, by the names of {@link KeyNames}. */
  public List<String> keys() {
    return List.of(keys.split(" "));
  }
}
