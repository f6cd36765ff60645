package linkwright.view;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import linkwright.coach.content.Drawing;
import linkwright.text.Dots;
import linkwright.text.Text;

/** Shapes to one scale, side by side, each with its caption below. */
final class DrawingBlock implements Block {
  private static final int LEAST = 3;

  /** What was just bent is drawn at least so thick, dots. */
  private static final double THICK_DOTS = 3;

  private final Drawing drawing;
  private final int wanted;

  DrawingBlock(Drawing drawing, int width, int height) {
    this.drawing = drawing;
    this.wanted = Math.max(LEAST, Math.min(rows(width), height * 2 / 5));
  }

  /** Rows that the shapes fill with their captions, as wide as they may be. */
  private int rows(int width) {
    int wide = Math.max(1, width / Math.max(2, drawing.shapes().size()) - 2);
    double longest = most(Drawing.Outline::lengthMm);
    double widest = most(Drawing.Outline::widthMm);
    double dotsPerMm = Dots.scale(longest, widest, wide, Integer.MAX_VALUE / Dots.DOWN);
    int captions = captionRows(wide);
    int bar = drawing.bars().isEmpty() ? 0 : 1;
    return (int) Math.ceil((widest * dotsPerMm + 1) / Dots.DOWN) + captions + bar;
  }

  private double most(ToDoubleFunction<Drawing.Outline> of) {
    return drawing.shapes().stream().mapToDouble(of).max().orElse(1);
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
  public GivesWay yields() {
    return drawing.spare() ? GivesWay.LEFT_OUT : GivesWay.SHRINKS;
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
    // The captions hold the measures: the shapes give way before them.
    int captions = Math.min(captionRows(wide - 1), area.height() - 1);
    int bar = drawing.bars().isEmpty() || area.height() < LEAST + captions ? 0 : 1;
    int high = area.height() - captions - bar;
    int life = lifeColumns(area.life(), wide - 2, high);
    int room = wide - 2 - life;
    double longest = most(Drawing.Outline::lengthMm);
    double scale = Dots.scale(longest, most(Drawing.Outline::widthMm), Math.max(1, room), high);
    for (int i = 0; i < shapes.size(); i++) {
      Tone tone = Tones.of(shapes.get(i).emphasis());
      shape(area.area(i * wide, 0, room, high), shapes.get(i), scale, tone);
      if (life > 0) {
        Canvas beside = area.area(i * wide + room, 0, life, high);
        beside.ink(shapes.get(i).strokes(), middle(shapes.get(i)), area.life().getAsDouble(), tone);
      }
      area.wrapped(i * wide, high, wide - 1, captions, shapes.get(i).caption(), tone);
    }
    if (bar > 0) {
      bar(area.area(0, area.height() - 1, area.width(), 1), scale, life > 0);
    }
  }

  /** Columns for the shapes at life size beside them; 0 where they have no room or no measure. */
  private int lifeColumns(OptionalDouble dotsPerMm, int wide, int high) {
    if (dotsPerMm.isEmpty() || drawing.bars().isEmpty()) {
      return 0;
    }
    double dots = dotsPerMm.getAsDouble();
    int columns = (int) Math.ceil(most(Drawing.Outline::lengthMm) * dots / Dots.ACROSS) + 2;
    boolean fits = columns * 2 <= wide && most(Drawing.Outline::widthMm) * dots < high * Dots.DOWN;
    return fits ? columns : 0;
  }

  /** The longest length that is no longer than a shape may be, with its words. */
  private void bar(Canvas area, double dotsPerMm, boolean life) {
    for (Drawing.ScaleBar bar : drawing.bars()) {
      int columns = (int) Math.round(bar.mm() * dotsPerMm / Dots.ACROSS);
      if (columns <= area.width() / 3 && columns >= 2) {
        String line =
            area.glyphs()
                .pick("├" + "─".repeat(columns - 2) + "┤", "|" + "-".repeat(columns - 2) + "|");
        String small = life ? "; the small one beside it is life size" : "";
        area.text(0, 0, area.width(), line + " " + bar.says() + small, Tone.FAINT);
        return;
      }
    }
  }

  private int captionRows(int columns) {
    return drawing.shapes().stream()
        .mapToInt(shape -> Text.wrap(shape.caption(), Math.max(2, columns)).size())
        .max()
        .orElse(1);
  }

  /** Half-way between its lowest and its highest point, mm. */
  private static double middle(Drawing.Outline shape) {
    var heights =
        shape.strokes().stream()
            .flatMap(each -> each.line().stream())
            .mapToDouble(Drawing.At::yMm)
            .summaryStatistics();
    return heights.getCount() == 0 ? 0 : (heights.getMin() + heights.getMax()) / 2;
  }

  /** The line of pull lies across, in the middle of the area. */
  private static void shape(Canvas area, Drawing.Outline shape, double dotsPerMm, Tone tone) {
    if (area.width() < 1 || area.height() < 1) {
      return;
    }
    area.ink(shape.strokes(), middle(shape), dotsPerMm, tone);
    Dots dots = new Dots(area.width(), area.height(), dotsPerMm, new Dots.At(0, middle(shape)));
    for (Drawing.Stroke stroke : shape.strokes()) {
      List<Dots.At> line =
          stroke.line().stream().map(point -> new Dots.At(point.xMm(), point.yMm())).toList();
      switch (stroke.kind()) {
        case PLAIN -> dots.wire(line, stroke.thickMm());
        // Thicker than a line by shape, however small the scale.
        case NEW -> dots.wire(line, Math.max(stroke.thickMm(), THICK_DOTS / dotsPerMm));
        case SOLID -> dots.patch(line);
      }
    }
    put(dots, area, tone);
  }

  /** At the top left of the area; empty cells leave what stands there. */
  private static void put(Dots dots, Canvas area, Tone tone) {
    for (int row = 0; row < area.height(); row++) {
      String text = dots.row(row, area.glyphs() == Glyphs.ASCII);
      for (int column = 0; column < text.length(); column++) {
        if (text.charAt(column) != ' ') {
          area.text(column, row, text.substring(column, column + 1), tone);
        }
      }
    }
  }
}
