package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;
import linkwright.coach.student.StudentContent;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.CautionMet;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.LessonFact;
import linkwright.lesson.Learner;
import linkwright.lesson.StudentReport;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.view.Screens;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A student at the bench, her report, the class. */
class StudentAtBenchTest {
  private static final Instant NOW = Instant.parse("2026-03-02T17:00:00Z");

  @TempDir Path folder;
  private Home home;
  private Performer performer;
  private Model model;
  private Instant now = NOW;
  private String mara;

  @BeforeEach
  void begin() {
    home = new Home(folder);
    mara = StudentBooks.named(home, "Mara Quill").orThrow();
    Library library = Library.load(home);
    performer = new Performer(home, "bench", clock(), () -> {});
    model = Coach.begin(Start.handbook(library), Settings.USUAL, Screens::parts, now, 80, 24);
    model = performer.begin(model, Demo.facts(library), Optional.empty());
    model =
        performer.open(model, home.books().get(0).getFileName().toString().replace(".yaml", ""));
  }

  private InstantSource clock() {
    return () -> {
      now = now.plusSeconds(1);
      return now;
    };
  }

  private void press(String... names) {
    for (String name : names) {
      now = now.plusSeconds(1);
      model = performer.take(model, new Message.Ticked(now, now, Optional.empty()));
      model = performer.take(model, new Message.KeyPressed(KeyNames.read(name).orElseThrow()));
    }
  }

  private void maraWorks() {
    press("@");
    model = performer.take(model, new Message.Pasted("mara quill"));
    press("ctrl-k");
  }

  private List<Part> parts() {
    return Pages.of(model).body().parts();
  }

  private Optional<Question> question() {
    return parts().stream()
        .filter(Question.class::isInstance)
        .map(Question.class::cast)
        .findFirst();
  }

  private List<Entry> jobEntries() {
    return EntryLines.entries(BookFile.look(home.books().get(0)).orThrow().lines());
  }

  private Learner learner() {
    return Learner.of(
        mara, StudentBooks.entries(StudentBooks.path(home, mara)).orThrow(), ZoneOffset.UTC, 7);
  }

