package linkwright.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.JobState;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import linkwright.standing.Handbook;
import linkwright.text.Slug;

/**
 * A job that is named, read to look at.
 *
 * @param path its book
 * @param entries the book's entries
 * @param state what they add up to
 * @param handbook the handbook as this job sees it
 */
public record BookOfJob(Path path, List<Entry> entries, JobState state, Handbook handbook) {
  private static final String ENDING = ".yaml";

  /**
   * The question whether a job with nearly that name is meant, or why nobody can know; empty where
   * there is none.
   */
  public static String near(String job, Home home) {
    Optional<String> hidden = home.jobsTrouble();
    if (hidden.isPresent()) {
      return " " + hidden.get();
    }
    List<String> slugs = home.books().stream().map(BookOfJob::slug).toList();
    return Nearest.of(job, slugs).map(near -> " Did you mean " + near + "?").orElse("");
  }

  /**
   * The book of a job by its file's name or by the name she gave it, whether it is there or not.
   */
  public static Path path(String job, Home home) {
    Path book = home.jobs().resolve(job + ENDING);
    return Files.isRegularFile(book)
        ? book
        : home.jobs().resolve(Slug.of(job, taken -> false) + ENDING);
  }

  /** The job of that name; a sentence where there is none, with the nearest that there is. */
  public static Read<BookOfJob> named(String job, Home home, Handbook handbook) {
    Path path = path(job, home);
    if (!Files.isRegularFile(path)) {
      Optional<String> hidden = home.jobsTrouble();
      if (hidden.isPresent()) {
        return Read.bad(hidden.get());
      }
      return Read.bad("There is no job \"" + job + "\" in the tray." + near(job, home));
    }
    return entries(path, home)
        .map(
            entries -> {
              Handbook own = handbook.forJob(slug(path), entries);
              return new BookOfJob(path, entries, JobState.replay(entries, own.stages()), own);
            });
  }

  private static String slug(Path book) {
    return book.getFileName().toString().replaceFirst("\\.yaml$", "");
  }

  /** The name of its book. */
  public String slug() {
    return slug(path);
  }

  /** The entries of a book in the tray, or why it is not read: a link out of it is not followed. */
  public static Read<List<Entry>> entries(Path book, Home home) {
    return home.leadsOut(book)
        .map(Read::<BookFile>bad)
        .orElseGet(() -> BookFile.look(book))
        .map(read -> EntryLines.entries(read.lines()));
  }
}
