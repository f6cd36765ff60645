package linkwright.coach.kernel;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.standing.Handbook;

/**
 * All that the coach knows at a moment; what is shown is made from it and nothing else.
 *
 * @param handbook what can be looked up
 * @param settings the user's choices
 * @param paging how many parts the output needs for what is said
 * @param now the moment
 * @param width columns to draw in
 * @param height rows to draw in
 * @param tray the jobs at hand
 * @param job the job on the bench, as its book tells it
 * @param held what the place holds where one is
 * @param notice a sentence for the user
 * @param rungAt the second for which the bell was last rung, so that it rings once a second at most
 * @param writing what is asked to be written and not known to be on the disk
 */
public record Model(
    Handbook handbook,
    Settings settings,
    Paging paging,
    Instant now,
    int width,
    int height,
    List<TrayJob> tray,
    Optional<OpenJob> job,
    Held held,
    Notice notice,
    long rungAt,
    Writing writing) {
  public Model {
    tray = List.copyOf(tray);
  }

  /** Before anything was read. */
  public static Model begin(
      Handbook handbook,
      Settings settings,
      Paging paging,
      Instant now,
      int width,
      int height,
      Held first) {
    return new Model(
        handbook,
        settings,
        paging,
        now,
        width,
        height,
        List.of(),
        Optional.empty(),
        first,
        Notice.NONE,
        0,
        new Writing.Nothing());
  }

  /** In how many parts the output shows this. */
  public int parts(Content content) {
    return paging.parts(content, width, height, job.isPresent());
  }

  /** The same, holding something else. */
  public Model with(Held next) {
    return new Model(
        handbook, settings, paging, now, width, height, tray, job, next, notice, rungAt, writing);
  }

  /** The same with that job. */
  public Model with(OpenJob next) {
    return withJob(Optional.of(next));
  }

  /** The same with that job or none. */
  public Model withJob(Optional<OpenJob> next) {
    return new Model(
        handbook, settings, paging, now, width, height, tray, next, held, notice, rungAt, writing);
  }

  /** The same with those jobs at hand. */
  public Model withTray(List<TrayJob> jobs) {
    return new Model(
        handbook, settings, paging, now, width, height, jobs, job, held, notice, rungAt, writing);
  }

  /** The same at another moment. */
  public Model at(Instant moment) {
    return new Model(
        handbook, settings, paging, moment, width, height, tray, job, held, notice, rungAt,
        writing);
  }

  /** The same in another room. */
  public Model sized(int columns, int rows) {
    return new Model(
        handbook, settings, paging, now, columns, rows, tray, job, held, notice, rungAt, writing);
  }

  /** The same, the bell rung in that second. */
  public Model rung(long second) {
    return new Model(
        handbook, settings, paging, now, width, height, tray, job, held, notice, second, writing);
  }

  /** No timer rings: the next one that does rings at once. */
  public Model rangAtNothing() {
    return rungAt == 0 ? this : rung(0);
  }

  /** The same with that asked to be written. */
  public Model with(Writing asked) {
    return new Model(
        handbook, settings, paging, now, width, height, tray, job, held, notice, rungAt, asked);
  }

  /** The same with a sentence told. */
  public Model told(String sentence) {
    return with(new Notice(sentence, false));
  }

  /** The same with trouble told. */
  public Model trouble(String sentence) {
    return with(new Notice(sentence, true));
  }

  /** The same with nothing told. */
  public Model quiet() {
    return with(Notice.NONE);
  }

  /** The same with that notice. */
  public Model with(Notice next) {
    return new Model(
        handbook, settings, paging, now, width, height, tray, job, held, next, rungAt, writing);
  }
}
