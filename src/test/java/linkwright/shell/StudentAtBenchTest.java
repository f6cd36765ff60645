package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.student.StudentContent;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.LessonFact;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.StudentReport;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.TradeWords;
import org.junit.jupiter.api.Test;

/** What a student made, her report, her marks, the class. */
class StudentAtBenchTest extends StudentBench {
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
    assertThat(
            StudentContent.of(
                    report, learner(), model.handbook(), UnitStyle.METRIC, TradeWords.BRITISH)
                .toString())
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

  /** What was told of one student's book stood before the next one's. */
  @Test
  void the_word_on_a_mark_names_its_book_and_is_gone_before_another() throws IOException {
    write(mara, through(4));
    for (String id : List.of(mara, "own")) {
      lead(PlaceId.STUDENT, id);
      assertThat(model.notice().text()).isEmpty();
      press("g");
      model = performer.take(model, new Message.Pasted("EK"));
      press("down", "ctrl-u", "down");
      model = performer.take(model, new Message.Pasted("link 4"));
      press("ctrl-k");
      assertThat(model.notice().text())
          .isEqualTo(
              id.equals(mara) ? "It stands in the book of Mara Quill." : "It stands in your book.");
    }
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

  @Test
  void a_part_of_a_study_that_was_left_out_leaves_no_hole_and_a_card_is_called_by_its_title() {
    Item item =
        Banks.of(Banks.ready(model, "scroll-and-ring"), "scroll-and-ring").stream()
            .filter(each -> each.caution().equals("pickle"))
            .findFirst()
            .orElseThrow();
    List<Entry> entries =
        List.of(
            new Entry(1, NOW, "b", mara, new LessonFact.QuestionAsked("l", item.id(), 1)),
            new Entry(
                2, NOW, "b", mara, new LessonFact.QuestionAnswered(new EntryId("b", 1), "", true)),
            new Entry(
                3, NOW, "b", mara, new LessonFact.PieceStudied("link 4", "", "even", "slower")));
    Learner told = Learner.of(mara, entries, ZoneOffset.UTC, 7);
    String report =
        StudentContent.of(
                StudentContent.report(told, model.handbook(), model.today()),
                told,
                model.handbook(),
                UnitStyle.METRIC,
                TradeWords.BRITISH)
            .toString();
    assertThat(report)
        .contains("link 4: got even; will change slower.")
        .contains("[" + model.handbook().caution("pickle").orElseThrow().title() + ", ")
        .doesNotContain("[pickle, ");
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
