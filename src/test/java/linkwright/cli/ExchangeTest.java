package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.exchange.CsvTable;
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
import org.yaml.snakeyaml.Yaml;

/**
 * Exports are read by readers that are not ours (Apache Commons CSV, Jackson, SnakeYAML), and what
 * those write is taken in.
 */
class ExchangeTest {
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
  void another_reader_finds_in_the_csv_what_stands_in_the_book() throws IOException {
    CSVRecord piece = csv(export("ida-chain", "--table", "test-pieces", "--as", "csv")).get(0);
    assertThat(piece.get("blank_mm")).isIn("38", "38.0");
    assertThat(piece.get("length_mm")).isEqualTo("14.3");
    assertThat(piece.get("width_mm")).isEmpty();
    assertThat(piece.get("note")).isEqualTo("said \"almost\", then\nlaughed");
    CSVRecord tally = csv(export("ida-chain", "--table", "tallies", "--as", "csv")).get(0);
    assertThat(tally.get("stage")).isEqualTo("cut");
    assertThat(tally.get("count")).isEqualTo("12");
  }

  @Test
  void other_readers_find_the_same_in_json_and_yaml() throws IOException {
    JsonNode json = new ObjectMapper().readTree(export("ida-chain", "--as", "json"));
    assertThat(json.at("/card/0/customer").asText()).isEqualTo("Ida of the mill, “quick”");
    assertThat(json.at("/test-pieces/0/length_mm").asDouble()).isEqualTo(14.3);
    Map<String, List<Map<String, Object>>> yaml =
        new Yaml().load(export("ida-chain", "--as", "yaml"));
    assertThat(yaml.get("card").get(0)).containsEntry("customer", "Ida of the mill, “quick”");
    assertThat(yaml.get("plan").get(0)).containsEntry("links", json.at("/plan/0/links").asInt());
  }

  @Test
  void the_nearest_chains_of_an_export_are_those_of_the_plan() {
    Map<String, List<Map<String, Object>>> exported =
        new Yaml().load(export("ida-chain", "--as", "yaml"));
    assertThat(line.run("plan", "ida-chain", "--as", "yaml")).as(line.err()).isZero();
    Map<String, Object> planned = new Yaml().load(line.out());
    assertThat((List<?>) planned.get("nearest")).hasSizeGreaterThan(2);
    assertThat(exported.get("plan").get(0)).isEqualTo(planned);
  }

  @Test
  void nothing_of_one_customer_is_in_the_export_of_another_nor_of_the_shelves() {
    for (String form : List.of("json", "yaml")) {
      assertThat(export("berta-chain", "--as", form))
          .contains("Berta at the lock")
          .doesNotContain("Ida", "ida", "mill");
      assertThat(export("ida-chain", "--as", form)).doesNotContain("Berta", "berta", "lock");
      assertThat(export("hands", "--as", form)).doesNotContain("Ida", "Berta", "chain");
      assertThat(export("drawer", "--as", form)).doesNotContain("Ida", "Berta", "chain");
    }
  }

  @Test
  void an_export_is_taken_in_again_by_another_job_as_it_was() throws IOException {
    Path file = folder.resolve("pieces.csv");
    Files.writeString(file, export("ida-chain", "--table", "test-pieces", "--as", "csv"));
    assertThat(line.run("take-in", "berta-chain", file.toString(), "--even-so"))
        .as(line.err())
        .isZero();
    List<Fact> facts = facts("berta-chain");
    Fact.TestPieceTried before = (Fact.TestPieceTried) facts("ida-chain").get(3);
    assertThat(facts.get(facts.size() - 1))
        .isInstanceOfSatisfying(
            Fact.TestPieceTried.class,
            after -> {
              assertThat(after.blankMm()).isEqualTo(before.blankMm());
              assertThat(after.lengthMm()).isEqualTo(before.lengthMm());
              assertThat(after.formersMm()).containsEntry("tip", 1.1);
              assertThat(after.verdicts()).isEqualTo(before.verdicts());
              assertThat(after.note()).isEqualTo(before.note());
            });
  }

