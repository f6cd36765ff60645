package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import linkwright.files.Checking;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.quantity.Problem;
import linkwright.shell.DrawerBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Books of one job from several machines. */
class BookMergeTest {
  private static final Instant NOW = BookFileTest.NOW;
  private static final BookLine OPENED =
      EntryLines.line(
          new Entry(1, NOW, "bench-k7f3m2q9", new Fact.JobOpened("Trace", "round-cable")));

  @TempDir Path folder;

  private Path book(String name, List<BookLine> lines) throws IOException {
    StringBuilder text = new StringBuilder(BookText.HEADER).append('\n');
    java.util.Map<String, String> last = new java.util.HashMap<>();
    for (BookLine line : lines) {
      String written = BookText.encode(line, last.getOrDefault(line.device(), ""));
      last.put(line.device(), written.substring(written.length() - 8));
      text.append(written).append('\n');
    }
    return Files.writeString(folder.resolve(name), text.toString());
  }

  private static BookLine noted(int number, String device, Duration since) {
    return EntryLines.line(
        new Entry(number, NOW.plus(since), device, new Fact.Noted(device + " " + number)));
  }

  private static List<Integer> numbersOf(List<String> texts, String device) {
    return texts.stream()
        .map(text -> BookScan.of((text + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8)))
        .map(scan -> scan.rows().get(0).entry().orElseThrow())
        .filter(line -> line.device().equals(device))
        .map(BookLine::number)
        .toList();
  }

  private static BookLine planned(int number, String device, Duration since, String length) {
    return EntryLines.line(
        new Entry(
            number,
            NOW.plus(since),
            device,
            new Fact.PlanSet(Map.of("metal", "copper", "finished-length", length))));
  }

  @Test
  void a_plan_that_a_wrong_clock_lays_before_one_it_replaced_is_told() throws IOException {
    BookLine older = planned(2, "bench-k7f3m2q9", Duration.ofHours(1), "400 mm");
    BookLine newer = planned(1, "lap-a2b3c4d5", Duration.ofDays(-2500), "450 mm");
    Path one = book("one.yaml", List.of(OPENED, older));
    Path copied = book("copied.yaml", List.of(OPENED, older, newer));
    BookMerge merge = BookMerge.of(List.of(one, copied)).orThrow();
    assertThat(merge.problems())
        .extracting(Problem::sentence)
        .singleElement()
        .satisfies(
            told ->
                assertThat(told)
                    .contains(
                        "copied.yaml the plan is that of entry 1 of lap",
                        "before that of entry 2 of bench"));

    BookLine right = planned(1, "lap-a2b3c4d5", Duration.ofHours(2), "450 mm");
    Path sound = book("sound.yaml", List.of(OPENED, older, right));
    assertThat(BookMerge.of(List.of(one, sound)).orThrow().problems()).isEmpty();
    Path apart = book("apart.yaml", List.of(OPENED, right));
    assertThat(BookMerge.of(List.of(one, apart)).orThrow().problems()).isEmpty();
  }

  @Test
  void a_clock_that_stood_in_2020_does_not_put_entries_before_the_first() throws IOException {
    List<BookLine> lines = new ArrayList<>(List.of(OPENED));
    for (int n = 2; n <= 6; n++) {
      boolean wrong = n > 4;
      lines.add(noted(n, "bench-k7f3m2q9", Duration.ofDays(wrong ? -2500 : n)));
    }
    Path one = book("one.yaml", lines);
    Path two = book("two.yaml", List.of(OPENED, noted(1, "lap-a2b3c4d5", Duration.ofDays(3))));
    BookMerge merge = BookMerge.of(List.of(two, one)).orThrow();
    assertThat(merge.problems()).isEmpty();
    assertThat(numbersOf(merge.texts(), "bench-k7f3m2q9")).containsExactly(1, 2, 3, 4, 5, 6);
    assertThat(merge.texts().get(0)).contains("kind: job-opened");
    assertThat(merge.texts().get(3)).contains("lap-a2b3c4d5");
    assertThat(merge.summary())
        .containsExactly(
            two + ": 2 entries, 1 only there.",
            one + ": 6 entries, 5 only there.",
            "bench: 6 entries, 1 to 6.",
            "lap: 1 entry, 1 to 1.");
  }

