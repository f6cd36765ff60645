package linkwright.books.facts;

import java.time.Instant;
import java.time.LocalDate;

/** The time of an entry as it stands in a book. */
public final class EntryTime {
  private static final long DAY_SECONDS = 86_400;
  private static final int HOURS = 24;
  private static final int SIXTY = 60;

  /** Where the seconds end in {@code 2026-11-25T20:00:00Z}. */
  private static final int WHOLE = 19;

  private static final int MOST_DECIMALS = 9;

  private EntryTime() {}

  /**
   * The moment that {@link Instant#toString} wrote so. The library's own reader takes ten times as
   * long, which is felt in long books; it is asked about whatever is written otherwise.
   *
   * @throws java.time.DateTimeException if it is no time
   */
  public static Instant read(String text) {
    int month = number(text, 5, 7, '-');
    int day = number(text, 8, 10, 'T');
    int hour = number(text, 11, 13, ':');
    int minute = number(text, 14, 16, ':');
    int year = number(text, 0, 4, '-');
    boolean whole = text.length() == WHOLE + 1;
    int second = number(text, 17, WHOLE, whole ? 'Z' : '.');
    int nanos = whole ? 0 : nanos(text);
    boolean ours =
        year >= 0
            && Math.min(month, day) > 0
            && Math.min(Math.min(hour, minute), Math.min(second, nanos)) >= 0
            && hour < HOURS
            && Math.max(minute, second) < SIXTY;
    if (!ours) {
      return Instant.parse(text);
    }
    long ofDay = (hour * (long) SIXTY + minute) * SIXTY + second;
    return Instant.ofEpochSecond(
        LocalDate.of(year, month, day).toEpochDay() * DAY_SECONDS + ofDay, nanos);
  }

  private static int nanos(String text) {
    int decimals = text.length() - WHOLE - 2;
    if (decimals < 1 || decimals > MOST_DECIMALS) {
      return -1;
    }
    int nanos = number(text, WHOLE + 1, text.length() - 1, 'Z');
    for (int i = decimals; i < MOST_DECIMALS && nanos > 0; i++) {
      nanos *= 10;
    }
    return nanos;
  }

  /** What the digits there say, if they are digits and that letter follows them; else -1. */
  private static int number(String text, int from, int to, char next) {
    if (text.length() <= to || text.charAt(to) != next) {
      return -1;
    }
    int number = 0;
    for (int at = from; at < to; at++) {
      char c = text.charAt(at);
      if (c < '0' || c > '9') {
        return -1;
      }
      number = number * 10 + c - '0';
    }
    return number;
  }
}
