package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Key;
import linkwright.files.Home;
import linkwright.terminal.ScriptedDisplay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys that come faster than they can be shown, as from a key that is stuck. */
class FloodTest {
  @TempDir Path folder;
  private final ScriptedDisplay display = new ScriptedDisplay(140, 45);

  @Test
  void isDrainedWithoutDrawingAfterEachKey() {
    display.press(Key.of(Key.Kind.ENTER));
    for (int i = 0; i < 50_000; i++) {
      // The cautions and back, and to the next line: each key changes what is shown.
      display.press(i % 2 == 0 ? Key.of("c") : Key.of(Key.Kind.ESCAPE));
      display.press(Key.of(Key.Kind.DOWN));
    }
    display.press(Key.of("k"));
    runToTheEnd();
    assertThat(display.text()).contains("· book");
    assertThat(display.repaints()).isBetween(2, 5_000);
  }

  /** The demo's cautions are not opened by keys that were typed at nothing. */
  @Test
  void whatWasTypedAtABlankScreenCountsNothing() {
    display.early().press(Key.of(Key.Kind.ENTER)).press(Key.of("k"));
    runToTheEnd();
    assertThat(display.text()).doesNotContain("· book");
  }

  @Test
  void losesNoKey() throws IOException {
    String note = "wire from the drawer, ".repeat(25).strip();
    display.press(Key.of(Key.Kind.ENTER)).type("kn").type(note).press(Key.ctrl("k"));
    runToTheEnd();
    try (Stream<Path> files = Files.list(folder.resolve("jobs"))) {
      Path book = files.filter(file -> file.toString().endsWith(".yaml")).findFirst().orElseThrow();
      assertThat(Files.readString(book)).contains(note);
    }
  }

  @Test
  void aClickGoesToWhatWasDrawnForTheKeysBeforeIt() {
    display.press(Key.of(Key.Kind.ENTER));
    runToTheEnd();
    int row = display.text().lines().toList().indexOf(lineWith("cautions   "));

    ScriptedDisplay other = new ScriptedDisplay(140, 45);
    other.press(Key.of(Key.Kind.ENTER)).click(3, row);
    run(other.end());
    assertThat(other.text()).contains("· cautions");
  }

  private String lineWith(String text) {
    return display.text().lines().filter(line -> line.contains(text)).findFirst().orElseThrow();
  }

  private void runToTheEnd() {
    run(display.end());
  }

  private void run(ScriptedDisplay shown) {
    Start.run(
        new Home(folder),
        Settings.USUAL,
        "bench",
        shown,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        ClockNotes.NONE);
  }
}
