package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.job.Fact;
import linkwright.job.Pile;
import linkwright.job.TimeSheet;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Three pieces' worth of the usual time are mixed with the job's own. */
class ForecastTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static final StepId FORM = new StepId("form");

  private static TimeSheet spent(StepId step, double seconds, int pieces, int times) {
    return new TimeSheet(
        Map.of(step, seconds),
        Map.of(step, pieces),
        Map.of(step, times),
        step,
        Optional.empty(),
        false);
  }

  private static double seconds(Forecast.Work work, TimeSheet times) {
    return Forecast.of(List.of(work), times).seconds();
  }

  @Test
  void before_a_piece_was_made_the_usual_time_counts() {
    Forecast.Work ten = new Forecast.Work(FORM, 10, 180, false, false);
    assertThat(seconds(ten, TimeSheet.EMPTY)).isCloseTo(1800, EXACT);
  }

  @Test
  void the_jobs_own_pace_takes_over_piece_by_piece() {
    // 6 pieces in 20 minutes beside 3 usual ones of 90 s: (1200 + 270) / 9 = 163.33 s each.
    Forecast.Work three = new Forecast.Work(new StepId("solder"), 3, 90, false, false);
    assertThat(seconds(three, spent(new StepId("solder"), 1200, 6, 6))).isCloseTo(490, EXACT);
  }

  @Test
  void a_batch_is_timed_as_one_however_many_pieces_are_in_it() {
    // One batch of 22 in 10 minutes beside 3 usual ones of 12: (600 + 2160) / 4 = 690 s.
    Forecast.Work one = new Forecast.Work(new StepId("pickle"), 1, 720, true, false);
    assertThat(seconds(one, spent(new StepId("pickle"), 600, 22, 1))).isCloseTo(690, EXACT);
  }

  @Test
  void time_in_a_step_through_which_nothing_came_yet_says_nothing_of_its_pace() {
    TimeSheet begun =
        new TimeSheet(Map.of(FORM, 400.0), Map.of(), Map.of(), FORM, Optional.empty(), false);
    assertThat(seconds(new Forecast.Work(FORM, 2, 180, false, false), begun)).isCloseTo(360, EXACT);
  }

  @Test
  void pieces_that_were_only_counted_say_nothing_of_its_pace_and_nothing_was_learnt() {
    // Nine links of 90 s counted in two seconds were made elsewhere.
    Forecast.Work left = new Forecast.Work(FORM, 3, 90, false, false);
    Forecast counted = Forecast.of(List.of(left), spent(FORM, 2, 9, 9));
    assertThat(counted.seconds()).isCloseTo(270, EXACT);
    assertThat(counted.learned()).isFalse();
    assertThat(Forecast.of(List.of(left), spent(FORM, 900, 9, 9)).learned()).isTrue();
  }

  /** Of 20 pieces made again: what was timed as long as it took, the rest at that pace. */
  @Test
  void made_again_timed_work_takes_as_long_and_work_that_was_only_counted_what_is_usual() {
    JobBook counted = JobBook.scroll(Wishes.common().texts());
    counted.enter(new Fact.WireCut(PieceKind.LINK, 20, 38));
    StepId cut = new StepId("cut");
    Forecast.Work work = new Forecast.Work(cut, 20, 60, false, false);
    assertThat(Forecast.wholeSeconds(work, counted.state())).isCloseTo(1200, EXACT);

    JobBook timed = JobBook.scroll(Wishes.common().texts());
    timed.enter(new Fact.SittingStarted(""));
    timed.enter(new Fact.StepOpened(cut));
    timed.after(10).enter(new Fact.WireCut(PieceKind.LINK, 12, 38));
    double pace = (600 + 3 * 60) / 15.0;
    assertThat(Forecast.wholeSeconds(work, timed.state())).isCloseTo(600 + 8 * pace, EXACT);
    timed.enter(new Fact.WireCut(PieceKind.LINK, 8, 38));
    assertThat(Forecast.wholeSeconds(work, timed.state())).isCloseTo(660, EXACT);
  }

  @Test
  void the_spread_shrinks_beside_the_sum_as_pieces_are_timed() {
    Forecast.Work work = new Forecast.Work(FORM, 20, 180, false, false);
    Forecast unknown = Forecast.of(List.of(work), TimeSheet.EMPTY);
    Forecast known = Forecast.of(List.of(work), spent(FORM, 180 * 30, 30, 30));
    assertThat(known.seconds()).isCloseTo(unknown.seconds(), EXACT);
    assertThat(known.spread()).isPositive().isLessThan(unknown.spread());
    // By hand: one piece varies by 90 s; 20·90² + (20·90)²/33 = 260 182, its root is 510.08.
    assertThat(known.spread()).isCloseTo(510.08, Offset.offset(0.005));
  }

  private static double hours(String loss) {
    JobBook book =
        JobBook.scroll(
            Wishes.common().with(WishKeys.USUAL_LOSS, loss).with(WishKeys.STOCK, "9 m").texts());
    return book.standing().jobHours().orElseThrow().hours();
  }

  @Test
  void the_more_is_usually_lost_the_more_blanks_are_worked_and_the_longer_it_takes() {
    assertThat(hours("20 %")).isGreaterThan(1.1 * hours("6 %"));
    assertThat(hours("60 %")).isGreaterThan(1.5 * hours("20 %"));
  }

  /** Between two numbers of blanks nothing saved by losing pieces early shortens the work. */
  @Test
  void however_little_more_is_usually_lost_it_never_takes_less_time() {
    double before = 0;
    for (int tenths = 0; tenths <= 300; tenths++) {
      double now = hours(tenths / 10.0 + " %");
      assertThat(now).as("%s tenths of a percent", tenths).isGreaterThanOrEqualTo(before);
      before = now;
    }
  }

  @Test
  void every_blank_is_worked_up_to_where_it_is_judged() {
    Pile none = JobBook.scroll(Wishes.common().texts()).state().piles().of(PieceKind.LINK);
    WorkAhead ahead = new WorkAhead(8, 20, false, none);
    for (Stage stage : none.stages().subList(0, StillToDo.judged(none) + 1)) {
      assertThat(ahead.through(stage)).as(stage.toString()).isEqualTo(20);
    }
    assertThat(ahead.through(Stage.JOINED)).as("only what the chain takes is joined").isEqualTo(8);
  }

  @Test
  void a_piece_on_its_way_has_only_the_stages_before_it_and_none_where_enough_came_good() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new Fact.WireCut(PieceKind.LINK, 5, 38));
    Pile five = book.state().piles().of(PieceKind.LINK);
    WorkAhead ahead = new WorkAhead(5, 2, false, five);
    assertThat(ahead.through(five.stages().get(0))).isEqualTo(2);
    assertThat(ahead.through(five.stages().get(1))).isEqualTo(7);
    assertThat(new WorkAhead(5, 2, true, five).through(five.stages().get(1))).isZero();
  }

  @Test
  void nothing_left_takes_no_time() {
    assertThat(Forecast.of(List.of(), TimeSheet.EMPTY)).isEqualTo(new Forecast(0, 0, true));
  }
}
