package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.keys.Key;
import linkwright.terminal.Input;
import linkwright.terminal.ScriptedDisplay;
import org.junit.jupiter.api.Test;

/** What is shown while the jobs are read, and the way out. */
class WaitingTest {
  private static final Instant START = Instant.parse("2026-03-04T17:00:00Z");

  private final ScriptedDisplay display = new ScriptedDisplay(80, 24);
  private Instant now = START;
  private final ReadingDisplay waiting = new ReadingDisplay(display, () -> now);

  private boolean goOn(long afterMs, int done) {
    now = START.plusMillis(afterMs);
    return waiting.goOn(done, 300);
  }

  @Test
  void saysNothingForHalfASecond() {
    goOn(0, 0);
    goOn(499, 40);
    assertThat(display.repaints()).isZero();
    assertThat(waiting.poll(0)).isEmpty();
  }

  @Test
  void thenSaysHowFarItHasComeAndTheWayOut() {
    goOn(0, 0);
    goOn(510, 40);
    assertThat(display.text()).contains("40 of 300", "esc goes on without the rest");
    goOn(520, 41);
    assertThat(display.text()).as("no more often than ten times a second").contains("40 of 300");
    goOn(700, 56);
    assertThat(display.text()).contains("56 of 300");
  }

  @Test
  void endsAtEscapeAndKeepsWhatWasTypedMeanwhile() {
    display.type("n").press(Key.of(Key.Kind.ESCAPE)).type("x");
    assertThat(goOn(0, 0)).isTrue();
    assertThat(goOn(600, 50)).isFalse();
    assertThat(goOn(601, 50)).isFalse();
    assertThat(inputs())
        .containsExactly(
            new Input.Resized(80, 24),
            new Input.Pressed(Key.of("n")),
            new Input.Pressed(Key.of("x")));
  }

  @Test
  void beginsTheNextReadingWithNewPatience() {
    display.press(Key.of(Key.Kind.ESCAPE));
    goOn(0, 0);
    assertThat(goOn(600, 50)).isFalse();
    assertThat(goOn(5000, 0)).isTrue();
    assertThat(goOn(5300, 50)).isTrue();
  }

  private List<Input> inputs() {
    List<Input> inputs = new ArrayList<>();
    for (Optional<Input> one = waiting.poll(0); one.isPresent(); one = waiting.poll(0)) {
      inputs.add(one.get());
    }
    return inputs;
  }
}
