package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.disk.FailPoint;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.LotFact;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.standing.Handbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A program that dies on the spot while wire is taken, given back, drawn down or counted: what the
 * drawer and the job hold together is what came, less what the stocktaking says is missing.
 */
@Timeout(300)
class WireDeathsTest {
  private static final int DEAD = 137;
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** 0.9 mm sterling at 10.36 g/cm³ (supplier's data sheet). */
  private static final double GRAMS_PER_MM = Math.PI * 0.81 / 4 * 10.36 / 1000;

  private static final double CAME_MM = 3000;

  @TempDir Path folder;

  @BeforeEach
  void aLotAndAJobThatTookOfIt() {
    Home home = new Home(folder);
    Handbook handbook = Start.handbook(Library.load(home));
    LotFact came =
        new LotFact.LotArrived(
            "march",
            "wire",
            "sterling",
            OptionalDouble.of(0.9),
            "soft",
            "b7",
            OptionalDouble.of(CAME_MM),
            NONE,
            "");
    assertThat(DrawerBook.keep(home, "bench", NOW, came)).isEmpty();
    Books books = books(home);
    books.begin(
        "Gate chain",
        List.of(
            new Fact.JobOpened("Gate chain", "scroll-and-ring"),
            new Fact.PlanSet(Wishes.common().texts())),
        handbook);
    books.keep(List.of(taking(1200)), handbook);
    books.shut();
  }

  private static Books books(Home home) {
    return new Books(
        home,
        "bench",
        InstantSource.fixed(NOW.plusSeconds(60)),
        new DraftStore(home.drafts()),
        ReadingProgress.ENDLESS);
  }

  private static Fact taking(double mm) {
    return new Fact.WireAdded(PieceKind.LINK, 0.9, mm, "soft", "b7", "march");
  }

  /** The second program: the folder, what it does, where it dies. */
  public static void main(String[] arguments) {
    Home home = new Home(Path.of(arguments[0]));
    FailPoint.during(
        name -> {
          if (name.equals(arguments[2])) {
            Runtime.getRuntime().halt(DEAD);
          }
        },
        () -> perform(home, arguments[1]));
  }

  private static void perform(Home home, String what) {
    OptionalDouble some = OptionalDouble.of(900);
    switch (what) {
      case "take" -> inJob(home, taking(300));
      case "give-back" ->
          inJob(home, new LotFact.StockReturned("march", PieceKind.LINK, some, NONE, ""));
      case "draw-down" ->
          inDrawer(
              home, new LotFact.LotTurned("march", "thin", OptionalDouble.of(0.6), some, NONE, ""));
      case "count" -> inDrawer(home, new LotFact.LotCounted("march", some, NONE, ""));
      default -> throw new IllegalArgumentException(what);
    }
  }

  private static void inJob(Home home, Fact fact) {
    Handbook handbook = Start.handbook(Library.load(home), home);
    Books books = books(home);
    books.open("gate-chain", handbook);
    books.keep(List.of(fact), handbook);
    books.shut();
  }

  private static void inDrawer(Home home, Fact fact) {
    DrawerBook.keep(home, "bench", NOW.plusSeconds(60), fact);
  }

  /** All wire of it as mm of 0.9 mm: in the drawer, in the job, and missed by the stocktaking. */
  private double allMm() {
    Home home = new Home(folder);
    Handbook handbook = Start.handbook(Library.load(home), home);
    Drawer drawer = handbook.drawer();
    double grams =
        drawer.lots().stream()
            .mapToDouble((Lot lot) -> lot.massG().orElse(0) + lot.unaccountedG().orElse(0))
            .sum();
    JobState job =
        JobState.replay(
            EntryLines.entries(
                BookFile.look(home.jobs().resolve("gate-chain.yaml")).orThrow().lines()),
            handbook.stages());
    double has =
        job.wire().addedMm(PieceKind.LINK).stream().mapToDouble(Double::doubleValue).sum()
            - job.wire().discardedMm(PieceKind.LINK);
    return grams / GRAMS_PER_MM + has;
  }

  @ParameterizedTest
  @CsvSource({
    "take, lock-taken",
    "take, before-write",
    "take, after-write",
    "take, before-show",
    "give-back, before-write",
    "give-back, after-write",
    "give-back, after-sync",
    "draw-down, lock-taken",
    "draw-down, before-write",
    "draw-down, after-write",
    "draw-down, after-sync",
    "count, before-write",
    "count, after-write",
    "count, before-show"
  })
  void leavesNoWireLostOrDoubled(String what, String point) throws Exception {
    Offset<Double> near = Offset.offset(1e-6);
    assertThat(allMm()).isCloseTo(CAME_MM, near);
    assertThat(run(what, point)).isEqualTo(DEAD);
    assertThat(allMm()).as("after the death").isCloseTo(CAME_MM, near);
    perform(new Home(folder), "take");
    perform(new Home(folder), "draw-down");
    assertThat(allMm()).as("and once work goes on").isCloseTo(CAME_MM, near);
    assertThat(DrawerBook.problems(new Home(folder))).isEmpty();
  }

  private int run(String what, String point) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                WireDeathsTest.class.getName(),
                folder.toString(),
                what,
                point)
            .inheritIO()
            .start();
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("It neither did its work nor died: " + what + " " + point);
    }
    return process.exitValue();
  }
}
