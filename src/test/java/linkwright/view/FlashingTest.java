package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.Bencher;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.KeyMap;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Test;

/** A wait that is due stands out every other second where it may flash, else always. */
class FlashingTest {
  private static List<String> fourSeconds(Bencher bencher) {
    List<String> seen = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Grid grid = Shown.draw(bencher.model(), Glyphs.FULL);
      seen.add(grid.at(grid.width() - 3, 0).tone().name());
      bencher.pass(Duration.ofSeconds(1));
    }
    return seen;
  }

  @Test
  void what_is_due_flashes_once_in_two_seconds_where_that_is_wished() {
    Bencher bencher = Scenes.of("bench-due", 80, 24);
    List<String> flashing = fourSeconds(bencher);
    assertThat(flashing.get(1)).isNotEqualTo(flashing.get(0)).isEqualTo(flashing.get(3));
    assertThat(flashing.get(2)).isEqualTo(flashing.get(0));
    assertThat(flashing).contains(Tone.ALARM.name());

    Settings steady =
        new Settings(UnitStyle.METRIC, true, KeyMap.USUAL).standing(Map.of("flash", "false"));
    bencher.take(new Message.SettingsKept(steady, Optional.empty()));
    assertThat(fourSeconds(bencher)).containsOnly(Tone.ALARM.name());
  }
}
