package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import org.junit.jupiter.api.Test;

/** Keys of the user's own: what is asked for safety's sake keeps its key, and clashes are told. */
class KeyClashesTest {
  @Test
  void no_act_takes_a_key_of_safety() {
    Map<String, List<String>> wished = Map.of("redo", List.of("!", "r"), "scrap", List.of("space"));
    KeyMap keys = new KeyMap(wished);
    assertThat(keys.keysOf(Act.REDO)).containsExactly("r");
    assertThat(keys.keysOf(Act.SCRAP)).isEmpty();
    assertThat(keys.keysOf(Act.TO_HOT_WORK)).containsExactly("!");
    assertThat(KeyClashes.of(wished)).hasSize(2).allMatch(told -> told.contains("stays with"));
  }

  @Test
  void a_key_of_safety_that_is_moved_takes_its_new_key_along() {
    KeyMap keys = new KeyMap(Map.of("to-hot-work", List.of("r")));
    assertThat(keys.first("r", List.of(Act.REDO, Act.TO_HOT_WORK))).contains(Act.TO_HOT_WORK);
  }

  @Test
  void two_acts_of_one_place_with_one_key_are_told() {
    assertThat(KeyClashes.of(Map.of("redo", List.of("f"))))
        .containsExactly("“f” is redo and find at one place: the first wins");
    assertThat(KeyClashes.of(Map.of("redo", List.of("e3")))).isEmpty();
  }

  @Test
  void the_usual_keys_clash_nowhere() {
    assertThat(KeyClashes.of(Map.of())).isEmpty();
    assertThat(KeyClashes.of(Map.of("through", Act.THROUGH.keys()))).isEmpty();
  }
}
