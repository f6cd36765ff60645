package linkwright.shell;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import linkwright.books.GoneBooks;
import linkwright.coach.kernel.TrayJob;
import linkwright.files.Home;
import linkwright.quantity.Problem;
import linkwright.standing.Handbook;

/** Reads what lies in the tray, once and to the end. */
public final class TrayReading {
  private TrayReading() {}

  /** The jobs in the user's folder, open ones first, the one last worked on before the others. */
  public static List<TrayJob> of(Home home, Handbook handbook, Instant now) {
    return new Tray(home).jobs(handbook, now, ReadingProgress.ENDLESS);
  }

  /** What keeps books from being listed: a folder that cannot be read, a link that leads out. */
  public static List<String> problems(Home home) {
    List<Problem> problems = new ArrayList<>();
    home.books(problems);
    problems.addAll(GoneBooks.ofJobs(home));
    return problems.stream().map(Problem::sentence).toList();
  }

  /** A book's name: that of its file without the ending. */
  static String slug(Path path) {
    String name = String.valueOf(path.getFileName());
    return name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : name;
  }
}
