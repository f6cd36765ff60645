package linkwright.shell;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linkwright.coach.Shelf;
import linkwright.coach.TrayJob;
import linkwright.coach.TrayWords;
import linkwright.files.BookFile;
import linkwright.files.EntryLines;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.quantity.Read;

/** Reads what lies in the tray; nothing is written and no book is held. */
public final class TrayReading {
  private TrayReading() {}

  /** The jobs in the user's folder, open ones first, the one last worked on before the others. */
  public static List<TrayJob> of(Home home, Shelf shelf, Instant now) {
    List<TrayJob> found = new ArrayList<>();
    home.books().forEach(path -> found.add(trayJob(path, shelf, now)));
    found.sort(
        Comparator.comparing(TrayJob::closed)
            .thenComparing(TrayJob::lastEntry, Comparator.reverseOrder()));
    return List.copyOf(found);
  }

  private static TrayJob trayJob(Path path, Shelf shelf, Instant now) {
    Read<BookFile> book = BookFile.look(path);
    List<Entry> entries =
        book.found().map(found -> EntryLines.entries(found.lines())).orElse(List.of());
    return TrayWords.of(slug(path), entries, shelf, now);
  }

  /** A book's name: that of its file without the ending. */
  static String slug(Path path) {
    String name = String.valueOf(path.getFileName());
    return name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : name;
  }
}
