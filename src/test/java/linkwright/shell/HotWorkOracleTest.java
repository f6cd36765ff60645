package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.content.WaitShown;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.routine.Hazard;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Three people, three jobs and two machines at one bench, killed and without power in between: what
 * every screen knows of hot work and of the fire watch is what the list of what was pressed says.
 */
class HotWorkOracleTest {
  private static final Instant BEGIN = HotWorkOracle.BEGIN;
  private static final List<String> JOBS = List.of("gate-chain", "anklet", "hook");
  private static final List<String> PEOPLE = List.of("Ana", "Bo", "Cleo");

  /** What counts or begins a wait, if the step burns gas. */
  private static final Set<Act> HEATS =
      Set.of(Act.THROUGH, Act.TOGETHER, Act.DONE, Act.WAIT_FIRST, Act.CUT_ONE, Act.BEGIN_ONE);

  @TempDir private Path folder;

  /** A machine at the bench: the program on it may be killed and started again. */
  private final class Machine {
    private final String device;
    private Performer performer;
    private Model model;
    private Duration ahead = Duration.ZERO;
    private Instant startedAt = BEGIN;

    Machine(String device) {
      this.device = device;
      start();
    }

    void start() {
      performer = new Performer(home, device, () -> now, () -> {});
      // A program that starts has a clock of its own, which begins with the computer's.
      ahead = Duration.between(real, now);
      startedAt = real;
      model = Coach.begin(handbook, Settings.USUAL, Paging.WHOLE, now, 80, 24);
      model = performer.begin(model, List.of(new Fact.JobOpened("x", "byzantine")), job());
      look();
    }

    private Optional<String> job() {
      return Optional.of(JOBS.get(chance.nextInt(JOBS.size())));
    }

    /** The program is gone at once, whatever was up on it. */
    void kill() {
      performer.shut();
    }

    /** Time goes by for it, so that it looks at the other books too. */
    void look() {
      take(new Message.Ticked(now, real.plus(ahead), Optional.empty()));
    }

    void take(Message message) {
      model = performer.take(model, message);
    }

    void press(String key) {
      take(new Message.KeyPressed(KeyNames.read(key).orElse(Key.of(key))));
    }

    Act common() {
      return Pages.of(model).open().stream()
          .flatMap(open -> open.act().stream())
          .findFirst()
          .orElse(Act.HELP);
    }

    /** Whether what was just pressed is in the book: not what another machine wrote meanwhile. */
    boolean entered(int before) {
      List<Entry> entries = model.job().map(job -> job.entries()).orElse(List.of());
      return entries.size() > before
          && entries.get(entries.size() - 1).device().equals(device)
          && entries.get(entries.size() - 1).at().equals(now);
    }

    int entries() {
      return model.job().map(job -> job.entries().size()).orElse(0);
    }

    /** The common key, and what an observer beside her would write down. */
    void pressCommon(HotWorkOracle oracle) {
      Act act = common();
      int before = entries();
      boolean atGas =
          model.held().place() == PlaceId.BENCH
              && AtBench.of(model)
                  .filter(at -> at.step().does().contains(Hazard.BURNS_GAS))
                  .isPresent();
      boolean open = oracle.open();
      // What comes out of the pickle was heated before it went in.
      boolean waited =
          (act == Act.TOGETHER || act == Act.DONE)
              && AtBench.of(model).filter(at -> isInAWait(at)).isPresent();
      press("space");
      boolean entered = entered(before);
      if (act == Act.LIT && entered) {
        oracle.heard('l', real);
      } else if (act == Act.FLAMES_OUT && open && !model.hotWork().open()) {
        oracle.heard('s', real);
      } else if (atGas && entered && HEATS.contains(act) && !waited) {
        oracle.heard('h', real);
      }
    }

    private boolean isInAWait(AtBench at) {
      return !model.job().orElseThrow().state().course().waits().at(at.step().id()).isEmpty();
    }
  }

