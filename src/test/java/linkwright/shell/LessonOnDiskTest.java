package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import linkwright.books.BookFile;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.lesson.Learner;
import linkwright.lesson.Roster;
import linkwright.quantity.UnitStyle;
import linkwright.view.Screens;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lessons and rehearsals in a real folder: what her book holds, and that no job's book changes. */
class LessonOnDiskTest {
  private static final Instant NOW = Instant.parse("2026-03-02T17:00:00Z");
  private static final long SEED = 20261126;

  @TempDir Path folder;
  private Home home;
  private Performer performer;
  private Model model;
  private Instant now = NOW;

  @BeforeEach
  void begin() {
    home = new Home(folder);
    performer = newPerformer();
    model = newModel();
    model = performer.begin(model, Demo.facts(Library.load(home)), Optional.empty());
  }

  private Performer newPerformer() {
    return new Performer(home, "bench", clock(), () -> {});
  }

  private InstantSource clock() {
    return () -> {
      now = now.plusSeconds(1);
      return now;
    };
  }

  private Model newModel() {
    return Coach.begin(
        Start.handbook(Library.load(home)), Settings.USUAL, Screens::parts, now, 80, 24);
  }

  private void lead(PlaceId place, String id) {
    model = performer.take(model, new Message.Led(place, id));
  }

