package linkwright.coach.kernel;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.job.ClockMoves;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.HotWork;
import linkwright.job.TimerRun;
import linkwright.job.Timers;
import linkwright.routine.StepId;
import linkwright.standing.Handbook;

/**
 * All that the coach knows at a moment; what is shown is made from it and nothing else.
 *
 * @param handbook what can be looked up
 * @param settings the user's choices
 * @param paging how many parts the output needs for what is said
 * @param now the moment, as the computer's clock tells it
 * @param steady the moment by a clock that nobody can set: timers follow it
 * @param width columns to draw in
 * @param height rows to draw in
 * @param tray the jobs at hand
 * @param job the job on the bench, as its book tells it
 * @param held what the place holds where one is
 * @param notice a sentence for the user
 * @param rungAt the second for which the bell was last rung, so that it rings once a second at most
 * @param presses what was pressed last, so that a key that bounces or is held counts once
 * @param writing what is asked to be written and not known to be on the disk
 * @param bench what is the bench's and no job's: hot work, the fire watch, waits of other jobs
 * @param learning whom one teaches here, and the student whose book is at hand
 */
public record Model(
    Handbook handbook,
    Settings settings,
    Paging paging,
    Instant now,
    Instant steady,
    int width,
    int height,
    List<TrayJob> tray,
    Optional<OpenJob> job,
    Held held,
    Notice notice,
    long rungAt,
    Presses presses,
    Writing writing,
    BenchNow bench,
    StudentsAtHand learning) {
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
        now,
        width,
        height,
        List.of(),
        Optional.empty(),
        first,
        Notice.NONE,
        0,
        Presses.NONE,
        new Writing.Nothing(),
        BenchNow.UNKNOWN,
        StudentsAtHand.NOBODY);
  }

  /** In how many parts the output shows this. */
  public int parts(Content content) {
    return paging.parts(content, "", "", width, height, job.isPresent());
  }

  /** The same with another handbook. */
  public Model with(Handbook other) {
    return new Model(
        other, settings, paging, now, steady, width, height, tray, job, held, notice, rungAt,
        presses, writing, bench, learning);
  }

  /** The same, holding something else. */
  public Model with(Held next) {
    return new Model(
        handbook, settings, paging, now, steady, width, height, tray, job, next, notice, rungAt,
        presses, writing, bench, learning);
  }

  /** The same with that job. */
  public Model with(OpenJob next) {
    return withJob(Optional.of(next));
  }

  /** The same with that job or none; one that was open before is one of the bench's others then. */
  public Model withJob(Optional<OpenJob> next) {
    String slug = next.map(OpenJob::slug).orElse("");
    BenchNow left =
        job.filter(before -> !before.slug().equals(slug))
            .map(before -> bench.left(book(before)))
            .orElse(bench);
    // What the job takes and gives back is known in the drawer as soon as it is entered.
    List<Entry> before = job.map(OpenJob::entries).orElse(List.of());
    Handbook known =
        next.filter(open -> open.entries() != before)
            .map(open -> handbook.drawing(open.slug(), open.entries()))
            .orElse(handbook);
    return new Model(
        known,
        settings,
        paging,
        now,
        steady,
        width,
        height,
        tray,
        next,
        held,
        notice,
        rungAt,
        presses,
        writing,
        left.reckoned(written(next), handbook, now, steady, false),
        learning);
  }

  /** The same with what is known of students. */
  public Model with(StudentsAtHand next) {
    return new Model(
        handbook, settings, paging, now, steady, width, height, tray, job, held, notice, rungAt,
        presses, writing, bench, next);
  }

  /** The day at the bench. */
  public LocalDate today() {
    return now.atZone(settings.zone()).toLocalDate();
  }

  /** What is open only to be looked at grows elsewhere: it is known as the other books are. */
  private Optional<BenchBook> written(Optional<OpenJob> open) {
    return open.filter(each -> !each.lookOnly()).map(this::book);
  }

  private BenchBook book(OpenJob open) {
    return BenchBook.of(open.slug(), open.state(), handbook);
  }

  /** The same with the other books of the bench as they were read now. */
  public Model withBench(String device, List<BenchBook> books) {
    BenchNow read = bench.read(device, books, now, steady);
    return with(read.reckoned(written(job), handbook, now, steady, true));
  }

  /** The same on the way to a wait of that book, or to none. */
  public Model toward(Optional<String> slug) {
    return with(bench.mind().toward(slug));
  }

  /** The same on an errand to that wait, from the step that is open; one goes on from another. */
  public Model calledTo(String slug, StepId step) {
    Optional<InMind.At> here =
        job.filter(open -> !open.lookOnly() && !open.state().course().closed())
            .map(open -> new InMind.At(open.slug(), open.state().course().step()));
    InMind.At to = new InMind.At(slug, step);
    return with(
        bench
            .mind()
            .back(
                bench
                    .mind()
                    .back()
                    .filter(errand -> here.filter(errand.to()::equals).isPresent())
                    .map(InMind.Errand::from)
                    .or(() -> here)
                    .filter(from -> !from.step().isEmpty() && !from.equals(to))
                    .map(from -> new InMind.Errand(from, to))));
  }

  /** The same, what undo refused last being that entry. */
  public Model refused(Optional<EntryId> entry) {
    return with(bench.mind().refused(entry));
  }

  /** The same, with that of another window's flames to be told; empty once it is. */
  public Model meanwhile(Optional<InMind.Meanwhile> said) {
    return with(bench.mind().meanwhile(said));
  }

  /** The same, the computer's clock having been set so before the program began. */
  public Model clockMoved(ClockMoves moves) {
    return with(bench.mind().moves(moves));
  }

  /** The same, with what was typed that is no job's: form → field → text; empty to keep none. */
  public Model typed(Optional<Map<String, Map<String, String>>> texts) {
    return with(bench.mind().typed(texts));
  }

  /** The same, on no errand any more. */
  public Model arrived() {
    return with(bench.mind().back(Optional.empty()));
  }

  /** The same, what was found open when the program began asked about. */
  public Model askedAbout() {
    return with(bench.mind().asked(true));
  }

  /** The same, the other books about to be looked at. */
  public Model lookingRound() {
    return with(bench.lookedAt(Math.max(1, steady.getEpochSecond())));
  }

  private Model with(InMind next) {
    return with(bench.with(next));
  }

  private Model with(BenchNow next) {
    return new Model(
        handbook, settings, paging, now, steady, width, height, tray, job, held, notice, rungAt,
        presses, writing, next, learning);
  }

  /** The timers of a book that is about to be opened, as they ran until now. */
  public Timers ran(String slug) {
    return job.filter(open -> open.slug().equals(slug))
        .map(open -> open.state().timers())
        .orElseGet(() -> bench.timersOf(slug));
  }

  /** Whether a flame may be lit at this bench. */
  public HotWork hotWork() {
    return bench.hotWork();
  }

  /** The fire watch while it runs: the bench's, whatever job is open and whether it is closed. */
  public Optional<TimerRun> watch() {
    return bench.watchRunning(steady);
  }

  /** Who works at this machine; empty if she did not say. */
  public String person() {
    List<String> persons = handbook.own().persons();
    return bench
        .lastPerson(written(job))
        .orElseGet(() -> persons.size() == 1 ? persons.get(0) : "");
  }

  /** All that waits at this bench, the fire watch too, what ends first before the rest. */
  public List<JobWait> waits() {
    List<JobWait> all = new ArrayList<>();
    timers().running().forEach(run -> all.add(new JobWait(slug(), "", run, false)));
    for (BenchBook book : bench.others()) {
      if (!book.slug().equals(slug())) {
        boolean held = book.heldElsewhere();
        book.waiting()
            .running()
            .forEach(run -> all.add(new JobWait(book.slug(), book.job(), run, held)));
      }
    }
    watch().ifPresent(run -> all.add(new JobWait("", "", run, false)));
    all.sort(Comparator.comparing(wait -> wait.run().end()));
    return List.copyOf(all);
  }

  /** All of these that are over. */
  public List<JobWait> due() {
    return waits().stream().filter(wait -> wait.run().rings(steady)).toList();
  }

  private String slug() {
    return job.map(OpenJob::slug).orElse("");
  }

  /** The same with those jobs at hand. */
  public Model withTray(List<TrayJob> jobs) {
    return new Model(
        handbook, settings, paging, now, steady, width, height, jobs, job, held, notice, rungAt,
        presses, writing, bench, learning);
  }

  /** The same at another moment. */
  public Model at(Instant moment, Instant steadyMoment) {
    return new Model(
        handbook,
        settings,
        paging,
        moment,
        steadyMoment,
        width,
        height,
        tray,
        job,
        held,
        notice,
        rungAt,
        presses,
        writing,
        bench,
        learning);
  }

  /** The same in another room. */
  public Model sized(int columns, int rows) {
    return new Model(
        handbook, settings, paging, now, steady, columns, rows, tray, job, held, notice, rungAt,
        presses, writing, bench, learning);
  }

  /** The same, the bell rung in that second. */
  public Model rung(long second) {
    return new Model(
        handbook, settings, paging, now, steady, width, height, tray, job, held, notice, second,
        presses, writing, bench, learning);
  }

  /** No timer rings: the next one that does rings at once. */
  public Model rangAtNothing() {
    return rungAt == 0 ? this : rung(0);
  }

  /** The same with that pressed last. */
  public Model with(Presses pressed) {
    return new Model(
        handbook, settings, paging, now, steady, width, height, tray, job, held, notice, rungAt,
        pressed, writing, bench, learning);
  }

  /**
   * The timers of the job on the bench, by the steady clock; a closed job has none. One that is
   * open only to be looked at grows, is closed and opened again elsewhere.
   */
  public Timers timers() {
    return job.filter(OpenJob::lookOnly)
        .flatMap(open -> bench.book(open.slug()))
        .map(BenchBook::waiting)
        .or(
            () ->
                job.filter(open -> !open.state().course().closed())
                    .map(open -> open.state().timers()))
        .orElse(Timers.NONE);
  }

  /** The same with that asked to be written. */
  public Model with(Writing asked) {
    return new Model(
        handbook, settings, paging, now, steady, width, height, tray, job, held, notice, rungAt,
        presses, asked, bench, learning);
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
        handbook, settings, paging, now, steady, width, height, tray, job, held, next, rungAt,
        presses, writing, bench, learning);
  }

  /** The same with other choices; a book's entries are told in them. */
  public Model with(Settings other) {
    Optional<OpenJob> told =
        other.units() == settings.units() ? job : job.map(open -> open.in(other, handbook));
    return new Model(
        handbook, other, paging, now, steady, width, height, tray, told, held, notice, rungAt,
        presses, writing, bench, learning);
  }
}
