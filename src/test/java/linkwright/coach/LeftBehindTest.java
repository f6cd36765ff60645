package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.coach.bench.BenchAsk;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.job.Again;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.PileSpot;
import linkwright.job.StepLeft;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.shell.Demo;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What is left behind when the work goes on: pieces, failures, steps with nothing done. */
class LeftBehindTest {
  private final Bencher bench = Bencher.withTheDemo().press("esc");

  private static BenchAsk ask(Bencher bench) {
    return ((BenchHeld) bench.model().held()).ask();
  }

  private static Optional<Question> question(Bencher bench) {
    return Pages.of(bench.model()).body().parts().stream()
        .filter(Question.class::isInstance)
        .map(Question.class::cast)
        .findFirst();
  }

  private static String said(Bencher bench, Prose.Kind kind) {
    return Pages.of(bench.model()).body().parts().stream()
        .filter(part -> part instanceof Prose prose && prose.kind() == kind)
        .map(part -> ((Prose) part).text())
        .findFirst()
        .orElse("");
  }

  @Test
  void rings_without_a_link_to_join_are_told_and_again_as_one_is_counted() {
    bench.goTo("cut-rings").type("5").press("space").goTo("join");
    assertThat(stops(bench)).contains("No link is here yet for a ring");
    bench.press("space", "space");
    assertThat(bench.pile("ring").waitingFor(Stage.PICKLED)).isEqualTo(1);
    assertThat(bench.notice()).contains("no link is here for it");
  }

  @Test
  void rings_with_links_beside_them_are_joined_without_a_word() {
    checked(3, 3).press("a").goTo("true-links").press("a");
    bench.goTo("cut-rings").type("5").press("space").goTo("join");
    assertThat(stops(bench)).doesNotContain("No link");
    bench.press("space", "space");
    assertThat(bench.notice()).doesNotContain("no link");
  }

  /** Two links of the demo's chain, which has a ring at each end, carry three rings. */
  @Test
  void more_rings_than_the_links_there_carry_are_told_and_again_as_one_is_counted() {
    checked(2, 2).press("a").goTo("true-links").press("a");
    bench.goTo("cut-rings").type("5").press("space").goTo("join").type("3").press("space");
    if (bench.pile("ring").waitingFor(Stage.PICKLED) == 0) {
      bench.type("3").press("space");
    }
    assertThat(bench.pile("ring").waitingFor(Stage.PICKLED)).isEqualTo(3);
    assertThat(bench.notice()).doesNotContain("carry");
    assertThat(stops(bench)).contains("The 2 links carry 3 rings, and so many are joined");
    bench.press("space");
    assertThat(bench.pile("ring").waitingFor(Stage.PICKLED)).isEqualTo(4);
    assertThat(bench.notice()).startsWith("Counted, and the 2 links carry 3 rings");
  }

  @Test
  void whether_a_mark_is_due_is_asked_once() {
    bench.goTo("mark");
    assertThat(question(bench).orElseThrow().asks()).contains("by the rules the plan knows: ");
    bench.press("space").goTo("mark");
    assertThat(question(bench)).isEmpty();
    bench.press("n").press("b");
    assertThat(question(bench)).isEmpty();
    assertThat(bench.state().course().passed().get(new StepId("mark")).left())
        .isEqualTo(StepLeft.NOT_DUE);
  }

  /** Whatever words stand beside the answer: what was answered is no sentence. */
  @Test
  void that_no_mark_is_due_does_not_hang_on_its_words() {
    assertThat(question(passed("in other words", StepLeft.NOT_DUE))).isEmpty();
    assertThat(question(passed("no mark is due", StepLeft.OPEN))).isPresent();
  }

  private static Bencher passed(String why, StepLeft left) {
    List<Fact> facts = new ArrayList<>(Demo.facts(Bencher.LIBRARY));
    facts.add(new BenchFact.StepSkipped(new StepId("mark"), why, left));
    return Bencher.with(Settings.USUAL, false, facts).goTo("mark");
  }

  @Test
  void that_a_mark_is_due_goes_on_the_job_card() {
    bench.goTo("mark").press("1");
    assertThat(question(bench)).isEmpty();
    assertThat(bench.at().step().id()).isEqualTo(new StepId("mark"));
    assertThat(bench.state().card().wantsMark()).isTrue();
    bench.press("b").seeCautions().press("n");
    assertThat(question(bench)).isEmpty();
  }

  private static String stops(Bencher bench) {
    return Pages.of(bench.model()).body().parts().stream()
        .filter(part -> part instanceof Prose prose && prose.kind() == Prose.Kind.STOP)
        .map(part -> ((Prose) part).text())
        .collect(Collectors.joining(" "));
  }

  /** So many links soldered, all the rest of what was cut left behind at the torch. */
  private Bencher checked(int cut, int soldered) {
    bench.goTo("cut-blanks").type(Integer.toString(cut)).press("space");
    bench.goTo("anneal-blanks").together();
    bench.goTo("form-links").type(Integer.toString(cut)).press("space");
    bench.goTo("solder-links").type(Integer.toString(soldered)).press("space");
    bench.goTo("pickle-links").together();
    return bench.goTo("check-links");
  }

