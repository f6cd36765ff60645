package linkwright.hands;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import linkwright.fit.EarlierJob;
import linkwright.fit.EarlierWork;
import linkwright.fit.Maker;
import linkwright.reference.Metal;
import linkwright.reference.Temper;
import linkwright.routine.PieceKind;

/**
 * What all books taught of the hands that work here, as it bears on one job: its own book is no
 * earlier one, and of books that somebody else worked nothing is taken.
 */
public final class Hands {
  /** Nobody has worked here yet. */
  public static final Hands NONE =
      new Hands(List.of(), Set.of(), "", "", "", Instant.MAX, shared());

  /** Older jobs of the metal than these are forgotten. */
  private static final int SAME_METAL = 8;

  /** So many of other metals say something of winding and turning. */
  private static final int OTHER_METAL = 4;

  /** With each job back a count weighs so much less. */
  private static final double KEPT = 0.85;

  private static final int USUAL_WEIGHT = 10;

  private final List<TaughtJob> jobs;
  private final Set<String> leftOut;
  private final List<TaughtJob> counting;
  private final String batch;

  /** What was learnt from which jobs: shared by all views, for most leave out none of the last. */
  private final Map<List<String>, Maker> priors;

  private Hands(
      List<TaughtJob> jobs,
      Set<String> leftOut,
      String own,
      String person,
      String batch,
      Instant until,
      Map<List<String>, Maker> priors) {
    this.priors = priors;
    this.jobs = jobs.stream().sorted(Comparator.comparing(TaughtJob::last)).toList();
    this.leftOut = Set.copyOf(leftOut);
    this.batch = batch;
    this.counting =
        this.jobs.stream()
            .filter(job -> !job.slug().equals(own) && !this.leftOut.contains(job.slug()))
            .filter(job -> job.last().isBefore(until))
            .filter(
                job -> person.isEmpty() || job.person().isEmpty() || job.person().equals(person))
            .toList();
  }

  /**
   * What those jobs taught.
   *
   * @param leftOut names of books that are not to count
   */
  public static Hands of(List<TaughtJob> jobs, Set<String> leftOut) {
    return new Hands(jobs, leftOut, "", "", "", Instant.MAX, shared());
  }

  private static Map<List<String>, Maker> shared() {
    return Collections.synchronizedMap(new HashMap<>());
  }

  /**
   * The same for the job of that book, of that person and of that batch of wire, as far as known.
   *
   * @param until when the job was closed: what was entered since is no earlier work; the far future
   *     while it is open
   */
  public Hands forJob(String slug, String whose, String wire, Instant until) {
    return new Hands(jobs, leftOut, slug, whose, wire, until, priors);
  }

  /** All jobs, the oldest first, those left out too. */
  public List<TaughtJob> jobs() {
    return jobs;
  }

  /** The books that are not to count. */
  public Set<String> leftOut() {
    return leftOut;
  }

  /** The jobs that count here, the oldest first. */
  public List<TaughtJob> counting() {
    return counting;
  }

  /** What is believed of the hands before a job's first piece; empty where no piece taught any. */
  public Optional<Maker> prior(Metal metal, Temper temper) {
    String of = TaughtJob.metal(metal.id(), temper.word());
    List<TaughtJob> chosen = chosen(of);
    if (chosen.isEmpty()) {
      return Optional.empty();
    }
    List<String> from = new ArrayList<>(List.of(of));
    chosen.forEach(job -> from.add((sameBatch(job, of) ? "=" : " ") + job.slug()));
    return Optional.of(
        priors.computeIfAbsent(
            from,
            any ->
                EarlierWork.prior(
                    metal.bendingShare(temper),
                    chosen.stream().map(job -> earlier(job, of)).toList())));
  }

  /** The last jobs that have test pieces, those of other metals first. */
  private List<TaughtJob> chosen(String metal) {
    List<TaughtJob> taught = counting().stream().filter(job -> job.pieces().isPresent()).toList();
    List<TaughtJob> chosen = new ArrayList<>();
    chosen.addAll(last(taught.stream().filter(job -> !job.metal().equals(metal)), OTHER_METAL));
    chosen.addAll(last(taught.stream().filter(job -> job.metal().equals(metal)), SAME_METAL));
    return chosen;
  }

  private static List<TaughtJob> last(Stream<TaughtJob> jobs, int count) {
    List<TaughtJob> all = jobs.toList();
    return all.subList(Math.max(0, all.size() - count), all.size());
  }

  private EarlierJob earlier(TaughtJob job, String metal) {
    EarlierJob pieces = job.pieces().orElseThrow();
    return new EarlierJob(
        pieces.pattern(),
        pieces.wireMm(),
        pieces.stressShare(),
        job.metal().equals(metal),
        sameBatch(job, metal),
        pieces.pieces(),
        pieces.wish());
  }