  private Home home;
  private Handbook handbook;
  private Random chance;

  /** As it really is, and the computer's clock beside it, which can be set. */
  private Instant real = BEGIN;

  private Instant now = BEGIN;
  private Instant setAt = Instant.MIN;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void what_is_known_of_hot_work_is_what_was_pressed(long seed) throws IOException {
    walk(seed, false);
  }

  /** No word of a flame may hide behind another that only seems to be later. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16, 36})
  void whatever_the_clock_is_set_to_no_flame_is_forgotten(long seed) throws IOException {
    walk(seed, true);
  }

  private void walk(long seed, boolean sets) throws IOException {
    home = new Home(folder);
    handbook = Start.handbook(Library.load(home));
    chance = new Random(seed);
    beginJobs();
    HotWorkOracle oracle = new HotWorkOracle();
    List<Machine> machines = new ArrayList<>();
    machines.add(new Machine("window-a2b3c4d5"));
    machines.add(new Machine("door-x2y3z4w5"));
    List<String> way = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      pass(11L + (chance.nextInt(12) == 0 ? chance.nextInt(4000) : 0));
      machines.forEach(Machine::look);
      if (sets && chance.nextInt(15) == 0) {
        now = now.plusSeconds(chance.nextInt(3 * 7200) - 2 * 7200);
        setAt = real;
        way.add("clock set to " + now);
        machines.forEach(Machine::look);
      }
      Machine machine = machines.get(chance.nextInt(2));
      way.add(oneMore(machine, oracle));
      pass(11);
      machines.forEach(Machine::look);
      for (Machine each : machines) {
        holds(each, oracle, "seed %d, %s".formatted(seed, tail(way)));
      }
      assertThat(waits(machines.get(0)))
          .as("waits of all jobs, seed %d, %s", seed, tail(way))
          .isEqualTo(waits(machines.get(1)));
    }
    assertThat(oracle.pressed).extracting(HotWorkOracle.Pressed::what).contains('l', 'h', 's');
    machines.forEach(Machine::kill);
  }

  private void pass(long seconds) {
    real = real.plusSeconds(seconds);
    now = now.plusSeconds(seconds);
  }

  private void beginJobs() {
    List<String> routines = List.of("scroll-and-ring", "round-cable", "clasp-hook-and-eye");
    Books books =
        new Books(
            home,
            "window-a2b3c4d5",
            () -> now,
            new DraftStore(home.drafts()),
            ReadingProgress.ENDLESS);
    for (int i = 0; i < JOBS.size(); i++) {
      List<Fact> facts = new ArrayList<>(Demo.facts(Library.load(home)));
      facts.set(0, new Fact.JobOpened(JOBS.get(i), routines.get(i)));
      books.begin(JOBS.get(i), facts, handbook);
      books.shut();
    }
  }

  private String oneMore(Machine machine, HotWorkOracle oracle) throws IOException {
    PlaceId place = machine.model.held().place();
    int throwOf = chance.nextInt(40);
    if (throwOf == 0) {
      machine.kill();
      machine.start();
      asksFirst(machine, oracle, "killed");
      return "killed";
    }
    if (throwOf == 1) {
      machine.kill();
      halfALine(machine);
      machine.start();
      asksFirst(machine, oracle, "power cut");
      return "power cut";
    }
    if (throwOf == 2 && place == PlaceId.BENCH) {
      machine.press("@");
      machine.take(new Message.Pasted(PEOPLE.get(chance.nextInt(PEOPLE.size()))));
      machine.press("ctrl-k");
      return "another person";
    }
    if (machine.common() == Act.TRY_AGAIN) {
      machine.press("esc");
      restartIfLeft(machine);
      return "given up";
    }
    if (machine.model.held().form().isPresent()) {
      machine.press("esc");
      return "esc in a form";
    }
    if (place == PlaceId.HOT_WORK) {
      Act act = chance.nextInt(3) == 0 ? Act.STILL_LIT : Act.FLAMES_OUT;
      if (act == Act.FLAMES_OUT) {
        machine.pressCommon(oracle);
      } else {
        machine.press("n");
      }
      restartIfLeft(machine);
      return "asked: " + act;
    }
    if (place != PlaceId.BENCH) {
      String key = List.of("b", "b", "b", "a", "q", "enter").get(chance.nextInt(6));
      machine.press(key);
      restartIfLeft(machine);
      return key + " at " + place;
    }
    String key =
        List.of("space", "space", "space", "n", "b", "u", "z", "!", "y", "esc", "1")
            .get(Math.max(0, chance.nextInt(24) - 13));
    if (key.equals("space")) {
      String said = machine.common() + " at " + AtBench.of(machine.model).map(at -> at.step().id());
      machine.pressCommon(oracle);
      return said;
    }
    machine.press(key);
    return key + " at the bench";
  }

  /** What was found open when the program began is asked about before all else. */
  private static void asksFirst(Machine machine, HotWorkOracle oracle, String way) {
    boolean looks = machine.model.job().filter(job -> job.lookOnly()).isPresent();
    if (!looks || !oracle.open()) {
      assertThat(machine.model.held().place() == PlaceId.HOT_WORK)
          .as("asked first, %s", way)
          .isEqualTo(oracle.open());
    }
  }

