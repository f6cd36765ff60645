package linkwright.hands;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.fit.EarlierJob;
import linkwright.fit.LinkSize;
import linkwright.fit.Tried;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.PriceList;
import linkwright.job.Strikes;
import linkwright.job.TimeSheet;
import linkwright.job.TimerRun;
import linkwright.job.WaitEnd;
import linkwright.link.Pattern;
import linkwright.plan.ChainWish;
import linkwright.plan.WishKeys;
import linkwright.plan.WishReading;
import linkwright.quantity.Decimals;
import linkwright.reference.Reference;
import linkwright.routine.Routine;
import linkwright.routine.Step;

/**
 * What one book taught.
 *
 * @param slug the book's name
 * @param name the job's name
 * @param last when its last entry was made
 * @param person whose sittings they were, as entered last; empty if it was not said
 * @param metal metal and temper, such as {@code sterling soft}; empty without a plan of a chain
 * @param batch the batch of its wire; empty if it was not said
 * @param pieces its test pieces; empty where none was measured or judged
 * @param stages kind of piece and stage, such as {@code link soldered} → what came of them there
 * @param paces what is done, a kind and stage or a step → how long it took
 * @param typed key of a bench → what she typed for this job, as it would be typed there
 * @param pickleSeconds how long pieces lay in the pickle each time until they were looked at
 */