  private boolean sameBatch(TaughtJob job, String metal) {
    return job.metal().equals(metal) && !batch.isEmpty() && job.batch().equals(batch);
  }

  /** Kind and stage → what came of all pieces there. */
  public Map<String, StageResult> stages() {
    Map<String, StageResult> all = new TreeMap<>();
    counting()
        .forEach(
            job ->
                job.stages()
                    .forEach((stage, result) -> all.merge(stage, result, StageResult::and)));
    return all;
  }

  /**
   * The same drawn towards a usual share, as if {@value #USUAL_WEIGHT} pieces had been seen at it.
   *
   * @param usual the usual share, 0 to 1
   */
  public OptionalDouble loss(PieceKind kind, double usual) {
    double[] seen = seen(kind);
    return seen[1] > 0
        ? OptionalDouble.of((seen[0] + USUAL_WEIGHT * usual) / (seen[1] + USUAL_WEIGHT))
        : OptionalDouble.empty();
  }

  /**
   * The share of tries at a kind's joint that go back, older jobs less: six that went back on nine
   * links are six of fifteen tries. Empty if none was made.
   */
  public OptionalDouble redoShare(PieceKind kind) {
    double weight = 1;
    double back = 0;
    double tries = 0;
    for (int i = counting.size() - 1; i >= 0; i--) {
      List<StageResult> all = results(counting.get(i), kind);
      int again = all.stream().mapToInt(StageResult::sentBack).sum();
      int good =
          all.stream()
              .filter(stage -> again == 0 || stage.sentBack() > 0)
              .mapToInt(StageResult::stayed)
              .max()
              .orElse(0);
      if (again + good > 0) {
        back += weight * again;
        tries += weight * (again + good);
        weight *= KEPT;
      }
    }
    return tries > 0 ? OptionalDouble.of(back / tries) : OptionalDouble.empty();
  }

  private static List<StageResult> results(TaughtJob job, PieceKind kind) {
    return job.stages().entrySet().stream()
        .filter(stage -> stage.getKey().startsWith(kind + " "))
        .map(Map.Entry::getValue)
        .toList();
  }

  /**
   * The share of a kind of piece that is lost for good, older jobs less; empty if none was made.
   */
  public OptionalDouble lossShare(PieceKind kind) {
    double[] seen = seen(kind);
    return seen[1] > 0 ? OptionalDouble.of(seen[0] / seen[1]) : OptionalDouble.empty();
  }

  /** Pieces that were lost and pieces that were made, older ones less. */
  private double[] seen(PieceKind kind) {
    double weight = 1;
    double bad = 0;
    double made = 0;
    for (int i = counting.size() - 1; i >= 0; i--) {
      int through = 0;
      int gone = 0;
      for (StageResult stage : results(counting.get(i), kind)) {
        through = Math.max(through, stage.through());
        gone += stage.scrapped();
      }
      if (through > 0) {
        bad += weight * gone;
        made += weight * Math.max(through, gone);
        weight *= KEPT;
      }
    }
    return new double[] {bad, made};
  }

  /** What is done → how long one took in each job, the oldest first, s. */
  public Map<String, List<Double>> secondsEach() {
    Map<String, List<Double>> all = new TreeMap<>();
    counting()
        .forEach(
            job ->
                job.paces()
                    .forEach(
                        (what, pace) ->
                            all.computeIfAbsent(what, any -> new ArrayList<>()).add(pace.each())));
    return all;
  }

  /** How long one takes of what is done, s, older jobs less; empty if it was never done. */
  public OptionalDouble secondsEach(String what) {
    return secondsEach(what, Pace::seconds);
  }

  /** The same as it would be in ordinary wire, for {@link Fineness} to be heeded. */
  public OptionalDouble ordinarySecondsEach(String what) {
    return secondsEach(what, Pace::ordinarySeconds);
  }

  private OptionalDouble secondsEach(String what, ToDoubleFunction<Pace> took) {
    double weight = 1;
    double seconds = 0;
    double times = 0;
    for (int i = counting.size() - 1; i >= 0; i--) {
      Pace pace = counting.get(i).paces().get(what);
      if (pace != null) {
        seconds += weight * took.applyAsDouble(pace);
        times += weight * pace.times();
        weight *= KEPT;
      }
    }
    return times > 0 ? OptionalDouble.of(seconds / times) : OptionalDouble.empty();
  }

  /** The middle of the times that pieces lay in the pickle, s; empty where none was looked at. */
  public OptionalDouble pickleSeconds() {
    double[] all =
        counting().stream()
            .flatMap(job -> job.pickleSeconds().stream())
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    return all.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(all[all.length / 2]);
  }
}
