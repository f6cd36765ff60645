package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.plan.Wishes;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Trial lengths of three links between four rings of 2.5 mm, and the chain by each. */
class TrialLengthTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);
  private final JobBook book = JobBook.scroll(Wishes.common().texts());

  private EntryId hung(double mm) {
    return book.enter(new Fact.TrialMeasured(3, 4, 2.5, OptionalDouble.empty(), mm, 0, mm + " mm"));
  }

  private List<TrialLength> rows() {
    return TrialLength.of(book.standing(), book.state(), JobBook.HANDBOOK);
  }

  /** (49.3 − 4 · 2.5) / 3 = 13.1 mm and (52.3 − 10) / 3 = 14.1 mm. */
  @Test
  void each_says_what_one_link_would_add_by_it() {
    EntryId first = hung(49.3);
    EntryId second = hung(52.3);
    List<TrialLength> rows = rows();
    assertThat(rows).extracting(TrialLength::id).containsExactly(first, second);
    assertThat(rows).extracting(row -> row.trial().hungMm()).containsExactly(49.3, 52.3);
    assertThat(rows.get(0).linkInsideMm().orElseThrow()).isCloseTo(13.1, EXACT);
    assertThat(rows.get(1).linkInsideMm().orElseThrow()).isCloseTo(14.1, EXACT);
    assertThat(rows).noneMatch(TrialLength::followed).allMatch(row -> row.problem().isEmpty());
  }

  @Test
  void the_chosen_one_is_followed_and_the_other_still_told() {
    hung(49.3);
    book.enter(new Fact.TrialChosen(hung(52.3)));
    List<TrialLength> rows = rows();
    assertThat(rows).extracting(TrialLength::followed).containsExactly(false, true);
    assertThat(rows.get(0).linkInsideMm().orElseThrow()).isCloseTo(13.1, EXACT);
    assertThat(rows.get(1).linkInsideMm().orElseThrow()).isCloseTo(14.1, EXACT);
    assertThat(rows.get(1).plan()).isEqualTo(book.standing().counted().plan());
  }

  /** Longer links: fewer of them make the same length. */
  @Test
  void longer_links_make_the_chain_of_fewer() {
    hung(49.3);
    hung(61.3);
    List<TrialLength> rows = rows();
    assertThat(rows.get(1).plan().orElseThrow().links())
        .isLessThan(rows.get(0).plan().orElseThrow().links());
  }

  /** Four rings alone are 10 mm: no chain is counted from that, and none told as if it were. */
  @Test
  void a_trial_no_longer_than_its_rings_gives_no_chain_and_says_why() {
    hung(10);
    book.enter(new Fact.TrialChosen(hung(9)));
    for (TrialLength row : rows()) {
      assertThat(row.plan()).isEmpty();
      assertThat(row.problem()).startsWith("Rings and clasp alone are as long as that");
      assertThat(row.linkInsideMm()).isEmpty();
    }
    assertThat(book.standing().counted().plan()).as("the chain is as reckoned").isPresent();
  }

  @Test
  void without_a_plan_a_trial_is_listed_and_gives_no_chain() {
    JobBook bare = JobBook.of("scroll-and-ring");
    bare.enter(new Fact.TrialMeasured(3, 4, 2.5, OptionalDouble.empty(), 49.3, 0, ""));
    List<TrialLength> rows = TrialLength.of(bare.standing(), bare.state(), JobBook.HANDBOOK);
    assertThat(rows).hasSize(1);
    assertThat(rows.get(0).plan()).isEmpty();
    assertThat(rows.get(0).problem()).isEmpty();
  }
}
