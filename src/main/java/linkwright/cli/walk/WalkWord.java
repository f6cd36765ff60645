package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.keys.Act;
import linkwright.routine.TradeWords;

/** What can be typed in a walk. An act without a word of its own is typed by its name. */
enum WalkWord {
  ALL("all", "all that wait come through", Act.ALL),
  REDO("redo", "one fails and is redone; redo 3: three", Act.REDO),
  SCRAP("scrap", "one goes to scrap; scrap 2: two", Act.SCRAP),
  JOINTS("joints", "joints as you count them; joints failed 6; of 19", Act.TO_JOINTS),
  TAKE("take", "take from the redo pile, or again from the new ones", Act.TAKE),
  UNDO("undo", "take back what was entered here last; undo note, undo wire: there", Act.UNDO),
  RESTORE(
      "restore",
      "bring back what undo took last; restore note, restore wire: there",
      Act.BRING_BACK),
  NEXT("next", "the next step", Act.NEXT_STEP),
  BACK("back", "the step before", Act.PREVIOUS_STEP),
  LOOK("look", "look at the step after; writes nothing", Act.LOOK_ON),
  PILES(
      "piles",
      "where every piece is; piles 2: to the step where the second is taken up",
      Act.TO_PILES,
      Act.TAKE_UP),
  FAILED("failed", "what was redone and scrapped, where and why", Act.TO_FAILED),
  LIES("lies", "say where the chosen pile lies; lies 2: the second", Act.SAY_WHERE),
  TIMER(
      "timer",
      "start the step's timer; timer kettle 8 min: one of your own",
      Act.WAIT,
      Act.SET_TIMER),
  QUIET("quiet", "quiet the timer that is due", Act.ANSWER),
  WHO("who", "who works now; who Ana", Act.TO_PERSONS),
  LIT("lit", "the torch is lit: hot work is open", Act.LIT),
  SHUT("shut", "every flame out, gas shut", Act.FLAMES_OUT, Act.TO_HOT_WORK),
  LOOKED("looked", "the pickle was looked to and is clean: its wait is over", Act.LOOKED),
  TIMERS("timers", "every timer that runs", Act.TO_TIMERS),
  STOP(
      "stop",
      "stop the timer that ends first; stop 2: the second. A step's wait asks why",
      Act.STOP_TIMER),
  WHY("why", "why this step is done so, and what may go wrong", Act.MORE),
  CARDS("cards", "the step's cautions, whole"),
  CARD("card", "the job card; card mark: 925 writes it", Act.WRITE_CARD, Act.TO_CARD),
  THERE(
      "there",
      "the longest chain from what there is; there metal: 20 g; hours: 6",
      Act.SAY_WHAT_THERE_IS,
      Act.TO_REACH),
  CAUTIONS("cautions", "all cautions of this job", Act.TO_CAUTIONS),
  AWAY("away", "step away from the bench", Act.STEP_AWAY),
  BENCH("bench", "to the bench", Act.TO_BENCH),
  PLAN("plan", "the plan, to be set or changed", Act.TO_PLAN),
  NEAREST("nearest", "chains near the one wished that can be had", Act.TO_NEAREST),
  TESTS("tests", "the test pieces", Act.TO_TESTS),
  TRIAL("trial", "the trial lengths", Act.TO_TRIAL),
  LOG("log", "log a test piece or a trial length; log blank 38 mm; length 14 mm", Act.LOG),
  SAMPLE("sample", "make the last test piece the sample link; sample 2: the second", Act.SAMPLE),
  FOLLOW(
      "follow", "the chain follows the last trial length; follow 2: the second", Act.CHOOSE_TRIAL),
  WIRE(
      "wire",
      "the wire on hand; wire came, wire cut, wire lost or wire drawn enters some",
      Act.TO_WIRE),
  OUT("out", "metal weighed out for this job", Act.WEIGH_OUT),
  WEIGH(
      "weigh",
      "weigh and measure what came of it; weigh chain 9 g; length 19 cm",
      Act.WEIGH,
      Act.TO_WEIGH_IN),
  HOURS("hours", "put the hours right; hours time 3 h; why forgot to step away", Act.HOURS),
  PRICES("prices", "your own figures for the price", Act.PRICE),
  CLOSE("close", "close the job", Act.CLOSE),
  REOPEN("reopen", "open a closed job again", Act.REOPEN),
  NOTE("note", "write a note; note and its text", Act.NOTE),
  BOOK("book", "the last entries; book 20: twenty", Act.TO_BOOK),
  RECKONER(
      "reckoner",
      "sums on wire, rings, blanks and solder; reckoner ring: that one",
      Act.TO_RECKONER),
  WORDS(
      "words",
      "the words of this step explained; words and one of them: that word, a metal or a solder",
      Act.TO_LOOKUP),
  FIND("find", "find WORDS: goes to the place, step, caution or metal of that name", Act.FIND),
  SEARCH("search", "search WORDS: the entries of the book that say so", Act.SEARCH),
  STRIKE("strike", "strike 12 miscounted: entry 12 counts no more, for that reason", Act.STRIKE),
  LESSON("lesson", "be asked before you are told; a number answers", Act.TO_LESSON),
  REHEARSE("rehearse", "the steps dry; nothing is entered", Act.TO_REHEARSAL),
  STUDENT("student", "the book of whoever works; student NAME picks one", Act.TO_STUDENT),
  SIGN("sign", "a teacher's mark in the book that is shown, or of whoever works", Act.SIGN_STEP),
  CLASS("class", "all students at a glance", Act.TO_CLASS),
  SETTINGS("settings", "units, trade words, looks", Act.TO_SETTINGS),
  BRIEF("brief", "one line a count; brief again: everything"),
  REPEAT("repeat", "tell the page once more"),
  PLACES("places", "the places of the job, and how it stands at each", Act.ROUND),
  WHERE("where", "where you are: job, place, step and what stands in front; nothing moves"),
  HELP(
      "help",
      "this; help WORD: what that word does or means; list metals: all of them; lists: what can be",
      Act.HELP),
  QUIT("quit", "leave; everything entered is in the book", Act.LEAVE);