  private String rightKey() {
    Question asked = question().orElseThrow();
    String title = model.handbook().routine("scroll-and-ring").orElseThrow().steps().get(0).title();
    return asked.answers().stream()
        .filter(answer -> answer.says().equals(title))
        .map(Question.Answer::key)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_step_opens_after_she_has_said_it_and_the_job_knows_her_by_her_id() {
    maraWorks();
    assertThat(model.held().place()).isEqualTo(PlaceId.SAYING);
    String right = rightKey();
    press(right.equals("1") ? "2" : "1");
    assertThat(parts()).contains(new Prose(Prose.Kind.HEAD, "Not so"));
    press("space");
    assertThat(question()).isPresent();
    press(rightKey());
    assertThat(parts()).contains(new Prose(Prose.Kind.HEAD, "Right"));
    press("space");
    assertThat(model.held().place()).isEqualTo(PlaceId.BENCH);
    assertThat(learner().learnt().missed("scroll-and-ring/next/lay-out")).isTrue();
    assertThat(jobEntries()).extracting(Entry::person).contains(mara);
    assertThat(text(home.books().get(0))).doesNotContain("Mara");
  }

  @Test
  void what_comes_is_not_shown_before_she_has_said_it() {
    maraWorks();
    press(rightKey(), "space");
    assertThat(model.held().place()).isEqualTo(PlaceId.BENCH);
    while (!parts().toString().contains("Lay out wire")) {
      press("space");
    }
    List<Part> before = parts();
    assertThat(before.toString()).doesNotContain("Anneal the wire");
    press("right");
    assertThat(parts()).isEqualTo(before);
    assertThat(model.notice().toString()).contains("says what comes before it is shown");
    assertThat(Pages.of(model).open().toString()).doesNotContain("LOOK_ON");
  }

  /** Neither the places of the job nor its book nor a rehearsal answers for her. */
  @Test
  void what_is_still_to_be_said_is_named_at_no_place_of_the_job() {
    String title = model.handbook().routine("scroll-and-ring").orElseThrow().steps().get(0).title();
    maraWorks();
    lead(PlaceId.ROUND, "");
    assertThat(parts().toString()).contains("to be said before it is shown").doesNotContain(title);
    lead(PlaceId.BOOK, "");
    assertThat(parts().toString()).contains("the one to be said first").doesNotContain(title);
    lead(PlaceId.PILES, "");
    assertThat(parts().toString()).doesNotContain(title);
    for (String id : List.of("", "scroll-and-ring")) {
      lead(PlaceId.REHEARSAL, id);
      assertThat(model.held().place()).isEqualTo(PlaceId.SAYING);
      assertThat(model.notice().text()).contains("is said before it is shown");
    }
    press(rightKey(), "space");
    lead(PlaceId.ROUND, "");
    assertThat(parts().toString()).contains(title);
    lead(PlaceId.REHEARSAL, "");
    assertThat(parts()).contains(new Prose(Prose.Kind.HEAD, title));
  }

  /** A week after she read a card she says what can happen there, once a day, and reads it if not. */
  @Test
  void a_card_met_a_week_ago_is_asked_in_place_of_its_reading() throws IOException {
    maraWorks();
    for (int i = 0; i < 80 && !isOpen("anneal-wire"); i++) {
      goOn();
    }
    assertThat(met()).contains("torch", "ventilation");
    int before = met().size();
    model = performer.take(model, new Message.Led(PlaceId.TRAY, ""));
    now = now.plus(Duration.ofDays(8));
    model = performer.open(model, slug());
    press("b", "space");
    assertThat(model.held().place()).isEqualTo(PlaceId.SAYING);
    Learner.QuestionPut put = learner().open().orElseThrow();
    assertThat(put.item()).startsWith("scroll-and-ring/danger/anneal-wire/");
    String card = put.item().substring(put.item().lastIndexOf('/') + 1);
    press("0");
    assertThat(parts().toString())
        .contains("Not so", model.handbook().caution(card).orElseThrow().title());
    press("space", "space", "space");
    assertThat(learner().open().orElseThrow().item()).as("asked again").isEqualTo(put.item());
    say();
    press("space");
    assertThat(model.held().place()).as("one a day").isEqualTo(PlaceId.BENCH);
    assertThat(met()).hasSize(before + 2);
    assertThat(jobEntries())
        .extracting(Entry::fact)
        .filteredOn(fact -> fact instanceof Fact.CautionSeen seen && seen.caution().equals(card))
        .extracting(fact -> ((Fact.CautionSeen) fact).how())
        .contains(CautionMet.ASKED_WRONG)
        .endsWith(CautionMet.ASKED_RIGHT);
  }

  private boolean isOpen(String step) {
    return model.job().orElseThrow().state().course().step().equals(new StepId(step))
        && model.held().place() == PlaceId.BENCH
        && Pages.of(model).open().stream()
            .noneMatch(open -> open.act().filter(Act.SEEN::equals).isPresent());
  }

  private List<String> met() {
    return jobEntries().stream()
        .map(Entry::fact)
        .filter(Fact.CautionSeen.class::isInstance)
        .map(fact -> ((Fact.CautionSeen) fact).caution())
        .toList();
  }

  /** Says what is asked, turns what is told, sees cards, and leads on where nothing is left. */
  private void goOn() {
    if (question().isPresent() && model.held().place() == PlaceId.SAYING) {
      say();
    } else if (model.held().place() == PlaceId.BENCH && isOpen("lay-out")) {
      press("n");
    } else {
      press("space");
    }
  }

  private void say() {
    Learner.QuestionPut put = learner().open().orElseThrow();
    int right =
        Banks.of(model, "scroll-and-ring").stream()
            .filter(item -> item.id().equals(put.item()))
            .findFirst()
            .orElseThrow()
            .draw(put.seed(), UnitStyle.METRIC)
            .right();
    press(Integer.toString(right + 1));
  }

  @Test
  void a_name_that_is_no_students_is_asked_about_before_it_stands_in_the_book() throws IOException {
    press("@");
    assertThat(parts().toString()).contains("Students: Mara Quill");
    model = performer.take(model, new Message.Pasted("Marta Quill"));
    press("ctrl-k");
    assertThat(parts().toString())
        .contains("No student is called “Marta Quill”", "Is Mara Quill meant?", "job's book");
    assertThat(text(home.books().get(0))).doesNotContain("Marta");
    press("ctrl-k");
    assertThat(text(home.books().get(0))).contains("Marta Quill");
  }

  /** Taught in one evening, walked the next day without the screen, asked again a gap later. */
  @Test
  void what_is_forgotten_at_the_bench_the_next_day_comes_first_at_its_gap() {
    lead(PlaceId.LESSON, "scroll-and-ring " + mara);
    for (int i = 0; i < 40 && question().isPresent(); i++) {
      Learner.QuestionPut put = learner().open().orElseThrow();
      int right =
          Banks.of(model, "scroll-and-ring").stream()
              .filter(item -> item.id().equals(put.item()))
              .findFirst()
              .orElseThrow()
              .draw(put.seed(), UnitStyle.METRIC)
              .right();
      press(Integer.toString(right + 1), "space");
    }
    assertThat(learner().learnt().items()).hasSize(12);
    now = now.plus(Duration.ofDays(1));
    model = performer.open(model, slug());
    maraWorks();
    String right = rightKey();
    press(right.equals("1") ? "2" : "1", "space");
    press(rightKey(), "space");
    String forgotten = "scroll-and-ring/next/lay-out";
    assertThat(learner().learnt().missed(forgotten)).isTrue();
    assertThat(learner().learnt().daysRight(forgotten)).isZero();
    now = now.plus(Duration.ofDays(7));
    press("esc");
    lead(PlaceId.LESSON, "scroll-and-ring " + mara);
    assertThat(learner().open().orElseThrow().item()).isEqualTo(forgotten);
  }

  @Test
  void the_maker_herself_is_asked_nothing() {
    press("b", "space", "space", "space");
    assertThat(model.held().place()).isNotEqualTo(PlaceId.SAYING);
  }

  @Test
  void what_she_made_is_brought_over_once_and_told_from_the_teachers() throws IOException {
    write(mara, through(4));
    write("", through(7));
    write(mara, back(3, "gap"));
    write(mara, new Fact.MetalWeighedOut(12.5, "wire"));
    write(mara, weighed(9.0));
    lead(PlaceId.STUDENT, mara);
    lead(PlaceId.STUDENT, mara);
    List<Learner.Made> made = learner().made();
    assertThat(made).hasSize(1);
    assertThat(made.get(0).fact().through()).isEqualTo(4);
    assertThat(made.get(0).fact().redo()).isEqualTo(Map.of("gap", 3));
    StudentReport report = StudentContent.report(learner(), model.handbook(), model.today());
    assertThat(report.practice()).hasSize(1);
    assertThat(report.practice().get(0).reason()).isEqualTo("gap");
    assertThat(report.practice().get(0).helps()).isNotBlank();
    assertThat(report.practice().get(0).days()).isEqualTo(7);
    assertThat(report.metal()).containsExactly(new LessonFact.MetalCounted(slug(), 12.5, 9.0));
    assertThat(StudentContent.of(report, learner(), model.handbook(), UnitStyle.METRIC).toString())
        .contains("gap 3 of 7");
    write(mara, through(2));
    lead(PlaceId.STUDENT, mara);
    assertThat(learner().made()).hasSize(2);
    assertThat(learner().made().get(1).fact().through()).isEqualTo(2);
  }

  @Test
  void a_mark_stands_in_her_own_book_by_the_teacher_and_ends_the_waiting() throws IOException {
    write(mara, through(4));
    lead(PlaceId.STUDENT, mara);
    press("c");
    assertThat(parts().toString()).contains("Waits for a mark: Mara Quill");
    assertThat(parts().toString()).contains("No book here says anything of a flame");
    press("enter", "g");
    model = performer.take(model, new Message.Pasted("EK"));
    press("ctrl-k");
    assertThat(learner().signed()).hasSize(1);
    assertThat(learner().signed().get(0).fact().teacher()).isEqualTo("EK");
    assertThat(StudentBooks.entries(StudentBooks.path(home, mara)).orThrow())
        .extracting(Entry::person)
        .contains("EK");
    press("c");
    assertThat(parts().toString()).contains("Nobody waits for a mark.");
  }

  @Test
  void a_piece_is_signed_without_a_step_and_has_to_be_one() throws IOException {
    write(mara, through(4));
    lead(PlaceId.STUDENT, mara);
    press("g");
    model = performer.take(model, new Message.Pasted("EK"));
    press("down", "ctrl-u", "down");
    model = performer.take(model, new Message.Pasted("dragon 4"));
    press("ctrl-k");
    assertThat(parts().toString()).contains("“dragon 4” names no piece");
    assertThat(learner().signed()).isEmpty();
    press("ctrl-u");
    model = performer.take(model, new Message.Pasted("link 4"));
    press("ctrl-k");
    assertThat(learner().signed()).hasSize(1);
    assertThat(parts().toString()).contains("signed by EK: link 4");
  }

  @Test
  void twelve_are_seen_at_a_glance_and_no_book_changes_by_it() throws IOException {
    for (int i = 1; i <= 12; i++) {
      Path there = folder.resolve("class/bench-" + i);
      Files.createDirectories(there.resolve("students"));
      Files.createDirectories(there.resolve("jobs"));
      String id = "s-" + i;
      try (BookFile book =
          BookFile.create(there.resolve("students"), id, "bench-" + i, now).orThrow()) {
        book.append(
                List.of(
                    EntryLines.line(
                        new Entry(1, now, "bench-" + i, id, new LessonFact.StudentBookOpened(id)))))
            .orThrow();
      }
      try (BookFile job = BookFile.create(there.resolve("jobs"), "chain", "b", now).orThrow()) {
        job.append(
                List.of(
                    EntryLines.line(
                        new Entry(1, now, "b", "", new Fact.JobOpened("chain", "scroll-and-ring"))),
                    EntryLines.line(new Entry(2, now, "b", id, through(3)))))
            .orThrow();
      }
    }
    byte[] before = all(folder.resolve("class"));
    lead(PlaceId.CLASS_ROOM, folder.resolve("class").toString());
    assertThat(model.learning().room().orElseThrow().students()).hasSize(12);
    assertThat(parts().toString()).contains("s-7 (bench-7) (Check every joint)");
    assertThat(all(folder.resolve("class"))).isEqualTo(before);
  }

  private static byte[] all(Path folder) throws IOException {
    java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream();
    try (var files = Files.walk(folder)) {
      for (Path path : files.filter(Files::isRegularFile).sorted().toList()) {
        bytes.write(path.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        bytes.write(Files.readAllBytes(path));
      }
    }
    return bytes.toByteArray();
  }

  @Test
  void she_is_handed_over_whole_and_removed_whole() throws IOException {
    lead(PlaceId.STUDENT, mara);
    Path book = StudentBooks.path(home, mara);
    byte[] whole = Files.readAllBytes(book);
    Path into = folder.resolve("out.yaml");
    assertThat(StudentBooks.handOver(home, mara, into)).isEmpty();
    assertThat(Files.readAllBytes(into)).isEqualTo(whole);
    assertThat(StudentBooks.handOver(home, mara, into)).isPresent();
    assertThat(StudentBooks.remove(home, mara)).isEmpty();
    assertThat(book).doesNotExist();
    assertThat(StudentsFile.load(home).roster().names()).isEmpty();
    try (var left = Files.walk(folder.resolve("students"))) {
      assertThat(left.filter(Files::isRegularFile)).isEmpty();
    }
  }

  @Test
  void a_class_of_many_machines_is_read_and_only_her_own_book_is_written() throws IOException {
    Path there = folder.resolve("class/bench-2/students");
    Files.createDirectories(there);
    lead(PlaceId.STUDENT, mara);
    Files.move(StudentBooks.path(home, mara), there.resolve(mara + ".yaml"));
    lead(PlaceId.CLASS_ROOM, folder.resolve("class").toString());
    press("enter", "g");
    model = performer.take(model, new Message.Pasted("EK"));
    press("down", "down");
    model = performer.take(model, new Message.Pasted("link 4"));
    press("ctrl-k");
    assertThat(StudentBooks.entries(there.resolve(mara + ".yaml")).orThrow())
        .extracting(Entry::fact)
        .anyMatch(LessonFact.Signed.class::isInstance);
    assertThat(StudentBooks.path(home, mara)).doesNotExist();
  }

  private void lead(PlaceId place, String id) {
    model = performer.take(model, new Message.Led(place, id));
  }

  private String slug() {
    return home.books().get(0).getFileName().toString().replace(".yaml", "");
  }

  private static String text(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException trouble) {
      throw new java.io.UncheckedIOException(trouble);
    }
  }

  private static Fact through(int count) {
    return new Fact.PiecesThrough(
        Map.of(PieceKind.LINK, count), new Stage("checked"), false, new StepId("check-links"));
  }

  private static Fact back(int count, String reason) {
    return new Fact.PiecesSentBack(
        PieceKind.LINK, count, new Stage("checked"), new Stage("soldered"), false, reason);
  }

  private static Fact weighed(double chainG) {
    OptionalDouble none = OptionalDouble.empty();
    return new Fact.WeighedIn(OptionalDouble.of(chainG), none, none, none, none, none, none);
  }

  /** An entry of somebody in the job's book, as another program would have made it. */
  private void write(String person, Fact fact) throws IOException {
    performer.shut();
    try (BookFile book = BookFile.open(home.books().get(0), "bench", now).orThrow()) {
      Entry entry = new Entry(book.nextNumber(), clock().instant(), "bench", person, fact);
      book.append(List.of(EntryLines.line(entry))).orThrow();
    }
  }
}