  @Nested
  class Pieces {
    @Test
    void that_wait_elsewhere_are_told_at_the_bench_and_on_the_way_round() {
      checked(10, 4);
      assertThat(said(bench, Prose.Kind.ELSEWHERE)).isEqualTo("6 links at step 16");
      bench.press("esc");
      assertThat(stands(Act.TO_PILES))
          .contains("6 links at step 16")
          .contains("4 links at step 18");
    }

    @Test
    void no_place_says_that_nothing_waits_while_something_does() {
      checked(10, 4).goTo("oval-rings");
      String rows = Pages.of(bench.model()).body().toString();
      assertThat(rows).doesNotContain("nothing waits").contains("none here");
    }

    /** Six are left at the torch, and the pickle is gone to by the piles. */
    private Bencher pickledFour() {
      bench.goTo("cut-blanks").type("10").press("space");
      bench.goTo("anneal-blanks").together();
      bench.goTo("form-links").type("10").press("space");
      bench.goTo("solder-links").type("4").press("space").press("o", "down", "enter");
      bench.seeCautions();
      assertThat(bench.at().step().id()).isEqualTo(new StepId("pickle-links"));
      return bench.together();
    }

    @Test
    void left_behind_are_told_once_before_the_common_key_goes_on_past_them() {
      pickledFour();
      assertThat(Pages.of(bench.model()).open().get(0).says()).isEqualTo("ask about what waits");
      bench.press("space");
      assertThat(question(bench).orElseThrow().asks()).startsWith("6 links at step 16 wait.");
      assertThat(bench.entered(BenchFact.StepSkipped.class))
          .noneMatch(skipped -> skipped.step().equals(new StepId("solder-links")));
      bench.press("space");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("check-links"));
      assertThat(bench.state().course().passed().get(new StepId("solder-links")).why())
          .isEqualTo("6 links left waiting");
      bench.press("space", "space", "space", "space", "space");
      assertThat(ask(bench)).as("not asked a second time").isInstanceOf(BenchAsk.Nothing.class);
      assertThat(bench.at().step().id()).isEqualTo(new StepId("true-links"));
    }

