package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.form.Field;
import linkwright.coach.form.Offered;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.plan.PlanHeld;
import linkwright.job.Fact;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Typing in forms: marked texts, bare numbers, choices that narrow, the rest folded away. */
class TypingTest {
  private static final Settings INCH = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);

  private final Bencher bench = Bencher.withTheDemo();
  private int keys;

  private static Field at(Bencher bench) {
    return bench.form().fields().get(bench.form().at());
  }

  private static Bencher toField(Bencher bench, String id) {
    for (int i = 0; i < 40 && !at(bench).id().equals(id); i++) {
      bench.press("down");
    }
    return bench;
  }

  private void press(String... names) {
    keys += names.length;
    bench(names);
  }

  private void bench(String... names) {
    planner.press(names);
  }

  private Bencher planner = bench;

  private void type(String text) {
    keys += text.length();
    planner.type(text);
  }

  @Nested
  class Marked {
    @Test
    void the_first_key_replaces_what_stood_there() {
      bench.press("p");
      toField(bench, "wire").type("1");
      assertThat(at(bench).text()).isEqualTo("1");
    }

    @Test
    void an_arrow_edits_it() {
      bench.press("p");
      toField(bench, "wire").press("home").type("1");
      assertThat(at(bench).text()).isEqualTo("1" + bench.state().course().wish().get("wire"));
    }

    @Test
    void ctrl_u_empties_and_words_are_jumped() {
      bench.press("k", "n").type("one two three");
      bench.press("word-left", "word-left").type("X");
      assertThat(at(bench).text()).isEqualTo("one Xtwo three");
      bench.press("ctrl-u");
      assertThat(at(bench).text()).isEmpty();
    }

    @Test
    void a_name_that_was_begun_is_typed_anew() {
      bench.press("i", "n");
      toField(bench, "length").type("190").press("esc", "n");
      toField(bench, "length").type("2");
      assertThat(at(bench).text()).isEqualTo("2");
      bench.press("esc", "k", "n").type("kinked").press("esc", "n").type("b");
      assertThat(at(bench).text()).isEqualTo("b");
    }

    @Test
    void words_that_were_begun_go_on_where_they_ended() {
      bench.press("k", "n").type("kinked wire").press("esc", "n").type("!");
      assertThat(at(bench).text()).isEqualTo("kinked wire!");
    }
  }

  @Nested
  class BareNumbers {
    @Test
    void take_the_users_unit_and_are_kept_with_it() {
      bench.press("p");
      toField(bench, "link.length").type("15");
      assertThat(at(bench).unitToCome()).isEqualTo(" mm");
      assertThat(at(bench).trouble()).isEmpty();
      bench.press("enter", "ctrl-k", "ctrl-k");
      assertThat(bench.entered(Fact.PlanSet.class).get(1).wish())
          .containsEntry("link.length", "15 mm");
    }

    @Test
    void thirty_in_a_share_is_thirty_per_cent() {
      bench.press("p");
      toField(bench, "usual-loss").type("30").press("down");
      assertThat(bench.form().text("usual-loss")).isEqualTo("30 %");
    }

    @Test
    void an_inch_user_types_fractions_and_gauges() {
      Bencher inch = Bencher.withTheDemo(INCH).press("p");
      toField(inch, "wire").type("18");
      assertThat(inch.form().text("wire")).isEqualTo("18 AWG");
      toField(inch, "link.length").type("5/16");
      assertThat(inch.form().text("link.length")).isEqualTo("5/16 in");
    }

    @Test
    void several_take_it_each() {
      bench.press("p");
      toField(bench, "stock").type("412; 96");
      assertThat(bench.form().text("stock")).isEqualTo("412 mm, 96 mm");
    }
  }

  @Nested
  class Narrowing {
    private final Bencher plan = Bencher.with(new Fact.JobOpened("a", "scroll-and-ring"));

    @Test
    void any_part_of_name_id_or_fineness_will_do() {
      plan.type("925");
      assertThat(plan.form().text("metal")).isEqualTo("sterling");
      plan.press("ctrl-u").type("erlin");
      assertThat(plan.form().text("metal")).isEqualTo("sterling");
    }

    @Test
    void the_best_comes_first() {
      plan.type("s");
      assertThat(at(plan).offered().get(0).id()).startsWith("s");
      assertThat(at(plan).offered().stream().map(Offered::id)).contains("sterling");
      plan.type("terling").press("down");
      assertThat(plan.form().text("metal")).isEqualTo("sterling");
    }

    /** The first gold, 9 k, and silver of 935 were taken in silence. */
    @ParameterizedTest
    @ValueSource(strings = {"gold", "silver", "935"})
    void what_several_have_is_asked_about_as_it_is_left_and_never_taken(String typed) {
      plan.type(typed);
      assertThat(plan.form().fields().get(0).trouble()).as("while it is typed").isEmpty();
      plan.press("down");
      assertThat(plan.form().text("metal")).isEqualTo(typed);
      assertThat(plan.form().fields().get(0).trouble().orElse("")).startsWith("Which “" + typed);
    }

    @Test
    void what_several_have_is_not_kept_until_one_is_chosen() {
      plan.type("gold").press("down").type("1 mm").press("ctrl-k");
      assertThat(plan.form().at()).isZero();
      assertThat(at(plan).trouble().orElse("")).startsWith("Which “gold”? gold-");
      plan.press("right");
      assertThat(plan.form().text("metal")).isEqualTo("gold-9k-yellow");
      assertThat(at(plan).trouble()).isEmpty();
    }

    @Test
    void what_is_none_of_them_stays_and_is_told() {
      plan.type("zinnober").press("down");
      assertThat(plan.form().fields().get(0).text()).isEqualTo("zinnober");
      assertThat(plan.form().fields().get(0).trouble()).isPresent();
    }
  }

  @Nested
  class FewKeys {
    @Test
    void a_chain_is_planned_in_fifty() {
      planner = Bencher.atTheTray();
      press("n");
      type("Jo");
      press("ctrl-k");
      planner = Bencher.with(new Fact.JobOpened("Jo", "scroll-and-ring"));
      type("ster");
      press("enter");
      type("0.9");
      press("enter", "enter");
      type("14");
      press("enter");
      type("5");
      press("enter", "enter");
      type("450");
      press("ctrl-k");
      assertThat(planner.entered(Fact.PlanSet.class)).as(planner.notice()).hasSize(1);
      assertThat(keys).isLessThanOrEqualTo(50);
    }

    @Test
    void a_test_piece_is_logged_in_twelve() {
      press("t", "n");
      type("14.1");
      press("enter");
      type("5");
      press("ctrl-k");
      assertThat(bench.entered(Fact.TestPieceTried.class)).as(bench.notice()).hasSize(1);
      assertThat(keys).isLessThanOrEqualTo(12);
    }

    @Test
    void a_new_plan_asks_only_what_decides() {
      Bencher plan = Bencher.with(new Fact.JobOpened("Jo", "scroll-and-ring"));
      assertThat(plan.form().lines()).hasSize(9);
      plan.press("up", "up", "enter");
      assertThat(plan.form().lines()).hasSize(plan.form().fields().size() + 1);
    }
  }

  @Nested
  class Explained {
    @Test
    void a_question_mark_explains_the_field_and_is_not_typed() {
      bench.press("p");
      toField(bench, "wire").press("?");
      assertThat(bench.form().explained()).isTrue();
      assertThat(at(bench).help()).contains("thickness");
      bench.press("esc");
      assertThat(bench.form().explained()).isFalse();
    }

    @Test
    void within_words_it_is_typed() {
      bench.press("k", "n").type("why?");
      assertThat(at(bench).text()).isEqualTo("why?");
    }

    @Test
    void every_field_of_a_plan_says_what_it_is_and_what_it_changes() {
      Bencher plan = Bencher.with(new Fact.JobOpened("Jo", "scroll-and-ring"));
      assertThat(plan.form().fields()).allSatisfy(f -> assertThat(f.help()).isNotBlank());
    }
  }

  @Test
  void one_bad_field_keeps_the_last_good_results() {
    bench.press("p");
    toField(bench, "finished-length").type("x");
    PlanHeld held = (PlanHeld) bench.model().held();
    assertThat(held.preview().counted().holds()).isFalse();
    assertThat(held.last().orElseThrow().counted().holds()).isTrue();
  }
}
