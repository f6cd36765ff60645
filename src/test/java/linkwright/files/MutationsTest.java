package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import linkwright.books.BookFile;
import linkwright.books.CheckedLate;
import linkwright.books.DeviceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.shell.StudentsFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whatever happens to a file of any sort, it is read or its problems are told, within a second of
 * processor time; nothing is thrown.
 *
 * <p>{@code -Dlinkwright.rounds=10000} goes on longer, {@code -Dlinkwright.seed=N} otherwise; a
 * file that fails is left in {@code target/mutations}, and {@code -Dlinkwright.replay} reads it
 * again.
 */
class MutationsTest {
  private static final long SEED = Long.getLong("linkwright.seed", 20261126L);
  private static final int ROUNDS = Integer.getInteger("linkwright.rounds", 2000);
  private static final long SECOND = 1_000_000_000L;
  private static final Path RESOURCES = Path.of("src/test/resources");
  private static final Path SAMPLES = RESOURCES.resolve("samples");
  private static final Library LIBRARY = Library.load(new Home(Path.of("no such folder")));

  @TempDir static Path folder;

  /** The sorts of file, each with where samples of it are. */
  enum Sort {
    BOOK("books/format-2"),
    OLD_BOOK("books/format-1"),
    PLAN("plan"),
    TRIED("tried"),
    DRAFT("draft"),
    LAST("last"),
    DEVICES("devices"),
    SETTINGS("settings"),
    KEYS("keys"),
    BENCH("bench"),
    BENCH_CHANGED("bench"),
    HANDS("hands"),
    DRAWER("drawer"),
    ROUTINE("routine"),
    CAUTION("caution"),
    PATTERN("pattern"),
    METALS("metals"),
    SOLDERS("solders"),
    FINENESS("fineness"),
    CLASPS("clasps"),
    GLOSSARY("glossary"),
    TOOLS("tools"),
    DRAWING("drawing"),
    STUDENTS("students");

    private final String place;

    Sort(String place) {
      this.place = place;
    }

    static Sort of(String name) {
      return valueOf(name.toUpperCase(Locale.ROOT));
    }

