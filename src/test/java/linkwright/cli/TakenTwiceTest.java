package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobCard;
import linkwright.job.JobState;
import linkwright.job.Piles;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.shell.NewBook;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows that stand in a book or a drawer already are left out or asked about, never doubled. */
class TakenTwiceTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  @TempDir private Path folder;
  private Commandline line;
  private Home home;

  @BeforeEach
  void twoCustomersJobs() {
    line = new Commandline(folder);
    home = new Home(line.home());
    begin("Ida chain", "Ida of the mill, “quick”", "");
    begin("Berta chain", "Berta at the lock", "ida-chain");
  }

  private void begin(String name, String customer, String again) {
    NewBook.begin(
            home,
            "bench",
            line,
            name,
            List.of(
                new Fact.JobOpened(name, "scroll-and-ring", again),
                new Fact.PlanSet(Wishes.common().texts()),
                new BenchFact.CardSet(Map.of(JobCard.CUSTOMER, customer)),
                new Fact.TestPieceTried(
                    0.9,
                    38,
                    Map.of("tip", 1.1),
                    OptionalDouble.of(14.3),
                    NONE,
                    NONE,
                    List.of("longer"),
                    "said \"almost\", then\nlaughed",
                    "",
                    false,
                    ""),
                new Fact.PiecesThrough(
                    Map.of(PieceKind.LINK, 12), Stage.CUT, false, new StepId("cut-blanks"))),
            Start.handbook(Library.load(home)))
        .orThrow();
  }

  private String export(String... arguments) {
    List<String> all = new ArrayList<>(List.of("export"));
    all.addAll(List.of(arguments));
    assertThat(line.run(all.toArray(String[]::new))).as(line.err()).isZero();
    return line.out();
  }

  private static List<CSVRecord> csv(String text) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      return parser.getRecords();
    }
  }

  private List<Fact> facts(String job) {
    return EntryLines.entries(BookFile.look(home.jobs().resolve(job + ".yaml")).orThrow().lines())
        .stream()
        .map(Entry::fact)
        .toList();
  }

  @Test
  void rows_that_were_given_out_of_a_book_are_known_there_and_left_out() throws IOException {
    for (String table : List.of("test-pieces", "tallies")) {
      Path file = folder.resolve(table + ".csv");
      Files.writeString(file, export("ida-chain", "--table", table, "--as", "csv"));
      List<Fact> before = facts("ida-chain");
      assertThat(line.run("take-in", "ida-chain", file.toString())).as(line.err()).isZero();
      assertThat(line.out()).contains("1 row was given out of this book", "Nothing was entered");
      assertThat(facts("ida-chain")).isEqualTo(before);
    }
  }

  @Test
  void rows_that_were_added_to_those_given_out_are_entered_alone() throws IOException {
    String given = export("ida-chain", "--table", "tallies", "--as", "csv");
    String added =
        given.lines().skip(1).findFirst().orElseThrow().replaceFirst("^[^,]*,[^,]*", ",");
    Path file = folder.resolve("tallies.csv");
    Files.writeString(file, given + added.replace(",12,", ",5,") + "\r\n");
    int before = facts("ida-chain").size();
    assertThat(line.run("take-in", "ida-chain", file.toString())).as(line.err()).isZero();
    assertThat(line.out()).contains("left out", "1 row entered");
    assertThat(facts("ida-chain")).hasSize(before + 1);
    assertThat(piles("ida-chain", Start.handbook(Library.load(home))).of(PieceKind.LINK).alive())
        .isEqualTo(17);
  }

  @Test
  void rows_without_a_number_that_say_what_stands_there_are_asked_about() {
    Path file = line.file("tallies.csv", "piece,stage,count\nlink,cut,12\nlink,cut,3\n");
    int before = facts("ida-chain").size();
    assertThat(line.run("take-in", "ida-chain", file.toString())).isEqualTo(1);
    assertThat(line.err()).contains("Line 2 says what stands in the book already.", "--even-so");
    assertThat(facts("ida-chain")).hasSize(before);
    assertThat(line.run("take-in", "ida-chain", file.toString(), "--even-so")).isZero();
    assertThat(facts("ida-chain")).hasSize(before + 2);
  }

  @Test
  void test_pieces_taken_in_twice_are_asked_about_whatever_their_units() {
    Path file = line.file("pieces.csv", "blank (cm),length (mm),note\n3.7,14.3,first\n3.9,14.9,\n");
    Path again = line.file("again.csv", "blank (mm),length (mm),note\n37,14.3,first\n39,14.9,\n");
    assertThat(line.run("take-in", "ida-chain", file.toString())).as(line.err()).isZero();
    int before = facts("ida-chain").size();
    assertThat(line.run("take-in", "ida-chain", again.toString())).isEqualTo(1);
    assertThat(line.err()).contains("Lines 2, 3 say what stands in the book already.");
    assertThat(facts("ida-chain")).hasSize(before);
  }

  @Test
  void lots_that_lie_in_the_drawer_already_are_asked_about_and_never_doubled() throws IOException {
    Path file = line.file("stock.csv", "lot,metal,wire,length\nMarch,sterling,0.9 mm,3 m\n");
    assertThat(line.run("take-in", "drawer", file.toString())).as(line.err()).isZero();
    Path given = folder.resolve("lots.csv");
    Files.writeString(given, export("drawer", "--table", "lots", "--as", "csv"));
    assertThat(line.run("take-in", "drawer", given.toString())).isEqualTo(1);
    assertThat(line.err()).contains("“March” lies in the drawer already, 3 m of it");
    assertThat(csv(export("drawer", "--table", "lots", "--as", "csv")).get(0).get("length_mm"))
        .isIn("3000", "3000.0");
    assertThat(line.run("take-in", "drawer", given.toString(), "--even-so")).isZero();
    assertThat(csv(export("drawer", "--table", "lots", "--as", "csv")).get(0).get("length_mm"))
        .isIn("6000", "6000.0");
  }

  private Piles piles(String job, Handbook handbook) {
    List<Entry> entries =
        EntryLines.entries(BookFile.look(home.jobs().resolve(job + ".yaml")).orThrow().lines());
    return JobState.replay(entries, handbook.stages()).piles();
  }
}
