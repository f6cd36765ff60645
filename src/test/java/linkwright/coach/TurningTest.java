package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import linkwright.coach.kernel.Message;
import linkwright.coach.keys.KeyMap;
import linkwright.view.Glyphs;
import linkwright.view.Screens;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What has no room at once comes on another page, and the key that is named there turns to it. */
class TurningTest {
  private static String body(Bencher bench) {
    return Screens.draw(
            Pages.of(bench.model()), 40, 12, Glyphs.FULL, KeyMap.USUAL, OptionalDouble.empty())
        .text();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "n", "t", "i", "w", "g", "y", "a", "p", "e", "l", "c", "d", "s", "x", "h", "r", "b", "esc",
        "o", "k", "u", "m", "z", "j"
      })
  void every_place_turns_on_in_the_least_room(String key) {
    for (Bencher bench : List.of(Bencher.withTheDemo(), Bencher.atTheTray())) {
      bench.take(new Message.Resized(40, 12));
      bench.press(key);
      if (bench.model().held().form().isPresent()) {
        continue;
      }
      int parts = bench.model().parts(Pages.of(bench.model()).body());
      boolean said = body(bench).contains("page 1 of");
      if (parts <= 1 && !said) {
        continue;
      }
      List<String> seen = new ArrayList<>();
      Set<String> apart = new HashSet<>();
      for (int i = 0; i < parts; i++) {
        seen.add(body(bench));
        apart.add(body(bench));
        bench.press("v");
      }
      assertThat(apart)
          .as(bench.model().held().place() + "\n" + String.join("\n---\n", seen))
          .hasSize(parts);
    }
  }
}
