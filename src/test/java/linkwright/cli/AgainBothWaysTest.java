package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Coach;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.shell.NewBook;
import linkwright.shell.Performer;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import linkwright.view.Screens;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job made again in the program and by the command: the same new job in every field. */
class AgainBothWaysTest {
  private static final String NAME = "Second";

  @TempDir Path folder;
  private Commandline line;
  private Home home;

  @BeforeEach
  void aClosedJob() {
    line = new Commandline(folder);
    home = new Home(folder.resolve("home"));
    List<Fact> facts =
        List.of(
            new Fact.JobOpened("First", "scroll-and-ring"),
            new Fact.PlanSet(
                Wishes.common()
                    .with(WishKeys.LINK_LENGTH, "14 mm")
                    .with(WishKeys.LINK_WIDTH, "5.4 mm")
                    .texts()),
            new Fact.SittingStarted("Mira"),
            piece(38, 13.6),
            piece(39.4, 14.1),
            new Fact.SampleChosen(new EntryId("bench", 5), false),
            new Fact.PricesSet(Map.of("metal", 1.1, "hour", 30.0), "EUR"),
            through(30, Stage.FORMED),
            new Fact.PiecesScrapped(PieceKind.LINK, 2, Stage.FORMED, false, "bent"),
            through(28, Stage.SOLDERED),
            new Fact.WeighedIn(
                OptionalDouble.of(11.9),
                OptionalDouble.of(409),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty()),
            new Fact.JobClosed("Longer tails."));
    assertThat(NewBook.begin(home, "bench", line, "First", facts, handbook()).orThrow())
        .isEqualTo("first");
  }

  private static Fact piece(double blankMm, double lengthMm) {
    return new Fact.TestPieceTried(
        0.9,
        blankMm,
        Map.of(),
        OptionalDouble.of(lengthMm),
        OptionalDouble.of(5.4),
        OptionalDouble.empty(),
        List.of("right"),
        "");
  }

  private static Fact through(int count, Stage stage) {
    return new Fact.PiecesThrough(Map.of(PieceKind.LINK, count), stage, false, new StepId("any"));
  }

  private Handbook handbook() {
    return Start.handbook(Library.load(home), home);
  }

  @Test
  void asItWas() {
    assertThat(byTheKey(Map.of())).isEqualTo(byTheCommand());
  }

  @Test
  void theNewBookNamesNobodyOfTheEarlierJob() {
    Fact.JobOpened opened = (Fact.JobOpened) byTheCommand().get(0);
    assertThat(java.time.Instant.parse(opened.again())).isEqualTo(begun("first"));
    assertThat(((Fact.JobOpened) byTheKey(Map.of()).get(0)).again()).isEqualTo(opened.again());
  }

  private java.time.Instant begun(String slug) {
    Path book = home.jobs().resolve(slug + ".yaml");
    return EntryLines.entries(BookFile.look(book).orThrow().lines()).get(0).at();
  }

  @Test
  void aJobThatIsOpenIsMadeAgainByNoneOfBoth() {
    List<Fact> open = List.of(new Fact.JobOpened("Open one", "scroll-and-ring"));
    assertThat(NewBook.begin(home, "bench", line, "Open one", open, handbook()).orThrow())
        .isEqualTo("open-one");
    String[] command = {"--home", home.folder().toString(), "again", "open-one", "--new", NAME};
    assertThat(line.run(command)).isEqualTo(2);
    assertThat(line.err()).contains("Only a job that is closed is made again");
    assertThat(home.jobs().resolve("second.yaml")).doesNotExist();
  }

  @Test
  void longerAndInAnotherMetalAndWire() {
    Map<String, String> other =
        Map.of(WishKeys.FINISHED, "450 mm", WishKeys.METAL, "bronze", WishKeys.WIRE, "1 mm");
    assertThat(byTheKey(other))
        .isEqualTo(byTheCommand("--length", "450 mm", "--metal", "bronze", "--wire", "1 mm"))
        .isNotEqualTo(byTheCommand());
  }

  /** What the book of the new job says, but for when it was entered. */
  private List<Fact> byTheCommand(String... changes) {
    String[] all = new String[changes.length + 6];
    System.arraycopy(
        new String[] {"--home", home.folder().toString(), "again", "first", "--new", NAME},
        0,
        all,
        0,
        6);
    System.arraycopy(changes, 0, all, 6, changes.length);
    assertThat(line.run(all)).as(line.err()).isZero();
    return newest();
  }

  private List<Fact> byTheKey(Map<String, String> changes) {
    Handbook shipped = Start.handbook(Library.load(home));
    Performer performer = new Performer(home, "bench", line, () -> {});
    Model model =
        performer.begin(
            Coach.begin(shipped, Settings.USUAL, Screens::parts, line.instant(), 80, 24),
            List.of(new Fact.JobOpened("unused", "scroll-and-ring")),
            Optional.of("first"));
    model = performer.take(model, new Message.KeyPressed(KeyNames.read("j").orElseThrow()));
    assertThat(model.held().place()).isEqualTo(PlaceId.MADE_AGAIN);
    for (String field : List.of(WishKeys.JOB, WishKeys.FINISHED, WishKeys.METAL, WishKeys.WIRE)) {
      String text = field.equals(WishKeys.JOB) ? NAME : changes.getOrDefault(field, "");
      if (!text.isEmpty()) {
        model =
            performer.take(model, new Message.KeyPressed(KeyNames.read("ctrl-u").orElseThrow()));
        for (int c : text.codePoints().toArray()) {
          Key key = Key.of(Character.toString(c));
          model = performer.take(model, new Message.KeyPressed(key));
        }
      }
      model = performer.take(model, new Message.KeyPressed(KeyNames.read("down").orElseThrow()));
    }
    model = performer.take(model, new Message.KeyPressed(KeyNames.read("ctrl-k").orElseThrow()));
    performer.shut();
    assertThat(model.job().orElseThrow().slug()).startsWith("second");
    return newest();
  }

  private List<Fact> newest() {
    List<Path> books =
        home.books().stream()
            .filter(path -> path.getFileName().toString().startsWith("second"))
            .sorted(java.util.Comparator.comparing((Path path) -> path.toFile().lastModified()))
            .toList();
    List<Fact> facts =
        EntryLines.entries(BookFile.look(books.get(books.size() - 1)).orThrow().lines()).stream()
            .map(Entry::fact)
            .toList();
    books.forEach(path -> assertThat(path.toFile().delete()).isTrue());
    home.books();
    return facts;
  }
}
