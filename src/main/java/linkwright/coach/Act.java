package linkwright.coach;

import java.util.List;

/**
 * Something the user can do with one key. The words are shown, the keys can be changed in a file by
 * the act's id.
 */
public enum Act {
  ROUND("round", "the way round", "esc"),
  HELP("help", "all keys", "?"),
  UNDO("undo", "undo", "u", "ctrl-z"),
  BRING_BACK("bring-back", "bring it back", "z"),
  ANSWER("answer", "answer timer", "."),
  LEAVE("leave", "leave", "q"),
  STEP_AWAY("step-away", "step away", "y"),

  UP("up", "up", "up"),
  DOWN("down", "down", "down"),
  CHOOSE("choose", "open", "enter"),
  NEW_JOB("new-job", "new job", "n"),
  DEMO("demo", "look at the demo", "d"),

  THROUGH("through", "one through", "space", "page-down", "enter"),
  DONE("done", "done", "space", "page-down", "enter"),
  TOGETHER("together", "all through", "space", "page-down", "enter"),
  BEGIN_ONE("begin-one", "one begun", "space", "page-down", "enter"),
  CUT_ONE("cut-one", "one cut", "space", "page-down", "enter"),
  ONWARD("onward", "on to the next step", "space", "page-down", "enter"),
  WAIT_FIRST("wait-first", "start its timer", "space", "page-down", "enter"),
  NOT_YET("not-yet", "wait for the timer", "space", "page-down", "enter"),
  BACK_AT_BENCH("back-at-bench", "back at the bench", "space", "page-down", "enter"),
  AWAY_NOW("away-now", "step away now", "space", "page-down", "enter"),
  NONE_OF_THEM("none-of-them", "none of them", "space", "page-down", "enter"),
  ALL("all", "all that wait", "a"),
  REDO("redo", "redo", "r"),
  SCRAP("scrap", "scrap", "s"),
  TAKE("take", "new or redo", "t"),
  NEXT_STEP("next-step", "next step", "n", "right"),
  PREVIOUS_STEP("previous-step", "step before", "b", "left"),
  WAIT("wait", "start its timer", "w"),
  DETAIL("detail", "why and what may go wrong", "v"),
  SEEN("seen", "seen", "space", "page-down", "enter"),

  TO_PLAN("to-plan", "plan", "p"),
  TO_TESTS("to-tests", "test pieces", "t"),
  TO_TRIAL("to-trial", "trial length", "l"),
  TO_BENCH("to-bench", "bench", "b", "enter"),
  TO_WIRE("to-wire", "wire", "w"),
  TO_BOOK("to-book", "book", "k"),
  TO_CAUTIONS("to-cautions", "cautions", "c"),
  TO_TIMERS("to-timers", "timers", "m"),
  TO_RECKONER("to-reckoner", "reckoner", "r"),
  TO_WEIGH_IN("to-weigh-in", "weigh in", "i"),
  TO_TRAY("to-tray", "tray", "a"),

  LOG("log", "log one", "n", "enter"),
  SAMPLE("sample", "make it the sample link", "s"),
  CHOOSE_TRIAL("choose-trial", "the chain follows it", "s"),
  ADD_WIRE("add-wire", "wire came", "n"),
  CUT("cut", "wire was cut", "c"),
  DISCARD("discard", "wire lost", "x"),
  DRAW("draw", "draw it down", "d"),
  STRIKE("strike", "strike it", "x"),
  NOTE("note", "write a note", "n"),
  SEARCH("search", "search", "/"),
  ACCEPT("accept", "accept the line", "v"),
  SHOW_ALL("show-all", "show all", "a"),
  PAGE_DOWN("page-down", "page down", "page-down", "space"),
  PAGE_UP("page-up", "page up", "page-up"),
  NEWEST("newest", "newest", "home"),
  OLDEST("oldest", "oldest", "end"),
  OPEN_CARD("open-card", "open or shut it", "enter"),
  TURN_CARD("turn-card", "rest of the card", "space", "page-down"),
  SET_TIMER("set-timer", "set one", "n"),
  STOP_TIMER("stop-timer", "answer or stop it", "enter", "space", "page-down"),
  WEIGH("weigh", "weigh and measure", "n", "enter"),
  WEIGH_OUT("weigh-out", "weigh out", "o"),
  PRICE("price", "prices", "p"),
  CLOSE("close", "close the job", "c"),
  MORE("more", "the rest of it", "v"),
  REOPEN("reopen", "open it again", "g"),
  KEEP("keep", "keep", "ctrl-k");

  private final String id;
  private final String words;

  /** With spaces between: an enum holds no list. */
  private final String keys;

  Act(String id, String words, String... keys) {
    this.id = id;
    this.words = words;
    this.keys = String.join(" ", keys);
  }

  /** The name in the keys file. */
  public String id() {
    return id;
  }

  /** What it does, in a few words. */
  public String words() {
    return words;
  }

  /** The keys it has unless the user changes them, by the names of {@link KeyNames}. */
  public List<String> keys() {
    return List.of(keys.split(" "));
  }
}
