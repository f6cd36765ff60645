package linkwright.coach.timers;

import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.JobWait;
import linkwright.coach.kernel.Model;
import linkwright.job.TimerRun;

/** What waits at the bench, in the order in which they end, and each in words. */
public final class TimerWords {
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private TimerWords() {}

  /** All that wait at this bench, of whatever job; the one due longest at the top. */
  public static List<JobWait> inOrder(Model model) {
    return model.waits();
  }

  /** What is left of it: {@code 8 min left}, {@code due now}, {@code due for 2 min}. */
  public static String left(TimerRun timer, Instant now) {
    long seconds = timer.left(now).toSeconds();
    if (!timer.rings(now)) {
      return Clock.spoken((double) Math.max(1, seconds)) + " left";
    }
    if (seconds > -5) {
      return "due now";
    }
    boolean more = -seconds >= timer.longest().toSeconds();
    return (more ? "due over " : "due for ") + Clock.spoken((double) -seconds);
  }

  /** The time of day at which it ends or ended. */
  public static String ends(TimerRun timer, Model model) {
    Duration left = Duration.between(model.steady(), timer.end());
    return CLOCK.format(model.now().plus(left).atZone(model.settings().zone()));
  }
}
