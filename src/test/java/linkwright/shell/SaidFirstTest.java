package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import linkwright.coach.Pages;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.keys.Act;
import linkwright.job.CautionMet;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** What a student says before it is shown: which step comes, and what can happen there. */
class SaidFirstTest extends StudentBench {
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
    assertThat(learner().learnt().missed("scroll-and-ring/next/lay-out/order")).isTrue();
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

  @Test
  void what_comes_is_not_found_and_looked_at_before_she_has_said_it() {
    maraWorks();
    press(rightKey(), "space", "f");
    "Anneal the wire".chars().forEach(letter -> press(Character.toString(letter)));
    press("enter");
    assertThat(parts().toString()).doesNotContain("Only a look");
    assertThat(model.notice().text()).contains("says what comes before it is shown");
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

  /** Found by name, the steps would stand in the order that is asked; its words would name it. */
  @Test
  void neither_what_is_found_nor_the_words_explained_give_away_what_comes() {
    maraWorks();
    assertThat(found()).noneMatch(line -> line.get(0).equals("step"));
    assertThat(words()).doesNotContain("word of this step");
    press(rightKey(), "space");
    assertThat(words()).contains("word of this step");
    List<String> steps =
        found().stream().filter(line -> line.get(0).equals("step")).map(l -> l.get(1)).toList();
    assertThat(steps).isNotEmpty().isSorted();
  }

  private List<List<String>> found() {
    lead(PlaceId.FIND, "");
    press("s", "t", "e", "p");
    List<List<String>> lines =
        parts().stream()
            .filter(Table.class::isInstance)
            .flatMap(part -> ((Table) part).lines().stream())
            .map(Table.Line::cells)
            .toList();
    press("esc");
    return lines;
  }

  private String words() {
    lead(PlaceId.BENCH, "");
    press("e");
    assertThat(model.held().place()).isEqualTo(PlaceId.LOOKUP);
    String all = parts().toString();
    lead(PlaceId.BENCH, "");
    return all;
  }

  /**
   * A week after she read a card she says what can happen there, once a day, and reads it if not.
   */
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
    String card =
        Banks.of(model, "scroll-and-ring").stream()
            .filter(item -> item.id().equals(put.item()))
            .map(Item::caution)
            .findFirst()
            .orElseThrow();
    assertThat(card).isNotEmpty();
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
    press(rightKey());
  }

  /** Taught in one evening, walked the next day without the screen, asked again a gap later. */
  @Test
  void what_is_forgotten_at_the_bench_the_next_day_comes_first_at_its_gap() {
    lead(PlaceId.LESSON, "scroll-and-ring " + mara);
    for (int i = 0; i < 40 && question().isPresent(); i++) {
      press(rightKey(), "space");
    }
    assertThat(learner().learnt().items()).hasSize(12);
    now = now.plus(Duration.ofDays(1));
    model = performer.open(model, slug());
    maraWorks();
    String right = rightKey();
    press(right.equals("1") ? "2" : "1", "space");
    press(rightKey(), "space");
    String forgotten = "scroll-and-ring/next/lay-out/order";
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
}
