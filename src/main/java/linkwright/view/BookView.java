package linkwright.view;

import java.util.List;
import java.util.Optional;
import linkwright.coach.book.BookHeld;
import linkwright.coach.book.BookRows;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.DoubtfulLine;
import linkwright.coach.kernel.Model;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.text.Text;

/** The book: entries a row each, the newest first, and the chosen one whole below. */
final class BookView {
  private static final int WHEN = 13;
  private static final int FOOT = 4;

  private BookView() {}

  static void draw(Canvas body, Model model, BookHeld screen) {
    Optional<Form> form = screen.form();
    if (form.isPresent() && form.get().purpose() != Form.Purpose.SEARCH) {
      FormView.draw(body, form.get());
      return;
    }
    BookRows rows = BookRows.of(model, screen);
    head(body, model, screen, rows);
    int foot = Math.min(Math.max(FOOT, body.height() / 5), Math.max(0, body.height() - 4));
    int high = Math.max(0, body.height() - 1 - foot);
    list(body.area(0, 1, body.width(), high), rows, screen.at());
    chosen(body.area(0, body.height() - foot, body.width(), foot), rows, screen.at());
  }

  private static void head(Canvas body, Model model, BookHeld screen, BookRows rows) {
    int all = model.job().orElseThrow().entries().size();
    if (screen.form().isEmpty() && screen.search().isEmpty()) {
      body.text(0, 0, body.width(), all + " entries, the newest first", Tone.FAINT);
      return;
    }
    String found = screen.found().size() + " of " + all + " entries";
    int room = Math.max(4, body.width() - Text.width(found) - 10);
    int x = body.text(0, 0, "search ", Tone.ACCENT);
    boolean typing = screen.form().isPresent();
    if (typing) {
      body.fill(x, 0, room, 1, " ", Tone.FIELD);
      Form form = screen.form().get();
      int caret = Math.min(form.fields().get(0).caret(), screen.search().length());
      body.cursor(x + Math.min(room - 1, Text.width(screen.search().substring(0, caret))), 0);
    }
    body.text(x, 0, room, screen.search(), typing ? Tone.FIELD : Tone.STRONG);
    body.right(0, found, Tone.FAINT);
    if (rows.size() == 0) {
      body.text(2, 1, body.width() - 2, "No entry says that.", Tone.PLAIN);
    }
  }

  private static void list(Canvas area, BookRows rows, int at) {
    int high = area.height();
    int first = Math.max(0, Math.min(at - high / 2, rows.size() - high));
    int id = Math.max(8, Math.min(16, area.width() / 6));
    for (int i = first; i < rows.size() && i - first < high; i++) {
      int y = i - first;
      boolean here = i == at;
      area.text(0, y, 2, here ? area.glyphs().pick("▸", ">") : " ", Tone.ACCENT);
      Optional<DoubtfulLine> doubtful = rows.doubtful(i);
      if (doubtful.isPresent()) {
        area.text(2, y, "! " + rows.words(doubtful.get()), Tone.WARNING);
      } else {
        entry(area, y, rows, rows.entry(i).orElseThrow(), id, here);
      }
    }
  }

  private static void entry(Canvas area, int y, BookRows rows, Entry entry, int id, boolean here) {
    boolean struck = rows.struck(entry);
    area.text(2, y, WHEN - 1, rows.when(entry), Tone.FAINT);
    area.text(2 + WHEN, y, id, entry.id().toString(), Tone.FAINT);
    String words = (struck ? struckSign(area) : "") + rows.words(entry);
    Tone tone = here ? Tone.STRONG : struck ? Tone.FAINT : Tone.PLAIN;
    area.text(2 + WHEN + id + 1, y, words, tone);
  }

  private static String struckSign(Canvas area) {
    return area.glyphs().pick("× ", "x ") + "struck: ";
  }

  private static void chosen(Canvas area, BookRows rows, int at) {
    Optional<DoubtfulLine> doubtful = rows.doubtful(at);
    if (doubtful.isPresent()) {
      int row = 1;
      row += area.wrapped(0, row, area.width(), 2, rows.words(doubtful.get()), Tone.WARNING);
      area.wrapped(0, row, area.width(), area.height() - row, doubtful.get().text(), Tone.FAINT);
      return;
    }
    Optional<Entry> found = rows.entry(at);
    if (found.isEmpty()) {
      return;
    }
    Entry entry = found.get();
    String when = rows.whenInFull(entry) + ", entry " + entry.id();
    area.text(0, 1, area.width(), when, Tone.FAINT);
    List<Entry> by = rows.struck(entry) ? rows.struckBy(entry) : List.of();
    int room = area.height() - 2 - (by.isEmpty() ? 0 : 1);
    int row = 2 + area.wrapped(0, 2, area.width(), room, rows.words(entry), Tone.PLAIN);
    if (!by.isEmpty() && by.get(0).fact() instanceof Fact.Struck strike) {
      String struck = struckSign(area) + strike.why() + " (entry " + by.get(0).id() + ")";
      area.text(0, row, area.width(), struck, Tone.STRONG);
    }
  }
}
