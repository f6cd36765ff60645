package linkwright.walker;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Bencher;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.Pile;
import linkwright.job.TimerRun;
import linkwright.plan.WishKeys;
import linkwright.routine.Makes;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Stage;
import linkwright.shell.Demo;
import linkwright.shell.Performer;
import linkwright.view.Screens;

/**
 * Somebody who presses keys of all kinds at all places of one job, with the clock moving, books on
 * the disk; after every press it is checked what must never happen.
 */
final class RandomWalk {
  /** What went wrong, and all that led to it. */
  record Failure(String routine, List<String> wrong, List<WalkEvent> events) {
    @Override
    public String toString() {
      return "%s: %s%nevents:%n%s"
          .formatted(
              routine,
              String.join("\n", wrong),
              events.stream().map(WalkEvent::toString).collect(Collectors.joining("\n")));
    }
  }

  /** Not each event is looked at in all sizes: pictures cost more than presses. */
  private static final int LOOKS_EVERY = 4;

  private static final Set<String> LOOKED_AT = ConcurrentHashMap.newKeySet();

  private final Routine routine;
  private final Home home;
  private final Plant plant;
  private final HotWorkChecks hotWork = new HotWorkChecks();
  private final EntryChecks checks = new EntryChecks(Bencher.SHELF);
  private final List<WalkEvent> events = new ArrayList<>();

  /** As it really is; the computer's clock beside it, and the one that the program follows. */
  private Instant real = Bencher.MORNING;

  private Instant now = Bencher.MORNING;
  private Instant steady = Bencher.MORNING;
  private Performer performer;
  private Model model;
  private int looks;

  /** The entries of every book, as they were shown last. */
  private final Map<String, List<Entry>> books = new LinkedHashMap<>();

  private RandomWalk(Routine routine, Path folder, Plant plant) {
    this.routine = routine;
    this.plant = plant;
    this.home = new Home(folder);
    this.performer = performer();
    start();
  }

  /** So many keys by chance; what went wrong, if anything did. */
  static Optional<Failure> byChance(
      Routine routine, long seed, int keys, Path folder, Plant plant) {
    RandomWalk walk = new RandomWalk(routine, folder, plant);
    WalkChance chance = new WalkChance(new Random(seed));
    try {
      for (int i = 0; i < keys; i++) {
        for (WalkEvent event : chance.next(walk.model)) {
          Optional<Failure> failure = walk.happens(event);
          if (failure.isPresent()) {
            return failure;
          }
        }
      }
    } finally {
      walk.performer.shut();
    }
    return Optional.empty();
  }

  /** Those events once more. */
  static Optional<Failure> again(Routine routine, List<WalkEvent> events, Path folder) {
    RandomWalk walk = new RandomWalk(routine, folder, Plant.NONE);
    try {
      for (WalkEvent event : events) {
        Optional<Failure> failure = walk.happens(event);
        if (failure.isPresent()) {
          return failure;
        }
      }
    } finally {
      walk.performer.shut();
    }
    return Optional.empty();
  }

  private Performer performer() {
    return new Performer(home, "bench", () -> now, () -> {});
  }

  private void start() {
    model = Coach.begin(Bencher.SHELF, Settings.USUAL, Screens::parts, now, 80, 24);
    model = performer.begin(model, facts(), Optional.of(slug()));
    take(new Message.Ticked(now, steady, Optional.empty()));
  }

  private String slug() {
    try (Stream<Path> books = Files.exists(home.jobs()) ? Files.list(home.jobs()) : Stream.of()) {
      return books
          .map(path -> path.getFileName().toString())
          .filter(name -> name.endsWith(".yaml"))
          .sorted()
          .findFirst()
          .map(name -> name.substring(0, name.length() - 5))
          .orElse("a-walk");
    } catch (IOException gone) {
      throw new IllegalStateException(gone);
    }
  }

