package linkwright.coach.timers;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.job.TimerRun;

/** The timers of the job on the bench, in the order in which they end, and each in words. */
public final class TimerWords {
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private TimerWords() {}

  /** All that run or ring; those that are due come first, the one due longest at the top. */
  public static List<TimerRun> inOrder(Model model) {
    return model
        .job()
        .map(
            job ->
                job.state().timers().running().stream()
                    .sorted(Comparator.comparing(TimerWords::end))
                    .toList())
        .orElse(List.of());
  }

  /** What is left of it: {@code 8 min left}, {@code due now}, {@code due for 2 min}. */
  public static String left(TimerRun timer, Instant now) {
    long seconds = timer.left(now).toSeconds();
    if (!timer.rings(now)) {
      return Clock.spoken((double) Math.max(1, seconds)) + " left";
    }
    return seconds > -5 ? "due now" : "due for " + Clock.spoken((double) -seconds);
  }

  /** The time of day at which it ends or ended. */
  public static String ends(TimerRun timer, ZoneId zone) {
    return CLOCK.format(end(timer).atZone(zone));
  }

  private static Instant end(TimerRun timer) {
    return timer.startedAt().plusSeconds(timer.seconds());
  }
}
