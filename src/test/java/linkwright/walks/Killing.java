package linkwright.walks;

import static linkwright.walks.Workbench.LONG;
import static linkwright.walks.Workbench.press;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.keys.Key;
import linkwright.files.Checking;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.routine.StepId;
import linkwright.walks.KillPlan.Doing;

/**
 * Runs rounds of the kill harness on one home: the real program, started, given work, killed by a
 * signal that it cannot see, and started again on what it left.
 */
final class Killing {
  private static final String ROUTINE =
      """
      format: 1
      routine: tally
      title: Rings told off
      says: Rings told off into a tin, for whoever counts.
      makes: part
      level: beginner
      plan: Say how many.
      patterns: []
      ends: none
      usual-loss: 1 %
      usual-redo: 1 %
      pieces:
        ring: [told, done]
      steps:
        - step: tell
          title: Tell them off
          part: run
          stage: {ring: told}
          counts: each
          do: Lay one ring in the tin.
          look-for: A ring in the tin.
          why: Whoever counts knows.
          usual-time: 5 s
        - step: close-tin
          title: Close the tin
          part: finish
          stage: {ring: done}
          counts: each
          do: Close the tin.
          look-for: A closed tin.
          why: Nothing falls out.
          usual-time: 5 s
      """;

  /** What is started, given its home. */
  interface Starter {
    ShippedProgram in(Path home) throws IOException;
  }

  private final Workbench bench;
  private final ShippedProgram program;
  private Path book;
  private int books;
  private long slowestNanos;
  private int shownInTime;

  Killing() throws IOException {
    this(ShippedProgram::in);
  }

  /** The same with another program, which works in the home that it is given. */
  Killing(Starter starter) throws IOException {
    bench = new Workbench();
    Path routines = Files.createDirectories(bench.home().resolve("routines"));
    Files.writeString(routines.resolve("tally.yaml"), ROUTINE);
    program = starter.in(bench.home());
    book = fresh();
  }

  /** A new book now and then: a book of thousands of entries is another test's matter. */
  private Path fresh() throws IOException {
    Instant now = Instant.now();
    books++;
    List<Fact> facts =
        List.of(
            new Fact.JobOpened("Tally " + books, "tally"),
            new Fact.PlanSet(Map.of("pieces", "4000"), Map.of()),
            new Fact.SittingStarted(""),
            new Fact.StepOpened(new StepId("tell")));
    if (book != null) {
      Files.move(book, bench.home().resolve("done-" + book.getFileName()));
      // Without what was shown last of it, which would tell that a book is gone.
      Files.deleteIfExists(
          book.resolveSibling(book.getFileName().toString().replace(".yaml", ".last")));
      for (String name : List.of("drawer.yaml", "drawer.last", "drawer.lock", "bench.yaml")) {
        Files.deleteIfExists(bench.home().resolve(name));
      }
    }
    try (BookFile begun =
        BookFile.create(bench.home().resolve("jobs"), "Tally " + books, "tin-aaaaaaaa", now)
            .orThrow()) {
      for (Fact fact : facts) {
        int number = begun.nextNumber();
        begun
            .append(List.of(EntryLines.line(new Entry(number, now, "tin-aaaaaaaa", fact))))
            .orThrow();
      }
      return begun.path();
    }
  }

  /** How long the slowest entry took from its key to the screen that showed it, in ms. */
  long slowestMillis() {
    return TimeUnit.NANOSECONDS.toMillis(slowestNanos);
  }

  /** How many entries were waited for and shown. */
  int shownInTime() {
    return shownInTime;
  }

  /** One round: what it left. */
  KillEvidence round(KillPlan plan) throws IOException {
    if (plan.round() % 40 == 39) {
      book = fresh();
    }
    boolean commands = plan.way() == KillPlan.Way.COMMANDS;
    Path written = commands ? bench.home().resolve("drawer.yaml") : book;
    List<Doing> there = done(written);
    int pieces = there.stream().mapToInt(Doing::count).sum();
    KillCommands last = new KillCommands(bench.home(), program);
    String shown =
        switch (plan.way()) {
          case SCREEN -> onScreen(plan, pieces);
          case LINES -> inLines(plan);
          case COMMANDS -> last.run(plan);
        };
    List<String> others = new ArrayList<>(commands ? last.wrong() : List.of());
    // Whatever else was written is whole.
    List<Path> beside =
        Stream.of("drafts", "bench.yaml").map(bench.home()::resolve).filter(Files::exists).toList();
    Checking.check(new Home(bench.home()), beside, (each, library) -> List.of(), Map.of())
        .forEach(problem -> others.add(problem.sentence().replace('\n', ' ')));
    return new KillEvidence(plan, there.size(), shown, text(written), String.join("\n", others));
  }

