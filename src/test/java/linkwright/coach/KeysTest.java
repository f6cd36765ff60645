package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import linkwright.coach.content.Page;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.view.Glyphs;
import linkwright.view.Scenes;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;

/** What each key means at each place, held against the map in DEVELOPERS.md and at every scene. */
class KeysTest {
  private static final List<String> EVERYWHERE =
      List.of("u", "f", "q", "?", "e", "=", ",", "z", ".", "!");

  private static final List<int[]> SIZES =
      List.of(
          new int[] {40, 12},
          new int[] {60, 20},
          new int[] {80, 24},
          new int[] {140, 45},
          new int[] {200, 60});

  private static boolean isSign(String key) {
    return key.length() == 1;
  }

  private static List<Bencher> places() {
    return Scenes.names().stream().map(name -> Scenes.of(name, 80, 24)).toList();
  }

  @Test
  void within_a_place_no_letter_has_two_senses() {
    for (PlaceId place : PlaceId.values()) {
      Map<String, Act> senses = new LinkedHashMap<>();
      for (Act act : ActTable.of(place)) {
        for (String key : act.keys().stream().filter(KeysTest::isSign).toList()) {
          assertThat(senses.put(key, act)).as(key + " at " + place + ", " + act).isNull();
        }
      }
    }
  }

  @Test
  void what_is_for_everywhere_means_nothing_else_anywhere() {
    for (PlaceId place : PlaceId.values()) {
      for (Act act : ActTable.of(place)) {
        assertThat(act.keys()).as(act + " at " + place).doesNotContainAnyElementsOf(EVERYWHERE);
      }
    }
  }

  @Test
  void what_a_place_offers_stands_in_its_table() {
    for (Bencher scene : places()) {
      PlaceId place = scene.model().held().place();
      List<Act> known = new ArrayList<>(ActTable.of(place));
      known.addAll(EverywhereActs.ALL);
      assertThat(known).as(place.name()).containsAll(Places.of(scene.model()).acts(scene.model()));
    }
  }

  @Test
  void every_place_is_come_to_from_another_or_from_everywhere() {
    // A student is brought before the question by the gate before her step.
    for (PlaceId place : EnumSet.complementOf(EnumSet.of(PlaceId.SAYING))) {
      List<Act> ways = new ArrayList<>(EverywhereActs.ALL);
      for (PlaceId from : PlaceId.values()) {
        if (from != place) {
          ways.addAll(ActTable.of(from));
        }
      }
      assertThat(ways).as("acts that lead to " + place).contains(place.act());
    }
  }

  /** By their keys at least, and where nothing can be entered no undo; one number has one key. */
  @Test
  void the_way_back_undo_and_help_stand_in_every_key_line() {
    Set<String> lacking = new TreeSet<>();
    for (String name : Scenes.names()) {
      Bencher scene = Scenes.of(name, 80, 24);
      for (int[] size : SIZES) {
        scene.take(new Message.Resized(size[0], size[1]));
        Model model = scene.model();
        if (Pages.of(model).across().isPresent() || model.held().place() == PlaceId.HELP) {
          continue;
        }
        String line =
            Shown.draw(model, Glyphs.FULL).text().lines().skip(size[1] - 1).toList().get(0);
        List<String> said = List.of(line.split(" +", -1));
        Set<String> always = new TreeSet<>(Set.of("?", out(model)));
        if (undoes(model)) {
          always.add("u");
        }
        always.removeAll(said);
        if (!always.isEmpty()) {
          lacking.add(name + " " + size[0] + "x" + size[1] + " lacks " + always + ": " + line);
        }
      }
    }
    assertThat(lacking).isEmpty();
  }

  private static String out(Model model) {
    return switch (model.held().place()) {
      case TRAY -> model.held().form().isPresent() ? "esc" : "q";
      case ROUND -> "a";
      case HOT_WORK -> "n";
      default -> "esc";
    };
  }

  /** Letters are typed in a form and where anything is found. */
  private static boolean undoes(Model model) {
    Place place = Places.of(model);
    return model.held().form().isEmpty()
        && !place.takesEveryKey()
        && place.undoes(model)
        && model.job().isPresent();
  }

  @Test
  void nothing_stands_twice_in_a_key_line() {
    for (String name : Scenes.names()) {
      Model model = Scenes.of(name, 80, 24).model();
      List<Page.Open> open = Pages.of(model).open();
      assertThat(open.stream().map(Page.Open::says)).as(name).doesNotHaveDuplicates();
      assertThat(
              open.stream()
                  .flatMap(each -> each.act().stream())
                  .map(act -> model.settings().keys().firstOf(act)))
          .as("keys at " + name)
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void a_key_that_is_not_for_now_says_why() {
    Set<String> silent = new TreeSet<>();
    int pressed = 0;
    for (String name : Scenes.names()) {
      Model model = Scenes.of(name, 80, 24).model().quiet();
      if (model.held().form().isPresent() || Places.of(model).takesEveryKey()) {
        continue;
      }
      List<Act> open = new ArrayList<>(Places.of(model).acts(model));
      open.addAll(EverywhereActs.ALL);
      for (Act act : ActTable.of(model.held().place())) {
        String key = act.keys().get(0);
        if (!isSign(key) || open.stream().anyMatch(other -> other.keys().contains(key))) {
          continue;
        }
        pressed++;
        Turn turn = Coach.update(model, new Message.KeyPressed(Key.of(key)));
        if (ToldOnScreen.of(turn.model()).isBlank() || !turn.effects().isEmpty()) {
          silent.add(key + " (" + act + ") at " + name);
        }
      }
    }
    assertThat(silent).isEmpty();
    assertThat(pressed).as("keys that were tried").isGreaterThan(100);
  }

  @Test
  void at_a_card_it_is_the_card_that_comes_first() {
    Bencher card = Scenes.of("bench-caution", 80, 24).press("r");
    assertThat(card.notice())
        .isEqualTo("Not for now: redo. This card comes first: space when it is read.");
  }

  @Test
  void every_act_is_explained() {
    for (Act act : Act.values()) {
      assertThat(act.help()).as(act.name()).isNotBlank();
    }
  }

  @Test
  void the_map_stands_in_the_guide() throws IOException {
    String guide = Files.readString(Path.of("DEVELOPERS.md"));
    assertThat(map().values()).allSatisfy(row -> assertThat(guide.lines()).contains(row));
  }

  /** A row of the map for each place: its signs and what they do. */
  static Map<PlaceId, String> map() {
    Map<PlaceId, String> rows = new TreeMap<>();
    for (PlaceId place : PlaceId.values()) {
      String keys =
          ActTable.of(place).stream()
              .flatMap(
                  act ->
                      act.keys().stream()
                          .filter(KeysTest::isSign)
                          .map(key -> "`" + key + "` " + act.words()))
              .sorted()
              .collect(Collectors.joining(", "));
      if (!keys.isEmpty()) {
        rows.put(place, "| " + Findable.word(place) + " | " + keys + " |");
      }
    }
    return rows;
  }
}
