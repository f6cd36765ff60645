package linkwright.view;

import java.util.List;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Part;

/** Two groups side by side, or, in a narrow window, one below the other. */
final class BesideBlock implements Block {
  private static final int WIDE_ENOUGH = 72;
  private static final int GAP = 2;

  /** Rows of a figure of the smallest size, and its word in two. */
  private static final int FIGURE = 5;

  /** What a form needs without its hints. */
  private static final int FORM = 42;

  /** What a form needs beside what it comes to. */
  private static final int RESULTS = 34;

  private final BodyView body;
  private final Beside beside;
  private final int width;
  private final int height;
  private final boolean side;

  BesideBlock(BodyView body, Beside beside, int width, int height) {
    this.body = body;
    this.beside = beside;
    this.width = width;
    this.height = height;
    this.side = width >= WIDE_ENOUGH || has(beside.first(), Figure.class);
  }

  private static boolean has(List<Part> parts, Class<? extends Part> kind) {
    return parts.stream().anyMatch(kind::isInstance);
  }

  private int firstWidth(int all) {
    if (!side) {
      return all;
    }
    return has(beside.first(), Fields.class)
        ? Math.max(Math.min(FORM, all - RESULTS - GAP), all * 11 / 20 - GAP)
        : Math.max(10, all / 2 - GAP / 2);
  }

  @Override
  public int wanted() {
    int first = body.wanted(beside.first(), firstWidth(width), height);
    int second = body.wanted(beside.second(), secondWidth(width), height);
    return side ? Math.max(first, second) : first + second;
  }

  private int secondWidth(int all) {
    return side ? Math.max(0, all - firstWidth(all) - GAP) : all;
  }

  @Override
  public int least() {
    return Math.min(wanted(), side ? 3 : 6);
  }

  /** A figure that can be read from across a bench, with its word. */
  @Override
  public int kept() {
    return has(beside.first(), Figure.class) ? Math.min(wanted(), FIGURE) : least();
  }

  @Override
  public GivesWay yields() {
    return has(beside.first(), Figure.class) ? GivesWay.SHRINKS : GivesWay.TURNS;
  }

  @Override
  public int parts(int rows) {
    int first = firstHeight(rows);
    return Math.max(
        body.parts(beside.first(), firstWidth(width), height, first),
        body.parts(beside.second(), secondWidth(width), height, side ? rows : rows - first));
  }

  @Override
  public int turners(int rows) {
    int first = firstHeight(rows);
    return body.turners(beside.first(), firstWidth(width), height, first)
        + body.turners(beside.second(), secondWidth(width), height, side ? rows : rows - first);
  }

  @Override
  public boolean typed() {
    return has(beside.first(), Fields.class) || has(beside.second(), Fields.class);
  }

  private int firstHeight(int rows) {
    if (side) {
      return rows;
    }
    int first = body.wanted(beside.first(), width, height);
    int second = body.wanted(beside.second(), width, height);
    return first + second <= rows ? first : Math.max(Math.min(first, 4), rows * 2 / 5);
  }

  @Override
  public void draw(Canvas area, int turned) {
    int wide = firstWidth(area.width());
    int high = firstHeight(area.height());
    body.draw(area.area(0, 0, wide, high), beside.first(), turned, height);
    Canvas second =
        side
            ? area.area(wide + GAP, 0, area.width() - wide - GAP, area.height())
            : area.area(0, high, area.width(), area.height() - high);
    body.draw(second, beside.second(), turned, height);
  }
}
