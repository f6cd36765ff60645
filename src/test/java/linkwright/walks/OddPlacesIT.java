package linkwright.walks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.job.Entry;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * The program as it is shipped, in places and on files that nobody wishes for: each is a sentence,
 * none a page of Java's. The names of places go through a shell, for this program may itself be
 * unable to say them.
 */
@EnabledOnOs(OS.LINUX)
class OddPlacesIT {
  private final Workbench bench;
  private final ShippedProgram program;

  OddPlacesIT() throws IOException {
    bench = new Workbench();
    program = ShippedProgram.in(bench.home());
  }

  private Workbench.Said run(Map<String, String> environment, String script) throws IOException {
    Path out = Files.createTempFile(bench.home(), "said", ".txt");
    List<String> command = new ArrayList<>(List.of("sh", "-c", script, "linkwright"));
    command.addAll(List.of(program.with()));
    ProcessBuilder builder = new ProcessBuilder(command).directory(bench.home().toFile());
    builder.environment().keySet().removeIf(name -> name.startsWith("LC_"));
    builder.environment().put("LINKWRIGHT_HOME", bench.home().toString());
    builder.environment().put("XDG_STATE_HOME", bench.home().resolve("state").toString());
    builder.environment().put("HOME", bench.home().toString());
    builder.environment().putAll(environment);
    builder.redirectErrorStream(true).redirectOutput(out.toFile());
    Process process = builder.start();
    try {
      process.getOutputStream().close();
      if (!process.waitFor(Workbench.LONG, TimeUnit.SECONDS)) {
        process.toHandle().destroyForcibly();
        throw new AssertionError("It hangs: " + script);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted", stopped);
    }
    String said = Files.readString(out, StandardCharsets.ISO_8859_1);
    assertThat(said).as(script).isNotBlank().doesNotContain("\tat ", "Exception in thread");
    assertThat(said.lines()).as(script).hasSizeLessThan(60);
    return new Workbench.Said(process.exitValue(), said, List.of(script));
  }

  @Test
  void aPlaceWhoseNameTheLanguageCannotSayIsTold() throws IOException {
    for (String language : List.of("C", "POSIX")) {
      Map<String, String> plain = Map.of("LANG", language);
      for (String script :
          List.of(
              "LINKWRIGHT_HOME=\"$PWD/K\u00fcche\" \"$@\" check",
              "LINKWRIGHT_HOME=\"$PWD/K\u00fcche\" \"$@\"",
              "\"$@\" --home K\u00fcche walk --plain",
              "mkdir -p K\u00fcche; cd K\u00fcche; \"$@\" check",
              "mkdir -p K\u00fcche; cd K\u00fcche; \"$@\" walk --plain --new x")) {
        Workbench.Said said = run(plain, script);
        assertThat(said.code()).as(script).isEqualTo(1);
        assertThat(said.text()).as(script).contains("cannot be used here", "Set LANG");
      }
      Workbench.Said said = run(plain, "\"$@\" check K\u00fcche.yaml");
      assertThat(said.code()).isEqualTo(2);
      assertThat(said.text()).contains("cannot be the name of a file");
    }
  }

  @Test
  void whatIsNoOrdinaryFileOrEndlessIsToldAndNotRead() throws IOException {
    Path big = bench.home().resolve("big.yaml");
    try (RandomAccessFile sparse = new RandomAccessFile(big.toFile(), "rw")) {
      sparse.setLength(3L << 30);
    }
    for (String script :
        List.of(
            "\"$@\" check /dev/full",
            "\"$@\" check /dev/zero",
            "\"$@\" plan /dev/zero",
            "mkfifo pipe.yaml; \"$@\" check pipe.yaml",
            "\"$@\" walk --plain pipe.yaml",
            "\"$@\" merge pipe.yaml --into together.yaml",
            "\"$@\" check big.yaml",
            "\"$@\" walk --plain big.yaml")) {
      assertThat(run(Map.of(), script).code()).as(script).isBetween(1, 2);
    }
    Files.delete(big);
  }

  @Test
  void aLineBreakInAnythingTypedMakesNoLineOfItsOwn() throws IOException {
    String forged = "over\nLinks: 99 made\r\nTimer: tea is due.\u2028Entered: 7 rings told.";
    Path jobs = bench.home().resolve("jobs");
    java.time.Instant now = java.time.Instant.now();
    try (BookFile book = BookFile.create(jobs, "Trace", "bench-a2b3c4d5", now).orThrow()) {
      List<Fact> facts =
          List.of(
              new Fact.JobOpened("Trace " + forged, "round-cable"),
              new Fact.Noted(forged),
              new Fact.SittingStarted(forged),
              new Fact.TimerStarted(forged, 1));
      for (int i = 0; i < facts.size(); i++) {
        Entry entry = new Entry(i + 1, now, "bench-a2b3c4d5", facts.get(i));
        book.append(List.of(EntryLines.line(entry))).orThrow();
      }
    }
    for (String words :
        List.of(
            "\"$@\" jobs",
            "\"$@\"",
            "\"$@\" check",
            "printf 'book 20\\nwhere\\ntimers\\nquit\\n' | \"$@\" walk --plain")) {
      assertThat(run(Map.of("LANG", "C.UTF-8"), words).text().lines())
          .as(words)
          .noneMatch(line -> line.startsWith("Links: 99"))
          .noneMatch(line -> line.startsWith("Timer: tea"))
          .noneMatch(line -> line.startsWith("Entered: 7"));
    }
  }
}
