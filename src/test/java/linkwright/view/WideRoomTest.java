package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.Bencher;
import org.junit.jupiter.api.Test;

/** Wide windows show more, and no text wider than the eye finds its way back over. */
class WideRoomTest {
  private static final int WIDEST = 80;

  private static String shown(String scene, int width, int height) {
    Bencher bencher = Scenes.of(scene, width, height);
    return Shown.draw(bencher.model(), Glyphs.FULL).text();
  }

  @Test
  void the_plan_shows_its_link_where_there_is_room_below_the_fields() {
    for (int[] size : new int[][] {{140, 45}, {200, 60}}) {
      assertThat(shown("plan", size[0], size[1])).contains("the link as planned");
    }
    assertThat(shown("plan", 80, 24)).doesNotContain("the link as planned");
  }

  @Test
  void test_pieces_say_what_each_bend_is_beside_its_drawing() {
    for (int[] size : new int[][] {{140, 45}, {200, 60}}) {
      String tests = shown("tests", size[0], size[1]).replaceAll("\\s+", " ");
      assertThat(tests)
          .contains("Mark the blank at")
          .contains("Bend 1: from each end roll the tip");
    }
    assertThat(shown("tests", 80, 24)).doesNotContain("Mark the blank at");
  }

  @Test
  void a_caution_says_beside_what_to_do_what_to_do_if_it_goes_wrong() {
    for (String scene : new String[] {"bench-caution", "cautions-card"}) {
      for (int[] size : new int[][] {{140, 45}, {200, 60}}) {
        String[] rows = shown(scene, size[0], size[1]).split("\n", -1);
        assertThat(rows).as(scene).anyMatch(row -> row.matches(".{40,} {2,}if so .*"));
        assertThat(rows).as(scene).noneMatch(row -> row.matches(" {0,39}if so .*"));
      }
      assertThat(shown(scene, 80, 24).split("\n", -1))
          .noneMatch(row -> row.matches(".{40,}if so .*"));
    }
  }

  @Test
  void no_text_is_wider_than_eighty_columns() {
    for (String scene :
        new String[] {
          "plan", "tests", "bench-count", "weigh-in", "bench-caution", "book", "wire"
        }) {
      for (String row : shown(scene, 200, 60).split("\n", -1)) {
        // The keys' line and the chain go over all of the width; columns stand far apart.
        for (String text : row.strip().split(" {3,}|│", -1)) {
          boolean keys = text.contains("? all keys") || text.contains("what is it");
          boolean drawn = text.matches(".*[\u2800-\u28ff\u2500-\u259f(].*");
          assertThat(keys || drawn ? "" : text).as(scene).hasSizeLessThanOrEqualTo(WIDEST);
        }
      }
    }
  }
}
