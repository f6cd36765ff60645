package linkwright.shell.entering;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;
import linkwright.books.BookFile;
import linkwright.books.BookLine;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.files.DraftStore;
import linkwright.quantity.Count;

/**
 * What is typed into the open form is on the disk till its entry is: a program that dies in between
 * leaves both. So the draft is marked before the entry is written, by how far the book went then; a
 * book that goes further holds the entry, and the draft is typed no more.
 */
public final class EnteringDrafts {
  private static final String AFTER = " of ";
  private static final String IN = " in ";
  private static final int DIGITS = 9;

  private final DraftStore drafts;
  private final String device;
  private Optional<String> marked = Optional.empty();

  /** Marks in these drafts what this device enters. */
  public EnteringDrafts(DraftStore drafts, String device) {
    this.drafts = drafts;
    this.device = device;
  }

  /** Marks what is typed in the open form: it becomes an entry of that book next. */
  public void mark(Model model, Path book, IntSupplier last) {
    Optional<Form> form = model.held().form();
    if (form.isEmpty()) {
      return;
    }
    String slug =
        form.get().purpose().isJobless()
            ? Effect.NO_JOB
            : model.job().map(OpenJob::slug).orElse(Effect.NO_JOB);
    String name = DraftWords.name(form.get().purpose());
    if (drafts.of(slug).containsKey(name)) {
      // A disk that refuses the mark refuses the entry, too, and that is told.
      drafts.entering(
          slug, name, DraftWords.keys(form.get()), last.getAsInt() + AFTER + device + IN + book);
      marked = Optional.of(slug);
    }
  }

  /** What was not entered after all waits on. */
  public void over() {
    marked.ifPresent(slug -> drafts.settle(slug, entry -> false));
    marked = Optional.empty();
  }

  /** What waits of a job, read as it is known by its book. */
  public static Map<String, Map<String, String>> waiting(DraftStore drafts, String slug) {
    return drafts.of(slug, EnteringDrafts::stands);
  }

  /** Takes what was entered out of what waits. */
  public static void settle(DraftStore drafts, String slug) {
    drafts.settle(slug, EnteringDrafts::stands);
  }

  /** The highest number that the device gave in that book; nought in one that is not there. */
  public static int last(Path book, String device) {
    return BookFile.look(book).map(read -> last(read, device)).found().orElse(0);
  }

  /** The same of a book that was read. */
  public static int last(BookFile book, String device) {
    return book.lines().stream()
        .filter(line -> line.device().equals(device))
        .mapToInt(BookLine::number)
        .max()
        .orElse(0);
  }

  private static boolean stands(String entry) {
    int of = entry.indexOf(AFTER);
    int in = entry.indexOf(IN, of);
    return of > 0
        && in > of
        && Count.inDigits(entry.substring(0, of), DIGITS)
            .filter(
                before ->
                    last(
                            Path.of(entry.substring(in + IN.length())),
                            entry.substring(of + AFTER.length(), in))
                        > before)
            .isPresent();
  }
}
