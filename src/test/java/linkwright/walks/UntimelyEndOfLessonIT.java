package linkwright.walks;

import static linkwright.walks.Workbench.LONG;
import static linkwright.walks.Workbench.press;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.Main;
import org.junit.jupiter.api.Test;

/**
 * The real program killed in a lesson, at random keys and a random moment after the last of them:
 * every answer whose verdict was shown stands in the student's book as it was shown, in its order,
 * once; and the next lesson goes on from it.
 */
class UntimelyEndOfLessonIT {
  private static final long SEED = Long.getLong("linkwright.seed", 20261126L);
  private static final int ROUNDS = Integer.getInteger("linkwright.kills.lesson", 6);
  private static final int MOST = 6;
  private static final int LATEST_MS = 60;
  private static final Pattern ANSWERED =
      Pattern.compile("kind: question-answered,.*right: (true|false)");

  private final Workbench bench = new Workbench();
  private final Random chance = new Random(SEED);

  UntimelyEndOfLessonIT() throws IOException {}

  /** Keys sent, and the verdicts that were seen before the kill: whether each was right. */
  private record Seen(int sent, List<Boolean> verdicts) {}

  @Test
  void on_a_terminal_what_was_shown_of_an_answer_is_in_her_book() throws IOException {
    for (int round = 0; round < ROUNDS; round++) {
      String student = "Screen " + round;
      List<Boolean> verdicts = new ArrayList<>();
      int sent = 0;
      try (WalkedProgram walk = bench.start("lesson", "round-cable", "--student", student)) {
        for (int answers = chance.nextInt(MOST); answers >= 0; answers--) {
          walk.waitUntil("a page", s -> asks(s) || tells(s), LONG);
          // A missed caution is turned over page by page, none of them too soon.
          while (!asks(walk.screen())) {
            Workbench.unread();
            press(walk, "space").waitUntilStill();
          }
          walk.type("" + chance.nextInt(5));
          sent++;
          if (answers > 0) {
            walk.waitUntil("a verdict", UntimelyEndOfLessonIT::tells, LONG);
            verdicts.add(walk.screen().contains("Right"));
          }
        }
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(chance.nextInt(LATEST_MS)));
        walk.kill9();
      }
      isKept(student, new Seen(sent, verdicts));
    }
  }

  private static boolean asks(String screen) {
    return screen.contains("I do not know");
  }

  private static boolean tells(String screen) {
    return screen.contains("It is: ");
  }

  @Test
  void in_the_plain_walk_what_was_told_of_an_answer_is_in_her_book() throws IOException {
    for (int round = 0; round < ROUNDS; round++) {
      String student = "Plain " + round;
      ProcessBuilder builder =
          new ProcessBuilder(
              WalkedProgram.java(
                  Main.class, "lesson", "round-cable", "--student", student, "--plain"));
      builder.environment().put("LINKWRIGHT_HOME", bench.home().toString());
      builder.environment().put("LANG", "C.UTF-8");
      Process process = builder.redirectErrorStream(true).start();
      List<Boolean> verdicts = new ArrayList<>();
      int sent = 0;
      try (BufferedReader told = process.inputReader(StandardCharsets.UTF_8);
          OutputStream typed = process.getOutputStream()) {
        for (int answers = chance.nextInt(MOST); answers >= 0; answers--) {
          heard(told, "0: I do not know.");
          send(typed, chance.nextInt(5) + "\n");
          sent++;
          if (answers > 0) {
            verdicts.add(heard(told, "Right.", "Not so.").equals("Right."));
            send(typed, "\n");
          }
        }
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(chance.nextInt(LATEST_MS)));
        process.destroyForcibly().waitFor();
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        throw new AssertionError("Interrupted", stopped);
      }
      isKept(student, new Seen(sent, verdicts));
    }
  }

  /** Reads on until one of these lines comes, and answers with it. */
  private static String heard(BufferedReader told, String... lines) throws IOException {
    List<String> all = new ArrayList<>();
    for (String line = told.readLine(); line != null; line = told.readLine()) {
      all.add(line);
      if (List.of(lines).contains(line)) {
        return line;
      }
    }
    throw new AssertionError("It ended before " + List.of(lines) + ":\n" + all);
  }

  private static void send(OutputStream to, String text) throws IOException {
    to.write(text.getBytes(StandardCharsets.UTF_8));
    to.flush();
  }

  /** What was seen is there, the key sent last may be, and the next lesson reads it all. */
  private void isKept(String student, Seen seen) throws IOException {
    String about = student + ", seed " + SEED;
    List<Boolean> kept = answers(book());
    assertThat(kept.size()).as(about).isBetween(seen.verdicts().size(), seen.sent());
    assertThat(kept.subList(0, seen.verdicts().size())).as(about).isEqualTo(seen.verdicts());
    Workbench.Said said =
        bench.command("quit\n", "lesson", "round-cable", "--student", student, "--plain");
    assertThat(said.code()).as(said.text()).isZero();
    assertThat(said.text()).contains(student + ", question ");
    assertThat(answers(book())).as(about).isEqualTo(kept);
    assertThat(bench.command("", "check").code()).as(about).isZero();
    Path book = book();
    // Without what was shown last of it, which would tell that a book is gone.
    Files.delete(book.resolveSibling(book.getFileName().toString().replace(".yaml", ".last")));
    Files.delete(book);
  }

  /** The one book there is: each round's is taken away once it was judged. */
  private Path book() throws IOException {
    try (Stream<Path> books = Files.list(bench.home().resolve("students"))) {
      List<Path> all = books.filter(path -> path.toString().endsWith(".yaml")).toList();
      assertThat(all).hasSize(1);
      return all.get(0);
    }
  }

  private static List<Boolean> answers(Path book) {
    try (Stream<String> lines = Files.lines(book)) {
      return lines
          .map(ANSWERED::matcher)
          .filter(Matcher::find)
          .map(found -> Boolean.valueOf(found.group(1)))
          .toList();
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }
}
