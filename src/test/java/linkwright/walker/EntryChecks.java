package linkwright.walker;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.PlaceId;
import linkwright.job.BenchFact;
import linkwright.job.CautionMet;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.reference.Metal;
import linkwright.routine.Caution;
import linkwright.routine.Hazard;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepCounting;
import linkwright.routine.StepId;
import linkwright.routine.WaitEnds;
import linkwright.standing.Handbook;

/**
 * What must hold of every entry at the moment it is made, told from the entries before it and from
 * the walker's own clock.
 */
final class EntryChecks {
  /** What undo may reach, by the place where it is pressed. */
  private static final Map<PlaceId, Set<Class<? extends Fact>>> REACH =
      Map.of(
          PlaceId.BENCH,
          Set.of(
              Fact.StepDone.class,
              Fact.PiecesTaken.class,
              Fact.PiecesThrough.class,
              Fact.PiecesSentBack.class,
              Fact.PiecesScrapped.class,
              BenchFact.JointsChecked.class,
              Fact.WireCut.class),
          PlaceId.WIRE,
          Set.of(
              Fact.MetalWeighedOut.class,
              Fact.WireCut.class,
              Fact.WireAdded.class,
              Fact.WireDiscarded.class,
              LotFact.StockTaken.class,
              LotFact.StockReturned.class),
          PlaceId.TEST_PIECES,
          Set.of(Fact.TestPieceTried.class),
          PlaceId.TRIAL_LENGTH,
          Set.of(Fact.TrialMeasured.class),
          PlaceId.WEIGH_IN,
          Set.of(
              Fact.MetalWeighedOut.class,
              Fact.WeighedIn.class,
              Fact.PricesSet.class,
              BenchFact.HoursCorrected.class),
          PlaceId.BOOK,
          Set.of(Fact.Noted.class, Fact.Struck.class),
          PlaceId.PILES,
          Set.of(BenchFact.PilePlaced.class),
          PlaceId.CARD,
          Set.of(BenchFact.CardSet.class));

  private final Handbook handbook;
  private final WaitTimes waits;

  EntryChecks(Handbook handbook, WaitTimes waits) {
    this.handbook = handbook;
    this.waits = waits;
  }

  /**
   * What is wrong with entries that were just made; empty if nothing is.
   *
   * @param slug the book's name
   * @param before the book before them
   * @param more the new entries
   * @param others the entries of all other books: what was met in one is known in all
   * @param place where she was when the key was pressed
   * @param real the moment as it really is, whatever a clock was set to
   */
  List<String> check(
      String slug,
      List<Entry> before,
      List<Entry> more,
      List<Entry> others,
      PlaceId place,
      Instant real) {
    List<String> wrong = new ArrayList<>();
    List<Entry> book = new ArrayList<>(before);
    for (Entry entry : more) {
      one(slug, book, entry, others, place, real).ifPresent(wrong::add);
      book.add(entry);
    }
    return wrong;
  }

  private Optional<String> one(
      String slug, List<Entry> book, Entry entry, List<Entry> others, PlaceId place, Instant real) {
    Fact fact = entry.fact();
    if (fact instanceof Fact.TimerStarted) {
      waits.begun(slug, entry.id(), real);
    }
    if (fact instanceof Fact.TimerAnswered answered) {
      return ended(slug, book, entry, answered, real);
    }
    if (fact instanceof Fact.Struck strike && strike.why().equals("undone")) {
      return undone(book, entry, strike, place);
    }
    Optional<String> unwaited = unwaited(book, entry);
    if (unwaited.isPresent()) {
      return unwaited;
    }
    boolean atBench = place == PlaceId.BENCH;
    return atBench && isWork(fact) ? cautions(book, entry, others) : Optional.empty();
  }