  @Test
  void rows_out_of_reason_are_asked_about_before_any_is_entered() throws IOException {
    Path file = folder.resolve("rows.csv");
    int before = facts("ida-chain").size();
    Map<String, String> asked =
        Map.of(
            "blank (mm),length (mm)\n38,13.9\n38,140\n",
            "Line 3: 140 mm from a blank of 38 mm? Did you mean 14 mm?",
            "piece,stage,count\nlink,cut,9999\n",
            "Line 2: 9999 links cut, where the chain takes");
    for (Map.Entry<String, String> rows : asked.entrySet()) {
      Files.writeString(file, rows.getKey());
      assertThat(line.run("take-in", "ida-chain", file.toString())).isOne();
      assertThat(line.err()).contains(rows.getValue(), "--even-so").doesNotContain("Line 2: 13.9");
      assertThat(facts("ida-chain")).hasSize(before);
    }
    assertThat(line.run("take-in", "ida-chain", file.toString(), "--even-so")).isZero();
  }

  @Test
  void decimal_commas_units_in_headings_and_semicolons_are_heeded() throws IOException {
    Path file = folder.resolve("stock.csv");
    Files.writeString(
        file,
        String.join(
            "\r\n",
            "\uFEFFlot;metal;wire (mm);length (m);mass (g)",
            "silver March;sterling;0,9;2,5;",
            "\"strip; hard\";hard-silver;;;\"12,4\"",
            ""));
    int ended = line.run("take-in", "drawer", file.toString());
    assertThat(ended).as(line.err()).isZero();
    List<CSVRecord> lots = csv(export("drawer", "--table", "lots", "--as", "csv"));
    assertThat(lots.get(0).get("length_mm")).isIn("2500", "2500.0");
    assertThat(lots.get(1).get("lot")).isEqualTo("strip; hard");
    assertThat(lots.get(1).get("mass_g")).isEqualTo("12.4");
  }

  @Test
  void what_is_wrong_is_told_with_its_line_and_nothing_is_entered() throws IOException {
    Path file = folder.resolve("tallies.csv");
    Files.writeString(
        file, "piece,stage,what,count\nlink,solderd,through,4\nlink,cut,through,none\n");
    int before = facts("ida-chain").size();
    assertThat(line.run("take-in", "ida-chain", file.toString())).isEqualTo(1);
    assertThat(line.err())
        .contains("csv:2", "Did you mean soldered", "csv:3", "count", "Nothing was entered");
    assertThat(facts("ida-chain")).hasSize(before);
  }

