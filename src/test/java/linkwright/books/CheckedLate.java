package linkwright.books;

import java.time.Instant;
import linkwright.files.Checking.BookCheck;

/** Books checked on a day on which no entry of any test lies in the future. */
public final class CheckedLate {
  public static final BookCheck BOOKS = BookChecks.at(Instant.parse("2100-01-01T00:00:00Z"));

  private CheckedLate() {}
}