  /** A wait ends by its time, by a look at what is pickled, or for a reason. */
  private Optional<String> ended(
      String slug, List<Entry> book, Entry entry, Fact.TimerAnswered answered, Instant real) {
    Optional<Entry> start =
        book.stream().filter(each -> each.id().equals(answered.timer())).findFirst();
    if (start.isEmpty() || !(start.get().fact() instanceof Fact.TimerStarted timer)) {
      return Optional.of("an answer to no timer: " + entry);
    }
    boolean over =
        waits.ran(slug, start.get(), real).compareTo(Duration.ofSeconds(timer.seconds())) >= 0;
    boolean own = timer.step().isEmpty();
    boolean fair =
        switch (answered.how()) {
          case TIME -> over;
          case LOOKED -> pickles(book, timer.step());
          case REASON -> !answered.reason().isBlank();
          case NOT_SAID -> own || over;
        };
    return fair
        ? Optional.empty()
        : Optional.of("a wait ended by nothing: " + entry + " of " + timer);
  }

  /** Where all go into a wait together, whatever is counted comes out of it. */
  static boolean takesOut(Step step, Fact fact) {
    return fact instanceof Fact.PiecesThrough
        && step.counts() == StepCounting.BATCH
        && step.waits().stream().anyMatch(wait -> wait.ends() != WaitEnds.WATCH);
  }

  /** No more comes out of a step's waits than went into those that are over. */
  private Optional<String> unwaited(List<Entry> book, Entry entry) {
    if (!(entry.fact() instanceof Fact.PiecesThrough out)
        || routine(book)
            .flatMap(routine -> routine.step(out.step()))
            .filter(step -> takesOut(step, out))
            .isEmpty()) {
      return Optional.empty();
    }
    Set<EntryId> struck = PieceLedger.struck(book);
    Set<EntryId> running = running(book);
    Map<PieceKind, Integer> over = new HashMap<>();
    for (Entry each : book) {
      if (struck.contains(each.id())) {
        continue;
      }
      if (each.fact() instanceof Fact.TimerStarted in
          && in.step().equals(out.step())
          && !running.contains(each.id())) {
        in.wentIn().forEach((kind, count) -> over.merge(kind, count, Integer::sum));
      } else if (each.fact() instanceof Fact.PiecesThrough gone && gone.step().equals(out.step())) {
        gone.pieces().forEach((kind, count) -> over.merge(kind, -count, Integer::sum));
      }
    }
    return out.pieces().entrySet().stream()
        .filter(each -> each.getValue() > over.getOrDefault(each.getKey(), 0))
        .findFirst()
        .map(each -> "came out of no wait: " + entry + ", of which were over " + over);
  }

  private boolean pickles(List<Entry> book, StepId step) {
    return routine(book)
        .flatMap(routine -> routine.step(step))
        .filter(found -> found.does().contains(Hazard.PICKLES))
        .isPresent();
  }

  private Optional<String> undone(
      List<Entry> book, Entry entry, Fact.Struck strike, PlaceId place) {
    int at = -1;
    for (int i = 0; i < book.size(); i++) {
      at = book.get(i).id().equals(strike.entry()) ? i : at;
    }
    if (at < 0) {
      return Optional.of("undone what is not there: " + entry);
    }
    Fact target = book.get(at).fact();
    boolean opened = target instanceof Fact.StepOpened;
    boolean reach = REACH.getOrDefault(place, Set.of()).contains(target.getClass());
    if (!reach || opened) {
      return Optional.of("undone beyond its reach at " + place + ": " + target);
    }
    Instant later = entry.at();
    for (int i = book.size() - 1; i >= at; i--) {
      Fact between = book.get(i).fact();
      boolean ends =
          between instanceof Fact.SteppedAway
              || between instanceof Fact.JobClosed
              || between instanceof Fact.JobReopened;
      if (ends || Duration.between(book.get(i).at(), later).compareTo(Duration.ofHours(1)) > 0) {
        return Optional.of("undone out of another sitting: " + entry + " of " + target);
      }
      later = book.get(i).at();
    }
    return Optional.empty();
  }

