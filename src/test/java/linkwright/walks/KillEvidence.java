package linkwright.walks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Bencher;
import linkwright.coach.kernel.BookTitles;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.StudentsAtHand;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.walks.KillPlan.Doing;

/**
 * What a killed round left: what it had shown as kept, and its book. A judge over both that knows
 * nothing of when the program died, so that it can judge a kept round again.
 *
 * @param plan what the round did
 * @param before how many pieces and notes the book held when it began
 * @param shown what was shown, to the last byte before it died
 * @param book the book afterwards: the job's, or the drawer's
 * @param others what was found wrong in other files, a line each
 */
record KillEvidence(KillPlan plan, int before, String shown, String book, String others) {
  /** What the bench says of pieces that came through; all that were counted so far. */
  private static final Pattern THROUGH = Pattern.compile("through (\\d+)");

  private static final Pattern LOT = Pattern.compile("(?m)^Lot (w-\\d+-\\d+),");

  private static final Pattern NOTED = Pattern.compile("note: (w-\\d+-\\d+)");

  private static final String TOLD = "Entered: ";

  /** What the plain walk tells of the workload once it is kept; a line that was cut is none. */
  private static final Pattern TOLD_OF = Pattern.compile(TOLD + "(note: w-.*|\\d+ rings? .*)\\.");

  /** What is wrong with it; nothing if nothing was lost, doubled or made up. */
  List<String> wrong() throws IOException {
    Path path = Files.createTempFile("killed", ".yaml");
    try {
      Files.writeString(path, book);
      List<String> wrong = new ArrayList<>(others.lines().toList());
      // Before the first lot came there is no book of the drawer.
      if (!book.isEmpty()) {
        wrong.addAll(wrong(BookFile.look(path)));
      } else if (before > 0 || LOT.matcher(shown).find()) {
        wrong.add("Lost: there is no book.");
      }
      return wrong;
    } finally {
      Files.deleteIfExists(path);
    }
  }

  private List<String> wrong(Read<BookFile> read) {
    if (!(read instanceof Read.Good<BookFile> good)) {
      return List.of("The book cannot be opened: " + read.problem().orElse(""));
    }
    List<String> wrong = new ArrayList<>();
    good.value().problems().stream()
        .map(Problem::wrong)
        .filter(told -> !told.startsWith("The last line was cut short"))
        .forEach(wrong::add);
    List<Fact> all =
        EntryLines.entries(good.value().lines()).stream()
            .map(entry -> entry.fact())
            .filter(fact -> done(fact).isPresent())
            .toList();
    List<Fact> since = all.subList(Math.min(before, all.size()), all.size());
    if (all.size() < before) {
      wrong.add("Of " + before + " earlier entries " + all.size() + " are left.");
    }
    madeUp(since, wrong);
    switch (plan.way()) {
      case SCREEN -> lostOnScreen(all, wrong);
      case LINES -> lostInLines(since, wrong);
      case COMMANDS -> lostLots(all, wrong);
    }
    return wrong;
  }

  /** What a fact of the workload stands for. */
  static Optional<Doing> done(Fact fact) {
    if (fact instanceof Fact.Noted noted) {
      return Optional.of(new Doing(0, noted.text()));
    }
    if (fact instanceof LotFact.LotArrived came) {
      return Optional.of(new Doing(0, came.lot()));
    }
    if (fact instanceof Fact.WireCut begun) {
      return Optional.of(new Doing(begun.count(), ""));
    }
    return Optional.empty();
  }

  /** The book holds what was sent, in its order and each once at most. */
  private void madeUp(List<Fact> since, List<String> wrong) {
    int next = 0;
    for (Fact fact : since) {
      Doing there = done(fact).orElseThrow();
      while (next < plan.entries().size() && !plan.entries().get(next).equals(there)) {
        next++;
      }
      if (next == plan.entries().size()) {
        wrong.add("Doubled, out of order or never sent: " + there);
        return;
      }
      next++;
    }
  }

