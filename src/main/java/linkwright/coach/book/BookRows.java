package linkwright.coach.book;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import linkwright.coach.kernel.BookTitles;
import linkwright.coach.kernel.DoubtfulLine;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Settings;
import linkwright.job.Entry;
import linkwright.job.EntryLabels;
import linkwright.job.Strikes;

/**
 * The rows of the book's screen: doubtful lines first, then the entries found, the newest first.
 * Only a row that is asked for is put into words.
 */
public final class BookRows {
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter LONG =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu, HH:mm:ss", Locale.ENGLISH);

  private final OpenJob job;
  private final Settings settings;
  private final List<Integer> found;
  private final Strikes strikes;
  private final BookTitles titles;
  private final EntryLabels labels;

  private BookRows(OpenJob job, Settings settings, List<Integer> found, BookTitles titles) {
    this.titles = titles;
    this.job = job;
    this.settings = settings;
    this.found = found;
    this.strikes = Strikes.in(job.entries());
    this.labels = EntryLabels.of(job.entries());
  }

  /** The rows of the book that is shown. */
  public static BookRows of(Model model, BookHeld screen) {
    OpenJob job = model.job().orElseThrow();
    return new BookRows(job, model.settings(), screen.found(), BookTitles.of(model));
  }

  /** How many rows there are. */
  public int size() {
    return job.doubtful().size() + found.size();
  }

  /** The doubtful line of that row, if it is one. */
  public Optional<DoubtfulLine> doubtful(int row) {
    return row >= 0 && row < job.doubtful().size()
        ? Optional.of(job.doubtful().get(row))
        : Optional.empty();
  }

  /** The entry of that row, if it is one. */
  public Optional<Entry> entry(int row) {
    int place = row - job.doubtful().size();
    return place >= 0 && place < found.size()
        ? Optional.of(job.entries().get(found.get(place)))
        : Optional.empty();
  }

  /** What the entry says. */
  public String words(Entry entry) {
    return EntryWords.of(entry.fact(), titles, settings, labels::of);
  }

  /** By what the entry is named here, as no other of the book is. */
  public String label(Entry entry) {
    return labels.of(entry.id());
  }

  /** Whether the entry is struck. */
  public boolean struck(Entry entry) {
    return strikes.has(entry);
  }

  /** What a doubtful line says, or that it cannot be read. */
  public String words(DoubtfulLine line) {
    return "line "
        + line.line()
        + " fails its check, is kept and not used: "
        + line.reading()
            .map(entry -> EntryWords.of(entry.fact(), titles, settings, labels::of))
            .orElse("it cannot be read, " + line.text());
  }

  /** Day and time of an entry, short, where the bench stands. */
  public String when(Entry entry) {
    return when(entry, settings);
  }

  /** The same by those settings. */
  public static String when(Entry entry, Settings settings) {
    return SHORT.format(entry.at().atZone(settings.zone()));
  }

  /** Day and time of an entry in full, where the bench stands. */
  public String whenInFull(Entry entry) {
    return LONG.format(entry.at().atZone(settings.zone()));
  }

  /** The strikes by which the entry is struck. */
  public List<Entry> struckBy(Entry entry) {
    return strikes.on(entry, job.entries());
  }
}
