package linkwright.view;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each screen at each size, against the pictures in {@code src/test/resources/golden}. */
class GoldenScreensTest {
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
  void inAscii(String scene) {
    Golden.looks("ascii/" + scene, drawn(scene, 80, 24, Glyphs.ASCII));
  }

  private static Grid drawn(String scene, int width, int height, Glyphs glyphs) {
    return Screens.draw(Scenes.of(scene, width, height).model(), glyphs);
  }
}