  private final String word;
  private final String says;

  /** The acts' ids, with spaces between: an enum holds no list. */
  private final String acts;

  WalkWord(String word, String says, Act... acts) {
    this.word = word;
    this.says = says;
    this.acts = Arrays.stream(acts).map(Act::id).collect(Collectors.joining(" "));
  }

  String word() {
    return word;
  }

  /** The word and what it does. */
  String told() {
    return word + ": " + says + ".";
  }

  private List<String> acts() {
    return List.of(acts.split(" ", -1));
  }

  static Optional<WalkWord> of(String typed) {
    String lower = typed.toLowerCase(Locale.ROOT);
    // The key that leads back on the screen leads back here; a timer was answered once; and as
    // American readers say it.
    String word =
        Map.of("esc", PLACES.word, "answer", QUIET.word, "seams", JOINTS.word)
            .getOrDefault(lower, lower);
    return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
  }

  /** With what a line begins. */
  static String first(String line) {
    return line.split("[\\s:=,;.]+", 2)[0];
  }

  /** Whether it is about the job that is worked on. */
  boolean isOfJob() {
    return !EnumSet.of(
            FIND, WORDS, RECKONER, SETTINGS, LESSON, REHEARSE, STUDENT, CLASS, REPEAT, WHERE, HELP,
            QUIT)
        .contains(this);
  }

  /** Whether what begins with it is asked of the walk and nothing that one writes into a field. */
  boolean isNoText() {
    return this == FIND || this == SEARCH || this == UNDO || this == RESTORE || this == STRIKE;
  }

  /** What is typed for an act. */
  static String of(Act act) {
    return Arrays.stream(values())
        .filter(each -> each.acts().contains(act.id()))
        .map(WalkWord::word)
        .findFirst()
        .or(() -> ShortVisits.wordOf(act))
        .orElseGet(() -> spoken(act));
  }

  /** What it does, where that is a few plain words, as it is read; else its name. */
  private static String spoken(Act act) {
    return act.words().matches("[a-z ]+") ? act.words() : act.id().replace('-', ' ');
  }

  /** Whether a line is what that act is called, by its name or by what it does. */
  static boolean names(String line, Act act, String says) {
    String typed = line.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
    return Stream.of(act.id(), act.words(), says)
        .filter(name -> !name.isEmpty())
        .anyMatch(name -> name.toLowerCase(Locale.ROOT).replace('-', ' ').equals(typed));
  }

  /** How a sentence names an act: by its word, in quotes, as the screen names it by its key. */
  static String naming(Act act, TradeWords words) {
    return "“" + words.show(of(act)) + "”";
  }

  static List<String> words() {
    return Arrays.stream(values()).map(WalkWord::word).toList();
  }

  /** What those words do, and what is typed without one. */
  static List<String> help(List<WalkWord> words) {
    List<String> lines = new ArrayList<>();
    lines.add("An empty line: what comes most often; each page says what that is.");
    lines.add(
        words.contains(REDO)
            ? "A number: so many come through; where a question is asked, that answer."
            : "A number: where a question or a list is told, that answer or line.");
    words.forEach(each -> lines.add(each.told()));
    lines.add("Where a page says “or type”, its words do what stands beside them.");
    return lines;
  }
}
