package linkwright.coach.keys;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Something the user can do with one key: its name, its words, what it is good for, its keys. The
 * words are shown, the keys can be changed in a file by the act's id.
 */
public enum Act {
  ROUND(
      "round",
      "places of the job",
      "back to the places of the job, or to the jobs; what is typed stays",
      "esc"),
  HELP("help", "all keys", "this list; in a form, what the field is and what it changes", "?"),
  FIND("find", "find", "anything by its name, and go there", "f", "ctrl-f"),
  ACROSS(
      "across",
      "across the room",
      "one number on all of the screen, to be read from across the room; again for everything",
      "="),
  COPY(
      "copy",
      "copy what stands here",
      "the one number, or all that this place says, for pasting elsewhere",
      "ctrl-y"),
  UNDO(
      "undo",
      "undo",
      "take back what was entered here last; nothing is erased from the book",
      "u",
      "ctrl-z"),
  BRING_BACK("bring-back", "bring it back", "enter again what undo took back last", "z"),
  ANSWER("answer", "quiet the timer", "a timer that is due rings no more", "."),
  LEAVE("leave", "leave", "end the program; everything entered is in the book", "q"),
  TO_SETTINGS("to-settings", "settings", "units, trade words, colours, mouse", ","),
  STEP_AWAY(
      "step-away",
      "step away",
      "the hours stop, the timers go on; torch and gas are asked for",
      "y"),

  TRY_AGAIN(
      "try-again", "try the same again", "write once more what could not be written", Act.COMMON),
  GIVE_UP("give-up", "give it up", "leave unwritten what could not be written", "esc"),

  UP("up", "up", "the line above", "up"),
  DOWN("down", "down", "the line below", "down"),
  CHOOSE("choose", "open", "what the chosen line is about", "enter"),
  NEW_JOB("new-job", "new job", "begin the book of another job", "n"),
  MAKE_AGAIN("make-again", "make it again", "begin a new job with what this one settled", "j"),