  private static boolean isWork(Fact fact) {
    return fact instanceof Fact.PiecesThrough
        || fact instanceof Fact.WireCut
        || fact instanceof Fact.StepDone
        || fact instanceof Fact.PiecesSentBack
        || fact instanceof Fact.PiecesScrapped
        || (fact instanceof Fact.TimerStarted timer && !timer.step().isEmpty());
  }

  /** Nothing is worked at a step before each of its cautions was shown whole when it was due. */
  private Optional<String> cautions(List<Entry> book, Entry entry, List<Entry> others) {
    List<Entry> all = new ArrayList<>(others);
    all.addAll(book);
    Optional<Step> step = routine(book).flatMap(routine -> openStep(book, routine));
    if (step.isEmpty()) {
      return Optional.empty();
    }
    for (String id : step.get().cautions()) {
      Optional<Caution> card = handbook.caution(id).filter(each -> applies(book, each));
      if (card.isPresent() && !met(all, id, entry)) {
        return Optional.of(
            "worked at " + step.get().id() + " before the card " + id + ": " + entry);
      }
    }
    return Optional.empty();
  }

  private static boolean met(List<Entry> book, String card, Entry now) {
    boolean whole = false;
    boolean lately = false;
    for (Entry entry : book) {
      if (entry.fact() instanceof Fact.CautionSeen seen
          && seen.caution().equals(card)
          && entry.person().equals(now.person())) {
        Duration since = Duration.between(entry.at(), now.at());
        // Entries that the same press made are of the work itself.
        boolean earlier = !(seen.how() == CautionMet.LINE && entry.at().equals(now.at()));
        lately |= earlier && since.compareTo(Duration.ofDays(14)) <= 0;
        whole |= seen.how() == CautionMet.WHOLE && since.compareTo(Duration.ofDays(90)) <= 0;
      }
    }
    return whole && lately;
  }

  private boolean applies(List<Entry> book, Caution card) {
    Map<String, String> wish = new HashMap<>();
    book.stream()
        .map(Entry::fact)
        .filter(Fact.PlanSet.class::isInstance)
        .forEach(plan -> wish.putAll(((Fact.PlanSet) plan).wish()));
    // Of these jobs no more is known than the metal; what is not known excludes nothing.
    Optional<Metal> metal =
        Optional.of(wish.getOrDefault("metal", "").strip())
            .filter(typed -> !typed.isEmpty())
            .flatMap(typed -> handbook.reference().metal(typed).found());
    Map<String, List<String>> when = card.when().words();
    return metal.isEmpty()
        || (asked(when, "metal", metal.get().id())
            && asked(when, "family", metal.get().family().word()));
  }

  private static boolean asked(Map<String, List<String>> when, String trait, String here) {
    return !when.containsKey(trait) || when.get(trait).contains(here);
  }

  private Optional<Routine> routine(List<Entry> book) {
    String id = "";
    for (Entry entry : book) {
      id = entry.fact() instanceof Fact.JobOpened opened ? opened.routine() : id;
    }
    return handbook.routine(id);
  }

  static Optional<Step> openStep(List<Entry> book, Routine routine) {
    Set<EntryId> struck = PieceLedger.struck(book);
    Optional<Step> open = Optional.empty();
    for (Entry entry : book) {
      if (entry.fact() instanceof Fact.StepOpened opened && !struck.contains(entry.id())) {
        open = routine.step(opened.step());
      }
    }
    return open;
  }

  /** The timers that run by the book: begun, not answered, none of it struck. */
  static Set<EntryId> running(List<Entry> book) {
    Set<EntryId> struck = new HashSet<>(PieceLedger.struck(book));
    Set<EntryId> running = new LinkedHashSet<>();
    for (Entry entry : book) {
      if (struck.contains(entry.id())) {
        continue;
      }
      if (entry.fact() instanceof Fact.TimerStarted) {
        running.add(entry.id());
      } else if (entry.fact() instanceof Fact.TimerAnswered answered) {
        running.remove(answered.timer());
      }
    }
    return running;
  }
}