  /** A machine that nobody named goes by the name of its host: no word for a person. */
  @Test
  void where_one_machine_wrote_it_all_its_name_is_not_told() throws IOException {
    Path one = book("one.yaml", List.of(OPENED, noted(2, "bench-k7f3m2q9", Duration.ofDays(1))));
    assertThat(BookMerge.of(List.of(one)).orThrow().summary())
        .contains("One machine: 2 entries, 1 to 2.")
        .doesNotContain("bench: 2 entries, 1 to 2.");
  }

  /** What tells machines apart inside is no word for a person, in no form of the answer. */
  @Test
  void machines_that_are_called_alike_are_told_apart_by_which_wrote_first() throws IOException {
    Path one = book("one.yaml", List.of(OPENED, noted(2, "bench-k7f3m2q9", Duration.ofDays(1))));
    Path two = book("two.yaml", List.of(OPENED, noted(1, "bench-a2b3c4d5", Duration.ofDays(3))));
    assertThat(BookMerge.of(List.of(one, two)).orThrow().summary())
        .contains("the first bench: 2 entries, 1 to 2.", "the second bench: 1 entry, 1 to 1.");
  }

  /**
   * A device with a flat clock battery took the job over: what it did stands behind its opening.
   */
  @Test
  void a_device_whose_clock_stood_in_2020_does_not_come_before_the_job_was_begun()
      throws IOException {
    Path one = book("one.yaml", List.of(OPENED, noted(2, "bench-k7f3m2q9", Duration.ZERO)));
    List<BookLine> lines = new ArrayList<>(List.of(OPENED));
    for (int n = 1; n <= 3; n++) {
      lines.add(noted(n, "lap-a2b3c4d5", Duration.ofDays(n - 2500)));
      lines.add(noted(n, "a-z2b3c4d5", n < 3 ? Duration.ofDays(n - 2500) : Duration.ofDays(1)));
    }
    Path two = book("two.yaml", lines);
    BookMerge merge = BookMerge.of(List.of(two, one)).orThrow();
    assertThat(merge.texts()).hasSize(8);
    assertThat(merge.texts().get(0)).contains("kind: job-opened");
    assertThat(merge.texts().get(1)).contains("n: 2, ").contains("bench-k7f3m2q9");
    assertThat(numbersOf(merge.texts(), "lap-a2b3c4d5")).containsExactly(1, 2, 3);
    assertThat(merge.texts().get(7)).contains("a-z2b3c4d5");
    String told = " stood before the job was begun, at " + NOW + ", when it made ";
    assertThat(merge.summary())
        .endsWith("The clock of a" + told + "2 entries.", "The clock of lap" + told + "3 entries.");
    Path both = merge.write(folder.resolve("both.yaml")).orThrow();
    assertThat(EarlyClocks.problems(BookFile.look(both).orThrow()))
        .extracting(Problem::wrong)
        .hasSize(2);
    assertThat(BookMerge.of(List.of(both, one)).orThrow().texts()).isEqualTo(merge.texts());
  }

  /** Its clock was set right by a network on the second day: the plan of the first is not lost. */
  @Test
  void what_a_wrong_clock_dated_stands_before_the_first_entry_after_it_was_set_right()
      throws IOException {
    Path one = book("one.yaml", List.of(OPENED, noted(2, "bench-k7f3m2q9", Duration.ofHours(1))));
    Path two =
        book(
            "two.yaml",
            List.of(
                OPENED,
                noted(1, "lap-a2b3c4d5", Duration.ofDays(-2500)),
                noted(2, "lap-a2b3c4d5", Duration.ofDays(2))));
    BookMerge merge = BookMerge.of(List.of(one, two)).orThrow();
    assertThat(merge.texts().get(1)).contains("bench-k7f3m2q9 2");
    assertThat(merge.texts().get(2)).contains("lap-a2b3c4d5 1");
    assertThat(merge.texts().get(3)).contains("lap-a2b3c4d5 2");
  }

  @Test
  void different_jobs_are_not_made_one() throws IOException {
    Path one = book("one.yaml", List.of(OPENED));
    BookLine other =
        EntryLines.line(
            new Entry(1, NOW, "bench-k7f3m2q9", new Fact.JobOpened("Other", "round-cable")));
    Path two = book("two.yaml", List.of(other));
    assertThat(BookMerge.of(List.of(one, two)).problem())
        .hasValueSatisfying(why -> assertThat(why).contains("are books of two jobs"));
  }

