package linkwright.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stretch of time.
 *
 * @param seconds whole seconds, not negative
 */
public record Span(long seconds) {
  private static final String EXAMPLE = "8 min or 1 h 30 min";

  /** Ten thousand hours. */
  private static final double MOST_SECONDS = 3.6e7;

  /** A number and the letters after it, so that an hour and its minutes can be told apart. */
  private static final Pattern PART =
      Pattern.compile("\\G ?(-?[\\d.,/]+(?: \\d+/\\d+)?) ?(\\p{L}+)");

  /** A span below nothing is the programmer's fault. */
  public Span {
    if (seconds < 0) {
      throw new IllegalArgumentException("seconds must not be negative, not " + seconds);
    }
  }

  /** Reads {@code 45 s}, {@code 8 min}, {@code 1.5 h}, {@code 1 h 30 min}; to the whole second. */
  public static Read<Span> read(String typed) {
    String text = Written.tidy(typed);
    Matcher part = PART.matcher(text);
    double total = 0;
    int end = 0;
    while (part.find()) {
      Read<Double> seconds = part(part.group());
      if (!(seconds instanceof Read.Good<Double> good)) {
        return seconds.map(value -> new Span(0));
      }
      total += good.value();
      end = part.end();
    }
    if (end == 0 || end < text.length()) {
      return part(end == 0 ? text : text.substring(end))
          .flatMap(
              value -> Read.bad(Written.quoted(typed) + " can't be read. Write " + EXAMPLE + "."));
    }
    return Written.withinReason(total, typed, "A time", MOST_SECONDS)
        .map(seconds -> new Span(Math.round(seconds)));
  }

  /** Whole minutes of so many seconds, the nearest. */
  public static long minutes(double seconds) {
    return Math.round(seconds / 60);
  }

  /** The span as it is read again: {@code 1 h 30 min}, {@code 45 s}. */
  public String text() {
    long hours = seconds / 3600;
    long minutes = seconds / 60 % 60;
    long rest = seconds % 60;
    StringBuilder text = new StringBuilder();
    if (hours > 0) {
      text.append(hours).append(" h ");
    }
    if (minutes > 0) {
      text.append(minutes).append(" min ");
    }
    if (rest > 0 || text.length() == 0) {
      text.append(rest).append(" s");
    }
    return text.toString().strip();
  }

  private static Read<Double> part(String text) {
    return Written.read(text, EXAMPLE)
        .flatMap(written -> written.in(Unit.OF_TIME, Unit.TIME, EXAMPLE))
        .flatMap(seconds -> Written.withinReason(seconds, text, "A time", MOST_SECONDS));
  }
}