  private void press(String... names) {
    for (String name : names) {
      now = now.plusSeconds(1);
      model = performer.take(model, new Message.Ticked(now, now, Optional.empty()));
      Key key = KeyNames.read(name).orElseThrow();
      model = performer.take(model, new Message.KeyPressed(key));
    }
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

  private String head() {
    return parts().stream()
        .filter(part -> part instanceof Prose prose && prose.kind() == Prose.Kind.HEAD)
        .map(part -> ((Prose) part).text())
        .findFirst()
        .orElse("");
  }

  private List<Entry> onDisk(String id) {
    return StudentBooks.entries(StudentBooks.path(home, id)).orThrow();
  }

  private Learner learner(String id) {
    return Learner.of(id, onDisk(id), model.settings().zone(), 7);
  }

  private static byte[] bytes(Path path) {
    try {
      return Files.readAllBytes(path);
    } catch (IOException trouble) {
      throw new java.io.UncheckedIOException(trouble);
    }
  }

  @Test
  void a_question_and_an_answer_stand_in_her_book_before_they_are_shown() {
    lead(PlaceId.LESSON, "round-cable own");
    assertThat(question()).isPresent();
    assertThat(learner(Roster.OWN).open()).isPresent();
    press("space");
    assertThat(model.notice().toString()).contains("The number of an answer comes first; 0 if");
    press("0");
    assertThat(head()).isEqualTo("Not so");
    assertThat(learner(Roster.OWN).answeredLast().orElseThrow().given().orElseThrow().right())
        .isFalse();
    press("space");
    assertThat(question()).isPresent();
  }

  @Test
  void a_program_that_is_killed_goes_on_with_the_very_question() {
    lead(PlaceId.LESSON, "round-cable own");
    for (int i = 0; i < 30; i++) {
      Optional<Question> shown = question();
      model = newModel();
      performer = newPerformer();
      lead(PlaceId.LESSON, "round-cable own");
      if (shown.isPresent()) {
        assertThat(question()).as("question " + i).isEqualTo(shown);
        press(Integer.toString(i % 4 + 1));
      } else {
        press("space");
      }
    }
  }

  /** Whatever a torn write leaves of her book, it opens, and holds what was there before. */
  @Test
  void a_book_cut_short_at_any_byte_holds_every_whole_entry() throws IOException {
    lead(PlaceId.LESSON, "round-cable own");
    press("1", "space", "2", "space", "0", "space");
    Path book = StudentBooks.path(home, Roster.OWN);
    byte[] whole = bytes(book);
    Random chance = new Random(SEED);
    for (int i = 0; i < 40; i++) {
      int cut = 200 + chance.nextInt(whole.length - 200);
      Files.write(book, Arrays.copyOf(whole, cut));
      Files.deleteIfExists(book.resolveSibling(Roster.OWN + ".last"));
      List<Entry> left = onDisk(Roster.OWN);
      long lines =
          new String(whole, 0, cut, java.nio.charset.StandardCharsets.UTF_8)
              .lines()
              .filter(line -> line.startsWith("- {") && line.contains("# crc32c:"))
              .count();
      assertThat((long) left.size()).as("cut at " + cut).isGreaterThanOrEqualTo(lines - 1);
    }
  }

  @Test
  void an_answer_that_cannot_be_written_is_not_told_and_is_tried_again() throws IOException {
    lead(PlaceId.LESSON, "round-cable own");
    try (BookFile other =
        BookFile.open(StudentBooks.path(home, Roster.OWN), "other", now).orThrow()) {
      assertThat(other.whyReadOnly()).isEmpty();
      press("1");
      assertThat(head()).isNotIn("Right", "Not so");
      assertThat(learner(Roster.OWN).open()).isPresent();
    }
    press("space");
    assertThat(head()).isIn("Right", "Not so");
    assertThat(learner(Roster.OWN).open()).isEmpty();
  }

  @Test
  void what_the_screen_knows_of_her_is_what_the_disk_holds_after_every_key() {
    lead(PlaceId.LESSON, "torch-practice own");
    Random chance = new Random(SEED);
    for (int i = 0; i < 120; i++) {
      press(List.of("1", "2", "3", "4", "0", "space").get(chance.nextInt(6)));
      assertThat(model.learning().student()).as("key " + i).contains(learner(Roster.OWN));
    }
    assertThat(learner(Roster.OWN).askings()).hasSizeGreaterThan(10);
  }

  @Test
  void her_book_is_that_of_the_line_that_is_looked_at() {
    String anna = StudentBooks.named(home, "Anna").orThrow();
    String berta = StudentBooks.named(home, "Berta").orThrow();
    lead(PlaceId.LESSON, "round-cable " + anna);
    model = performer.take(model, new Message.Led(PlaceId.TRAY, ""));
    press("s");
    assertThat(parts().toString()).contains("Who learns?");
    press("down", "t");
    assertThat(model.held().place()).isEqualTo(PlaceId.STUDENT);
    assertThat(model.learning().student().orElseThrow().id()).isEqualTo(berta);
  }

  @Test
  void a_mark_for_a_step_that_no_routine_has_is_refused_with_a_sentence() {
    lead(PlaceId.LESSON, "round-cable own");
    press("0");
    press("t", "g", "E", "K", "down");
    press("z", "q", "x", "ctrl-k");
    assertThat(model.held().form()).isPresent();
    assertThat(model.held().form().orElseThrow().fields().toString())
        .contains("No routine has the step");
    assertThat(learner(Roster.OWN).signed()).isEmpty();
  }

  /** Every act there is, and random keys, at a lesson and at a rehearsal of an open job. */
  @Test
  void nothing_in_a_lesson_or_a_rehearsal_changes_a_job() {
    model = performer.open(model, "lighthouse-keeper-s-bracelet-demo");
    Path book = home.books().get(0);
    byte[] before = bytes(book);
    for (PlaceId place : List.of(PlaceId.REHEARSAL, PlaceId.LESSON)) {
      List<Act> acts = new ArrayList<>(List.of(Act.values()));
      for (Act act : acts) {
        lead(place, place == PlaceId.LESSON ? "scroll-and-ring own" : "scroll-and-ring");
        if (model.held().place() == place) {
          model = performer.take(model, new Message.ActChosen(act));
          if (model.held().place() == place) {
            assertThat(bytes(book)).as(act + " at " + place).isEqualTo(before);
          }
          before = bytes(book);
        }
        if (model.job().isEmpty()) {
          model = performer.open(model, "lighthouse-keeper-s-bracelet-demo");
          before = bytes(book);
        }
      }
      Random chance = new Random(SEED);
      List<String> keys =
          List.of("space", "b", "left", "right", "u", "z", ".", "1", "2", "0", "enter", "v", "w");
      for (int i = 0; i < 300; i++) {
        lead(place, place == PlaceId.LESSON ? "scroll-and-ring own" : "scroll-and-ring");
        byte[] now = bytes(book);
        press(keys.get(chance.nextInt(keys.size())));
        assertThat(bytes(book)).as("seed %d, key %d at %s", SEED, i, place).isEqualTo(now);
      }
    }
  }

  @Test
  void a_job_that_is_rehearsed_is_only_looked_at() {
    Path book = home.books().get(0);
    byte[] before = bytes(book);
    model = performer.look(model, "lighthouse-keeper-s-bracelet-demo");
    lead(PlaceId.REHEARSAL, "");
    assertThat(head()).isEqualTo("Make the bench ready");
    press("space", "space", "left", "u", ".", "esc", "b", "space", "space", "n");
    assertThat(bytes(book)).isEqualTo(before);
  }

  @Test
  void a_rehearsal_walks_all_steps_forwards_and_back_and_its_waits_run_sixty_times_as_fast() {
    lead(PlaceId.REHEARSAL, "round-cable");
    int steps = model.handbook().routine("round-cable").orElseThrow().steps().size();
    List<String> heads = new ArrayList<>(List.of(head()));
    for (int i = 1; i < steps; i++) {
      press("space");
      heads.add(head());
    }
    assertThat(heads).doesNotHaveDuplicates().hasSize(steps);
    press("space");
    assertThat(head()).isEqualTo(heads.get(steps - 1));
    for (int i = steps - 2; i >= 0; i--) {
      press("left");
      assertThat(head()).isEqualTo(heads.get(i));
    }
  }

  @Test
  void each_draws_her_own_order_and_the_seed_is_on_no_screen() {
    lead(PlaceId.LESSON, "round-cable own");
    long seed = learner(Roster.OWN).open().orElseThrow().seed();
    assertThat(Pages.of(model).toString()).doesNotContain(Long.toString(seed));
    assertThat(model.settings().units()).isEqualTo(UnitStyle.METRIC);
  }

  @Test
  void a_new_name_stands_in_the_teachers_file_and_in_no_book() {
    lead(PlaceId.LESSON, "round-cable own");
    press("esc", "s", "n");
    model = performer.take(model, new Message.Pasted("Mara Quill"));
    press("ctrl-k");
    String id = model.learning().student().orElseThrow().id();
    assertThat(id).startsWith("s-");
    assertThat(bytes(folder.resolve("students.yaml"))).asString().contains("Mara Quill");
    assertThat(bytes(StudentBooks.path(home, id))).asString().doesNotContain("Mara");
  }
}
