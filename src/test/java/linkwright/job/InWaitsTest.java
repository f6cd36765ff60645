package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;
import org.junit.jupiter.api.Test;

class InWaitsTest {
  private static final StepId STEP = new StepId("pickle-links");
  private static final OnWay FRESH = new OnWay(PieceKind.LINK, Stage.CHECKED, false, "");
  private static final OnWay AGAIN = new OnWay(PieceKind.LINK, Stage.CHECKED, true, "");

  private final Fact first = in(Map.of(FRESH, 4));
  private final Fact second = in(Map.of(FRESH, 2, AGAIN, 1));

  private static Fact in(Map<OnWay, Integer> what) {
    return new Fact.TimerStarted("Pickle", 480, new WaitId("pickle"), STEP, what);
  }

  private static Fact out(int count, boolean redo) {
    return new Fact.PiecesThrough(Map.of(PieceKind.LINK, count), Stage.CHECKED, redo, STEP);
  }

  private static List<InWait> after(Fact... facts) {
    InWaits waits = InWaits.NONE;
    for (int i = 0; i < facts.length; i++) {
      waits = waits.after(new Entry(i + 1, Instant.EPOCH, "bench", facts[i]));
    }
    return waits.at(STEP);
  }

  private static Fact answered(int timer) {
    return new Fact.TimerAnswered(new EntryId("bench", timer), WaitEnd.TIME, "");
  }

  @Test
  void what_goes_in_later_is_apart_and_what_comes_out_is_what_is_over() {
    assertThat(after(first, second)).extracting(each -> each.of(FRESH)).containsExactly(4, 2);
    assertThat(after(first, second, answered(2), out(2, false), out(1, true)))
        .extracting(each -> each.of(FRESH))
        .containsExactly(4);
  }

  @Test
  void more_than_was_over_is_taken_from_what_went_in_first() {
    assertThat(after(first, second, answered(1), out(5, false)))
        .extracting(each -> each.of(FRESH) + " and " + each.of(AGAIN))
        .containsExactly("1 and 1");
  }

  @Test
  void a_wait_of_which_no_pieces_are_told_is_of_all_that_is_there() {
    Fact all = in(Map.of());
    assertThat(after(all)).allMatch(InWait::isAll);
    assertThat(after(all, answered(1), out(3, false))).isEmpty();
    assertThat(after(all, answered(1), in(Map.of()))).as("it goes on").hasSize(1);
  }

  @Test
  void a_step_that_is_done_has_nothing_in_its_wait() {
    assertThat(after(first, new Fact.StepDone(STEP))).isEmpty();
    assertThat(after(first, new Fact.StepDone(new StepId("clean-test")))).hasSize(1);
  }
}
