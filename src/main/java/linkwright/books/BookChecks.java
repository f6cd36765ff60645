package linkwright.books;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.files.Library;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/** Finds every problem of a job book: of its lines, and of the steps that its routine must have. */
public final class BookChecks {
  private BookChecks() {}

  /** Every problem of the book there, located; one that cannot be opened is told too. */
  public static List<Problem> of(Path path, Library library) {
    Read<BookFile> opened = BookFile.look(path);
    List<Problem> problems = new ArrayList<>();
    opened
        .problem()
        .ifPresent(sentence -> problems.add(new Problem(path.toString(), 0, 0, sentence, "")));
    opened
        .found()
        .ifPresent(
            book -> {
              BookOpening.newer(path)
                  .ifPresent(why -> problems.add(new Problem(path.toString(), 1, 1, why, "")));
              problems.addAll(book.problems());
              problems.addAll(
                  book.unknownSteps(id -> Optional.ofNullable(library.routines().get(id))));
            });
    return problems;
  }
}
