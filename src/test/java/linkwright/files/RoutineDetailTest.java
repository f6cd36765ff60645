package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.books.BookFile;
import linkwright.books.CheckedLate;
import linkwright.books.EntryLines;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.quantity.Problem;
import linkwright.routine.Level;
import linkwright.routine.Loop;
import linkwright.routine.PieceDetail;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Stage;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.routine.WaitEnds;
import linkwright.routine.WaitId;
import linkwright.routine.When;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What routines may say besides their steps, and the former names of steps. */
class RoutineDetailTest {
  private static final Instant NOW = Instant.parse("2026-11-25T20:00:00Z");

  private static final String ROUTINE =
      """
      format: 1
      routine: mine
      title: Mine
      says: A chain of my own.
      makes: chain
      level: practised
      patterns: [round, long]
      ends: links
      usual-loss: 5 %
      usual-redo: 5 %
      pieces:
        link: [cut, finished]
        bar: [sawn, filed]
      kinds:
        link: {pattern: round, per-repeat: 3}
        bar: {pattern: long}
      questions:
        - {asks: "How many rounds come in a repeat?", answers: [Three, Two, Four], why: So it says.}
      pictures: [butt-fit]
      steps:
        - step: saw-links
          was: [cut-links, cut]
          title: Cut them
          part: run
          stage: {link: cut}
          counts: each
          does: [cuts]
          cautions: [cutting-wire]
          do: Cut.
          tools: [saw with fine blades, bench pin]
          waits: [{name: Rest the saw, for: 1 min}, {id: look, name: Look, for: 2 min, ends: look}]
        - step: saw-bars
          title: Saw the bars
          part: run
          stage: {bar: sawn}
          counts: each
          does: [cuts]
          cautions: [cutting-wire]
          do: Saw.
          pictures: [solder-joint]
        - step: file-bars
          title: File them
          part: run
          stage: {bar: filed}
          counts: each
          does: [dust, flux-fumes]
          cautions: [dust-lemel, ventilation]
          do: File.
          solder: {tip to body: hard}
          loop: {back-to: saw-bars, until: the ends are square}
          questions:
            - {asks: "What shows that it is square?", answers: [No light under the square, It shines]}
        - step: finish-links
          title: Finish
          part: finish
          stage: {link: finished}
          counts: batch
          do: Look them over.
        - step: send-away
          title: Send it away
          part: finish
          do: Send it.
          when: {metal: [sterling, fine-silver], thicker-than: 0.8 mm}
      """;

  @TempDir Path folder;
  private Home home;

  @BeforeEach
  void aHome() {
    home = new Home(folder);
  }

  private Library library(String text) throws IOException {
    Files.createDirectories(folder.resolve("routines"));
    Files.writeString(folder.resolve("routines/mine.yaml"), text);
    return Library.load(home);
  }

  @Test
  void all_of_it_is_read() throws IOException {
    Library library = library(ROUTINE);
    assertThat(library.problems())
        .extracting(Problem::sentence)
        .filteredOn(told -> told.contains("mine.yaml"))
        .isEmpty();
    Routine mine = library.routines().get("mine");
    assertThat(mine.detail().level()).contains(Level.PRACTISED);
    assertThat(mine.detail().kinds())
        .isEqualTo(
            Map.of(
                PieceKind.LINK,
                new PieceDetail("round", 3),
                new PieceKind("bar"),
                new PieceDetail("long", 1)));
    assertThat(mine.detail().questions().get(0).answers()).startsWith("Three").hasSize(3);
    Step first = mine.steps().get(0);
    assertThat(first.detail().tools()).containsExactly("saw with fine blades", "bench pin");
    assertThat(first.waits())
        .extracting(wait -> wait.id())
        .containsExactly(new WaitId("saw-links-wait"), new WaitId("look"));
    assertThat(first.waits())
        .extracting(wait -> wait.ends())
        .containsExactly(WaitEnds.TIME, WaitEnds.LOOK);
    Map<String, String> copper = Map.of("metal", "copper");
    When when = mine.steps().get(4).detail().when();
    assertThat(when.holds(copper, OptionalDouble.empty())).isFalse();
    assertThat(when.holds(Map.of(), OptionalDouble.empty())).isTrue();
    assertThat(when.holds(Map.of(), OptionalDouble.of(0.8))).isFalse();
    assertThat(when.holds(Map.of(), OptionalDouble.of(0.9))).isTrue();
    assertThat(mine.steps().get(2).detail().solder()).containsEntry("tip to body", "hard");
    assertThat(mine.steps().get(2).detail().loop())
        .contains(new Loop(new StepId("saw-bars"), "the ends are square"));
  }

