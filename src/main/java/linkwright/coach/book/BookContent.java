package linkwright.coach.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.DoubtfulLine;
import linkwright.coach.kernel.Model;
import linkwright.job.Entry;
import linkwright.job.Fact;

/** The book: entries a line each, the newest first, and the chosen one whole. */
final class BookContent {
  private static final String TITLE = "book";

  /** Lines on either side of the chosen one: more than any window shows; a book has thousands. */
  private static final int AROUND = 80;

  private BookContent() {}

  static Content of(Model model, BookHeld held) {
    Optional<Form> form = held.form();
    if (form.isPresent() && form.get().purpose() != Form.Purpose.SEARCH) {
      return Content.of(TITLE, new Fields(form.get()));
    }
    BookRows rows = BookRows.of(model, held);
    List<Part> parts = new ArrayList<>();
    form.ifPresent(search -> parts.add(new Fields(search)));
    parts.add(head(model, held, rows));
    if (rows.size() > 0) {
      parts.add(table(rows, held.at()));
      chosen(parts, rows, held.at());
    }
    return new Content(TITLE, parts);
  }

  private static Prose head(Model model, BookHeld held, BookRows rows) {
    int all = model.job().orElseThrow().entries().size();
    if (rows.size() == 0) {
      return Prose.says("No entry says that.");
    }
    return Prose.aside(
        held.search().isEmpty()
            ? all + " entries, the newest first"
            : held.found().size() + " of " + all + " entries say “" + held.search() + "”");
  }

  private static Table table(BookRows rows, int at) {
    int from = Math.max(0, at - AROUND);
    int to = Math.min(rows.size(), at + AROUND);
    List<Table.Line> lines = new ArrayList<>();
    for (int i = from; i < to; i++) {
      Optional<DoubtfulLine> doubtful = rows.doubtful(i);
      lines.add(
          doubtful.isPresent()
              ? Table.Line.of("", "", "! " + rows.words(doubtful.get())).with(Emphasis.TROUBLE)
              : entry(rows, rows.entry(i).orElseThrow()));
    }
    List<Table.Column> columns =
        List.of(Table.Column.words(""), Table.Column.numbers(""), Table.Column.words(""));
    return new Table(columns, lines, at, from, rows.size());
  }

  private static Table.Line entry(BookRows rows, Entry entry) {
    boolean struck = rows.struck(entry);
    String words = (struck ? "× struck: " : "") + rows.words(entry);
    return Table.Line.of(rows.when(entry), rows.label(entry), words)
        .with(struck ? Emphasis.ASIDE : Emphasis.PLAIN);
  }

  private static void chosen(List<Part> parts, BookRows rows, int at) {
    Optional<DoubtfulLine> doubtful = rows.doubtful(at);
    if (doubtful.isPresent()) {
      parts.add(Prose.stop(rows.words(doubtful.get())));
      parts.add(Prose.aside(doubtful.get().text()));
      return;
    }
    rows.entry(at).ifPresent(entry -> whole(parts, rows, entry));
  }

  private static void whole(List<Part> parts, BookRows rows, Entry entry) {
    parts.add(Prose.aside(rows.whenInFull(entry) + ", entry " + rows.label(entry)));
    // As a value, so that what was typed in it is said in no other words.
    parts.add(new Rows(List.of(Row.of("", rows.words(entry)))));
    List<Entry> by = rows.struck(entry) ? rows.struckBy(entry) : List.of();
    if (!by.isEmpty() && by.get(0).fact() instanceof Fact.Struck strike) {
      String struck = "× struck: “" + strike.why() + "” (entry " + rows.label(by.get(0)) + ")";
      parts.add(new Prose(Prose.Kind.MAIN, struck));
    }
  }
}
