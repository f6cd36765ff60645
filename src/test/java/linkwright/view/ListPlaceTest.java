package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.Bencher;
import org.junit.jupiter.api.Test;

/** A list that is longer than its room says so, at its end too, and shows where it is. */
class ListPlaceTest {
  @Test
  void a_list_says_which_line_of_how_many_however_long_its_rows_are() {
    Bencher bench = Scenes.of("cautions", 80, 24);
    bench.press("home");
    assertThat(lowest(bench)).contains(" line 1 of ");
    bench.press("end");
    assertThat(lowest(bench)).matches("(?s).* line (\\d+) of \\1\\b.*");
    bench.press("home");
    assertThat(lowest(bench)).contains(" line 1 of ");
    for (int i = 0; i < 40; i++) {
      bench.press("down");
      assertThat(lowest(bench)).contains(" line ").contains("▸");
    }
  }

  @Test
  void the_cursor_stands_at_the_chosen_line_and_in_a_field_where_one_is_typed() {
    Bencher bench = Scenes.of("cautions", 80, 24);
    for (int i = 0; i < 12; i++) {
      Grid grid = Shown.draw(bench.model(), Glyphs.FULL);
      Grid.Cursor at = grid.cursor().orElseThrow();
      assertThat(grid.at(at.x(), at.y()).glyph()).isEqualTo("▸");
      bench.press("down");
    }
    bench.press("/");
    Grid grid = Shown.draw(bench.model(), Glyphs.FULL);
    Grid.Cursor at = grid.cursor().orElseThrow();
    assertThat(grid.at(at.x(), at.y()).glyph()).isNotEqualTo("▸");
  }

  private static String lowest(Bencher bench) {
    return Shown.draw(bench.model(), Glyphs.FULL).toString();
  }
}