  /** Seeded: what the other library writes, ours reads cell by cell. */
  @Test
  void any_table_that_another_library_writes_is_read_as_it_was() throws IOException {
    long seed = Long.getLong("linkwright.seed", 20261126L);
    Random chance = new Random(seed);
    String signs = "ab ,;\"\n\r\tä鎖0.";
    for (int round = 0; round < 500; round++) {
      int columns = 1 + chance.nextInt(5);
      List<List<String>> rows = new ArrayList<>();
      for (int row = 0; row < 1 + chance.nextInt(6); row++) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < columns; column++) {
          StringBuilder cell = new StringBuilder("x");
          for (int i = 0; i < chance.nextInt(8); i++) {
            cell.append(signs.charAt(chance.nextInt(signs.length())));
          }
          cells.add(cell + "x");
        }
        rows.add(cells);
      }
      StringBuilder text = new StringBuilder();
      CSVFormat format = CSVFormat.RFC4180;
      List<String> headings = new ArrayList<>();
      for (int column = 0; column < columns; column++) {
        headings.add("c" + column);
      }
      text.append(format.format(headings.toArray())).append("\r\n");
      rows.forEach(cells -> text.append(format.format(cells.toArray())).append("\r\n"));
      CsvTable table = CsvTable.read("any.csv", text.toString());
      List<Map<String, String>> expected = new ArrayList<>();
      for (List<String> cells : rows) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int column = 0; column < columns; column++) {
          row.put("c" + column, cells.get(column).strip());
        }
        expected.add(row);
      }
      assertThat(table.problems()).as("seed " + seed + ", round " + round).isEmpty();
      assertThat(table.rows().stream().map(CsvTable.CsvRow::cells).toList())
          .as("seed " + seed + ", round " + round + ": " + text)
          .isEqualTo(expected);
    }
  }

  @Test
  void ofManyWrongRowsTheFirstAreToldAndTheRestCounted() {
    String rows = "38 mm,0.9 mm,looks god\n".repeat(30);
    Path file = line.file("pieces.csv", "blank,wire,verdict\n" + rows);

    assertThat(line.run("take-in", "ida-chain", file.toString())).isEqualTo(1);

    assertThat(line.err().lines())
        .hasSize(22)
        .anyMatch(told -> told.contains(":21:1: verdict: “looks god” is none of these"))
        .noneMatch(told -> told.contains(":22:1"))
        .anyMatch(told -> told.contains("10 problems more."));
  }

  @Test
  void manyWrongRowsAreReadInAMoment() {
    String rows =
        IntStream.range(0, 80_000)
            .mapToObj(i -> "A lot,nickelish silvre " + i + ",1 mm,2 m\n")
            .collect(Collectors.joining());
    Path file = line.file("stock.csv", "lot,metal,wire,length\n" + rows);

    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadCpuTime();
    assertThat(line.run("take-in", "drawer", file.toString())).isEqualTo(1);
    long nanos = threads.getCurrentThreadCpuTime() - before;

    assertThat(line.err()).contains("79980 problems more.");
    assertThat(nanos).isLessThan(4_000_000_000L);
  }

  @Test
  void a_tally_of_more_pieces_than_there_are_is_refused_with_its_row() {
    Path file =
        line.file(
            "tallies.csv",
            """
            piece,stage,what,count,reason
            link,formed,through,12,
            link,formed,redo,2,twisted
            link,soldered,through,50,
            """);
    int before = facts("ida-chain").size();

    assertThat(line.run("take-in", "ida-chain", file.toString())).isEqualTo(1);

    assertThat(line.err()).contains("csv:3", "csv:4", "soldered", "Nothing was entered");
    assertThat(facts("ida-chain")).hasSize(before);
  }

  @Test
  void tallies_that_were_exported_give_another_job_the_same_piles() throws IOException {
    Handbook handbook = Start.handbook(Library.load(home));
    List<Fact> begun =
        List.of(
            new Fact.JobOpened("made", "scroll-and-ring"),
            new Fact.PlanSet(Wishes.common().texts()));
    PieceKind link = PieceKind.LINK;
    List<Fact> made = new ArrayList<>(begun);
    Stage formed = new Stage("formed");
    Stage soldered = new Stage("soldered");
    made.add(new Fact.WireCut(link, 12, 38));
    made.add(new Fact.PiecesThrough(Map.of(link, 12), new Stage("annealed"), false, StepId.NONE));
    made.add(new Fact.PiecesThrough(Map.of(link, 10), formed, false, StepId.NONE));
    made.add(new Fact.PiecesSentBack(link, 3, soldered, formed, false, "twisted"));
    made.add(new Fact.PiecesThrough(Map.of(link, 2), formed, true, StepId.NONE));
    made.add(new Fact.PiecesThrough(Map.of(link, 4), soldered, false, StepId.NONE));
    made.add(new Fact.PiecesScrapped(link, 1, formed, true, "melted"));
    NewBook.begin(home, "bench", line, "made", made, handbook).orThrow();
    NewBook.begin(home, "bench", line, "other", begun, handbook).orThrow();
    Path file = folder.resolve("tallies.csv");
    Files.writeString(file, export("made", "--table", "tallies", "--as", "csv"));

    assertThat(line.run("take-in", "other", file.toString())).as(line.err()).isZero();

    assertThat(piles("other", handbook)).isEqualTo(piles("made", handbook));
    assertThat(piles("made", handbook).of(link).alive()).isEqualTo(11);
  }

  private Piles piles(String job, Handbook handbook) {
    List<Entry> entries =
        EntryLines.entries(BookFile.look(home.jobs().resolve(job + ".yaml")).orThrow().lines());
    return JobState.replay(entries, handbook.stages()).piles();
  }
}
