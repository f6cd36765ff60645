package linkwright.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.googlecode.lanterna.TextColor;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import linkwright.coach.content.Drawing;
import linkwright.view.Ink;
import linkwright.view.Tone;
import org.junit.jupiter.api.Test;

/** What the window draws over its letters, measured in pixels. */
class WindowLinesTest {
  private static final int COLUMN = 11;
  private static final int ROW = 24;

  /** 40 columns are 116 mm. */
  private static final double LIFE = 80 / 116.0;

  @Test
  void isAsLongAndAsThickAsTheMeasuredBarSays() {
    BufferedImage picture = new BufferedImage(60 * COLUMN, 10 * ROW, BufferedImage.TYPE_INT_RGB);
    List<Drawing.At> line = List.of(new Drawing.At(-25, 0), new Drawing.At(25, 0));
    Drawing.Stroke stroke = new Drawing.Stroke(line, 10, Drawing.StrokeKind.PLAIN);
    WindowLines lines = new WindowLines(COLUMN, ROW, tone -> TextColor.ANSI.DEFAULT, Color.WHITE);
    lines.show(List.of(new Ink(0, 0, 60, 10, List.of(stroke), 0, LIFE, Tone.PLAIN)));
    Graphics2D pen = picture.createGraphics();
    lines.paintComponent(pen);
    pen.dispose();
    // 40 columns of 11 pixels are 116 mm.
    double pixels = 40 * COLUMN / 116.0;
    assertThat((double) lit(picture, true)).isCloseTo(50 * pixels, within(2.0));
    assertThat((double) lit(picture, false)).isCloseTo(10 * pixels, within(2.0));
  }

  private static long lit(BufferedImage picture, boolean across) {
    int middle = (across ? picture.getHeight() : picture.getWidth()) / 2;
    return IntStream.range(0, across ? picture.getWidth() : picture.getHeight())
        .map(at -> across ? picture.getRGB(at, middle) : picture.getRGB(middle, at))
        .filter(rgb -> (rgb & 0xFF) > 0x7F)
        .count();
  }
}
