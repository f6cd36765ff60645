package linkwright.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;
import linkwright.files.BenchFile;
import linkwright.files.DraftStore;
import linkwright.files.HandsFile;
import linkwright.files.Home;
import linkwright.files.KeysFile;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.files.TriedFile;
import linkwright.files.UserSettings;
import linkwright.lesson.Roster;
import linkwright.quantity.Problem;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.routine.TradeWords;
import linkwright.shell.StudentsFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A file of every sort as each release wrote or read it; those of books stand beside, in {@code
 * books}. They are never changed: what a user has on her disk does not change either.
 */
class SamplesTest {
  private static final Path SAMPLES = Path.of("src/test/resources/samples");
  private static final Map<String, String> PLACES =
      Map.of(
          "routine", "routines",
          "caution", "safety",
          "pattern", "shared/patterns",
          "drawing", "shared/drawings",
          "draft", "drafts",
          "last", "jobs");

  /** What a home holds beside its folders. */
  private static final Set<String> OWN =
      Set.of(
          "bench", "devices", "drawer", "hands", "keys", "plan", "settings", "students", "tried");

  @TempDir Path folder;

  /** Lays the samples of a release in a home, each where such a file belongs. */
  private Home home(String release, boolean newer) throws IOException {
    try (Stream<Path> files = Files.list(SAMPLES.resolve(release))) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        String sort = name.replace(".yaml", "");
        String place = OWN.contains(sort) ? "" : PLACES.getOrDefault(sort, "shared");
        Path there = Files.createDirectories(folder.resolve(place));
        String text = Files.readString(file);
        Files.writeString(
            there.resolve(name), newer ? text.replace("format: 1\n", "format: 2\n") : text);
      }
    }
    return new Home(folder);
  }

  private static KeysFile keys(Home home) {
    List<String> acts = Arrays.stream(Act.values()).map(Act::id).toList();
    return KeysFile.load(home, acts, name -> KeyNames.read(name).isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-release", "second-release"})
  void isReadAsItWas(String release) throws IOException {
    Home home = home(release, false);
    Library library = Library.load(home);
    // What a routine must say for safety's sake may grow: it is told then, and read all the same.
    assertThat(library.problems())
        .filteredOn(problem -> !problem.file().endsWith("routine.yaml"))
        .extracting(Problem::sentence)
        .isEmpty();
    boolean first = release.equals("first-release");
    Routine routine = library.routines().get(first ? "round-cable" : "byzantine");
    assertThat(routine.steps()).hasSize(first ? 14 : 8);
    assertThat(library.cautions()).containsKey("pickle");
    assertThat(library.patterns().get("scroll").formersMm()).containsKeys("tip", "bow");

    UserSettings.Loaded settings = UserSettings.load(home);
    assertThat(settings.problems()).isEmpty();
    assertThat(settings.settings())
        .isEqualTo(
            new UserSettings(
                UnitStyle.INCH,
                TradeWords.AMERICAN,
                Optional.of("light"),
                Optional.of("north window"),
                20,
                false,
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    assertThat(keys(home).problems()).isEmpty();
    assertThat(keys(home).keys())
        .containsEntry("through", List.of("space", "page-down"))
        .containsEntry("undo", List.of("ctrl-z"));

    PlanFile plan = PlanFile.read(folder.resolve("plan.yaml"), library);
    assertThat(plan.problems()).extracting(Problem::sentence).isEmpty();
    assertThat(plan.wish()).isPresent();
    TriedFile tried = TriedFile.read(folder.resolve("tried.yaml"));
    assertThat(tried.problems()).isEmpty();
    assertThat(tried.pieces()).hasSize(2);
    assertThat(new DraftStore(home.drafts()).of("draft"))
        .containsEntry("test-piece", Map.of("blank", "42.5 mm", "note", "first \"try\""))
        .containsEntry("plan", Map.of("wire", "0.9 mm", "link.length", "16"));
  }

  @Test
  void ofTheBenchTheDevicesAndTheLastEntryIsReadAsItWas() throws IOException {
    Home home = home("second-release", false);
    assertThat(BenchFile.load(home).problems()).isEmpty();
    assertThat(BenchFile.load(home).bench().persons()).containsExactly("Anna", "Ben");
    assertThat(HandsFile.load(home))
        .isEqualTo(new HandsFile(Set.of("gate-chain", "first try"), List.of()));
    BookFile drawer = BookFile.look(home.drawer()).orThrow();
    assertThat(drawer.problems()).isEmpty();
    assertThat(EntryLines.entries(drawer.lines()))
        .extracting(entry -> entry.fact().getClass().getSimpleName())
        .containsExactly("LotArrived", "LotArrived", "LotCounted");
    assertThat(LastShown.of(folder.resolve("jobs/last.yaml")).of("bench-k7f3m2q9"))
        .as("it stands beside a book, by another ending")
        .isEmpty();
    Files.move(folder.resolve("jobs/last.yaml"), folder.resolve("jobs/trace.last"));
    assertThat(LastShown.of(folder.resolve("jobs/trace.yaml")).of("bench-k7f3m2q9"))
        .contains(new LastShown.Shown(7, "920f95db"));
    Library library = Library.load(home);
    assertThat(library.reference().tools())
        .anySatisfy(
            tool -> assertThat(tool.alsoCalled()).containsExactly("extinguisher by the door"));
    assertThat(library.reference().limits()).hasSize(3);
    assertThat(library.reference().pictures())
        .anySatisfy(picture -> assertThat(picture.id()).isEqualTo("butt-fit"));
    StudentsFile students = StudentsFile.load(home);
    assertThat(students.problems()).isEmpty();
    assertThat(students.roster())
        .isEqualTo(new Roster(Map.of("ada-q", "Ada Quist", "b2", "Ben \"Two\" Ütz"), 5));
    Path devices = folder.resolve("devices.yaml");
    String here = folder.toRealPath().toString();
    Files.writeString(devices, Files.readString(devices).replace("HOME", here));
    assertThat(new DeviceId(folder, "m1").of(home, "bench")).isEqualTo("bench-k7f3m2q9");
  }

  /** Of a newer format what is known is read, and every file of it is told. */
  @Test
  void ofANewerFormatIsReadAsFarAsItIsKnownAndTold() throws IOException {
    Home home = home("second-release", true);
    List<Problem> told = new ArrayList<>(Library.load(home).problems());
    told.addAll(UserSettings.load(home).problems());
    told.addAll(keys(home).problems());
    told.addAll(BenchFile.load(home).problems());
    told.addAll(StudentsFile.load(home).problems());
    told.addAll(PlanFile.read(folder.resolve("plan.yaml"), Library.load(home)).problems());
    assertThat(told)
        .extracting(Problem::sentence)
        .allMatch(each -> each.contains("newer Linkwright"));
    assertThat(told).hasSize(15);
    assertThat(UserSettings.load(home).settings().units()).isEqualTo(UnitStyle.INCH);
    assertThat(Library.load(home).routines()).containsKey("byzantine");
    assertThat(BenchFile.load(home).bench().persons()).containsExactly("Anna", "Ben");
    assertThat(new DraftStore(home.drafts()).of("draft")).containsKey("plan");
  }
}