  private List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact.JobOpened("A walk", routine.id()));
    if (routine.makes() == Makes.CHAIN) {
      Map<String, String> wish = new LinkedHashMap<>();
      Demo.facts(Bencher.LIBRARY).stream()
          .filter(Fact.PlanSet.class::isInstance)
          .forEach(plan -> wish.putAll(((Fact.PlanSet) plan).wish()));
      if (!routine.patterns().contains(wish.get(WishKeys.LINK_PATTERN))) {
        routine.patterns().stream()
            .findFirst()
            .ifPresent(id -> wish.put(WishKeys.LINK_PATTERN, id));
        wish.keySet().removeAll(Set.of(WishKeys.LINK_FORMERS, WishKeys.LINK_WIDTH));
      }
      facts.add(new Fact.PlanSet(wish));
    }
    return facts;
  }

  private List<Entry> book() {
    return model.job().map(job -> job.entries()).orElse(List.of());
  }

  private Optional<Failure> happens(WalkEvent event) {
    events.add(event);
    List<Entry> before = book();
    String slug = model.job().map(job -> job.slug()).orElse("");
    PlaceId place = model.held().place();
    List<String> wrong = new ArrayList<>();
    try {
      Model was = model;
      apply(event);
      model = plant.into(was, event, model);
      List<Entry> after = book();
      boolean same = model.job().map(job -> job.slug().equals(slug)).orElse(false);
      if (same && after.size() > before.size()) {
        List<Entry> more = after.subList(before.size(), after.size());
        wrong.addAll(checks.check(before, more, flat(others(slug)), place, real));
        wrong.addAll(
            hotWork.check(
                before,
                more,
                others(slug),
                Bencher.SHELF.routine(model.job().get().state().course().routine()),
                place,
                real));
        wrong.addAll(moved(before, more));
      }
      if (same && after.size() < before.size()) {
        wrong.add("the book lost entries: " + before.size() + " to " + after.size());
      }
      if (place == PlaceId.HOT_WORK || place == PlaceId.TIMERS) {
        // There something may be entered in another book than the one at hand.
        home.books().forEach(this::read);
      }
      model.job().ifPresent(job -> books.put(job.slug(), job.entries()));
      wrong.addAll(hotWork.knows(model, books.values(), real));
      wrong.addAll(counts());
      wrong.addAll(timers());
      if (!event.kind().equals("pass") && events.size() % LOOKS_EVERY == 0) {
        wrong.addAll(screens());
      }
    } catch (RuntimeException | AssertionError fault) {
      wrong.add(fault + " at " + List.of(fault.getStackTrace()).stream().limit(12).toList());
    }
    return wrong.isEmpty()
        ? Optional.empty()
        : Optional.of(new Failure(routine.id(), wrong, List.copyOf(events)));
  }

  private void read(Path path) {
    String slug = path.getFileName().toString().replace(".yaml", "");
    BookFile.look(path)
        .found()
        .ifPresent(book -> books.put(slug, EntryLines.entries(book.lines())));
  }

  private List<List<Entry>> others(String slug) {
    return books.entrySet().stream()
        .filter(book -> !book.getKey().equals(slug))
        .map(Map.Entry::getValue)
        .toList();
  }

  private static List<Entry> flat(List<List<Entry>> books) {
    return books.stream().flatMap(List::stream).toList();
  }

  private void apply(WalkEvent event) {
    switch (event.kind()) {
      case "pass" -> {
        Duration time = Duration.ofMillis(event.number());
        real = real.plus(time);
        Optional<Instant> drawn = Optional.of(steady);
        now = now.plus(time);
        steady = steady.plus(time);
        take(new Message.Ticked(now, steady, drawn));
      }
      case "set" -> {
        now = now.plusSeconds(event.number());
        take(new Message.Ticked(now, steady, Optional.of(steady)));
      }
      case "key" ->
          take(
              new Message.KeyPressed(
                  KeyNames.read(event.what()).orElseThrow(), Optional.of(steady)));
      case "act" -> take(new Message.ActChosen(Act.withId(event.what()).orElseThrow()));
      case "paste" -> take(new Message.Pasted(event.what()));
      case "row" -> take(new Message.RowChosen((int) event.number()));
      case "field" -> take(new Message.FieldChosen((int) event.number()));
      case "size" -> {
        String[] size = event.what().split("x", -1);
        take(new Message.Resized(Integer.parseInt(size[0]), Integer.parseInt(size[1])));
      }
      case "restart" -> restart();
      default -> throw new IllegalArgumentException("no such event: " + event);
    }
    if (performer.left()) {
      restart();
    }
  }

  private void restart() {
    performer.shut();
    performer = performer();
    // A program that starts has a clock of its own, which begins with the computer's.
    steady = now;
    checks.restarted(real, now);
    hotWork.restarted(real);
    start();
  }

  private void take(Message message) {
    model = performer.take(model, message);
  }

  /** What was just entered moved no piece that was not there. */
  private List<String> moved(List<Entry> before, List<Entry> more) {
    Map<PieceKind, List<Stage>> stages = stages();
    int known = PieceLedger.of(before, stages).faults().size();
    List<Entry> all = new ArrayList<>(before);
    all.addAll(more);
    boolean strikes = more.stream().anyMatch(entry -> entry.fact() instanceof Fact.Struck);
    List<String> faults = PieceLedger.of(all, stages).faults();
    return strikes || faults.size() <= known
        ? List.of()
        : List.of("moved more than there were: " + faults.get(faults.size() - 1));
  }

  private Map<PieceKind, List<Stage>> stages() {
    return model
        .job()
        .flatMap(job -> Bencher.SHELF.routine(job.state().course().routine()))
        .map(Routine::pieces)
        .orElse(Map.of());
  }

  /**
   * Every pile holds what the entries add up to, and no place says that nothing waits if it does.
   */
  private List<String> counts() {
    if (model.job().isEmpty()) {
      return List.of();
    }
    List<String> wrong = new ArrayList<>();
    Map<PieceKind, List<Stage>> stages = stages();
    PieceLedger ledger = PieceLedger.of(book(), stages);
    stages.forEach(
        (kind, order) -> {
          Pile pile = model.job().get().state().piles().of(kind);
          for (Stage stage : order) {
            equal(wrong, kind + " " + stage, ledger.standing(kind, stage), standing(pile, stage));
            equal(wrong, kind + " redo " + stage, ledger.redo(kind, stage), pile.redoAt(stage));
          }
          equal(wrong, kind + " scrapped", ledger.scrapped(kind), pile.scrapped());
        });
    if (ledger.waiting() > 0 && saysNothingWaits()) {
      wrong.add("it says that nothing waits, and " + ledger.waiting() + " do");
    }
    return wrong;
  }

  private static int standing(Pile pile, Stage stage) {
    return pile.standing().getOrDefault(stage, 0);
  }

  private boolean saysNothingWaits() {
    return Beside.flat(Pages.of(model).body().parts())
        .filter(Rows.class::isInstance)
        .flatMap(part -> ((Rows) part).rows().stream())
        .anyMatch(row -> row.value().equals("nothing waits"));
  }

  private static void equal(List<String> wrong, String what, int expected, int found) {
    if (expected != found) {
      wrong.add(what + ": " + expected + " by the entries, " + found + " by the program");
    }
  }

  /** The timers that run are those of the book, and none has more left than it was set to. */
  private List<String> timers() {
    if (model.job().isEmpty()) {
      return List.of();
    }
    List<TimerRun> running = model.job().get().state().timers().running();
    Set<EntryId> ids = running.stream().map(TimerRun::id).collect(Collectors.toSet());
    List<String> wrong = new ArrayList<>();
    if (!ids.equals(EntryChecks.running(book()))) {
      wrong.add("timers run: " + ids + ", by the entries " + EntryChecks.running(book()));
    }
    for (TimerRun timer : running) {
      if (timer.left(steady).toSeconds() > timer.seconds()) {
        wrong.add("more left than was set: " + timer);
      }
    }
    return wrong;
  }

  /** One of the four sizes after the other; what was seen so already is not looked at again. */
  private List<String> screens() {
    List<String> wrong = new ArrayList<>();
    String columnsAndRows = WalkChance.SIZES.get(looks++ % WalkChance.SIZES.size());
    if (plant != Plant.LINE_OVER_ANOTHER
        && !LOOKED_AT.add(columnsAndRows + " " + Pages.of(model).hashCode())) {
      return wrong;
    }
    String[] size = columnsAndRows.split("x", -1);
    ScreenChecks.check(model, Integer.parseInt(size[0]), Integer.parseInt(size[1]), plant::shown)
        .ifPresent(wrong::add);
    return wrong;
  }
}
