package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.cautions.CautionsHeld;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.lookup.LookUpHeld;
import linkwright.job.Fact;
import linkwright.view.Glyphs;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;

/** Anything is found by a part of its name and gone to. */
class FindTest {
  private final Bencher bench = Bencher.withTheDemo();

  private Bencher find(String words) {
    return bench.press("f").type(words).press("enter");
  }

  @Test
  void places_are_found() {
    assertThat(find("test piec").model().held().place()).isEqualTo(PlaceId.TEST_PIECES);
    assertThat(find("reckoner").model().held().place()).isEqualTo(PlaceId.RECKONER);
    assertThat(find("settings").model().held().place()).isEqualTo(PlaceId.SETTINGS);
  }

  @Test
  void an_act_leads_to_its_place_and_names_its_key() {
    assertThat(find("weigh out").model().held().place()).isEqualTo(PlaceId.WIRE);
    assertThat(bench.notice()).contains("o does it");
  }

  @Test
  void what_is_alike_is_told_apart() {
    List<Findable> all = Findable.all(bench.model());
    assertThat(
            all.stream()
                .map(
                    each ->
                        each.kind() + "; " + each.name() + "; " + each.apart(bench.model(), all)))
        .doesNotHaveDuplicates();
    Findable alike =
        all.stream().filter(each -> !each.apart(bench.model(), all).isEmpty()).findFirst().get();
    bench.press("f").type(alike.name());
    assertThat(Shown.draw(bench.model(), Glyphs.FULL).text())
        .contains(alike.apart(bench.model(), all));
  }

  /** Whoever only wants to read on has passed nothing by it. */
  @Test
  void a_step_is_looked_at_and_nothing_is_entered_by_it() {
    bench.goTo("cut-blanks");
    int open = bench.at().number();
    int entered = bench.performed(Effect.KeepFacts.class).size();
    String title = bench.at().routine().steps().get(open + 3).title();
    find(title);
    assertThat(bench.performed(Effect.KeepFacts.class)).hasSize(entered);
    assertThat(bench.at().number()).isEqualTo(open);
    assertThat(Shown.draw(bench.model(), Glyphs.FULL).text())
        .contains(title)
        .contains("Only a look: step " + open + " stays open");
    // It was said that a question stood there, and none did.
    for (String key : List.of("r", "u")) {
      assertThat(bench.press(key).notice())
          .as(key)
          .contains("You only look at this step", "opens this")
          .doesNotContain("question");
    }
    bench.press("space");
    assertThat(Shown.draw(bench.model(), Glyphs.FULL).text()).doesNotContain("Only a look");
    assertThat(bench.performed(Effect.KeepFacts.class)).hasSize(entered);
  }

  @Test
  void a_step_that_was_found_is_opened_by_the_key_that_opens_what_is_looked_at() {
    String title = bench.at().routine().steps().get(4).title();
    find(title).press("g").seeCautions();
    assertThat(bench.at().number()).as("its own cards come first").isEqualTo(1);
    find(title).press("g").seeCautions();
    assertThat(bench.at().number()).isEqualTo(5);
  }

  @Test
  void a_step_is_looked_at_without_beginning_a_sitting_or_opening_a_closed_job() {
    String title = bench.at().routine().steps().get(4).title();
    bench.goTo("cut-blanks").press("q");
    int entered = bench.performed(Effect.KeepFacts.class).size();
    find(title);
    assertThat(Shown.draw(bench.model(), Glyphs.FULL).text()).contains("Only a look");
    assertThat(bench.performed(Effect.KeepFacts.class)).hasSize(entered);
    bench.press("g");
    assertThat(bench.performed(Effect.KeepFacts.class)).hasSize(entered + 1);
  }

  @Test
  void a_step_that_this_job_leaves_out_is_not_found() {
    for (String metal : List.of("sterling", "brass")) {
      Bencher job =
          Bencher.with(
              new Fact.JobOpened("Cable", "round-cable"), new Fact.PlanSet(Map.of("metal", metal)));
      List<String> steps =
          Findable.all(job.model()).stream()
              .filter(each -> each.kind().equals("step"))
              .map(Findable::id)
              .toList();
      assertThat(steps.contains("mark")).as(metal).isEqualTo(metal.equals("sterling"));
    }
  }

