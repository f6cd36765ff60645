package linkwright.coach;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import linkwright.standing.Handbook;

/**
 * All that the coach knows at a moment; a screen is drawn from it and nothing else.
 *
 * @param handbook what can be looked up
 * @param settings the user's choices
 * @param now the moment
 * @param width columns to draw in
 * @param height rows to draw in
 * @param tray the jobs at hand
 * @param job the job on the bench
 * @param screen the screen shown
 * @param notice a sentence for the user
 * @param rungAt the second for which the bell was last rung, so that it rings once a second at most
 */
public record Model(
    Handbook handbook,
    Settings settings,
    Instant now,
    int width,
    int height,
    List<TrayJob> tray,
    Optional<OpenJob> job,
    Screen screen,
    Notice notice,
    long rungAt) {
  public Model {
    tray = List.copyOf(tray);
  }

  /** The tray, before anything was read. */
  public static Model begin(
      Handbook handbook, Settings settings, Instant now, int width, int height) {
    return new Model(
        handbook,
        settings,
        now,
        width,
        height,
        List.of(),
        Optional.empty(),
        new Screen.Tray(0, Optional.empty()),
        Notice.NONE,
        0);
  }

  Model with(Screen next) {
    return new Model(handbook, settings, now, width, height, tray, job, next, notice, rungAt);
  }

  Model with(OpenJob next) {
    return withJob(Optional.of(next));
  }

  Model withJob(Optional<OpenJob> next) {
    return new Model(handbook, settings, now, width, height, tray, next, screen, notice, rungAt);
  }

  Model withTray(List<TrayJob> jobs) {
    return new Model(handbook, settings, now, width, height, jobs, job, screen, notice, rungAt);
  }

  Model at(Instant moment) {
    return new Model(handbook, settings, moment, width, height, tray, job, screen, notice, rungAt);
  }

  Model sized(int columns, int rows) {
    return new Model(handbook, settings, now, columns, rows, tray, job, screen, notice, rungAt);
  }

  Model rung(long second) {
    return new Model(handbook, settings, now, width, height, tray, job, screen, notice, second);
  }

  /** No timer rings: the next one that does rings at once. */
  Model rangAtNothing() {
    return rungAt == 0 ? this : rung(0);
  }

  Model told(String sentence) {
    return notice(new Notice(sentence, false));
  }

  Model trouble(String sentence) {
    return notice(new Notice(sentence, true));
  }

  Model quiet() {
    return notice(Notice.NONE);
  }

  private Model notice(Notice next) {
    return new Model(handbook, settings, now, width, height, tray, job, screen, next, rungAt);
  }
}
