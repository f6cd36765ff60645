package linkwright.view;

import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Spot;
import linkwright.text.Text;

/** A form: labels, what is typed, a hint or the trouble beside it, and the line that keeps it. */
final class FormView {
  private static final int LABEL = 18;
  private static final int MOST_BELOW = 3;

  private FormView() {}

  /** Draws the form from the top of the area; returns the rows it took. */
  static int draw(Canvas area, Form form) {
    boolean fits = form.at() >= form.fields().size() || fits(form, area.width());
    // What does not fit beside its field keeps its place below it, however low the window is.
    int foot =
        fits
            ? 0
            : Math.min(
                below(form.fields().get(form.at()), area.width()), Math.max(0, area.height() - 2));
    int y = fields(area.area(0, 0, area.width(), area.height() - foot), form);
    int gap = y + foot < area.height() ? 1 : 0;
    return y + gap + told(area.area(0, y + gap, area.width(), foot), form, area.width());
  }

  /** Rows in which all of it shows, whichever field has the caret. */
  static int wanted(Form form, int width) {
    int below = form.fields().stream().mapToInt(field -> below(field, width)).max().orElse(0);
    // The title and the line that keeps it; a free row above what stands below.
    return form.fields().size() + 2 + (below > 0 ? 1 + below : 0);
  }

  /** Rows below the form for what does not fit beside its field. */
  private static int below(Field field, int width) {
    String told = told(field, true);
    return fits(told, field, width)
        ? 0
        : Math.min(MOST_BELOW, Text.wrap(told, Math.max(2, width)).size());
  }

  private static boolean fits(Form form, int formWidth) {
    Field field = form.fields().get(form.at());
    return fits(told(field, true), field, formWidth);
  }

  /** Draws title, fields and the line that keeps them; returns the rows they took. */
  static int fields(Canvas area, Form form) {
    int room = Math.max(1, area.height() - 2);
    int rows = form.fields().size();
    int first = Math.max(0, Math.min(form.at() - room + 1, rows + 1 - room));
    boolean whole = rows + 2 <= area.height();
    String place = whole ? "" : " " + Math.min(rows, form.at() + 1) + " of " + rows;
    area.text(0, 0, Math.max(0, area.width() - place.length()), form.title(), Tone.ACCENT);
    area.right(0, place, Tone.FAINT);
    int y = 1;
    for (int i = first; i < rows && y < area.height(); i++, y++) {
      field(area, y, form.fields().get(i), i == form.at());
      area.spot(0, y, area.width(), 1, new Spot.ToField(i));
    }
    if (y < area.height()) {
      boolean at = form.at() >= rows;
      String mark = at ? area.glyphs().pick("▸ ", "> ") : "  ";
      area.text(
          LABEL,
          y,
          mark + form.keepWords() + (at ? "  (enter)" : ""),
          at ? Tone.REVERSED : Tone.PLAIN);
      area.spot(0, y, area.width(), 1, new Spot.ToField(rows));
      y++;
    }
    return y;
  }

  /** What had no room beside the field with the caret, whole; returns the rows it took. */
  static int told(Canvas below, Form form, int formWidth) {
    if (form.at() >= form.fields().size()) {
      return 0;
    }
    Field field = form.fields().get(form.at());
    String told = told(field, true);
    if (fits(told, field, formWidth)) {
      return 0;
    }
    Tone tone = field.trouble().isPresent() ? Tone.WARNING : Tone.FAINT;
    return below.wrapped(0, 0, below.width(), below.height(), told, tone);
  }

  private static boolean fits(String told, Field field, int formWidth) {
    return Text.width(told) <= formWidth - LABEL - wide(formWidth, field) - 1;
  }

  private static int wide(int formWidth, Field field) {
    int room = Math.max(6, Math.min(28, (formWidth - LABEL) / 2));
    return Math.min(formWidth - LABEL, Math.max(room, Text.width(field.text()) + 2));
  }

  private static String told(Field field, boolean at) {
    return field.trouble().map(trouble -> "! " + trouble).orElse(at ? field.hint() : "");
  }

  /**
   * The text with the caret in sight: where it is too long, its beginning goes out of the field.
   */
  private static void typed(Canvas room, Field field) {
    String text = field.text();
    int caret = Math.min(field.caret(), text.length());
    int from = 0;
    while (Text.width(text.substring(from, caret)) > room.width() - (from > 0 ? 2 : 1)) {
      from = text.offsetByCodePoints(from, 1);
    }
    String mark = from > 0 ? room.glyphs().cutMark() : "";
    room.text(0, 0, mark + text.substring(from), Tone.FIELD);
    room.cursor(Text.width(mark + text.substring(from, caret)), 0);
  }

  private static void field(Canvas area, int y, Field field, boolean at) {
    String mark = at ? area.glyphs().pick("▸ ", "> ") : "  ";
    area.text(0, y, LABEL - 1, mark + field.label(), at ? Tone.STRONG : Tone.PLAIN);
    int wide = wide(area.width(), field);
    area.fill(LABEL, y, wide, 1, " ", at ? Tone.FIELD : Tone.PLAIN);
    if (at) {
      typed(area.area(LABEL, y, wide, 1), field);
    } else {
      area.text(LABEL, y, wide, field.text(), Tone.PLAIN);
    }
    int beside = LABEL + wide + 1;
    String told = told(field, at);
    if (at && !fits(told, field, area.width())) {
      // It stands whole below the form; here only that something is wrong.
      told = field.trouble().isPresent() ? "!" : "";
    }
    Tone tone = field.trouble().isPresent() ? Tone.WARNING : Tone.FAINT;
    area.text(beside, y, Math.max(0, area.width() - beside), told, tone);
  }
}
