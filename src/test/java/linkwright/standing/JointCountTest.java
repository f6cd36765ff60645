package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.util.Map;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Joints counted by link, against counting on the fingers. */
class JointCountTest {
  /** Looked at in order: whole links first, then what is left of the last one. */
  @ParameterizedTest
  @CsvSource({
    // failed, of, each: pieces, over, fewest and most that failed
    "0, 18, 2, 9, 0, 0, 0",
    "6, 18, 2, 9, 0, 3, 6",
    "3, 18, 2, 9, 0, 2, 3",
    "12, 18, 2, 9, 0, 6, 9",
    "18, 18, 2, 9, 0, 9, 9",
    "1, 19, 2, 10, 1, 1, 1",
    "19, 19, 2, 10, 1, 10, 10",
    "1, 1, 2, 1, 1, 1, 1",
    "4, 5, 3, 2, 2, 2, 2",
    "5, 7, 1, 7, 0, 5, 5"
  })
  void failed_joints_are_on_so_many_links_at_least_and_at_most(
      int failed, int of, int each, int pieces, int over, int fewest, int most) {
    JointCount count = new JointCount(failed, of, each);
    assertThat(count.pieces()).isEqualTo(pieces);
    assertThat(count.over()).isEqualTo(over);
    assertThat(count.fewestFailed()).isEqualTo(fewest);
    assertThat(count.mostFailed()).isEqualTo(most);
  }

  /** 19 joints of two each: nine links seen whole and half of a tenth, which is never good yet. */
  @ParameterizedTest
  @CsvSource({"0, 9", "1, 9", "2, 8", "9, 1", "10, 0", "11, 0"})
  void a_link_is_good_once_it_was_seen_whole_and_no_joint_of_it_failed(int failed, int good) {
    assertThat(new JointCount(4, 19, 2).good(failed)).isEqualTo(good);
  }

  @ParameterizedTest
  @CsvSource({"-1, 4, 2", "5, 4, 2", "0, 0, 2", "0, 4, 0"})
  void what_cannot_be_counted_is_refused(int failed, int of, int each) {
    assertThatIllegalArgumentException().isThrownBy(() -> new JointCount(failed, of, each));
  }

  @Test
  void all_may_fail_of_one_joint() {
    assertThatNoException().isThrownBy(() -> new JointCount(1, 1, 1));
  }

  /** A scroll has a joint at each curl; a round link one; a ring one, whatever the links are. */
  @Test
  void a_piece_has_as_many_joints_as_its_pattern_says() {
    Standing scroll = JobBook.scroll(Wishes.common().texts()).standing();
    Map<String, String> round =
        Wishes.common()
            .without(WishKeys.LINK_BLANK, WishKeys.RING_INSIDE)
            .with(WishKeys.LINK_PATTERN, "round")
            .with(WishKeys.LINK_LENGTH, "8 mm")
            .texts();
    Standing cable = JobBook.of("round-cable").and(new Fact.PlanSet(round)).standing();
    assertThat(cable.counted().plan()).isPresent();
    assertThat(JointCount.each(PieceKind.LINK, scroll)).isEqualTo(2);
    assertThat(JointCount.each(PieceKind.RING, scroll)).isEqualTo(1);
    assertThat(JointCount.each(PieceKind.LINK, cable)).isEqualTo(1);
    assertThat(JointCount.each(PieceKind.LINK, JobBook.of("scroll-and-ring").standing()))
        .as("where nothing is planned")
        .isEqualTo(1);
  }
}
