package linkwright.books;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linkwright.files.Home;
import linkwright.quantity.Problem;

/** Books that are not there any more though entries of theirs were shown as done. */
public final class GoneBooks {
  private GoneBooks() {}

  /**
   * What is remembered of books of which no file is left: jobs', students' and the drawer's. What
   * Linkwright itself throws away leaves nothing that remembers it.
   */
  public static List<Problem> of(Home home) {
    List<Problem> gone = new ArrayList<>(in(home.jobs()));
    gone.addAll(in(home.students()));
    gone.addAll(of(home.drawer()));
    return List.copyOf(gone);
  }

  /** The same of the jobs' books alone. */
  public static List<Problem> ofJobs(Home home) {
    return in(home.jobs());
  }

  private static List<Problem> in(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(LastShown.ENDING))
          .sorted()
          .map(name -> name.substring(0, name.length() - LastShown.ENDING.length()) + ".yaml")
          .flatMap(name -> of(folder.resolve(name)).stream())
          .toList();
    } catch (IOException | java.io.UncheckedIOException unread) {
      // That the folder cannot be looked through is told where its books are listed.
      return List.of();
    }
  }

  private static List<Problem> of(Path book) {
    return Files.exists(book, LinkOption.NOFOLLOW_LINKS) ? List.of() : LastShown.of(book).gone(book);
  }
}
