package linkwright.view;

import linkwright.coach.Field;
import linkwright.coach.Form;
import linkwright.text.Text;

/** A form: labels, what is typed, a hint or the trouble beside it, and the line that keeps it. */
final class FormView {
  private static final int LABEL = 18;

  private FormView() {}

  /** Draws the form from the top of the area; returns the rows it took. */
  static int draw(Canvas area, Form form) {
    area.text(0, 0, area.width(), form.title(), Tone.ACCENT);
    int room = area.height() - 2;
    int rows = form.fields().size();
    int first = Math.max(0, Math.min(form.at() - room + 1, rows + 1 - room));
    int y = 1;
    for (int i = first; i < rows && y < area.height(); i++, y++) {
      field(area, y, form.fields().get(i), i == form.at());
    }
    if (y < area.height()) {
      boolean at = form.at() >= rows;
      String mark = at ? area.glyphs().pick("▸ ", "> ") : "  ";
      area.text(
          LABEL,
          y,
          mark + form.keepWords() + (at ? "  (enter)" : ""),
          at ? Tone.REVERSED : Tone.PLAIN);
      y++;
    }
    return whole(area, y, form);
  }

  /** What beside the field had no room, whole, below the form; returns the row after it. */
  private static int whole(Canvas area, int y, Form form) {
    if (form.at() >= form.fields().size()) {
      return y;
    }
    Field field = form.fields().get(form.at());
    String told = told(field, true);
    if (Text.width(told) <= area.width() - LABEL - wide(area, field) - 1) {
      return y;
    }
    Tone tone = field.trouble().isPresent() ? Tone.WARNING : Tone.FAINT;
    int rows = area.wrapped(0, y + 1, area.width(), 3, told, tone);
    return rows == 0 ? y : y + 1 + rows;
  }

  private static int wide(Canvas area, Field field) {
    int room = Math.max(6, Math.min(28, (area.width() - LABEL) / 2));
    return Math.min(area.width() - LABEL, Math.max(room, Text.width(field.text()) + 2));
  }

  private static String told(Field field, boolean at) {
    return field.trouble().map(trouble -> "! " + trouble).orElse(at ? field.hint() : "");
  }

  private static void field(Canvas area, int y, Field field, boolean at) {
    String mark = at ? area.glyphs().pick("▸ ", "> ") : "  ";
    area.text(0, y, LABEL - 1, mark + field.label(), at ? Tone.STRONG : Tone.PLAIN);
    int wide = wide(area, field);
    area.fill(LABEL, y, wide, 1, " ", at ? Tone.FIELD : Tone.PLAIN);
    area.text(LABEL, y, wide, field.text(), at ? Tone.FIELD : Tone.PLAIN);
    if (at) {
      int caret =
          Text.width(field.text().substring(0, Math.min(field.caret(), field.text().length())));
      area.cursor(LABEL + Math.min(caret, wide - 1), y);
    }
    int beside = LABEL + wide + 1;
    String told = told(field, at);
    Tone tone = field.trouble().isPresent() ? Tone.WARNING : Tone.FAINT;
    area.text(beside, y, Math.max(0, area.width() - beside), told, tone);
  }
}