    @Test
    void left_behind_are_gone_to_by_the_first_answer() {
      pickledFour().press("space", "1");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("solder-links"));
    }

    @Test
    void of_another_kind_go_through_together_though_none_of_the_counted_kind_waits() {
      Bencher clasp = Bencher.with(new Fact.JobOpened("A clasp", "clasp-hook-and-eye"));
      clasp.press("esc").goTo("cut-eye").press("space");
      clasp.goTo("solder-eye").press("space", "space");
      clasp.goTo("pickle-eye").together();
      clasp.goTo("check-eye").press("space");
      clasp.goTo("finish");
      assertThat(Pages.of(clasp.model()).body().toString()).doesNotContain("nothing waits");
      for (int i = 0; i < 9 && clasp.pile("eye").finished() == 0; i++) {
        clasp.press("space").pass(Duration.ofMinutes(15));
      }
      assertThat(clasp.pile("eye").finished()).isEqualTo(1);
    }

    private String stands(Act act) {
      for (Part part : Pages.of(bench.model()).body().parts()) {
        if (part instanceof Acts acts) {
          return acts.choices().stream()
              .filter(choice -> choice.act() == act)
              .map(Acts.Choice::stands)
              .findFirst()
              .orElse("");
        }
      }
      return "";
    }
  }

  @Nested
  class Failures {
    private Bencher sixFail() {
      checked(10, 10).type("6").press("r", "1");
      return bench.press("space", "space", "space", "space");
    }

    @Test
    void six_at_the_check_do_not_lead_to_flattening_in_silence() {
      sixFail().press("space");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("check-links"));
      assertThat(question(bench).orElseThrow().asks()).startsWith("6 links to redo, at step 16");
      assertThat(question(bench).orElseThrow().answers())
          .extracting(Question.Answer::says)
          .containsExactly("with the next heat", "now", "let spares cover");
    }

    @Test
    void are_asked_about_once_and_wait_then_for_the_next_heat() {
      sixFail().press("space", "1");
      assertThat(bench.entered(BenchFact.RedoPlanned.class))
          .containsExactly(
              new BenchFact.RedoPlanned(PieceKind.LINK, Stage.SOLDERED, Again.NEXT_HEAT));
      bench.press("space");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("true-links"));
      assertThat(said(bench, Prose.Kind.ELSEWHERE))
          .isEqualTo("6 links to redo with the next heat at step 16");
    }

    @Test
    void that_wait_for_the_next_heat_are_no_work_while_a_wait_runs() {
      sixFail().press("space", "1").goTo("cut-blanks").type("5").press("space");
      bench.goTo("anneal-blanks").press("space", "space");
      assertThat(bench.model().timers().next()).as("in the pickle").isPresent();
      bench.press("space").seeCautions();
      assertThat(bench.at().step().id()).isEqualTo(new StepId("true-links"));
    }

    @Test
    void are_done_now_by_the_common_key() {
      sixFail().press("space", "space");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("solder-links"));
      assertThat(bench.at().redo()).isEqualTo(6);
    }

    @Test
    void to_do_again_are_told_with_their_step() {
      sixFail();
      assertThat(Pages.of(bench.model()).still()).contains("6 to redo at step 16");
    }

    @Test
    void that_are_lost_say_why_more_are_to_be_cut() {
      checked(12, 12).type("4").press("s", "1");
      assertThat(bench.notice()).contains("To cut:", "scrapped and", "this run together");
    }
  }

  @Nested
  class Steps {
    @Test
    void a_trial_that_ends_with_no_test_piece_is_told_once_and_entered() {
      bench.goTo("judge-test").press("space");
      assertThat(question(bench).orElseThrow().asks()).startsWith("No test piece is logged");
      assertThat(bench.entered(BenchFact.StepSkipped.class))
          .noneMatch(skipped -> skipped.step().equals(new StepId("judge-test")));
      bench.press("space");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("sample-links"));
      assertThat(bench.state().course().passed()).containsKey(new StepId("judge-test"));
      assertThat(bench.state().course().stepsDone()).doesNotContain(new StepId("judge-test"));
      bench.press("b", "space");
      assertThat(bench.at().step().id()).as("told once").isEqualTo(new StepId("sample-links"));
    }

    @Test
    void one_that_is_left_with_nothing_done_is_entered_as_passed() {
      bench.goTo("anneal-wire").press("n");
      assertThat(bench.state().course().passed().get(new StepId("anneal-wire")).why())
          .isEqualTo("nothing done");
      assertThat(bench.notice()).startsWith("Passed, and entered so: step 2");
    }

    @Test
    void a_jump_passes_no_caution_that_is_due() {
      bench.goTo("lay-out").press("right", "right", "right", "g");
      assertThat(bench.caution()).as("of the step after this one").isPresent();
      assertThat(bench.at().step().id()).isEqualTo(new StepId("anneal-wire"));
      bench.seeCautions();
      assertThat(bench.at().step().id()).isEqualTo(new StepId("form-test"));
      assertThat(bench.entered(Fact.CautionSeen.class))
          .extracting(Fact.CautionSeen::step)
          .contains(new StepId("anneal-wire"), new StepId("pickle-wire"), new StepId("form-test"));
      bench.press("b", "b", "b");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("lay-out"));
      bench.press("right", "right", "right", "g");
      assertThat(bench.at().step().id()).as("seen once").isEqualTo(new StepId("form-test"));
    }

    @Test
    void what_was_done_at_its_own_place_is_not_passed_with_nothing_done() {
      bench
          .press("t", "n")
          .put("length", "14.2 mm")
          .put("width", "5.9 mm")
          .press("ctrl-k", "ctrl-k");
      assertThat(bench.state().trials().pieces()).isNotEmpty();
      bench.goTo("judge-test");
      assertThat(bench.state().course().passed().keySet())
          .contains(new StepId("anneal-wire"))
          .doesNotContain(new StepId("form-test"), new StepId("clean-test"));
    }

    @Test
    void a_look_writes_nothing_and_changes_no_wait() {
      bench.goTo("pickle-wire").press("space");
      List<Entry> before = bench.entries();
      int timers = bench.state().timers().running().size();
      bench.press("right", "right", "right", "left", "v", "3", "r", "u");
      assertThat(Pages.of(bench.model()).body().title()).startsWith("a look at step 5");
      assertThat(bench.entries()).isEqualTo(before);
      assertThat(bench.state().timers().running()).hasSize(timers);
      bench.press("esc");
      assertThat(Pages.of(bench.model()).body().title()).startsWith("step 3 of");
      assertThat(bench.entries()).isEqualTo(before);
    }

    @Test
    void one_that_is_looked_at_opens_by_an_act_of_its_own() {
      bench.goTo("lay-out").press("right", "right", "g").seeCautions();
      assertThat(bench.at().step().id()).isEqualTo(new StepId("pickle-wire"));
      assertThat(bench.state().course().passed())
          .containsKeys(new StepId("lay-out"), new StepId("anneal-wire"));
    }
  }

  @Nested
  class ThePiles {
    @Test
    void lead_to_the_step_where_each_is_taken_up() {
      checked(10, 4).press("o");
      assertThat(bench.model().held().place()).isEqualTo(PlaceId.PILES);
      bench.press("enter");
      assertThat(bench.model().held().place()).isEqualTo(PlaceId.BENCH);
      assertThat(bench.at().step().id()).isEqualTo(new StepId("solder-links"));
    }

    @Test
    void may_be_told_where_they_lie_and_undo_takes_that_back_there() {
      checked(10, 4).press("o", "down", "l").type("the blue tin").press("ctrl-k");
      PileSpot pickled = new PileSpot(PieceKind.LINK, Stage.PICKLED, false, "");
      assertThat(bench.state().piles().lies(pickled)).isEqualTo("the blue tin");
      assertThat(Pages.of(bench.model()).body().toString()).contains("the blue tin");
      bench.press("u");
      assertThat(bench.state().piles().lies(pickled)).isEmpty();
      assertThat(bench.entered(Fact.Struck.class)).hasSize(1);
    }
  }
}
