package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.Bencher;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.terminal.Look;
import linkwright.terminal.ScriptedDisplay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Each screen at each size, against the pictures in {@code src/test/resources/golden}. */
class GoldenScreensTest {
  /** Each scene is played once a width: what it leads to can be drawn as often as wished. */
  private static final Map<String, Model> MODELS = new HashMap<>();

  static List<String> scenes() {
    return Scenes.names();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void at80x24(String scene) {
    Golden.looks("80x24/" + scene, drawn(scene, 80, 24, Glyphs.FULL));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void at60x20(String scene) {
    Golden.looks("60x20/" + scene, drawn(scene, 60, 20, Glyphs.FULL));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void at140x45(String scene) {
    Golden.looks("140x45/" + scene, drawn(scene, 140, 45, Glyphs.FULL));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void at40x12(String scene) {
    Golden.looks("40x12/" + scene, drawn(scene, 40, 12, Glyphs.FULL));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void at200x60(String scene) {
    Golden.looks("200x60/" + scene, drawn(scene, 200, 60, Glyphs.FULL));
  }

  /** Without colour, in the letters that every terminal has; in all sizes. */
  @ParameterizedTest
  @MethodSource("scenes")
  void inAsciiOnATerminalWithoutColour(String scene) {
    for (String size : List.of("40x12", "80x24", "60x20", "140x45", "200x60")) {
      int width = Integer.parseInt(size.substring(0, size.indexOf('x')));
      int height = Integer.parseInt(size.substring(size.indexOf('x') + 1));
      ScriptedDisplay display = new ScriptedDisplay(width, height, Glyphs.ASCII, Look.NO_COLOUR);
      display.show(drawn(scene, width, height, Glyphs.ASCII));
      Golden.looks("ascii" + (width == 80 ? "" : "-" + size) + "/" + scene, display.text());
      assertThat(display.text()).matches("[\\n -~]*");
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void onATerminalAsDrawn(String scene) {
    Grid grid = drawn(scene, 80, 24, Glyphs.FULL);
    ScriptedDisplay display = new ScriptedDisplay(80, 24);
    display.show(grid);
    assertThat(display.text()).isEqualTo(grid.text());
  }

  @Test
  void everyPictureKeptIsOneThatATestCompares() {
    List<String> compared = new ArrayList<>();
    for (String scene : scenes()) {
      compared.add("ascii/" + scene + ".txt");
      for (String size : List.of("40x12", "80x24", "60x20", "140x45", "200x60")) {
        compared.add(size + "/" + scene + ".txt");
        compared.add(size + "/" + scene + ".tones");
        if (!size.equals("80x24")) {
          compared.add("ascii-" + size + "/" + scene + ".txt");
        }
      }
    }
    for (String beside : List.of("timers", "book", "cautions", "a-caution-whole")) {
      compared.add("beside/" + beside + ".txt");
    }
    assertThat(Golden.kept())
        .filteredOn(name -> !name.startsWith("too-small/"))
        .containsExactlyInAnyOrderElementsOf(compared);
  }

  @ParameterizedTest
  @CsvSource({"39, 24", "80, 11", "30, 8", "10, 3", "1, 1"})
  void tooSmallSaysSoAndNothingElse(int width, int height) {
    // Got there in a window of use: no card can be read through at one letter a line.
    Bencher bencher = Scenes.of("bench-count", 80, 24);
    bencher.take(new Message.Resized(width, height));
    Grid grid = Shown.draw(bencher.model(), Glyphs.FULL);
    Golden.looks("too-small/" + width + "x" + height, grid);
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void atNoSizeDoesDrawingFail(String scene) {
    Bencher bencher = Scenes.of(scene, 80, 24);
    for (int width = 1; width <= 140; width += 9) {
      for (int height = 1; height <= 45; height += 4) {
        bencher.take(new Message.Resized(width, height));
        Grid grid = Shown.draw(bencher.model(), Glyphs.FULL);
        assertThat(grid.width()).isEqualTo(width);
        assertThat(grid.height()).isEqualTo(height);
      }
    }
  }

  private static Grid drawn(String scene, int width, int height, Glyphs glyphs) {
    return Shown.draw(
        MODELS.computeIfAbsent(scene + width, named -> model(scene, width, height)), glyphs);
  }

  private static Model model(String scene, int width, int height) {
    return Scenes.of(scene, width, height).model();
  }
}
