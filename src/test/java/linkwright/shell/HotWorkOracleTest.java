package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.content.WaitShown;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.AfterAll;
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

  @TempDir private Path folder;

  private Home home;
  private Handbook handbook;
  private Random chance;

  private final HotWorkTime time = new HotWorkTime();

  /** Of what comes seldom, what came in any of the walks. */
  private static final Set<String> CAME = new HashSet<>();

  @AfterAll
  static void what_comes_seldom_came() {
    assertThat(CAME).contains("watch ended for a reason", "closed", "told");
  }

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
    List<HotWorkMachine> machines = new ArrayList<>();
    machines.add(machine("window-a2b3c4d5"));
    machines.add(machine("door-x2y3z4w5"));
    List<String> way = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      time.pass(11L + (chance.nextInt(12) == 0 ? chance.nextInt(4000) : 0));
      machines.forEach(HotWorkMachine::look);
      if (sets && chance.nextInt(15) == 0) {
        time.set(chance.nextInt(3 * 7200) - 2 * 7200);
        way.add("clock set to " + time.now);
        machines.forEach(HotWorkMachine::look);
      }
      HotWorkMachine machine = machines.get(chance.nextInt(2));
      Optional<String> closed = workInClosed(machine);
      way.add(oneMore(machine, oracle));
      CAME.add(way.get(way.size() - 1));
      Optional<String> still = workInClosed(machine);
      if (closed.isPresent() && still.isPresent()) {
        assertThat(still)
            .as("work in a closed job, seed %d, %s", seed, tail(way))
            .isEqualTo(closed);
      }
      time.pass(11);
      machines.forEach(HotWorkMachine::look);
      for (HotWorkMachine each : machines) {
        holds(each, oracle, "seed %d, %s".formatted(seed, tail(way)));
      }
      assertThat(waits(machines.get(0)))
          .as("waits of all jobs, seed %d, %s", seed, tail(way))
          .isEqualTo(waits(machines.get(1)));
    }
    assertThat(oracle.pressed).extracting(HotWorkOracle.Pressed::what).contains('l', 'h', 's');
    machines.forEach(HotWorkMachine::kill);
  }

  /** What was worked in the job on the bench, if it is closed; of another job nothing is told. */
  private static Optional<String> workInClosed(HotWorkMachine machine) {
    return machine
        .model
        .job()
        .filter(job -> job.state().course().closed() && job.slug().equals(JOBS.get(0)))
        .map(
            job ->
                job.entries().stream()
                    .filter(
                        entry ->
                            entry.fact() instanceof Fact.PiecesThrough
                                || entry.fact() instanceof Fact.PiecesScrapped
                                || entry.fact() instanceof Fact.WireCut
                                || entry.fact() instanceof Fact.TimerStarted
                                || entry.fact() instanceof Fact.StepDone)
                    .map(entry -> entry.id().toString())
                    .collect(Collectors.joining(" ")));
  }

  private HotWorkMachine machine(String device) {
    return new HotWorkMachine(
        device, home, handbook, time, () -> JOBS.get(chance.nextInt(JOBS.size())));
  }

  private void beginJobs() {
    List<String> routines = List.of("scroll-and-ring", "round-cable", "clasp-hook-and-eye");
    Books books =
        new Books(
            home,
            "window-a2b3c4d5",
            () -> time.now,
            new DraftStore(home.drafts()),
            ReadingProgress.ENDLESS);
    for (int i = 0; i < JOBS.size(); i++) {
      List<Fact> facts = new ArrayList<>(Demo.facts(Library.load(home)));
      facts.set(0, new Fact.JobOpened(JOBS.get(i), routines.get(i)));
      books.begin(JOBS.get(i), facts, handbook);
      books.shut();
    }
  }

  private String oneMore(HotWorkMachine machine, HotWorkOracle oracle) throws IOException {
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
    if (throwOf == 3 && place == PlaceId.BENCH) {
      return machine.endWatch(oracle);
    }
    if (throwOf == 4 && place == PlaceId.BENCH) {
      return machine.closeOrOpenAgain();
    }
    if (throwOf == 2 && place == PlaceId.BENCH) {
      machine.press("@");
      machine.take(new Message.Pasted(PEOPLE.get(chance.nextInt(PEOPLE.size()))));
      machine.press("ctrl-k");
      return "another person";
    }
    if (machine.common() == Act.TRY_AGAIN) {
      machine.press("esc");
      restartIfLeft(machine, oracle);
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
      restartIfLeft(machine, oracle);
      return "asked: " + act;
    }
    if (place != PlaceId.BENCH) {
      String key = List.of("b", "b", "b", "a", "q", "enter").get(chance.nextInt(6));
      machine.press(key);
      restartIfLeft(machine, oracle);
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
  private static void asksFirst(HotWorkMachine machine, HotWorkOracle oracle, String way) {
    boolean looks = machine.model.job().filter(job -> job.lookOnly()).isPresent();
    if (!looks || !oracle.open()) {
      assertThat(machine.model.held().place() == PlaceId.HOT_WORK)
          .as("asked first, %s", way)
          .isEqualTo(oracle.open());
    }
  }

  /** Whoever leaves is told of a flame, else how long somebody watches still. */
  private void restartIfLeft(HotWorkMachine machine, HotWorkOracle oracle) {
    if (!machine.performer.left()) {
      return;
    }
    String told = machine.performer.parting();
    if (oracle.open()) {
      assertThat(told).contains("every flame out, gas shut");
    } else if (!time.setAt.isAfter(BEGIN)) {
      Duration least = oracle.left(time.real).orElse(Duration.ZERO);
      Duration most = most(machine, oracle);
      List<String> right = new ArrayList<>();
      for (long minutes = upToMinutes(least.minusSeconds(1));
          minutes <= upToMinutes(most.plusSeconds(1));
          minutes++) {
        right.add(minutes == 0 ? "" : Clock.spoken(minutes * 60.0));
      }
      String minutes = told.replaceFirst("^Fire watch: (.*?) to go.*$", "$1");
      assertThat(right).as(told).contains(minutes);
      if (!minutes.isEmpty()) {
        CAME.add("told");
      }
    }
    machine.kill();
    machine.start();
  }

  private static long upToMinutes(Duration left) {
    return Math.max(0, (left.toSeconds() + 59) / 60);
  }

  /** The end of a line that was being written when the light went out. */
  private void halfALine(HotWorkMachine machine) throws IOException {
    Path book = home.jobs().resolve(JOBS.get(chance.nextInt(JOBS.size())) + ".yaml");
    boolean held =
        machine.model.job().filter(job -> book.endsWith(job.slug() + ".yaml")).isPresent();
    if (held) {
      Files.writeString(book, "- {n: 99, at: 2026-03", StandardOpenOption.APPEND);
    }
  }

  private void holds(HotWorkMachine machine, HotWorkOracle oracle, String way) {
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
    Optional<Duration> wanted = oracle.left(time.real);
    boolean clock = time.setAt.isAfter(BEGIN);
    if (clock && oracle.from().isBefore(machine.startedAt)) {
      return;
    }
    Duration is = left.orElse(Duration.ZERO);
    Duration least = wanted.orElse(Duration.ZERO);
    Duration most = most(machine, oracle);
    assertThat(is)
        .as("its time, %s", way)
        .isBetween(least.minusSeconds(1), most.plusSeconds(clock ? 25 : 1));
  }

  /**
   * What was before the program began it knows by the computer's clock alone, and not which of two
   * books came first: then the watch runs from the statement, which is later. So does what was
   * ended where it ran from something else: longer than need be, and never shorter.
   */
  private Duration most(HotWorkMachine machine, HotWorkOracle oracle) {
    boolean known = machine.knows(oracle) && !time.setAt.isAfter(BEGIN);
    boolean sure = oracle.ended() ? machine.endedIt(oracle) : known;
    return sure ? oracle.left(time.real).orElse(Duration.ZERO) : oracle.atMost(time.real);
  }

  /** The waits of all jobs as a machine knows them, by book and entry. */
  private static Set<String> waits(HotWorkMachine machine) {
    return machine.model.waits().stream()
        .filter(wait -> !wait.slug().isEmpty())
        .map(wait -> wait.slug() + " " + wait.run().id())
        .collect(Collectors.toSet());
  }

  private static List<String> tail(List<String> way) {
    return way.subList(Math.max(0, way.size() - 12), way.size());
  }
}
