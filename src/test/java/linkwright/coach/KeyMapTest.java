package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.keys.KeyNames;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeyMapTest {
  @ParameterizedTest
  @EnumSource(Act.class)
  void every_act_has_a_name_words_and_keys_that_can_be_read(Act act) {
    assertThat(act.id()).matches("[a-z-]+");
    assertThat(act.words()).isNotBlank();
    assertThat(act.keys())
        .isNotEmpty()
        .allSatisfy(key -> assertThat(KeyNames.read(key)).isPresent());
  }

  @Test
  void no_two_acts_share_a_name() {
    Set<String> ids = new HashSet<>();
    for (Act act : Act.values()) {
      assertThat(ids.add(act.id())).as(act.id()).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "space",
        "enter",
        "esc",
        "page-down",
        "ctrl-z",
        "shift-tab",
        "u",
        "é",
        "鎖",
        "😀",
        "?"
      })
  void a_key_that_is_read_by_its_name_has_that_name(String name) {
    assertThat(KeyNames.read(name)).map(KeyNames::of).contains(name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "spacebar", "ctrl-", "ctrl-zz", "page", "uu"})
  void what_is_no_key_is_not_read(String name) {
    assertThat(KeyNames.read(name)).isEmpty();
  }

  @Test
  void of_the_acts_on_offer_the_first_with_that_key_is_meant() {
    List<Act> offered = List.of(Act.NEW_JOB, Act.NEXT_STEP);
    assertThat(KeyMap.USUAL.find(Key.of("n"), offered)).contains(Act.NEW_JOB);
    assertThat(KeyMap.USUAL.find(Key.of(Key.Kind.RIGHT), List.of(Act.LOOK_ON)))
        .contains(Act.LOOK_ON);
    assertThat(KeyMap.USUAL.find(Key.of("x"), offered)).isEmpty();
  }

  @Test
  void the_users_keys_take_the_place_of_the_usual_ones() {
    KeyMap own = new KeyMap(Map.of("undo", List.of("backspace")));
    assertThat(own.find(Key.of(Key.Kind.BACKSPACE), List.of(Act.UNDO))).contains(Act.UNDO);
    assertThat(own.find(Key.of("u"), List.of(Act.UNDO))).isEmpty();
    assertThat(own.keysOf(Act.REDO)).isEqualTo(Act.REDO.keys());
  }

  @Test
  void an_act_of_another_place_is_named_with_the_way_to_it() {
    KeyMap here = KeyMap.USUAL.away(Set.of(Act.TO_WIRE));
    assertThat(here.spokenOf(Act.TO_WIRE)).isEqualTo("esc w");
    assertThat(here.spokenOf(Act.REDO)).isEqualTo("r");

    Bencher bench = Bencher.withTheDemo();
    assertThat(Pages.of(bench.model()).away()).as("at the places of the job").isEmpty();
    assertThat(Pages.of(bench.press("b").model()).away())
        .as("at the bench")
        .contains(Act.TO_WIRE, Act.TO_WEIGH_IN)
        .doesNotContain(Act.TO_PILES);
  }
}
