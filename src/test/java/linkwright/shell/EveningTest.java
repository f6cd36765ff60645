package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Fact;
import linkwright.lesson.Learner;
import linkwright.lesson.Lesson;
import linkwright.quantity.UnitStyle;
import linkwright.view.Screens;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A routine taught in one evening to a student who forgets a third of it overnight, walked by her
 * at the bench the next day, and the day after: what she had forgotten is asked again before all
 * else. She is simulated; what she knows when is drawn from a seed.
 */
class EveningTest {
  private static final String ROUTINE = "torch-practice";
  private static final double KNOWN_AT_ONCE = 0.7;
  private static final double FORGOTTEN = 0.33;

  @TempDir Path folder;
  private Home home;
  private Performer performer;
  private Model model;
  private Instant now = Instant.parse("2026-03-02T18:00:00Z");
  private String mara;
  private Random chance = new Random(0);
  private final Map<String, Boolean> knows = new HashMap<>();

  private void begin(long seed) {
    chance = new Random(seed);
    home = new Home(folder);
    mara = StudentBooks.named(home, "Mara Quill").orThrow();
    Library library = Library.load(home);
    InstantSource clock = () -> now = now.plusSeconds(1);
    performer = new Performer(home, "bench", clock, () -> {});
    model = Coach.begin(Start.handbook(library), Settings.USUAL, Screens::parts, now, 80, 24);
    model =
        performer.begin(
            model,
            List.of(
                new Fact.JobOpened("Practice", ROUTINE),
                new Fact.PlanSet(Map.of("metal", "copper"))),
            Optional.empty());
  }

  private void press(String name) {
    now = now.plusSeconds(1);
    model = performer.take(model, new Message.Ticked(now, now, Optional.empty()));
    model = performer.take(model, new Message.KeyPressed(KeyNames.read(name).orElseThrow()));
  }

  private boolean asks() {
    return Pages.of(model).body().parts().stream().anyMatch(Question.class::isInstance);
  }

  private Learner learner() {
    return Learner.of(
        mara, StudentBooks.entries(StudentBooks.path(home, mara)).orThrow(), ZoneOffset.UTC, 7);
  }

  /**
   * Answers by what she knows now, and knows it afterwards; tells which item, and whether right.
   */
  private Lesson.LessonAnswer answers() {
    Learner.QuestionPut put = learner().open().orElseThrow();
    int right =
        Banks.of(model, ROUTINE).stream()
            .filter(item -> item.id().equals(put.item()))
            .findFirst()
            .orElseThrow()
            .draw(put.seed(), UnitStyle.METRIC)
            .right();
    boolean known = knows.computeIfAbsent(put.item(), any -> chance.nextDouble() < KNOWN_AT_ONCE);
    press(known ? Integer.toString(right + 1) : "0");
    knows.put(put.item(), true);
    return new Lesson.LessonAnswer(put.item(), known);
  }

  /** Goes on where an answer is told, through all its pages. */
  private void goOn() {
    for (int i = 0; i < 9 && !asks() && model.held().place() != PlaceId.BENCH && tells(); i++) {
      press("space");
    }
  }

  private boolean tells() {
    return Pages.of(model).open().stream()
        .flatMap(open -> open.act().stream())
        .anyMatch(act -> act == Act.NEXT_QUESTION || act == Act.MORE);
  }

  private void lesson() {
    model = performer.take(model, new Message.Led(PlaceId.LESSON, ROUTINE + " " + mara));
  }

  private void maraWorks() {
    String slug = home.books().get(0).getFileName().toString().replace(".yaml", "");
    model = performer.open(model, slug);
    press("@");
    model = performer.take(model, new Message.Pasted("mara quill"));
    press("ctrl-k");
    if (model.held().place() != PlaceId.SAYING) {
      model = performer.take(model, new Message.Led(PlaceId.BENCH, ""));
    }
  }

  /** Asking on teaches no more that day, so no key asks on; the next day does. */
  @Test
  void after_twelve_misses_the_day_ends_and_the_next_one_asks_again() {
    begin(1);
    lesson();
    for (int i = 0; i < 200 && asks(); i++) {
      press("0");
      goOn();
    }
    assertThat(Pages.of(model).body().parts().toString())
        .contains("The lesson is over", "the next questions come tomorrow");
    press("space");
    assertThat(asks()).as("nothing new that day").isFalse();
    lesson();
    assertThat(asks()).as("nor when she comes again").isFalse();
    now = now.plus(Duration.ofDays(1));
    model = performer.take(model, new Message.Ticked(now, now, Optional.empty()));
    lesson();
    assertThat(asks()).as("on the next day").isTrue();
  }

  @ParameterizedTest
  @ValueSource(longs = {20261126, 1, 2, 3})
  void what_she_forgot_overnight_is_asked_at_the_bench_and_then_before_all_else(long seed) {
    begin(seed);
    lesson();
    int asked = 0;
    for (int lesson = 0; lesson < 12; lesson++) {
      for (; asks(); asked++) {
        answers();
        goOn();
      }
      model = performer.take(model, new Message.ActChosen(Act.MORE_QUESTIONS));
    }
    assertThat(asks()).as("all of it was asked in one evening").isFalse();
    assertThat(learner().learnt().items()).hasSameSizeAs(Banks.of(model, ROUTINE));
    assertThat(asked).isGreaterThanOrEqualTo(Banks.of(model, ROUTINE).size());

    now = now.plus(Duration.ofHours(16));
    knows.replaceAll((item, known) -> chance.nextDouble() >= FORGOTTEN);
    maraWorks();
    Set<String> forgotten = new LinkedHashSet<>();
    Set<String> said = new HashSet<>();
    for (int i = 0; i < 300 && !model.notice().text().contains("the last step"); i++) {
      if (model.held().place() == PlaceId.SAYING && asks()) {
        Lesson.LessonAnswer answer = answers();
        said.add(answer.item());
        if (!answer.right()) {
          forgotten.add(answer.item());
          goOn();
          assertThat(learner().open().orElseThrow().item())
              .as("seed " + seed + ": asked again at once")
              .isEqualTo(answer.item());
        }
      } else if (model.held().place() == PlaceId.SAYING) {
        press("space");
      } else {
        boolean card =
            Pages.of(model).open().stream()
                .anyMatch(open -> open.act().filter(Act.SEEN::equals).isPresent());
        press(card || BenchAnswers.away(model) ? "space" : "n");
      }
    }
    assertThat(said).as("seed " + seed + ", at " + model.notice().text()).hasSize(9);
    assertThat(forgotten).as("seed " + seed).isNotEmpty();

    now = now.plus(Duration.ofDays(1));
    Learner before = learner();
    Set<String> missed = new HashSet<>();
    before.learnt().items().keySet().stream()
        .filter(item -> before.learnt().isMissedLast(item))
        .forEach(missed::add);
    assertThat(missed).containsAll(forgotten);
    lesson();
    Set<String> first = new LinkedHashSet<>();
    for (int i = 0; i < 200; i++) {
      if (!asks()) {
        model = performer.take(model, new Message.ActChosen(Act.MORE_QUESTIONS));
      }
      if (!asks() || !missed.contains(learner().open().orElseThrow().item())) {
        break;
      }
      first.add(answers().item());
      goOn();
    }
    assertThat(first).as("seed " + seed).containsAll(forgotten).isSubsetOf(missed);
    forgotten.forEach(item -> assertThat(learner().learnt().known(item)).isFalse());
  }
}
