package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CourseTest {
  private static Course course(Fact... facts) {
    return ShortBook.state(facts).course();
  }

  @Test
  void a_job_that_is_opened_has_its_name_and_routine_and_no_step_yet() {
    Course course = course(new Fact.JobOpened("Harbour chain", "cable"));
    assertThat(course.name()).isEqualTo("Harbour chain");
    assertThat(course.routine()).isEqualTo("cable");
    assertThat(course.step()).isEqualTo(StepId.NONE);
    assertThat(course.closed()).isFalse();
  }

  @Test
  void a_job_opened_anew_keeps_what_was_planned_and_learnt_and_is_open() {
    Course course =
        course(
            new Fact.JobOpened("Harbour chain", "cable"),
            new Fact.PlanSet(Map.of("wire", "1 mm")),
            new Fact.StepOpened(new StepId("form-links")),
            new Fact.StepDone(new StepId("form-links")),
            new Fact.TimerStarted(
                "Pickle", 480, new WaitId("pickle"), new StepId("form-links"), Map.of()),
            new Fact.JobClosed("a longer mandrel"),
            new Fact.JobOpened("Harbour chain, again", "belcher"));
    assertThat(course.name()).isEqualTo("Harbour chain, again");
    assertThat(course.routine()).isEqualTo("belcher");
    assertThat(course.wish()).containsExactly(Map.entry("wire", "1 mm"));
    assertThat(course.step()).isEqualTo(new StepId("form-links"));
    assertThat(course.stepsDone()).containsExactly(new StepId("form-links"));
    assertThat(course.waits().at(new StepId("form-links"))).hasSize(1);
    assertThat(course.nextTime()).isEqualTo("a longer mandrel");
    assertThat(course.closed()).isFalse();
  }

  @Test
  void the_last_plan_that_was_set_is_the_plan() {
    Course course =
        course(
            new Fact.PlanSet(Map.of("wire", "1 mm", "kerf", "0.3 mm")),
            new Fact.PlanSet(Map.of("wire", "0.9 mm")));
    assertThat(course.wish()).containsExactly(Map.entry("wire", "0.9 mm"));
  }

  @Nested
  class Steps {
    @Test
    void the_step_opened_last_is_open() {
      assertThat(
              course(
                      new Fact.StepOpened(new StepId("cut")),
                      new Fact.StepOpened(new StepId("form")))
                  .step())
          .isEqualTo(new StepId("form"));
    }

    @Test
    void steps_done_add_up_and_stay_done_when_another_is_opened() {
      Course course =
          course(
              new Fact.StepDone(new StepId("set-out")),
              new Fact.StepDone(new StepId("draw")),
              new Fact.StepOpened(new StepId("form")));
      assertThat(course.stepsDone())
          .containsExactlyInAnyOrder(new StepId("set-out"), new StepId("draw"));
    }

    @Test
    void a_wait_is_begun_for_its_step_whatever_step_is_opened_and_one_of_her_own_for_none() {
      Fact pickle =
          new Fact.TimerStarted(
              "Pickle", 480, new WaitId("pickle"), new StepId("pickle-links"), Map.of());
      Fact own = new Fact.TimerStarted("Pickle", 480);
      assertThat(course(pickle, own, new Fact.StepOpened(new StepId("check"))).waits().all())
          .extracting(InWait::begun)
          .containsExactly(Set.of(new WaitId("pickle")));
    }
  }

  @Nested
  class Closing {
    private final Fact open = new Fact.JobOpened("Harbour chain", "cable");
    private final Fact closed = new Fact.JobClosed("solder in two heats");

    @Test
    void says_what_to_do_differently_and_leaves_the_rest() {
      Course course = course(open, new Fact.StepOpened(new StepId("finish")), closed);
      assertThat(course.closed()).isTrue();
      assertThat(course.nextTime()).isEqualTo("solder in two heats");
      assertThat(course.step()).isEqualTo(new StepId("finish"));
      assertThat(course.name()).isEqualTo("Harbour chain");
    }

    @Test
    void a_closed_job_that_is_opened_again_keeps_what_it_taught() {
      Course course = course(open, closed, new Fact.JobReopened("a link came loose"));
      assertThat(course.closed()).isFalse();
      assertThat(course.nextTime()).isEqualTo("solder in two heats");
    }

    @Test
    void a_remark_changes_nothing_of_it() {
      assertThat(course(open, closed, new Fact.Noted("sold"))).isEqualTo(course(open, closed));
    }
  }

  @Nested
  class Passed {
    private final StepId anneal = new StepId("anneal");
    private final StepId form = new StepId("form");
    private final BenchFact.StepSkipped skipped = new BenchFact.StepSkipped(anneal, "wire is soft");
    private final BenchFact.StepSkipped also = new BenchFact.StepSkipped(form, "bought jump rings");

    @Test
    void a_step_that_was_skipped_says_why() {
      assertThat(course(skipped, also).passed()).isEqualTo(Map.of(anneal, skipped, form, also));
    }

    @Test
    void what_was_worked_at_after_all_is_passed_no_more() {
      assertThat(course(skipped, also, new Fact.StepDone(anneal)).passed())
          .isEqualTo(Map.of(form, also));
      Fact through = new Fact.PiecesThrough(Map.of(PieceKind.LINK, 1), Stage.FORMED, false, form);
      assertThat(course(skipped, also, through).passed()).isEqualTo(Map.of(anneal, skipped));
    }
  }

  @Test
  void of_two_steps_the_one_done_last_was_done_since_the_other() {
    StepId anneal = new StepId("anneal");
    StepId draw = new StepId("draw");
    Course course = course(new Fact.StepDone(anneal), new Fact.StepDone(draw));
    assertThat(course.doneSince(draw, anneal)).isTrue();
    assertThat(course.doneSince(anneal, draw)).isFalse();
    assertThat(course.doneSince(draw, draw)).isFalse();
    assertThat(course.doneSince(draw, new StepId("pickle"))).isTrue();
    assertThat(course.doneSince(new StepId("pickle"), draw)).isFalse();
    Course again =
        course(new Fact.StepDone(anneal), new Fact.StepDone(draw), new Fact.StepDone(anneal));
    assertThat(again.doneSince(anneal, draw)).isTrue();
  }
}
