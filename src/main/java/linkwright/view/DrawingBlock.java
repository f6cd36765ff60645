package linkwright.view;

import java.util.List;
import linkwright.coach.content.Drawing;
import linkwright.text.Text;

/** Shapes to one scale, side by side, each with its caption below. */
final class DrawingBlock implements Block {
  private static final int LEAST = 3;

  private final Drawing drawing;
  private final int wanted;

  DrawingBlock(Drawing drawing, int height) {
    this.drawing = drawing;
    this.wanted = Math.max(LEAST, height * 2 / 5);
  }

  @Override
  public int wanted() {
    return wanted;
  }

  @Override
  public int least() {
    return 0;
  }

  @Override
  public Yield yields() {
    return Yield.SHRINKS;
  }

  @Override
  public boolean apart() {
    return false;
  }

  @Override
  public void draw(Canvas area, int turned) {
    List<Drawing.Outline> shapes = drawing.shapes();
    if (shapes.isEmpty() || area.height() < LEAST) {
      return;
    }
    int wide = area.width() / Math.max(shapes.size() == 1 ? 1 : 2, shapes.size());
    int captions = area.height() > LEAST && !captionsFit(wide - 1) ? 2 : 1;
    int high = area.height() - captions;
    double longest = shapes.stream().mapToDouble(Drawing.Outline::lengthMm).max().orElse(1);
    double widest = shapes.stream().mapToDouble(Drawing.Outline::widthMm).max().orElse(1);
    double scale = Dots.scale(longest, widest, Math.max(1, wide - 2), high);
    bar(area.area(0, 0, area.width(), high), scale);
    for (int i = 0; i < shapes.size(); i++) {
      Tone tone = Tones.of(shapes.get(i).emphasis());
      shape(area.area(i * wide, 0, wide - 2, high), shapes.get(i), scale, tone);
      area.wrapped(i * wide, high, wide - 1, captions, shapes.get(i).caption(), tone);
    }
  }

  /** A bar as long as it says, at the drawing's own scale, in the last row of the shapes. */
  private void bar(Canvas area, double dotsPerMm) {
    int columns = (int) Math.round(drawing.barMm() * dotsPerMm / 2);
    String words = " " + drawing.bar();
    if (columns < 2 || columns + Text.width(words) > area.width() || area.height() < 2) {
      return;
    }
    String line = area.glyphs().pick("├" + "─".repeat(columns - 2) + "┤", "|" + "-".repeat(columns - 2) + "|");
    area.right(0, line + words, Tone.FAINT);
  }

  private boolean captionsFit(int columns) {
    return drawing.shapes().stream().allMatch(shape -> Text.width(shape.caption()) <= columns);
  }

  /** The line of pull lies across, in the middle of the area. */
  private static void shape(Canvas area, Drawing.Outline shape, double dotsPerMm, Tone tone) {
    if (area.width() < 1 || area.height() < 1) {
      return;
    }
    double least = shape.line().stream().mapToDouble(Drawing.At::yMm).min().orElse(0);
    double greatest = shape.line().stream().mapToDouble(Drawing.At::yMm).max().orElse(0);
    Dots dots =
        new Dots(area.width(), area.height(), dotsPerMm, new Dots.At(0, (least + greatest) / 2));
    List<Dots.At> line =
        shape.line().stream().map(point -> new Dots.At(point.xMm(), point.yMm())).toList();
    dots.wire(line, shape.wireMm());
    dots.draw(area, tone);
  }
}
