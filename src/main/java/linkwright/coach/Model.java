package linkwright.coach;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import linkwright.job.Timers;

/**
 * All that the coach knows at a moment; a screen is drawn from it and nothing else.
 *
 * @param shelf what can be looked up
 * @param settings the user's choices
 * @param now the moment, as the computer's clock tells it
 * @param steady the moment by a clock that nobody can set: timers follow it
 * @param width columns to draw in
 * @param height rows to draw in
 * @param tray the jobs at hand
 * @param job the job on the bench
 * @param screen the screen shown
 * @param notice a sentence for the user
 * @param rungAt the second for which the bell was last rung, so that it rings once a second at most
 * @param presses what was pressed last, so that a key that bounces or is held counts once
 */
public record Model(
    Shelf shelf,
    Settings settings,
    Instant now,
    Instant steady,
    int width,
    int height,
    List<TrayJob> tray,
    Optional<OpenJob> job,
    Screen screen,
    Notice notice,
    long rungAt,
    Presses presses) {
  public Model {
    tray = List.copyOf(tray);
  }

  /** The tray, before anything was read. */
  public static Model begin(Shelf shelf, Settings settings, Instant now, int width, int height) {
    return new Model(
        shelf,
        settings,
        now,
        now,
        width,
        height,
        List.of(),
        Optional.empty(),
        new Screen.Tray(0, Optional.empty()),
        Notice.NONE,
        0,
        Presses.NONE);
  }

  /** The timers of the job on the bench, by the steady clock; a closed job has none. */
  public Timers timers() {
    return job.filter(open -> !open.state().course().closed())
        .map(open -> open.state().timers())
        .orElse(Timers.NONE);
  }

  Model with(Screen next) {
    return new Model(
        shelf, settings, now, steady, width, height, tray, job, next, notice, rungAt, presses);
  }

  Model with(OpenJob next) {
    return withJob(Optional.of(next));
  }

  Model withJob(Optional<OpenJob> next) {
    return new Model(
        shelf, settings, now, steady, width, height, tray, next, screen, notice, rungAt, presses);
  }

  Model withTray(List<TrayJob> jobs) {
    return new Model(
        shelf, settings, now, steady, width, height, jobs, job, screen, notice, rungAt, presses);
  }

  Model at(Instant moment, Instant steadyMoment) {
    return new Model(
        shelf,
        settings,
        moment,
        steadyMoment,
        width,
        height,
        tray,
        job,
        screen,
        notice,
        rungAt,
        presses);
  }

  Model sized(int columns, int rows) {
    return new Model(
        shelf, settings, now, steady, columns, rows, tray, job, screen, notice, rungAt, presses);
  }

  Model rung(long second) {
    return new Model(
        shelf, settings, now, steady, width, height, tray, job, screen, notice, second, presses);
  }

  Model with(Presses pressed) {
    return new Model(
        shelf, settings, now, steady, width, height, tray, job, screen, notice, rungAt, pressed);
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
    return new Model(
        shelf, settings, now, steady, width, height, tray, job, screen, next, rungAt, presses);
  }
}
