package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Test;

/** Drawings on a screen of which it is known how large it is. */
class LifeSizeTest {
  /** 40 columns are 116 mm, as on a screen of 1400 pixels that is 370 mm wide. */
  private static final OptionalDouble LIFE = OptionalDouble.of(80 / 116.0);

  @Test
  void aLinkStandsOnceLargeAndOnceAsLargeAsItIs() {
    Grid grid = drawn(16, 6, LIFE);
    assertThat(grid.inks()).hasSize(2);
    Ink small = grid.inks().get(1);
    assertThat(small.dotsPerMm()).isEqualTo(LIFE.getAsDouble());
    assertThat(small.wide()).isGreaterThan((int) (16 * 40 / 116.0));
    assertThat(grid.inks().get(0).dotsPerMm()).isGreaterThan(3 * small.dotsPerMm());
    assertThat(grid.text()).contains("life size");
  }

  @Test
  void whatHasNoRoomAtLifeSizeAndWhatWasNotMeasuredStandOnce() {
    assertThat(drawn(200, 6, LIFE).inks()).hasSize(1);
    assertThat(drawn(200, 6, LIFE).text()).doesNotContain("life size");
    assertThat(drawn(16, 130, LIFE).inks()).hasSize(1);
    assertThat(drawn(16, 6, OptionalDouble.empty()).inks()).hasSize(1);
  }

  @Test
  void noDotsStandUnderTheLinesOfAWindow() {
    Grid grid = drawn(16, 6, LIFE);
    assertThat(grid.text()).containsPattern("[\u2801-\u28FF]");
    assertThat(grid.withoutDots().text()).doesNotContainPattern("[\u2801-\u28FF]");
    assertThat(grid.withoutDots().text()).contains("a link").contains("5 mm");
  }

  private static Grid drawn(double lengthMm, double widthMm, OptionalDouble life) {
    List<Drawing.At> line =
        List.of(
            new Drawing.At(-lengthMm / 2, -widthMm / 2), new Drawing.At(lengthMm / 2, widthMm / 2));
    Drawing.Outline shape =
        new Drawing.Outline(
            "a link",
            List.of(new Drawing.Stroke(line, 1, Drawing.StrokeKind.PLAIN)),
            lengthMm,
            widthMm,
            Emphasis.PLAIN);
    Canvas canvas = new Canvas(98, 20, Glyphs.FULL, life);
    Drawing drawing = new Drawing(List.of(shape), List.of(), UnitStyle.METRIC);
    new DrawingBlock(drawing, 98, 50).draw(canvas, 0);
    return canvas.toGrid();
  }
}
