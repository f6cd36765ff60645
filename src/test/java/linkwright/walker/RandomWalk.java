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
import linkwright.cli.walk.PlainHand;
import linkwright.coach.Bencher;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
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
import linkwright.job.TimerRun;
import linkwright.plan.WishKeys;
import linkwright.routine.Makes;
import linkwright.routine.Routine;
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
  private final WaitTimes waits = new WaitTimes();
  private final EntryChecks checks = new EntryChecks(Bencher.SHELF, waits);
  private final List<WalkEvent> events = new ArrayList<>();

  /** As it really is; the computer's clock beside it, and the one that the program follows. */
  private Instant real = Bencher.MORNING;

  private Instant now = Bencher.MORNING;
  private Instant steady = Bencher.MORNING;
  private final PlainHand plain = new PlainHand();
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
    performer.shut();
    SecondJob.begin(home, now, waits::begun);
    home.books().forEach(this::read);
    performer = performer();
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
      walk.shut();
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
      walk.shut();
    }
    return Optional.empty();
  }

  private void shut() {
    performer.shut();
    plain.leave();
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
          .filter(name -> name.endsWith(".yaml") && !name.startsWith(SecondJob.SLUG))
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
    List<String> wrong = new ArrayList<>();
    try {
      if (event.kind().equals("word")) {
        typed(event, wrong);
      } else {
        happened(event, () -> apply(event), wrong);
      }
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

  /** A line of the plain walk: each message that comes of it is looked at like a key. */
  private void typed(WalkEvent event, List<String> wrong) {
    plain.type(
        event.what(),
        performer,
        model,
        () -> now,
        () -> steady,
        (was, message) -> {
          model = was;
          happened(event, () -> take(message), wrong);
          return model;
        });
    if (performer.left()) {
      restart();
    }
  }

  /** Does it, and looks at what came of it. */
  private void happened(WalkEvent event, Runnable deed, List<String> wrong) {
    List<Entry> before = book();
    String slug = model.job().map(job -> job.slug()).orElse("");
    PlaceId place = model.held().place();
    Model was = model;
    deed.run();
    model = plant.into(was, event, model);
    List<Entry> after = book();
    boolean same = model.job().map(job -> job.slug().equals(slug)).orElse(false);
    if (same && after.size() > before.size()) {
      List<Entry> more = after.subList(before.size(), after.size());
      wrong.addAll(checks.check(slug, before, more, flat(others(slug)), place, real));
      wrong.addAll(
          hotWork.check(
              before,
              more,
              others(slug),
              Bencher.SHELF.routine(model.job().get().state().course().routine()),
              place,
              real));
      wrong.addAll(CountChecks.moved(model, before, more));
    }
    if (same && after.size() < before.size()) {
      wrong.add("the book lost entries: " + before.size() + " to " + after.size());
    }
    if (place == PlaceId.HOT_WORK || place == PlaceId.TIMERS) {
      // There something may be entered in another book than the one at hand.
      home.books().forEach(this::read);
    }
    if (!same && !slug.isEmpty()) {
      read(home.jobs().resolve(slug + ".yaml"));
    }
    model.job().ifPresent(job -> books.put(job.slug(), job.entries()));
    wrong.addAll(hotWork.knows(model, books.values(), real));
    wrong.addAll(CountChecks.of(model));
    wrong.addAll(timers());
    wrong.addAll(waits.rings(model, books, real));
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
    waits.restarted(real, now);
    hotWork.restarted(real);
    start();
  }

  private void take(Message message) {
    model = performer.take(model, message);
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