public record TaughtJob(
    String slug,
    String name,
    Instant last,
    String person,
    String metal,
    String batch,
    Optional<EarlierJob> pieces,
    Map<String, StageResult> stages,
    Map<String, Pace> paces,
    Map<String, String> typed,
    List<Double> pickleSeconds) {
  /** Looked at so much later than its time it says when somebody came, not when it was clean. */
  private static final double LATE = 1.5;

  public TaughtJob {
    stages = Map.copyOf(stages);
    paces = Map.copyOf(paces);
    typed = Map.copyOf(typed);
    pickleSeconds = List.copyOf(pickleSeconds);
  }

  /**
   * What a book taught.
   *
   * @param entries its entries, struck ones too
   * @param state what they add up to
   * @param routine its routine, if it is at hand
   */
  public static TaughtJob of(
      String slug,
      List<Entry> entries,
      JobState state,
      Reference reference,
      List<Pattern> patterns,
      Optional<Routine> routine) {
    Optional<ChainWish> wish = WishReading.of(state.course().wish(), reference, patterns).wish();
    Strikes strikes = Strikes.in(entries);
    List<Entry> counting = entries.stream().filter(entry -> !strikes.has(entry)).toList();
    return new TaughtJob(
        slug,
        state.course().name(),
        entries.isEmpty() ? Instant.EPOCH : entries.get(entries.size() - 1).at(),
        person(counting),
        wish.map(known -> metal(known.metal().id(), known.temper().word())).orElse(""),
        batch(counting),
        wish.flatMap(known -> pieces(known, state)),
        StageResult.of(counting),
        routine.map(known -> paces(known, state, Fineness.of(wish))).orElse(Map.of()),
        typed(state),
        pickle(counting));
  }

  /** Key of a bench → what was typed for a job, as it would be typed there. */
  public static Map<String, String> typed(JobState state) {
    Map<String, String> typed = new LinkedHashMap<>();
    ofPlan(typed, "kerf", state, WishKeys.KERF);
    ofPlan(typed, "losses.all", state, WishKeys.USUAL_LOSS);
    if (!state.accounts().currency().isBlank()) {
      typed.put("prices.currency", state.accounts().currency().strip());
    }
    String metal = state.course().wish().getOrDefault(WishKeys.METAL, "").strip();
    state
        .accounts()
        .prices()
        .forEach(
            (name, value) -> {
              boolean ofMetal = name.equals(PriceList.METAL_PER_G);
              if (!ofMetal || !metal.isEmpty()) {
                typed.put("prices." + name + (ofMetal ? "." + metal : ""), Decimals.upTo(value, 9));
              }
            });
    return typed;
  }

  /** What a plan asks and a bench holds under that key. */
  private static void ofPlan(Map<String, String> typed, String key, JobState state, String asked) {
    String text = state.course().wish().getOrDefault(asked, "").strip();
    if (!text.isEmpty()) {
      typed.put(key, text);
    }
  }

  /** Metal and temper as they are told apart here. */
  public static String metal(String id, String temper) {
    return id + " " + temper;
  }

  /** Whose sitting it was last. */
  public static String person(List<Entry> entries) {
    String person = "";
    for (Entry entry : entries) {
      if (entry.fact() instanceof Fact.SittingStarted sitting && !sitting.person().isEmpty()) {
        person = sitting.person();
      }
    }
    return person;
  }

  /** The batch of the wire that came last and had one. */
  public static String batch(List<Entry> entries) {
    String batch = "";
    for (Entry entry : entries) {
      if (entry.fact() instanceof Fact.WireAdded wire && !wire.batch().isEmpty()) {
        batch = wire.batch();
      }
    }
    return batch;
  }

  private static Optional<EarlierJob> pieces(ChainWish wish, JobState state) {
    List<Tried> tried = TriedPieces.of(state.trials(), wish.wireMm());
    Optional<LinkSize> size =
        wish.linkSize()
            .or(
                () ->
                    tried.stream()
                        .filter(one -> one.lengthMm().isPresent() && one.widthMm().isPresent())
                        .map(
                            one ->
                                new LinkSize(
                                    one.lengthMm().getAsDouble(), one.widthMm().getAsDouble()))
                        .findFirst());
    return tried.isEmpty() || size.isEmpty()
        ? Optional.empty()
        : wish.link()
            .pattern()
            .map(
                pattern ->
                    new EarlierJob(
                        pattern,
                        wish.wireMm(),
                        wish.metal().bendingShare(wish.temper()),
                        true,
                        false,
                        tried,
                        size.get()));
  }

  /** A step teaches its time once it was done: opened, passed or skipped it teaches none. */
  private static Map<String, Pace> paces(Routine routine, JobState state, Fineness fineness) {
    Map<String, Pace> paces = new LinkedHashMap<>();
    TimeSheet times = state.times();
    for (Step step : routine.steps()) {
      double seconds = times.secondsByStep().getOrDefault(step.id(), 0.0);
      int come =
          switch (step.counts()) {
            case EACH -> times.throughByStep().getOrDefault(step.id(), 0);
            case BATCH -> times.timesByStep().getOrDefault(step.id(), 0);
            case NOTHING ->
                state.course().stepsDone().contains(step.id())
                    ? Math.max(1, times.timesByStep().getOrDefault(step.id(), 0))
                    : 0;
          };
      double longer = Pace.pieceOf(step).map(fineness::times).orElse(1.0);
      OptionalDouble usual =
          step.usualSeconds().isPresent()
              ? OptionalDouble.of(longer * step.usualSeconds().getAsLong())
              : OptionalDouble.empty();
      if (Pace.isWork(seconds, come, usual)) {
        paces.merge(Pace.of(step), new Pace(seconds, come, seconds / longer), Pace::and);
      }
    }
    return paces;
  }

  private static List<Double> pickle(List<Entry> entries) {
    Map<EntryId, TimerRun> begun = new LinkedHashMap<>();
    List<Double> seconds = new ArrayList<>();
    for (Entry entry : entries) {
      if (entry.fact() instanceof Fact.TimerStarted started) {
        begun.put(entry.id(), TimerRun.of(started, entry));
      }
      if (entry.fact() instanceof Fact.TimerAnswered answer
          && answer.how() == WaitEnd.LOOKED
          && begun.containsKey(answer.timer())) {
        TimerRun run = begun.get(answer.timer());
        double lay = Duration.between(run.startedAt(), entry.at()).toSeconds();
        if (!run.barelyBegun(entry.at()) && lay <= LATE * run.seconds()) {
          seconds.add(lay);
        }
      }
    }
    return seconds;
  }

  /** All that it says in a few words: how many pieces, in which metal. */
  public String says() {
    int made = pieces.map(job -> job.pieces().size()).orElse(0);
    if (made == 0 && stages.isEmpty() && paces.isEmpty()) {
      return "nothing yet";
    }
    return (metal.isEmpty() ? "no chain" : metal)
        + (batch.isEmpty() ? "" : ", batch " + batch)
        + (made == 0 ? "" : ", " + made + (made == 1 ? " test piece" : " test pieces"))
        + (person.isEmpty() ? "" : ", " + person)
        + (stages.isEmpty()
            ? ""
            : ", "
                + stages.keySet().stream()
                    .map(stage -> stage.split(" ", 2)[0])
                    .distinct()
                    .sorted()
                    .collect(Collectors.joining(" and "))
                + "s counted");
  }
}
