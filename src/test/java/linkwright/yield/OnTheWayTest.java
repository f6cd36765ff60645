package linkwright.yield;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is lost of pieces at each stage, and what no count of pieces can be. */
class OnTheWayTest {
  private static final StagePassed NOTHING_SEEN = new StagePassed(0, 0);

  /**
   * One in ten is usually lost, Beta(1, 9), half of it when judged: at the last stage Beta(0.5, 9),
   * before it Beta(0.5, 9.5). Of 20 new ones and 5 that wait 9 in 10 come good, of 3 that wait at
   * the last stage 9 in 9.5.
   */
  @Test
  void who_has_only_the_last_stage_before_it_is_less_often_lost() {
    OnTheWay way = new OnTheWay(0.1, List.of(NOTHING_SEEN, NOTHING_SEEN), List.of(5, 3));
    assertThat(way.loss(20).mean()).isCloseTo(1 - (25 * 0.9 + 3 / 9.5 * 9) / 28, within(1e-9));
  }

  /** 30 of 30 came through the first: Beta(0.5, 39.5) is lost there, 1 in 80. */
  @Test
  void what_came_through_so_far_lets_more_be_expected() {
    OnTheWay way = new OnTheWay(0.1, List.of(new StagePassed(30, 0), NOTHING_SEEN), List.of(8, 0));
    assertThat(way.loss(0).mean()).isCloseTo(1 - 79.0 / 80 * 9 / 9.5, within(1e-9));
  }

  @Test
  void where_every_piece_is_lost_no_number_is_enough_and_the_loss_is_told() {
    OnTheWay.Further further =
        new OnTheWay(1, List.of(NOTHING_SEEN), List.of(2)).further(List.of(3), 0.9);
    assertThat(further.further()).isEqualTo(OptionalInt.empty());
    assertThat(further.loss().mean()).isEqualTo(1);
  }

  @Test
  void where_none_is_lost_as_many_are_cut_as_lack() {
    OnTheWay.Further further =
        new OnTheWay(0, List.of(NOTHING_SEEN), List.of(2)).further(List.of(3, 4), 0.9);
    assertThat(further.further()).hasValue(5);
  }

  @Test
  void a_count_below_nothing_is_refused_by_its_name() {
    refused(() -> new OnTheWay(0.1, List.of(NOTHING_SEEN), List.of(-1)), "waiting");
    refused(() -> new StagePassed(-1, 0), "passed");
    refused(() -> new StagePassed(0, -1), "lost");
    refused(() -> new SizeLot(-1, 0), "more");
    refused(() -> new SizeLot(0, -1), "blanks");
  }

  @Test
  void each_stage_has_its_number_of_pieces() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new OnTheWay(0.1, List.of(NOTHING_SEEN), List.of(1, 2)));
    assertThatIllegalArgumentException().isThrownBy(() -> new OnTheWay(0.1, List.of(), List.of()));
  }

  private static void refused(Runnable made, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(made::run)
        .withMessage(name + " must be 0 or more: -1");
  }
}