  @Test
  void a_caution_is_shown_whole() {
    find("caution pickle");
    assertThat(bench.model().held()).isInstanceOf(CautionsHeld.class);
    assertThat(((CautionsHeld) bench.model().held()).open()).isTrue();
  }

  @Test
  void metals_words_and_sums_are_found() {
    find("metal 925");
    assertThat(((LookUpHeld) bench.model().held()).open()).isTrue();
    bench.press("enter");
    find("word pallion");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.LOOKUP);
    find("sum weighs");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.RECKONER);
    assertThat(bench.form().title()).contains("wire weighs");
  }

  @Test
  void a_job_is_opened() {
    bench.take(
        new Message.TrayRead(
            List.of(new TrayJob("other", "Another chain", "", List.of(), bench.now(), false)),
            0,
            List.of(),
            Optional.empty(),
            Optional.empty()));
    find("another ch");
    assertThat(bench.performed(Effect.OpenBook.class)).isNotEmpty();
  }

  @Test
  void esc_goes_back_to_where_one_was() {
    bench.press("w", "f").type("zzz").press("esc");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.WIRE);
  }

  @Test
  void what_is_called_nothing_is_told() {
    find("qqqq");
    assertThat(bench.notice()).contains("Nothing is called that");
  }

  @Test
  void lists_are_narrowed_by_any_part_of_any_word() {
    Bencher cautions = Bencher.withTheDemo().press("c", "/").type("pick").press("enter");
    assertThat(((CautionsHeld) cautions.model().held()).search()).isEqualTo("pick");
    cautions.press("enter");
    assertThat(((CautionsHeld) cautions.model().held()).open()).isTrue();
  }

  @Test
  void settings_are_changed_in_the_program() {
    bench.press(",").type("inch").press("ctrl-k");
    assertThat(bench.performed(Effect.KeepSettings.class).get(0).texts())
        .containsEntry("units", "inch");
  }

  @Test
  void across_the_room_one_number_takes_the_screen() {
    bench.goTo("cut-blanks").press("=");
    assertThat(Pages.of(bench.model()).across()).isPresent();
    bench.press("space", "=");
    assertThat(Pages.of(bench.model()).across()).isEmpty();
  }

  @Test
  void escape_ends_the_one_number_and_a_place_without_one_stays_whole() {
    bench.goTo("cut-blanks").press("=", "esc");
    assertThat(Pages.of(bench.model()).across()).isEmpty();
    assertThat(bench.model().settings().across()).isFalse();
    bench.press("esc", "k", "=");
    assertThat(Pages.of(bench.model()).across()).isEmpty();
    assertThat(Pages.of(bench.model()).told()).contains("No count stands here");
    assertThat(bench.model().settings().across()).as("nothing to be ended").isFalse();
    bench.goTo("cut-blanks");
    assertThat(Pages.of(bench.model()).across()).isEmpty();
  }

  @Test
  void what_is_pasted_is_looked_for_and_told_of_where_no_field_takes_it() {
    bench.take(new Message.Pasted("ten links"));
    assertThat(Pages.of(bench.model()).told()).contains("What was pasted is dropped");
    bench.press("f");
    bench.take(new Message.Pasted("pickle"));
    assertThat(Shown.draw(bench.model(), Glyphs.FULL).text()).contains("Find: pickle_");
  }

  @Test
  void a_question_mark_explains_what_can_be_found_and_is_not_typed() {
    bench.press("f").type("pick").press("?");
    assertThat(Pages.of(bench.model()).told()).startsWith("Type any part of the name");
    assertThat(Shown.draw(bench.model(), Glyphs.FULL).text()).contains("Find: pick_");
    bench.take(new Message.Resized(40, 12));
    assertThat(Shown.draw(bench.model(), Glyphs.FULL).text())
        .as("no key turns over what is told here: v is typed")
        .contains("ctrl-u empties\n it.")
        .doesNotContain("page 1 of", "this 1 of");
  }
}