  private static String words(Fact fact) {
    return EntryWords.of(
        fact,
        new BookTitles(Bencher.SHELF, "", StudentsAtHand.NOBODY),
        Settings.USUAL,
        id -> "" + id.number());
  }

  /** The lines that told entries are those of the book's first entries. */
  private void lostInLines(List<Fact> since, List<String> wrong) {
    int at = 0;
    for (String line : shown.split("\n", -1)) {
      if (isTold(line)) {
        boolean kept = at < since.size() && line.equals(TOLD + words(since.get(at)) + ".");
        if (!kept) {
          wrong.add("Lost: “" + line + "” was told and is not in the book as entry " + at + ".");
          return;
        }
        at++;
      }
    }
  }

  static boolean isTold(String line) {
    return TOLD_OF.matcher(line).matches();
  }

  /** Every note and every sum that stood on the screen is one of the book's. */
  private void lostOnScreen(List<Fact> all, List<String> wrong) {
    List<String> notes = new ArrayList<>();
    List<Integer> sums = new ArrayList<>(List.of(0));
    for (Fact fact : all) {
      Doing there = done(fact).orElseThrow();
      notes.add(there.note());
      sums.add(sums.get(sums.size() - 1) + there.count());
    }
    Matcher noted = NOTED.matcher(shown);
    while (noted.find()) {
      if (!notes.contains(noted.group(1))) {
        wrong.add("Lost: the note " + noted.group(1) + " was shown and is not in the book.");
      }
    }
    Matcher through = THROUGH.matcher(shown);
    while (through.find()) {
      if (!sums.contains(Integer.parseInt(through.group(1)))) {
        wrong.add("Lost or doubled: " + through.group() + " was shown; the sums are " + sums);
      }
    }
  }

  /** Every lot that a command listed is in the drawer's book. */
  private void lostLots(List<Fact> all, List<String> wrong) {
    List<String> lots = all.stream().map(fact -> done(fact).orElseThrow().note()).toList();
    Matcher listed = LOT.matcher(shown);
    while (listed.find()) {
      if (!lots.contains(listed.group(1))) {
        wrong.add("Lost: the lot " + listed.group(1) + " was listed and is not in the drawer.");
      }
    }
  }

  /** One file that holds the round. */
  Path keep(List<String> why) throws IOException {
    Path file =
        Files.createDirectories(Path.of("target", "kills"))
            .resolve(plan.seed() + "-" + plan.round() + ".txt");
    String head =
        "seed: "
            + plan.seed()
            + "\nround: "
            + plan.round()
            + "\nbefore: "
            + before
            + "\nreplay: mvn -B verify -Dtest=none -Dsurefire.failIfNoSpecifiedTests=false"
            + " -Dit.test=UntimelyKillsIT -Dlinkwright.replay="
            + file
            + "\nplan: "
            + plan
            + "\nwrong: "
            + String.join(" | ", why)
            + "\nothers: "
            + others.replace('\n', '|')
            + "\nshown:\n";
    String text = head + shown + "\nbook:\n" + book;
    return Files.writeString(file, text);
  }

  /** A round as it was kept, to be judged again. */
  static KillEvidence kept(Path file) throws IOException {
    String text = Files.readString(file);
    int shown = text.indexOf("\nshown:\n");
    int book = text.lastIndexOf("\nbook:\n");
    String head = text.substring(0, shown);
    return new KillEvidence(
        KillPlan.of(number(head, "seed"), (int) number(head, "round")),
        (int) number(head, "before"),
        text.substring(shown + 8, book),
        text.substring(book + 7),
        line(head, "others").replace('|', '\n'));
  }

  private static long number(String head, String key) {
    return Long.parseLong(line(head, key));
  }

  private static String line(String head, String key) {
    Matcher found = Pattern.compile("(?m)^" + key + ": (.*)$").matcher(head);
    if (!found.find()) {
      throw new IllegalArgumentException("the file names no " + key);
    }
    return found.group(1);
  }
}
