package linkwright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import linkwright.quantity.Read;
import linkwright.reference.PictureStroke.StrokePoint;
import org.junit.jupiter.api.Test;

/** The strokes of a picture, from their text. */
class PictureStrokeTest {
  private static PictureStroke stroke(String text) {
    return PictureStroke.read(text).orThrow();
  }

  @Test
  void a_line_goes_through_its_points_and_a_patch_is_filled() {
    assertThat(stroke("line 0 0, 10 0, 10 5.5"))
        .isEqualTo(
            new PictureStroke(
                List.of(new StrokePoint(0, 0), new StrokePoint(10, 0), new StrokePoint(10, 5.5)),
                false));
    assertThat(stroke("solid 0 0, 4 0, 4 -8").solid()).isTrue();
  }

  @Test
  void a_curve_goes_through_its_points_and_rounds_the_way_between() {
    PictureStroke curve = stroke("curve 0 0, 5 4, 10 0");
    assertThat(curve.points())
        .contains(new StrokePoint(0, 0), new StrokePoint(5, 4), new StrokePoint(10, 0));
    assertThat(curve.points().size()).isGreaterThan(3);
  }

  /** The area of a disc is pi r squared, of an ellipse pi a b (any table of areas). */
  @Test
  void discs_and_ovals_have_the_area_of_discs_and_ovals() {
    assertThat(area(stroke("ball 3 -2 5"))).isCloseTo(Math.PI * 25, within(0.3));
    assertThat(area(stroke("oval 19 11 18 9"))).isCloseTo(Math.PI * 18 * 9, within(2.0));
    assertThat(stroke("oval 19 11 18 9").solid()).isFalse();
  }

  /** By the shoelace formula. */
  private static double area(PictureStroke stroke) {
    double twice = 0;
    for (int i = 0; i < stroke.points().size(); i++) {
      StrokePoint at = stroke.points().get(i);
      StrokePoint next = stroke.points().get((i + 1) % stroke.points().size());
      twice += at.x() * next.y() - next.x() * at.y();
    }
    return Math.abs(twice) / 2;
  }

  @Test
  void an_arc_turns_against_the_clock_from_three_o_clock() {
    PictureStroke quarter = stroke("arc 5 5 3 0 90");
    assertThat(quarter.points().get(0)).isEqualTo(new StrokePoint(8, 5));
    StrokePoint last = quarter.points().get(quarter.points().size() - 1);
    assertThat(last.x()).isCloseTo(5, within(1e-9));
    assertThat(last.y()).isCloseTo(8, within(1e-9));
  }

  @Test
  void what_cannot_be_drawn_is_told_with_how_it_is_written() {
    assertThat(PictureStroke.read("lime 0 0, 1 1"))
        .isEqualTo(Read.bad("\"lime\" is no stroke. Did you mean line?"));
    assertThat(PictureStroke.read("line 0 0"))
        .isEqualTo(Read.bad("\"line 0 0\" can't be drawn. Write it so: line 0 0, 10 0, 10 5."));
    assertThat(PictureStroke.read("ball 1 1 0").problem()).isPresent();
    assertThat(PictureStroke.read("arc 1 1 2 0").problem()).isPresent();
    assertThat(PictureStroke.read("line 0 0, 900 0").problem().orElse(""))
        .contains("leaves the sheet");
    assertThat(PictureStroke.read("").problem()).isPresent();
  }
}
