package linkwright.walks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Key;
import linkwright.files.Home;
import linkwright.shell.ClockNotes;
import linkwright.shell.Start;
import linkwright.terminal.Display;
import linkwright.terminal.Input;
import linkwright.terminal.ScriptedDisplay;
import linkwright.view.Glyphs;
import linkwright.view.Grid;
import org.junit.jupiter.api.Test;

/** A fault of the program's own in the middle of a job: the display is given back, the book too. */
class FaultTest {
  /** A display that fails at the third picture. */
  private static final class Failing implements Display {
    private final ScriptedDisplay inner;
    private int shown;

    Failing(ScriptedDisplay inner) {
      this.inner = inner;
    }

    @Override
    public GridSize size() {
      return inner.size();
    }

    @Override
    public Glyphs glyphs() {
      return inner.glyphs();
    }

    @Override
    public Optional<Input> poll(long millis) {
      return inner.poll(millis);
    }

    @Override
    public void show(Grid grid) {
      shown++;
      if (shown == 3) {
        throw new IllegalStateException("the third picture fails");
      }
      inner.show(grid);
    }

    @Override
    public void bell() {
      inner.bell();
    }

    @Override
    public void close() {
      inner.close();
    }
  }

  @Test
  void givesDisplayAndBookBack() throws IOException {
    Path folder = new Workbench().home();
    ScriptedDisplay display = new ScriptedDisplay(80, 24);
    display.press(Key.of(Key.Kind.ENTER)).type("kkk");
    assertThatThrownBy(() -> run(folder, new Failing(display)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("the third picture fails");
    assertThat(display.isClosed()).isTrue();

    ScriptedDisplay again = new ScriptedDisplay(80, 24);
    again.press(Key.of(Key.Kind.ENTER)).type("q");
    run(folder, again);
    assertThat(again.text()).contains("places of the job").doesNotContain("look, not write");
  }

  private static void run(Path folder, Display display) {
    Start.run(
        new Home(folder),
        Settings.USUAL,
        "bench",
        display,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        ClockNotes.NONE);
  }
}