  THROUGH(
      "through",
      "one done",
      "one piece has come through this step; a number before it: so many",
      Act.COMMON),
  DONE("done", "done", "this step is done, on to the next", Act.COMMON),
  TOGETHER("together", "all done", "the whole batch has come through this step", Act.COMMON),
  BEGIN_ONE("begin-one", "one begun", "one more piece was begun", Act.COMMON),
  CUT_ONE("cut-one", "one cut", "one blank was cut; a number before it: so many", Act.COMMON),
  ONWARD(
      "onward",
      "on to the next step",
      "nothing waits here any more: on to where work waits",
      Act.COMMON),
  WAIT_FIRST("wait-first", "start its timer", "the wait of this step begins now", Act.COMMON),
  MEANWHILE(
      "not-yet", "other work meanwhile", "leave the wait running and go to other work", Act.COMMON),
  LIT(
      "lit",
      "torch lit: hot work is open",
      "said before it is lit; every flame out ends it",
      Act.COMMON),
  HOT_ON("hot-on", "kiln or hotplate on", "kiln or hotplate is on", Act.COMMON),
  TO_PERSONS("to-persons", "who works", "another person's sitting begins here", "@"),
  TO_HOT_WORK("to-hot-work", "every flame out?", "asks whether every flame is out", "!"),
  SHUT_FIRST("shut-first", "every flame out?", "asks whether every flame is out", Act.COMMON),
  FLAMES_OUT(
      "flames-out",
      "yes: every flame out, gas shut",
      "every flame is out, the gas shut: the fire watch runs from the last heat",
      "space",
      "page-down"),
  STILL_LIT(
      "still-lit",
      "no: it stays so, someone stays with it",
      "a flame stays lit, and somebody stays with it",
      "n"),
  STAY("stay", "stay here", "nothing is changed, and nobody leaves", "esc"),
  LOOKED("looked", "looked: done", "you looked and it is clean: the wait is over", "d"),
  TO_DUE("to-due", "to the wait that is over", "to the step whose wait is over", Act.COMMON),
  WAIT_OVER("wait-over", "its wait is over", "the wait is over and its timer quiet", Act.COMMON),
  HELD_REDO("held-redo", "to be redone", "the piece just counted goes back", Act.COMMON),
  LEAVE_QUESTION(
      "leave-question", "back to the bench", "nothing is changed by the question", "esc"),
  BACK_AT_BENCH("back-at-bench", "back at the bench", "the hours run again", Act.COMMON),
  NONE_OF_THEM(
      "none-of-them", "none of them", "none of these reasons: nothing is counted", Act.COMMON),
  ALL("all", "all that wait", "all pieces that wait here have come through", "a"),
  REDO("redo", "redo", "one piece failed and is to be redone; a number before it: so many", "r"),
  SCRAP("scrap", "scrap", "one piece goes to scrap; a number before it: so many", "s"),
  TAKE("take", "new or redo", "take pieces that are to be redone, or new ones again", "x"),
  OTHER_SIZE("other-size", "another size", "links of the next size are counted here", "i"),
  NEXT_STEP("next-step", "next step", "open the next step, its cautions first", "n"),
  PREVIOUS_STEP("previous-step", "step before", "open the step before", "b"),
  LOOK_ON("look-on", "look ahead", "read the next step without opening it", "right"),
  LOOK_BACK("look-back", "look back", "read the step before without opening it", "left"),
  OPEN_STEP("open-step", "open this step", "open the step that is looked at", "g"),
  BACK_FROM_LOOK(
      "back-from-look",
      "back to the open step",
      "the step that is open is shown again",
      Act.COMMON,
      "esc"),
  PASS_ON("pass-on", "go on past", "leave this step as it is", Act.COMMON),
  AGAIN_NOW("again-now", "now", "it is done now", Act.COMMON),
  TAKE_UP(
      "take-up",
      "to its step",
      "to the step where the chosen pieces go on",
      "enter",
      "space",
      "page-down"),
  SAY_WHERE("say-where", "say where it lies", "note where the chosen pieces lie", "l"),
  WAIT("wait", "start its timer", "begin the wait of this step", "w"),
  DRAWN(
      "drawn",
      "see it drawn",
      "the step drawn: its bends, joints, flames; once more: the next, then the texts",
      "p"),
  SEEN("seen", "seen", "the caution was read: on", Act.COMMON),

