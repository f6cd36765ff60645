package linkwright.coach.kernel;

import linkwright.quantity.Span;

/** Spans of time as they are shown. */
public final class Clock {
  private Clock() {}

  /** As a timer shows it: {@code 7:05}, {@code 1:02:09}; run out: {@code -0:12}. */
  public static String running(long seconds) {
    long rest = Math.abs(seconds);
    String sign = seconds < 0 ? "-" : "";
    long hours = rest / 3600;
    return hours > 0
        ? "%s%d:%02d:%02d".formatted(sign, hours, rest / 60 % 60, rest % 60)
        : "%s%d:%02d".formatted(sign, rest / 60, rest % 60);
  }

  /** In words, rounded to what matters: {@code 45 s}, {@code 8 min}, {@code 3 h 20 min}. */
  public static String spoken(double seconds) {
    long whole = Math.round(seconds);
    if (whole < 90) {
      return whole + " s";
    }
    long minutes = Span.minutes(seconds);
    if (minutes < 60) {
      return minutes + " min";
    }
    return minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
  }
}