    List<Path> samples() throws IOException {
      Path books = RESOURCES.resolve(place);
      try (Stream<Path> files =
          Files.isDirectory(books) ? Files.list(books) : Files.walk(SAMPLES)) {
        return files
            .filter(file -> file.toString().endsWith(".yaml"))
            .filter(file -> Files.isDirectory(books) || file.endsWith(place + ".yaml"))
            .sorted()
            .toList();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void anySortOfFileMayBeDamagedInAnyWay(Sort sort) throws IOException {
    List<byte[]> samples = new java.util.ArrayList<>();
    for (Path sample : sort.samples()) {
      samples.add(Files.readAllBytes(sample));
      // A routine alone names cautions that nobody knows, an old book steps that have gone.
      if (sort != Sort.ROUTINE && sort != Sort.OLD_BOOK) {
        assertThat(told(sort, samples.get(samples.size() - 1))).as("%s, whole", sample).isEmpty();
      }
    }
    Random chance = new Random(SEED);
    int noticed = 0;
    long slowest = 0;
    for (int round = 0; round < ROUNDS; round++) {
      byte[] bad = Damage.of(samples.get(chance.nextInt(samples.size())), chance);
      try {
        long began = cpu();
        List<Problem> told = told(sort, bad);
        long took = cpu() - began;
        slowest = Math.max(slowest, took);
        noticed += told.isEmpty() ? 0 : 1;
        assertThat(took).as("processor time").isLessThan(SECOND);
        assertLocated(told, bad);
      } catch (RuntimeException | AssertionError fault) {
        throw new AssertionError(
            "seed " + SEED + ", round " + round + kept(sort, round, bad), fault);
      }
    }
    System.out.printf(
        "%s: %d mutations, seed %d, %d noticed, the slowest %.0f ms of processor time%n",
        sort, ROUNDS, SEED, noticed, slowest / 1e6);
    if (sort != Sort.DRAFT && sort != Sort.LAST && sort != Sort.DEVICES) {
      assertThat(noticed).as("damaged so that it is noticed").isGreaterThan(ROUNDS / 5);
    }
  }

  private static String kept(Sort sort, int round, byte[] bad) throws IOException {
    Path file =
        Files.createDirectories(Path.of("target", "mutations"))
            .resolve(sort + "." + SEED + "." + round + ".yaml");
    Files.write(file, bad);
    return ", shown again by: mvn -q -Dfast test -Dtest=MutationsTest#shownAgain"
        + " -Dlinkwright.replay="
        + file;
  }

  /** A file that was kept, read once more; without one there is nothing to show. */
  @Test
  void shownAgain() throws IOException {
    String replay = System.getProperty("linkwright.replay", "");
    if (!replay.isEmpty()) {
      Path file = Path.of(replay);
      Sort sort = Sort.valueOf(file.getFileName().toString().replaceAll("\\..*", ""));
      byte[] bad = Files.readAllBytes(file);
      assertLocated(told(sort, bad), bad);
    }
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  static List<Problem> told(Sort sort, byte[] bytes) throws IOException {
    DataFile file = new DataFile("it.yaml", bytes);
    return switch (sort) {
      case BOOK, OLD_BOOK, DRAWER ->
          CheckedLate.BOOKS.problems(written("it.yaml", bytes), () -> LIBRARY);
      case PLAN -> PlanFile.of(file, LIBRARY).problems();
      case TRIED -> TriedFile.of(file).problems();
      case SETTINGS -> UserSettings.of(file).problems();
      case KEYS ->
          KeysFile.of(
                  file,
                  Arrays.stream(Act.values()).map(Act::id).toList(),
                  name -> KeyNames.read(name).isPresent())
              .problems();
      case BENCH -> BenchFile.of(file).problems();
      case HANDS -> HandsFile.of(file).problems();
      case STUDENTS -> StudentsFile.of(file).problems();
      case BENCH_CHANGED -> changed(bytes);
      case DRAFT -> {
        Path drafts = written("drafts/it.yaml", bytes).getParent();
        assertThat(new DraftStore(drafts).of("it")).isNotNull();
        yield List.of();
      }
      case LAST -> {
        Path book = written("book/it.yaml", Files.readAllBytes(Sort.BOOK.samples().get(0)));
        written("book/it.last", bytes);
        yield BookFile.look(book).orThrow().problems().stream()
            .filter(told -> !told.wrong().contains("was shown as done and is not in the book"))
            .toList();
      }
      case DEVICES -> {
        Path state = written("state/devices.yaml", bytes).getParent();
        DeviceId device = new DeviceId(state, "m1");
        assertThat(device.of(new Home(folder), "bench")).isNotBlank();
        yield List.of();
      }
      default -> library(sort, file);
    };
  }

  /** A change is in the file and all else is as it was, or nothing is changed. */
  private static List<Problem> changed(byte[] bytes) throws IOException {
    Path file = written("changed/bench.yaml", bytes);
    Home home = new Home(file.getParent());
    List<Problem> before =
        BenchFile.load(home).known(LIBRARY.reference(), LIBRARY.routines().values()).problems();
    Read<BenchFile> changed =
        BenchFile.change(
            home, Map.of("kerf", "0.7 mm"), LIBRARY.reference(), LIBRARY.routines().values());
    if (changed.isGood()) {
      assertThat(BenchFile.load(home).known(LIBRARY.reference(), LIBRARY.routines().values()))
          .isEqualTo(changed.orThrow());
      assertThat(changed.orThrow().problems().size()).isLessThanOrEqualTo(before.size() + 1);
      if (before.isEmpty()) {
        assertThat(changed.orThrow().bench().kerfMm()).hasValue(0.7);
      }
    } else {
      assertThat(file).hasBinaryContent(bytes);
    }
    return before;
  }

  private static List<Problem> library(Sort sort, DataFile file) {
    DataKind kind =
        switch (sort) {
          case ROUTINE -> DataKind.ROUTINES;
          case CAUTION -> DataKind.SAFETY;
          default -> DataKind.SHARED;
        };
    LibraryReading reading = new LibraryReading();
    reading.read(List.of(file), kind);
    return reading.library().problems().stream()
        .filter(told -> told.file().equals(file.name()))
        .toList();
  }

  private static Path written(String name, byte[] bytes) throws IOException {
    if (folder == null) {
      // A fuzzer, or whoever reads its corpus, comes without one.
      folder = Files.createTempDirectory("mutations");
    }
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.write(file, bytes);
  }

  static void assertLocated(List<Problem> problems, byte[] bytes) {
    long lines = 2 + new String(bytes, StandardCharsets.UTF_8).lines().count();
    for (Problem problem : problems) {
      assertThat(problem.line()).as(problem.sentence()).isBetween(0, (int) lines);
      assertThat(problem.wrong()).isNotBlank().doesNotContain("Exception", "NaN");
      assertThat(problem.sentence()).hasSizeLessThan(2000);
    }
  }
}
