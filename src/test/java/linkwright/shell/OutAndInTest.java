package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.files.PlanFile;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plain.PlainLines;
import linkwright.plan.Wishes;
import linkwright.view.Screens;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files out and rows in by the keys of their place, really written and read. */
class OutAndInTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");

  @TempDir Path folder;
  private Home home;
  private Performer performer;
  private Model model;

  @BeforeEach
  void aPlannedJob() {
    home = new Home(folder.resolve("home"));
    performer = new Performer(home, "bench", InstantSource.fixed(NOW), () -> {});
    Library library = Library.load(home);
    List<Fact> facts =
        List.of(
            new Fact.JobOpened("Gate chain", "scroll-and-ring"),
            new Fact.PlanSet(Wishes.common().texts()));
    Model begun = Coach.begin(Start.handbook(library), Settings.USUAL, Screens::parts, NOW, 80, 24);
    model = performer.begin(begun, facts, Optional.of("gate-chain"));
    press("g");
  }

  private void press(String... keys) {
    for (String key : keys) {
      model = performer.take(model, new Message.KeyPressed(KeyNames.read(key).orElseThrow()));
    }
  }

  private void type(String text) {
    model = performer.take(model, new Message.KeyPressed(Key.of(text)));
  }

  private String said() {
    List<String> said = new ArrayList<>(new PlainLines(Act::words).of(Pages.of(model).body()));
    model
        .held()
        .form()
        .ifPresent(form -> form.fields().forEach(field -> field.trouble().ifPresent(said::add)));
    return String.join("\n", said);
  }

  private List<Fact> facts(Path book) {
    return EntryLines.entries(BookFile.look(book).orThrow().lines()).stream()
        .map(Entry::fact)
        .toList();
  }

  private void rows(String name, String text) throws IOException {
    Files.createDirectories(home.folder().resolve("exchange"));
    Files.writeString(home.folder().resolve("exchange").resolve(name), text);
  }

  @Test
  void a_table_of_the_job_lies_on_the_disk_and_another_reader_finds_its_rows() throws IOException {
    press("n", "down");
    type("card");
    press("down");
    type("csv");
    press("ctrl-k");
    Path file = home.folder().resolve("exchange").resolve("gate-chain-card.csv");
    assertThat(said()).contains("Written: " + file);
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(Files.readString(file), format)) {
      assertThat(parser.getRecords().get(0).get("job")).isEqualTo("Gate chain");
    }
    assertThat(Files.readString(file)).doesNotContain("yaml");
  }

  @Test
  void what_lies_there_is_asked_about_before_it_is_written_over() throws IOException {
    rows("gate-chain.yaml", "hers");
    Path file = home.folder().resolve("exchange").resolve("gate-chain.yaml");
    press("n", "ctrl-k");
    assertThat(said()).contains("There is already");
    assertThat(file).hasContent("hers");
    press("ctrl-k");
    assertThat(said()).contains("Written: ");
    assertThat(Files.readString(file)).contains("Gate chain").doesNotContain("hers");
  }

  @Test
  void what_is_the_programs_own_is_never_written_over() throws IOException {
    Path book = home.jobs().resolve("gate-chain.yaml");
    byte[] before = Files.readAllBytes(book);
    for (String name : List.of(book.toString(), "../jobs/gate-chain.yaml", "../bench.yaml")) {
      press("n", "down", "down", "down");
      type(name);
      press("ctrl-k", "ctrl-k");
      assertThat(said()).as(name).contains("own files");
      press("esc");
    }
    assertThat(Files.readAllBytes(book)).isEqualTo(before);
    assertThat(home.folder().resolve("bench.yaml")).doesNotExist();
  }

  @Test
  void the_plan_lies_where_a_new_job_finds_it() {
    press("n");
    type("its plan");
    press("ctrl-k");
    Path file = home.folder().resolve("plans").resolve("gate-chain.yaml");
    assertThat(PlanFile.read(file, Library.load(home)).texts()).isEqualTo(Wishes.common().texts());
  }

  @Test
  void a_word_that_is_no_choice_writes_nothing() {
    press("n");
    type("everything");
    press("ctrl-k");
    assertThat(said()).contains("Choose one of these: this job, its plan, the drawer.");
    assertThat(home.folder().resolve("exchange")).doesNotExist();
  }

  @Test
  void test_pieces_are_told_first_and_entered_when_that_is_meant() throws IOException {
    rows("pieces.csv", "blank (mm);length (mm)\r\n38;14,3\r\n38,5;14,6\r\n");
    Path book = home.jobs().resolve("gate-chain.yaml");
    int before = facts(book).size();
    press("t", "down");
    type("pieces.csv");
    press("ctrl-k");
    assertThat(said()).contains("2 rows can be entered");
    assertThat(facts(book)).hasSize(before);
    press("ctrl-k");
    assertThat(said()).contains("Entered: 2 rows");
    assertThat(facts(book).subList(before, before + 2))
        .allSatisfy(fact -> assertThat(fact).isInstanceOf(Fact.TestPieceTried.class));
    assertThat(((Fact.TestPieceTried) facts(book).get(before)).lengthMm()).hasValue(14.3);
  }

  @Test
  void rows_that_are_wrong_are_told_with_their_line_and_none_is_entered() throws IOException {
    rows("pieces.csv", "blank (mm),length (mm)\n38,14.3\nnineteen,14.6\n");
    Path book = home.jobs().resolve("gate-chain.yaml");
    int before = facts(book).size();
    press("t", "down");
    type("pieces.csv");
    press("ctrl-k");
    assertThat(said()).contains("Nothing is entered.").contains("3").contains("blank");
    press("ctrl-k");
    assertThat(facts(book)).hasSize(before);
    press("esc", "t");
    type("no such");
    press("ctrl-k");
    assertThat(said()).contains("There is no file");
  }

  @Test
  void stock_goes_into_the_drawer_all_or_none() throws IOException {
    rows("stock.csv", "lot,metal,wire (mm),length (m)\nmarch,sterling,0.9,3\nmay,sterling,1.2,2\n");
    press("esc", "a", "g", "t", "down");
    type("stock");
    press("ctrl-k");
    assertThat(said()).contains("There is no file");
    type(".csv");
    press("ctrl-k");
    assertThat(said()).contains("2 rows can be entered");
    press("ctrl-k");
    assertThat(said()).contains("Entered in the drawer: 2 rows");
    assertThat(facts(home.drawer())).filteredOn(LotFact.LotArrived.class::isInstance).hasSize(2);
  }
}
