package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Offered;
import linkwright.coach.kernel.Spot;
import linkwright.text.Text;

/**
 * A form: labels, what is typed, a hint or the trouble beside it, the line that unfolds the rest
 * and the one that keeps it.
 */
final class FormView {
  private static final int LABEL = 18;
  private static final int MOST_CHOICES = 5;
  private static final int PLACE = 14;

  private FormView() {}

  /** A line below the form. */
  private record Below(String text, Tone tone) {}

  /**
   * Draws the form from the top of the area, what has no room below it turned on so often.
   *
   * @param key the key that turns it on; empty where the page of it is told elsewhere
   */
  static void draw(Canvas area, Form form, int turned, String key) {
    // What does not fit beside its field keeps its place below it, however low the window is.
    List<Below> below = below(form, area.width(), area.glyphs());
    int foot = Math.min(below.size(), room(form, area.width(), area.height()));
    int y = fields(area.area(0, 0, area.width(), area.height() - foot), form);
    int gap = foot > 0 && y + foot < area.height() ? 1 : 0;
    boolean told = !key.isEmpty();
    int parts = parts(below.size(), foot, told);
    int page = Math.floorMod(turned, parts);
    int onePart = parts > 1 && told ? foot - 1 : foot;
    for (int i = 0; i < onePart && page * onePart + i < below.size(); i++) {
      Below line = below.get(page * onePart + i);
      area.text(0, y + gap + i, area.width(), line.text(), line.tone());
    }
    if (parts > 1 && told) {
      PageLine.draw(area.area(0, y + gap, area.width(), foot), page, parts, key);
    }
  }

  /** Rows below the fields: the title and one field stay in sight. */
  private static int room(Form form, int width, int height) {
    return Math.max(0, height - 1 - title(form, width).size());
  }

  /** How often what stands below the fields is turned on in that height. */
  static int parts(Form form, int width, int height, boolean told) {
    return parts(below(form, width, Glyphs.FULL).size(), room(form, width, height), told);
  }

  private static int parts(int below, int room, boolean told) {
    int onePart = Math.max(1, told ? room - 1 : room);
    return below <= room || room < 1 ? 1 : (below + onePart - 1) / onePart;
  }

  /** Rows in which all of it shows, whichever field has the caret. */
  static int wanted(Form form, int width) {
    int most = form.fields().stream().mapToInt(field -> told(field, width).size()).max().orElse(0);
    int now = below(form, width, Glyphs.FULL).size();
    int below = Math.max(most, now);
    // The title; a free row above what stands below.
    return form.lines().size() + title(form, width).size() + (below > 0 ? 1 + below : 0);
  }

  private static List<Below> below(Form form, int width, Glyphs glyphs) {
    if (form.at() >= form.fields().size()) {
      return List.of();
    }
    Field field = form.fields().get(form.at());
    if (form.explained()) {
      return explained(field, width);
    }
    List<Below> lines = new ArrayList<>();
    for (String line : told(field, width)) {
      lines.add(new Below(line, field.trouble().isPresent() ? Tone.WARNING : Tone.FAINT));
    }
    boolean narrowed = !field.line().marked() && !field.choices().isEmpty();
    if (narrowed && !field.text().isBlank()) {
      List<Offered> offered = field.offered();
      int shown = Math.min(MOST_CHOICES, offered.size());
      for (int i = 0; i < shown; i++) {
        boolean meant = i == 0 && field.takesParts() && field.whichOne().isEmpty();
        String mark = meant ? glyphs.pick("▸ ", "> ") : "  ";
        Offered choice = offered.get(i);
        String line =
            mark
                + (choice.says().isEmpty()
                    ? choice.id()
                    : choice.says() + "  (" + choice.id() + ")");
        if (meant) {
          // The one that is meant is read whole.
          Text.wrap(line, Math.max(2, width))
              .forEach(row -> lines.add(new Below(row, Tone.STRONG)));
        } else {
          lines.add(new Below(Text.cut(line, width, glyphs.cutMark()), Tone.PLAIN));
        }
      }
      if (shown < offered.size()) {
        lines.add(new Below("  and " + (offered.size() - shown) + " more", Tone.FAINT));
      }
    }
    return lines;
  }

  private static List<Below> explained(Field field, int width) {
    List<Below> lines = new ArrayList<>();
    for (String text : field.explained()) {
      for (String line : Text.wrap(text, Math.max(2, Math.min(80, width)))) {
        if (!line.isBlank()) {
          lines.add(new Below(line, Tone.PLAIN));
        }
      }
    }
    return lines;
  }

  /** Rows below the form for what does not fit beside its field. */
  private static List<String> told(Field field, int width) {
    String told = told(field, true);
    if (fits(told, field, width)) {
      return List.of();
    }
    return Text.wrap(told, Math.max(2, Math.min(80, width)));
  }

  /** Draws title, fields and the lines below them; returns the rows they took. */
  private static int fields(Canvas area, Form form) {
    List<Integer> lines = form.lines();
    int here = lines.indexOf(form.at());
    List<String> title = title(form, area.width());
    int head = Math.min(title.size(), Math.max(1, area.height() - 1));
    int room = Math.max(1, area.height() - head);
    int first = Math.max(0, Math.min(here - room + 1, lines.size() - room));
    boolean whole = lines.size() <= room;
    String place = whole ? "" : " line " + (here + 1) + " of " + lines.size();
    for (int i = 0; i < head; i++) {
      area.text(0, i, title.get(i), Tone.ACCENT);
    }
    area.right(0, place, Tone.FAINT);
    int y = head;
    for (int i = first; i < lines.size() && y < area.height(); i++, y++) {
      int line = lines.get(i);
      if (line < form.fields().size()) {
        field(area, y, form.fields().get(line), line == form.at());
      } else {
        last(area, y, form, line);
      }
      area.spot(0, y, area.width(), 1, new Spot.ToField(line));
    }
    return y;
  }

  /** In rows, with room for which line of how many stands beside it. */
  private static List<String> title(Form form, int width) {
    return Text.wrap(form.title(), Math.max(2, width - PLACE));
  }

  private static void last(Canvas area, int y, Form form, int line) {
    boolean at = form.at() == line;
    String mark = at ? area.glyphs().pick("▸ ", "> ") : "  ";
    String words = line == form.foldLine() ? form.foldWords() : form.keepWords();
    String told = mark + words + (at ? "  (enter)" : "");
    int x = Math.max(0, Math.min(LABEL, area.width() - Text.width(told)));
    area.text(x, y, told, at ? Tone.REVERSED : Tone.PLAIN);
  }

  private static boolean fits(String told, Field field, int formWidth) {
    return Text.width(told) <= formWidth - LABEL - wide(formWidth, field) - 1;
  }

  private static int wide(int formWidth, Field field) {
    int room = Math.max(6, Math.min(28, (formWidth - LABEL) / 2));
    int typed = Text.width(field.text()) + Text.width(field.unitToCome()) + 2;
    return Math.min(formWidth - LABEL, Math.max(room, typed));
  }

  private static String told(Field field, boolean at) {
    return field.trouble().map(trouble -> "! " + trouble).orElse(at ? field.beside() : "");
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
    String shown = mark + text.substring(from);
    room.text(0, 0, shown, field.line().marked() ? Tone.REVERSED : Tone.FIELD);
    if (!field.unitToCome().isEmpty()) {
      int after = Text.width(shown);
      room.text(after, 0, Math.max(0, room.width() - after), field.unitToCome(), Tone.FAINT);
    }
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