  TO_PLAN("to-plan", "plan", "what is wished and what it comes to", "p"),
  TO_TESTS("to-tests", "test pieces", "pieces made to find the size", "t"),
  TO_TRIAL("to-trial", "trial length", "a few finished links hung and measured", "l"),
  TO_BENCH("to-bench", "bench", "the steps, one at a time", "b", "enter"),
  TO_PILES("to-piles", "piles", "what waits between the steps, and where", "o"),
  TO_FAILED(
      "to-failed",
      "what failed",
      "what was redone and scrapped, where and why, with the cure",
      "s"),
  TO_WIRE("to-wire", "wire", "what came, was cut and is left", "w"),
  TO_BOOK("to-book", "book", "every entry of this job", "k"),
  TO_CAUTIONS("to-cautions", "cautions", "all safety cards", "c"),
  TO_TIMERS("to-timers", "timers", "every timer, set and stopped", "m"),
  TO_RECKONER("to-reckoner", "reckoner", "one sum at a time", "r"),
  TO_LOOKUP(
      "to-lookup",
      "look it up",
      "the words of this step, metals, solders, clasps, patterns, the law on marks",
      "e"),
  TO_WEIGH_IN("to-weigh-in", "weigh in", "weigh, price, close", "i"),
  TO_TRAY("to-tray", "tray", "all jobs at hand", "a"),
  TO_HANDS("to-hands", "hands", "what earlier pieces taught of your hands", "h"),
  TO_DRAWER("to-drawer", "the drawer", "wire and other metal on hand, by lot", "d"),
  LOT_CAME("lot-came", "what came", "enter what came into the drawer, as a lot", "n"),
  LOT_COUNTED(
      "lot-counted", "set it right by the scale", "set a lot right by one weight", "s", "enter"),
  RETURN_WIRE(
      "return-wire",
      "back into the drawer",
      "wire or solder of this job goes back into a lot",
      "g"),
  TAKE_SOLDER("take-solder", "solder out of the drawer", "solder for this job, by its lot", "s"),
  TO_OWN_BENCH("to-my-bench", "your bench", "what is yours whatever the job", "o"),
  TO_WHAT_IF(
      "what-if", "what if", "the plan with one thing changed, beside the one that is kept", "x"),
  CHANGE_BENCH(
      "change-bench", "change it", "write down what is yours whatever the job", "n", "enter"),
  KEEP_TYPED(
      "keep-typed",
      "keep what was typed twice",
      "keep what is typed in place of what is taken",
      "k"),
  KEEP_FOR_ALL(
      "keep-for-all",
      "keep it at your bench",
      "what was typed for another job too is taken in every job",
      "+"),
  VARY("vary", "change one thing", "try the plan with one thing changed", "n", "enter"),
  TO_REACH(
      "what-there-is",
      "from what there is",
      "the longest chain from your wire, metal, money or hours",
      "h"),
  SAY_WHAT_THERE_IS(
      "say-what-there-is",
      "say what there is",
      "wire, metal, money or hours that there are",
      "n",
      "enter"),
  PLAN_SO_LONG(
      "plan-so-long", "plan it so long", "the longest chain becomes the one that is planned", "k"),
  TO_EXCHANGE("to-exchange", "out and in", "files for other programs, and rows out of theirs", "g"),
  WRITE_OUT(
      "write-out",
      "write a file",
      "this job, its plan, the drawer or your hands into a file",
      "n",
      "enter"),
  TAKE_ROWS(
      "take-rows", "take rows in", "enter test pieces, tallies or lots out of a file of rows", "t"),
  TO_CARD("to-card", "job card", "customer, promised day, price, deposit, clasp, mark", "d"),
  WRITE_CARD("write-card", "write the card", "what was agreed for this job", "n", "enter"),
  PUT_AWAY("put-away", "put it away", "out of the tray, or back; nothing is erased", "x"),
  TO_LESSON(
      "to-lesson", "lesson", "be asked before the step is shown; what is missed comes back", "s"),
  TO_REHEARSAL(
      "to-rehearsal",
      "rehearse it",
      "walk a routine dry, forwards and back; nothing is entered",
      "y"),
  TO_SAYING(
      "to-saying",
      "say what comes",
      "a student says what comes before the step is shown",
      "ctrl-s"),
  TO_STUDENT(
      "to-student", "lesson book", "what is known, what was made, what to practise next", "t"),
  TO_CLASS(
      "to-class",
      "the class",
      "all students: who is where, what is got wrong, who waits for a mark",
      "c"),
  READ_CLASS("read-class", "read it anew", "look into the students' books again now", "r"),
  SIGN_STEP(
      "sign-step",
      "sign a step or a piece",
      "a teacher's mark under a step or a piece: a mark, not a proof",
      "g",
      "enter"),
  STUDY_PIECE(
      "study-piece",
      "study a piece",
      "what was expected of a piece, what came, what will change",
      "p"),
  SET_PRACTICE("set-practice", "set practice", "so many pieces of a step, in so many days", "x"),
  NEXT_QUESTION("next-question", "go on", "on to the next question", Act.COMMON),
  MORE_QUESTIONS("more-questions", "twelve more", "twelve questions more", Act.COMMON),
  NEW_STUDENT(
      "new-student",
      "a new student",
      "begin a student's book; her name stays in your own file",
      "n"),
  DRY_ON("dry-on", "the next step", "the next step of the rehearsal", Act.COMMON, "right"),
  DRY_BACK("dry-back", "the step before", "the step before, in the rehearsal", "b", "left"),