  @Test
  void what_does_not_hold_together_is_told_at_its_place() throws IOException {
    Library library =
        library(
            ROUTINE
                .replace("was: [cut-links, cut]", "was: [saw-bars]")
                .replace("back-to: saw-bars", "back-to: finish-links")
                .replace("tip to body: hard", "tip to body: soft")
                .replace("bar: {pattern: long}", "rod: {pattern: lang}")
                .replace("[No light under the square, It shines]", "[It shines, It shines]")
                .replace("when: {metal:", "when: {metall:"));
    List<String> told =
        library.problems().stream()
            .map(Problem::sentence)
            .filter(sentence -> sentence.contains("mine.yaml"))
            .toList();
    assertThat(told).anyMatch(each -> each.contains("Did you mean metal?"));
    Library other =
        library(
            ROUTINE
                .replace("was: [cut-links, cut]", "was: [saw-bars]")
                .replace("back-to: saw-bars", "back-to: finish-links")
                .replace("tip to body: hard", "tip to body: soft")
                .replace("bar: {pattern: long}", "rod: {pattern: lang}")
                .replace("[No light under the square, It shines]", "[It shines, It shines]"));
    assertThat(other.problems().stream().map(Problem::wrong))
        .contains(
            "Step saw-links says that it was called \"saw-bars\", which another step is or was.",
            "Step file-bars goes back to \"finish-links\", which is no step before it.",
            "Step file-bars solders tip to body with \"soft\", which is no grade.",
            "There is no kind of piece \"rod\".",
            "There is no link pattern \"lang\".",
            "The question \"What shows that it is square?\" leaves no choice.");
  }

  @Test
  void what_a_step_needs_is_read_and_made_before_of_another_kind() throws IOException {
    String needs = "stage: {bar: filed}\n    needs: {link: cut}";
    Library library = library(ROUTINE.replace("stage: {bar: filed}", needs));
    assertThat(library.routines().get("mine").steps().get(2).detail().needs())
        .isEqualTo(Map.of(PieceKind.LINK, Stage.CUT));
    for (String wrong : List.of("{link: finished}", "{bar: sawn}", "{rod: cut}")) {
      Library other =
          library(ROUTINE.replace("stage: {bar: filed}", needs.replace("{link: cut}", wrong)));
      assertThat(other.problems().stream().map(Problem::wrong))
          .as(wrong)
          .anyMatch(each -> each.startsWith("Step file-bars needs the "));
    }
  }

  @Test
  void a_repeat_of_rings_is_told_for_it_counts_nothing() throws IOException {
    Library library =
        library(ROUTINE.replace("bar: {pattern: long}", "bar: {pattern: long, per-repeat: 2}"));
    assertThat(library.problems().stream().map(Problem::wrong))
        .contains("A repeat is counted in links alone, not in \"bar\".");
  }

  @Test
  void a_step_is_found_by_its_former_name_and_one_that_is_nowhere_is_told() throws IOException {
    Routine mine = library(ROUTINE).routines().get("mine");
    assertThat(mine.step(new StepId("cut"))).map(Step::id).contains(new StepId("saw-links"));
    assertThat(mine.step(new StepId("gone"))).isEmpty();
    try (BookFile book = BookFile.create(home.jobs(), "Trace", "bench", NOW).orThrow()) {
      List<Fact> facts =
          List.of(
              new Fact.JobOpened("Trace", "mine"),
              new Fact.StepOpened(new StepId("cut-links")),
              new Fact.StepOpened(new StepId("polish-links")));
      for (Fact fact : facts) {
        book.append(List.of(EntryLines.line(new Entry(book.nextNumber(), NOW, "bench", fact))))
            .orThrow();
      }
      assertThat(book.unknownSteps(id -> Optional.of(mine)))
          .singleElement()
          .satisfies(
              problem -> {
                assertThat(problem.line()).isEqualTo(4);
                assertThat(problem.wrong())
                    .isEqualTo("The step \"polish-links\" is not in the routine mine any more.");
              });
    }
    assertThat(Checking.check(home, List.of(), CheckedLate.BOOKS, Map.of()))
        .extracting(Problem::wrong)
        .contains("The step \"polish-links\" is not in the routine mine any more.");
  }
}
