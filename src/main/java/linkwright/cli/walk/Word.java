package linkwright.cli.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What can be typed in a walk. */
enum Word {
  ALL("all", "all that wait come through"),
  REDO("redo", "one fails and is done again; redo 3: three"),
  SCRAP("scrap", "one is lost; scrap 2: two"),
  TAKE("take", "take from the redo pile, or again from the new ones"),
  UNDO("undo", "take back what was entered here last; undo note, undo wire: there"),
  RESTORE("restore", "bring back what undo took last; restore note, restore wire: there"),
  NEXT("next", "the next step"),
  BACK("back", "the step before"),
  TIMER("timer", "start the step's timer; timer kettle 8 min: one of your own"),
  ANSWER("answer", "answer the timer that is due"),
  TIMERS("timers", "every timer that runs"),
  WHY("why", "why this step is done so, and what may go wrong"),
  CARDS("cards", "the step's cautions, whole"),
  AWAY("away", "step away from the bench"),
  BENCH("bench", "to the bench"),
  PLAN("plan", "the plan, to be set or changed"),
  TESTS("tests", "the test pieces"),
  TRIAL("trial", "the trial lengths"),
  LOG("log", "log a test piece or a trial length; log blank 38 mm; length 14 mm"),
  SAMPLE("sample", "make the last test piece the sample link; sample 2: the second"),
  FOLLOW("follow", "the chain follows the last trial length; follow 2: the second"),
  WIRE("wire", "the wire on hand; wire came, wire cut or wire lost enters some"),
  OUT("out", "metal weighed out for this job"),
  WEIGH("weigh", "weigh and measure what came of it; weigh chain 9 g; length 19 cm"),
  PRICES("prices", "your own figures for the price"),
  CLOSE("close", "close the job"),
  REOPEN("reopen", "open a closed job again"),
  NOTE("note", "write a note; note and its text"),
  BOOK("book", "the last entries; book 20: twenty"),
  WHERE("where", "where the job stands"),
  HELP("help", "this"),
  QUIT("quit", "leave; everything entered is in the book");

  private final String word;
  private final String says;

  Word(String word, String says) {
    this.word = word;
    this.says = says;
  }

  String word() {
    return word;
  }

  static Optional<Word> of(String typed) {
    String word = typed.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
  }

  static List<String> words() {
    return Arrays.stream(values()).map(Word::word).toList();
  }

  static List<String> help() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "An empty line: what comes most often: caution seen, one through, step done, log one.");
    lines.add("A number: so many come through; where a reason is asked for, that reason.");
    for (Word each : values()) {
      lines.add(each.word + ": " + each.says + ".");
    }
    return lines;
  }
}