  private void restartIfLeft(Machine machine) {
    if (machine.performer.left()) {
      machine.kill();
      machine.start();
    }
  }

  /** The end of a line that was being written when the light went out. */
  private void halfALine(Machine machine) throws IOException {
    Path book = home.jobs().resolve(JOBS.get(chance.nextInt(JOBS.size())) + ".yaml");
    boolean held =
        machine.model.job().filter(job -> book.endsWith(job.slug() + ".yaml")).isPresent();
    if (held) {
      Files.writeString(book, "- {n: 99, at: 2026-03", StandardOpenOption.APPEND);
    }
  }

  private void holds(Machine machine, HotWorkOracle oracle, String way) {
    Model model = machine.model;
    assertThat(model.hotWork().lit().isPresent()).as("open, %s", way).isEqualTo(oracle.open());
    Page page = Pages.of(model);
    assertThat(page.hotWork().startsWith("lit "))
        .as("in the head, %s", way)
        .isEqualTo(oracle.open());
    assertThat(page.waits().stream().anyMatch(WaitShown::watch))
        .as("the watch in the head, %s", way)
        .isEqualTo(model.watch().isPresent());
    assertThat(oracle.open() && model.watch().isPresent()).as("flame or watch, %s", way).isFalse();
    Optional<Duration> left =
        model
            .bench()
            .watch()
            .map(watch -> watch.run())
            .filter(run -> !run.rings(model.steady()))
            .map(run -> run.left(model.steady()));
    Optional<Duration> wanted = oracle.left(real);
    // What was before the program began it knows by the computer's clock alone, and not which of
    // two books came first: then the watch runs from the statement, which is later.
    boolean known = !oracle.lit().isBefore(machine.startedAt);
    boolean clock = setAt.isAfter(BEGIN);
    if (clock && oracle.from().isBefore(machine.startedAt)) {
      return;
    }
    Duration is = left.orElse(Duration.ZERO);
    Duration least = wanted.orElse(Duration.ZERO);
    Duration most = known && !clock ? least : oracle.atMost(real);
    assertThat(is)
        .as("its time, %s", way)
        .isBetween(least.minusSeconds(1), most.plusSeconds(clock ? 25 : 1));
  }

  /** The waits of all jobs as a machine knows them, by book and entry. */
  private static Set<String> waits(Machine machine) {
    return machine.model.waits().stream()
        .filter(wait -> !wait.slug().isEmpty())
        .map(wait -> wait.slug() + " " + wait.run().id())
        .collect(Collectors.toSet());
  }

  private static List<String> tail(List<String> way) {
    return way.subList(Math.max(0, way.size() - 12), way.size());
  }
}
