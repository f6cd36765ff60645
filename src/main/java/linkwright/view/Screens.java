package linkwright.view;

import java.util.OptionalDouble;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.content.Page;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.view.spelt.Spelt;

/** Draws a page of the coach: a pure function of what it says, the room, the signs and the keys. */
public final class Screens {
  /** The smallest room in which every screen still says what it must. */
  public static final int LEAST_WIDTH = 40;

  /** The fewest rows that will do. */
  public static final int LEAST_HEIGHT = 12;

  private Screens() {}

  /**
   * The whole picture.
   *
   * @param life half columns that are a millimetre on this screen; empty where that is not known
   */
  public static Grid draw(
      Page page, int width, int height, Glyphs glyphs, KeyMap keys, OptionalDouble life) {
    Canvas canvas = new Canvas(width, height, glyphs, life);
    KeyMap here = keys.away(page.away());
    if (width < LEAST_WIDTH || height < LEAST_HEIGHT) {
      tooSmall(canvas);
      return canvas.toGrid();
    }
    if (page.across().isPresent()) {
      AcrossView.draw(canvas, page.across().get(), here);
      return canvas.toGrid();
    }
    Page spelt = glyphs == Glyphs.ASCII ? Spelt.of(page, glyphs::spelt) : page;
    Frame frame = new Frame(spelt, here);
    Canvas body = frame.draw(canvas);
    new BodyView(glyphs, here, page.turns()).draw(body, spelt.body(), spelt.turned());
    frame.foot(canvas);
    return canvas.toGrid();
  }

  /**
   * How many parts a place and its foot take in a window of that size, with a job open or none.
   *
   * @param told a sentence that is told at the foot; empty for none
   * @param still what is still to do; empty for nothing
   */
  public static int parts(
      Content content, String told, String still, int width, int height, boolean chain) {
    int wide = Math.max(2, width - 2);
    Foot foot =
        new Foot(ActMention.fill(told, KeyMap.USUAL::spokenOf), still, Foot.isCard(content));
    int rows = Frame.head(chain, height) + Frame.FOOT - 1 + foot.rows(wide, height);
    BodyView body = new BodyView(Glyphs.FULL, KeyMap.USUAL, Act.MORE);
    return Math.max(
        body.parts(content, wide, Math.max(1, height - rows)),
        foot.parts(wide, height, KeyMap.USUAL.firstOf(Act.MORE)));
  }

  /** What is shown while routines, cautions and jobs are read. */
  public static Grid reading(int columns, int rows, Glyphs glyphs) {
    Canvas canvas = new Canvas(columns, rows, glyphs);
    canvas.text(1, 0, columns - 1, "Linkwright", Tone.STRONG);
    canvas.text(1, 2, columns - 1, "Reading routines, cautions and jobs.", Tone.FAINT);
    return canvas.toGrid();
  }

  /** The same, once it takes long: how far it has come, and the way out. */
  public static Grid reading(int columns, int rows, Glyphs glyphs, int done, int all) {
    Canvas canvas = new Canvas(columns, rows, glyphs);
    canvas.text(1, 0, columns - 1, "Linkwright", Tone.STRONG);
    String count = "Reading the jobs, those changed last first: " + done + " of " + all + ".";
    int row = 2 + canvas.wrapped(1, 2, columns - 2, rows - 3, count, Tone.PLAIN);
    canvas.wrapped(
        1, row + 1, columns - 2, rows - row - 1, "esc goes on without the rest", Tone.FAINT);
    return canvas.toGrid();
  }

  private static void tooSmall(Canvas canvas) {
    String need =
        "Needs "
            + LEAST_WIDTH
            + " x "
            + LEAST_HEIGHT
            + ", has "
            + canvas.width()
            + " x "
            + canvas.height()
            + ".";
    canvas.wrapped(
        0,
        0,
        canvas.width(),
        canvas.height(),
        "The window is too small. " + need + " Nothing is lost: make it larger.",
        Tone.WARNING);
  }
}
