package linkwright.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.Fact;
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
   * The book that is meant by its file's name or by what she called the job, whether it is there or
   * not; a sentence that names the books where several jobs are called so.
   */
  public static Read<Path> meant(String job, Home home) {
    Path book = home.jobs().resolve(job + ENDING);
    if (Files.isRegularFile(book)) {
      return Read.good(book);
    }
    Map<String, String> names = new LinkedHashMap<>();
    for (Path each : home.books()) {
      entries(each, home)
          .found()
          .ifPresent(read -> opened(read).ifPresent(name -> names.put(slug(each), name)));
    }
    return called(job, names)
        .map(slug -> home.jobs().resolve(slug.orElseGet(() -> ofName(job)) + ENDING));
  }

  private static Optional<String> opened(List<Entry> entries) {
    return entries.stream()
        .map(Entry::fact)
        .filter(Fact.JobOpened.class::isInstance)
        .map(fact -> ((Fact.JobOpened) fact).name())
        .findFirst();
  }

  private static String ofName(String job) {
    return Slug.of(job, taken -> false);
  }

  /**
   * The one job that is called so.
   *
   * @param typed what was typed for its name
   * @param names what the jobs are called, by the names of their books
   * @return the name of its book, empty where none is called so; a sentence where several are
   */
  public static Read<Optional<String>> called(String typed, Map<String, String> names) {
    List<String> meant =
        names.entrySet().stream()
            .filter(each -> each.getValue().equalsIgnoreCase(typed.strip()))
            .map(Map.Entry::getKey)
            .sorted()
            .toList();
    return meant.size() < 2
        ? Read.good(meant.stream().findFirst())
        : Read.bad(
            "Several jobs are called "
                + names.get(meant.get(0))
                + ". Name the one that you mean by its book: "
                + String.join(", ", meant)
                + ".");
  }

  /** The job of that name; a sentence where there is none, with the nearest that there is. */
  public static Read<BookOfJob> named(String job, Home home, Handbook handbook) {
    return meant(job, home).flatMap(path -> of(job, path, home, handbook));
  }

  private static Read<BookOfJob> of(String job, Path path, Home home, Handbook handbook) {
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