  private static String text(Path file) throws IOException {
    return Files.exists(file) ? new String(Files.readAllBytes(file), StandardCharsets.UTF_8) : "";
  }

  private static List<Doing> done(Path book) {
    return Files.exists(book)
        ? EntryLines.entries(BookFile.look(book).orThrow().lines()).stream()
            .flatMap(entry -> KillEvidence.done(entry.fact()).stream())
            .toList()
        : List.of();
  }

  private String onScreen(KillPlan plan, int pieces) throws IOException {
    int sum = pieces;
    // What the round before had half typed would stand before what this one types.
    Files.deleteIfExists(bench.home().resolve("drafts").resolve(book.getFileName()));
    Map<String, String> environment = Map.of("LINKWRIGHT_HOME", bench.home().toString());
    try (WalkedProgram walk = WalkedProgram.start(80, 24, environment, program.with())) {
      if (plan.atStart()) {
        LockSupport.parkNanos(plan.nanos());
        return killed(walk);
      }
      walk.waitFor("the tray", LONG);
      press(walk, "enter").waitFor("places of the job", LONG);
      press(walk, "b").waitFor("through " + sum, LONG);
      for (int i = 0; i < plan.entries().size(); i++) {
        Doing doing = plan.entries().get(i);
        sum += doing.count();
        long sent = System.nanoTime();
        send(walk, doing);
        boolean last = i == plan.entries().size() - 1;
        if (!last && plan.waits().get(i)) {
          walk.waitFor(doing.isNote() ? "note: " + doing.note() : "through " + sum, LONG);
          took(sent);
        }
        if (!last && doing.isNote()) {
          // Not through Escape: on a busy machine it and the next key come as one, Alt and a
          // letter.
          press(walk, "b");
        }
      }
      LockSupport.parkNanos(plan.nanos());
      return killed(walk);
    }
  }

  private static void send(WalkedProgram walk, Doing doing) throws IOException {
    if (doing.isNote()) {
      press(walk, "esc").waitFor("places of the job", LONG);
      press(walk, "k", "n");
      walk.type(doing.note());
      press(walk, "ctrl-k");
    } else {
      walk.type(Integer.toString(doing.count())).press(Key.of(Key.Kind.PAGE_DOWN));
    }
  }

  private void took(long since) {
    slowestNanos = Math.max(slowestNanos, System.nanoTime() - since);
    shownInTime++;
  }

  private static String killed(WalkedProgram walk) throws IOException {
    walk.kill9();
    walk.exitCode(LONG);
    return walk.screen();
  }

  private String inLines(KillPlan plan) throws IOException {
    Path told = Files.createTempFile(bench.home(), "told", ".txt");
    ProcessBuilder builder = new ProcessBuilder(program.with("walk", "--plain"));
    builder.environment().put("LINKWRIGHT_HOME", bench.home().toString());
    builder.environment().put("XDG_STATE_HOME", bench.home().resolve("state").toString());
    builder.environment().put("LANG", "C.UTF-8");
    builder.redirectErrorStream(true).redirectOutput(told.toFile());
    Process process = builder.start();
    try (OutputStream keys = process.getOutputStream()) {
      write(keys, "bench\n");
      for (int i = 0; i < plan.entries().size(); i++) {
        Doing doing = plan.entries().get(i);
        long sent = System.nanoTime();
        write(keys, (doing.isNote() ? "note " + doing.note() : "" + doing.count()) + "\n");
        boolean last = i == plan.entries().size() - 1;
        if (!last && !plan.atStart() && plan.waits().get(i)) {
          boolean started = entries(told) > 0;
          await(told, i + 1);
          if (started) {
            took(sent);
          }
        }
      }
      if (!plan.atStart()) {
        await(told, Math.max(1, plan.entries().size() - 1));
      }
      LockSupport.parkNanos(plan.nanos());
      process.toHandle().destroyForcibly();
      if (!process.waitFor(LONG, TimeUnit.SECONDS)) {
        throw new AssertionError("It outlived the kill");
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted", stopped);
    }
    String text = Files.readString(told);
    Files.delete(told);
    return text;
  }

  private static void write(OutputStream keys, String line) throws IOException {
    keys.write(line.getBytes(StandardCharsets.UTF_8));
    keys.flush();
  }

  private static long entries(Path told) throws IOException {
    return Files.readString(told).lines().filter(KillEvidence::isTold).count();
  }

  private static void await(Path told, int wanted) throws IOException {
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONG);
    while (entries(told) < wanted) {
      if (System.nanoTime() > deadline) {
        throw new AssertionError("Not told in time:\n" + Files.readString(told));
      }
      LockSupport.parkNanos(2_000_000);
    }
  }
}
