package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** Hours put right by hand, of one step or of the whole job. */
class HoursCorrectedTest {
  private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
  private static final StepId CUT = new StepId("cut");
  private static final StepId FORM = new StepId("form");

  private TimeSheet sheet = TimeSheet.EMPTY;
  private int number;

  private HoursCorrectedTest at(int minutes, Fact fact) {
    Instant when = MORNING.plus(Duration.ofMinutes(minutes));
    sheet = sheet.after(new Entry(++number, when, "bench", fact));
    return this;
  }

  /** 10 min of cutting and 20 of forming. */
  private HoursCorrectedTest worked() {
    return at(0, new Fact.SittingStarted(""))
        .at(0, new Fact.StepOpened(CUT))
        .at(10, new Fact.StepOpened(FORM))
        .at(30, new Fact.SteppedAway(true, true, true));
  }

  private static Fact is(StepId step, double seconds) {
    return new BenchFact.HoursCorrected(step, 0, seconds, "was called away");
  }

  @Test
  void of_one_step_leaves_the_others() {
    worked().at(31, is(FORM, 300));
    assertThat(sheet.secondsByStep()).isEqualTo(Map.of(CUT, 600.0, FORM, 300.0));
  }

  @Test
  void of_the_whole_job_is_the_whole_and_leaves_what_the_steps_have() {
    worked().at(31, is(StepId.NONE, 2400));
    assertThat(sheet.totalSeconds()).isEqualTo(2400);
    assertThat(sheet.secondsByStep())
        .isEqualTo(Map.of(CUT, 600.0, FORM, 1200.0, StepId.NONE, 600.0));
    at(32, is(StepId.NONE, 1500));
    assertThat(sheet.totalSeconds()).as("the last word holds").isEqualTo(1500);
    assertThat(sheet.secondsByStep()).containsEntry(CUT, 600.0).containsEntry(FORM, 1200.0);
  }

  @Test
  void work_after_it_adds_to_what_was_put_right() {
    worked().at(31, is(FORM, 300));
    at(40, new Fact.SittingStarted("")).at(42, new Fact.StepOpened(CUT));
    assertThat(sheet.secondsByStep()).containsEntry(FORM, 420.0);
    assertThat(sheet.step()).isEqualTo(CUT);
  }

  @Test
  void a_step_passed_in_the_same_moment_has_no_hours() {
    at(0, new Fact.SittingStarted("")).at(0, new Fact.StepOpened(CUT));
    at(0, new Fact.StepOpened(FORM)).at(5, new Fact.Noted("formed"));
    assertThat(sheet.secondsByStep()).isEqualTo(Map.of(FORM, 300.0));
  }
}