  @Test
  void two_entries_of_one_name_are_both_kept_told_and_used() throws IOException {
    BookLine ours = noted(2, "bench", Duration.ofMinutes(1));
    BookLine theirs =
        EntryLines.line(
            new Entry(2, NOW.plusSeconds(90), "bench", new Fact.Noted("quite another")));
    BookLine opened = OPENED.madeBy("bench");
    Path one = book("one.yaml", List.of(opened, ours));
    Path two = book("two.yaml", List.of(opened, theirs));
    BookMerge merge = BookMerge.of(List.of(one, two)).orThrow();
    assertThat(merge.problems())
        .extracting(Problem::wrong)
        .containsExactly("There are two entries 2 of bench.");
    Path both = merge.write(folder.resolve("both.yaml")).orThrow();
    BookFile book = BookFile.look(both).orThrow();
    assertThat(book.lines()).containsExactly(opened, ours, theirs.madeBy("bench~2"));
    assertThat(book.problems()).hasSize(1);
  }

  @Test
  void it_writes_over_nothing_and_leaves_nothing_of_what_it_could_not_write() throws IOException {
    Path one = book("one.yaml", List.of(OPENED));
    BookMerge merge = BookMerge.of(List.of(one)).orThrow();
    String before = Files.readString(one);
    assertThat(merge.write(one).isGood()).isFalse();
    assertThat(one).hasContent(before);
    assertThat(merge.write(folder.resolve("none/there.yaml")).isGood()).isFalse();
    assertThat(folder.resolve("none")).doesNotExist();
  }

  /** 10,000 pairs, a third of them with a third book: commutative, associative, idempotent. */
  @Test
  void what_comes_out_depends_on_the_set_of_lines_alone() throws IOException {
    long seed = 20261126;
    Random chance = new Random(seed);
    for (int round = 0; round < 10_000; round++) {
      List<List<String>> books = diverged(chance);
      List<String> a = books.get(0);
      List<String> b = books.get(1);
      List<String> c = books.get(2);
      String which = "seed " + seed + ", round " + round;
      List<String> ab = merged(a, b);
      assertThat(merged(b, a)).as(which).isEqualTo(ab);
      assertThat(merged(ab, ab)).as(which).isEqualTo(ab);
      assertThat(merged(ab, a)).as(which).isEqualTo(ab);
      if (round % 3 == 0) {
        assertThat(merged(ab, c)).as(which).isEqualTo(merged(a, merged(b, c)));
      }
      assertThat(ab).as(which).containsAll(a).containsAll(b).doesNotHaveDuplicates();
    }
  }

  private List<String> merged(List<String> one, List<String> two) {
    Map<String, BookScan.ScannedLine> union = new TreeMap<>();
    for (List<String> texts : List.of(one, two)) {
      byte[] bytes = (String.join("\n", texts) + "\n").getBytes(StandardCharsets.UTF_8);
      BookScan.of(bytes).rows().forEach(row -> union.put(row.text(), row));
    }
    return BookMerge.inOrder(union);
  }

  /** Three books that begin alike, as three machines would have them, clocks astray. */
  private static List<List<String>> diverged(Random chance) {
    List<String> common = new ArrayList<>(List.of(BookText.encode(OPENED, "")));
    List<List<String>> books = new ArrayList<>();
    for (String device : List.of("bench", "lap", "bench")) {
      List<String> lines = new ArrayList<>(common);
      int from = 1 + chance.nextInt(3);
      for (int n = from; n < from + chance.nextInt(4); n++) {
        Duration since = Duration.ofMinutes(chance.nextInt(2000) - 1000);
        BookLine line =
            new BookLine(
                n, NOW.plus(since), device, "noted", Map.of("text", "" + chance.nextInt(3)));
        lines.add(BookText.encode(line, ""));
      }
      books.add(lines.stream().distinct().toList());
    }
    return books;
  }

