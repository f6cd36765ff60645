package linkwright.coach.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class ScreenBarTest {
  private static final String LAPTOP = "18 points on 1400 x 900";
  private static final String DESK = "24 points on 2560 x 1440";

  @Test
  void eachScreenKeepsItsOwn() {
    String both = ScreenBar.with(ScreenBar.with("", LAPTOP, "116 mm"), DESK, "5 1/4 in");
    assertThat(both).isEqualTo("116 mm at " + LAPTOP + "; 5 1/4 in at " + DESK);
    assertThat(ScreenBar.of(both, LAPTOP)).contains("116 mm");
    assertThat(on(both, LAPTOP).life()).hasValue(80 / 116.0);
    assertThat(on(both, DESK).life()).hasValue(80 / (5.25 * 25.4));
    assertThat(ScreenBar.with(both, LAPTOP, " ")).isEqualTo("5 1/4 in at " + DESK);
  }

  @Test
  void otherLettersAndATerminalHaveNone() {
    String one = ScreenBar.with("", LAPTOP, "116 mm");
    assertThat(on(one, DESK).life()).isEmpty();
    assertThat(on(one, "").life()).isEmpty();
  }

  @Test
  void aLengthThatNoScreenHasIsToldAndUsedNowhere() {
    assertThat(ScreenBar.read("3 mm").problem()).isPresent();
    assertThat(ScreenBar.read("116").problem()).isPresent();
    assertThat(on("3 mm at " + LAPTOP, LAPTOP).life()).isEmpty();
  }

  private static Settings on(String bars, String screen) {
    return Settings.USUAL.standing(Map.of(ScreenBar.KEY, bars)).on(screen);
  }
}