  TO_JOINTS(
      "to-joints", "count joints", "joints as you count them: so many failed of so many", "j"),
  TO_NEAREST("to-nearest", "nearest", "the nearest lengths that you can have, and by what", "n"),
  FIT_RING("fit-ring", "other rings", "other rings, so that the length comes out", "r"),
  FIT_LINK("fit-link", "other links", "other links, so that the length comes out", "l"),
  ONE_FEWER("one-fewer", "one fewer", "one link fewer than planned", "o"),
  ONE_MORE("one-more", "one more", "one link more than planned", "m"),
  JUMP_RINGS(
      "jump-rings", "jump rings", "wider rings at the ends, so that the length comes out", "j"),
  OTHER_CLASP("other-clasp", "another clasp", "another clasp, so that the length comes out", "c"),

  LOG("log", "log one", "enter one that was made and measured", "n", "enter"),
  SAMPLE("sample", "make it the sample link", "the run follows the chosen piece", "s"),
  CHOOSE_TRIAL(
      "choose-trial", "the chain follows it", "the plan is counted anew from the chosen one", "s"),
  ADD_WIRE("add-wire", "wire came", "enter lengths that this job may take", "n"),
  CUT("cut", "wire was cut", "enter blanks that were cut elsewhere", "c"),
  DISCARD("discard", "wire lost", "enter wire that is gone", "x"),
  DRAW("draw", "draw it down", "thicker wire down to a thinner size", "d"),
  STRIKE(
      "strike",
      "strike it",
      "the chosen entry counts no more, for a reason; a struck one comes back",
      "x"),
  NOTE("note", "write a note", "words for the book", "n"),
  SEARCH("search", "narrow the list", "only what holds the letters typed", "/"),
  ACCEPT("accept", "accept the line", "a line whose check fails counts from now on", "g"),
  LEAVE_OUT(
      "leave-out",
      "leave it out",
      "a job counts no more in what the hands were taught, or again",
      "x"),
  SHOW_ALL("show-all", "show all", "the list is whole again", "a"),
  NEWEST("newest", "newest", "the first line", "home"),
  OLDEST("oldest", "oldest", "the last line", "end"),
  OPEN_CARD("open-card", "open or shut it", "the chosen one whole, or the list again", "enter"),
  SET_TIMER("set-timer", "set one", "a timer of your own", "n"),
  STOP_TIMER(
      "stop-timer",
      "quiet or stop it",
      "the chosen one rings or runs no more",
      "enter",
      "space",
      "page-down"),
  WEIGH("weigh", "weigh and measure", "what came of it, piece by piece on the scale", "n", "enter"),
  WEIGH_OUT("weigh-out", "weigh out", "metal that the job took", "o"),
  PRICE("price", "prices", "your own figures for the price", "p"),
  HOURS(
      "hours",
      "put the hours right",
      "what was really worked, where the count is wrong, with the reason",
      "h"),
  CLOSE("close", "close the job", "the job is done; it can be opened again", "c"),
  TURN("turn", "the rest of it", "what had no room", "page-down"),
  MORE("more", "the next page", "what had no room", "v", "space", "page-down"),
  LESS("less", "the page before", "back to what came before", "page-up"),
  REOPEN("reopen", "open it again", "go on with a job that was closed", "g"),
  KEEP("keep", "keep", "keep what is typed", "ctrl-k"),
  THROW_AWAY(
      "throw-away",
      "throw away what is typed",
      "what waits in a form, typed and not entered",
      "ctrl-x");

  private static final String COMMON = "space page-down enter";

  private final String id;
  private final String words;
  private final String help;

  /** With spaces between: an enum holds no list. */
  private final String keys;

  Act(String id, String words, String help, String... keys) {
    this.id = id;
    this.words = words;
    this.help = help;
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

  /** What it is good for, in a sentence, for the list of keys and for finding. */
  public String help() {
    return help;
  }

  /** The keys it has unless the user changes them, by the names of {@link KeyNames}. */
  public List<String> keys() {
    return List.of(keys.split(" "));
  }
}