  /** A job's book and the drawer's, written by three machines between two meetings. */
  @Test
  void a_merge_by_git_with_union_leaves_books_in_which_check_finds_nothing() throws Exception {
    assumeTrue(hasGit(), "there is no git on this machine");
    Path home = Files.createDirectories(folder.resolve("repository"));
    Path jobs = Files.createDirectories(home.resolve("jobs"));
    Files.writeString(
        home.resolve(".gitattributes"), "jobs/*.yaml merge=union\ndrawer.yaml merge=union\n");
    git(home, "init", "-q", "-b", "main");
    git(home, "config", "user.email", "bench@example.org");
    git(home, "config", "user.name", "Bench");
    Path path;
    try (BookFile book = BookFile.create(jobs, "Trace", "bench-k7f3m2q9", NOW).orThrow()) {
      path = book.path();
      book.append(List.of(OPENED)).orThrow();
    }
    lots(new Home(home), "bench-k7f3m2q9", 1);
    commit(home, "begun");
    for (String device : List.of("lap-a2b3c4d5", "shop-b3c4d5e6")) {
      git(home, "checkout", "-q", "-b", device, "main");
      onItsOwn(home);
      add(path, device, 5);
      lots(new Home(home), device, 2);
      commit(home, device);
    }
    git(home, "checkout", "-q", "main");
    onItsOwn(home);
    add(path, "bench-k7f3m2q9", 7);
    lots(new Home(home), "bench-k7f3m2q9", 3);
    commit(home, "bench");
    for (int meeting = 0; meeting < 2; meeting++) {
      git(home, "merge", "-q", "-m", "both", "lap-a2b3c4d5");
      git(home, "merge", "-q", "-m", "all", "shop-b3c4d5e6");
      assertThat(BookFile.look(path).orThrow().lines()).hasSize(18 + 2 * meeting);
      assertThat(BookFile.look(new Home(home).drawer()).orThrow().lines()).hasSize(8);
      assertThat(Checking.check(new Home(home), List.of(), CheckedLate.BOOKS, Map.of())).isEmpty();
      git(home, "checkout", "-q", "lap-a2b3c4d5");
      git(home, "merge", "-q", "-m", "back", "main");
      onItsOwn(home);
      add(path, "lap-a2b3c4d5", 2);
      commit(home, "laptop goes on");
      git(home, "checkout", "-q", "main");
      onItsOwn(home);
    }
  }

  private static void lots(Home home, String device, int count) {
    for (int i = 0; i < count; i++) {
      LotFact.LotCounted counted =
          new LotFact.LotCounted("march", OptionalDouble.empty(), OptionalDouble.of(9 - i), "");
      assertThat(DrawerBook.keep(home, device, NOW.plusSeconds(i), counted)).isEmpty();
    }
  }

  /** What is remembered beside a book is each machine's own; here one folder plays them all. */
  private static void onItsOwn(Path home) throws IOException {
    try (Stream<Path> files = Files.walk(home)) {
      for (Path each : files.filter(file -> file.toString().endsWith(".last")).toList()) {
        Files.delete(each);
      }
    }
  }

  @Test
  void two_drawers_that_never_met_are_united() throws IOException {
    Home one = new Home(folder.resolve("one"));
    Home two = new Home(folder.resolve("two"));
    lots(one, "bench-k7f3m2q9", 2);
    lots(two, "lap-a2b3c4d5", 3);
    BookMerge merge = BookMerge.of(List.of(one.drawer(), two.drawer())).orThrow();
    assertThat(merge.problems()).isEmpty();
    assertThat(merge.texts()).hasSize(5);
    Path job = book("job.yaml", List.of(OPENED));
    assertThat(BookMerge.of(List.of(one.drawer(), job)).problem())
        .hasValueSatisfying(why -> assertThat(why).contains("are books of two jobs"));
  }

  private static boolean hasGit() throws InterruptedException {
    try {
      return new ProcessBuilder("git", "--version").start().waitFor() == 0;
    } catch (IOException none) {
      return false;
    }
  }

  private static void add(Path path, String device, int count) throws IOException {
    try (BookFile book = BookFile.open(path, device, NOW).orThrow()) {
      for (int i = 0; i < count; i++) {
        int number = book.nextNumber();
        Duration since = Duration.ofMinutes(number);
        book.append(List.of(noted(number, device, since))).orThrow();
      }
    }
  }

  private static void commit(Path home, String message) throws Exception {
    git(home, "add", "jobs/trace.yaml", "drawer.yaml", ".gitattributes");
    git(home, "commit", "-q", "-m", message);
  }

  private static void git(Path home, String... arguments) throws Exception {
    List<String> command = Stream.concat(Stream.of("git"), Stream.of(arguments)).toList();
    Process git =
        new ProcessBuilder(command).directory(home.toFile()).redirectErrorStream(true).start();
    String told =
        new String(git.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    assertThat(git.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(git.exitValue()).as("git %s: %s", List.of(arguments), told).isZero();
  }
}
