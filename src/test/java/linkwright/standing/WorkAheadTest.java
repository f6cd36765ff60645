package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.job.Fact;
import linkwright.job.Pile;
import linkwright.plan.FigureSource;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Work that is still to go and the time it takes, reckoned by hand. */
class WorkAheadTest {
  private static final StepId FORM = new StepId("form-links");

  /** Ten cut, six of them annealed, two of these formed; 20 more are to be cut, 27 wanted. */
  @ParameterizedTest
  @CsvSource({
    "cut, 20, 0",
    "annealed, 24, 0",
    "formed, 28, 0",
    "soldered, 30, 0",
    "checked, 30, 0",
    "trued, 27, 27",
    "joined, 27, 27",
    "no-such-stage, 27, 27",
  })
  void pieces_come_through_the_stages_that_they_have_before_them(
      String stage, int through, int onceEnough) {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new Fact.WireCut(PieceKind.LINK, 10, 38.1));
    for (Map.Entry<String, Integer> come :
        List.of(Map.entry("annealed", 6), Map.entry("formed", 2))) {
      book.enter(
          new Fact.PiecesThrough(
              Map.of(PieceKind.LINK, come.getValue()),
              new Stage(come.getKey()),
              false,
              new StepId("a")));
    }
    Pile pile = book.state().piles().of(PieceKind.LINK);
    assertThat(new WorkAhead(27, 20, false, pile).through(new Stage(stage))).isEqualTo(through);
    assertThat(new WorkAhead(27, 20, true, pile).through(new Stage(stage)))
        .as("enough came good: what is in work stays as it is")
        .isEqualTo(onceEnough);
  }

  /** After the judging only those that the chain takes go on: 3 wanted, 5 there. */
  @Test
  void spares_do_not_go_on_after_they_were_judged() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new Fact.WireCut(PieceKind.LINK, 5, 38.1));
    for (String stage : List.of("annealed", "formed", "soldered", "pickled", "checked", "trued")) {
      book.enter(
          new Fact.PiecesThrough(
              Map.of(PieceKind.LINK, 5), new Stage(stage), false, new StepId("a")));
    }
    Pile pile = book.state().piles().of(PieceKind.LINK);
    assertThat(new WorkAhead(3, 0, true, pile).through(new Stage("trued"))).isZero();
    assertThat(new WorkAhead(3, 0, true, pile).through(Stage.JOINED)).isEqualTo(3);
  }

  /** Ten at 60 s are 600 s; √(10 · 30² + (10 · 30)² / 3) = √39 000 s in doubt. */
  @Test
  void what_was_never_timed_goes_by_what_is_usual_and_its_doubt_is_told() {
    Forecast forecast =
        Forecast.of(
            List.of(new Forecast.Work(FORM, 10, 60, false, false)),
            JobBook.scroll(Wishes.common().texts()).state().times());
    assertThat(forecast.seconds()).isCloseTo(600, Offset.offset(1e-9));
    assertThat(forecast.spread()).isCloseTo(Math.sqrt(39_000), Offset.offset(1e-9));
    assertThat(forecast.learned()).isFalse();
  }

  /** Two formed in 10 minutes, the usual being 60 s: (600 + 3 · 60) / 5 = 156 s each from now. */
  @Test
  void what_she_was_timed_at_draws_the_usual_time_to_hers() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(new Fact.WireCut(PieceKind.LINK, 4, 38.1));
    book.enter(
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 4), new Stage("annealed"), false, new StepId("a")));
    book.enter(new Fact.SittingStarted(""));
    book.enter(new Fact.StepOpened(FORM));
    book.after(10);
    book.enter(new Fact.PiecesThrough(Map.of(PieceKind.LINK, 2), new Stage("formed"), false, FORM));
    Forecast forecast =
        Forecast.of(List.of(new Forecast.Work(FORM, 10, 60, false, false)), book.state().times());
    assertThat(forecast.seconds()).isCloseTo(10 * 156, Offset.offset(1e-6));
    assertThat(forecast.spread())
        .isCloseTo(Math.sqrt(10 * 78 * 78 + 780.0 * 780 / 5), Offset.offset(1e-6));
    assertThat(forecast.learned()).isTrue();
  }

  @Test
  void where_nothing_is_left_nothing_goes_and_none_of_it_is_usual() {
    assertThat(Forecast.of(List.of(), JobBook.of("scroll-and-ring").state().times()))
        .isEqualTo(new Forecast(0, 0, true));
    assertThat(new JobHours(0, new Forecast(0, 0, true)).from()).isEqualTo(FigureSource.LEARNED);
  }
}
