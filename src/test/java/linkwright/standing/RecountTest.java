package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Trials;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.plan.Planning;
import linkwright.plan.Wishes;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class RecountTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);
  private static final ChainWish WISH = Wishes.common().read().wish().orElseThrow();

  private static Trials trials(Fact... facts) {
    List<Entry> book = new ArrayList<>();
    for (Fact fact : facts) {
      book.add(new Entry(book.size() + 1, Instant.ofEpochSecond(book.size()), "bench", fact));
    }
    return JobState.replay(book, routine -> Map.of()).trials();
  }

  private static Fact trial(int links, int rings, double hungMm, double claspMm) {
    return new Fact.TrialMeasured(links, rings, 2.5, OptionalDouble.empty(), hungMm, claspMm, "");
  }

  private static Fact chosen(int entry) {
    return new Fact.TrialChosen(new EntryId("bench", entry));
  }

  private static Fact piece(double blankMm, OptionalDouble lengthMm, OptionalDouble insideMm) {
    return new Fact.TestPieceTried(
        0.9, blankMm, Map.of(), lengthMm, OptionalDouble.empty(), insideMm, List.of(), "");
  }

  @Test
  void with_nothing_tried_the_wish_stays() {
    assertThat(Recount.of(WISH, trials())).isEqualTo(WISH);
    assertThat(Recount.of(WISH, trials(trial(3, 4, 52, 0)))).as("not followed").isEqualTo(WISH);
  }

  @Test
  void three_links_and_four_rings_that_hang_46_mm_make_each_link_add_12_mm() {
    ChainWish counted = Recount.of(WISH, trials(trial(3, 4, 46, 0), chosen(1)));
    assertThat(counted.link().insideMm().orElseThrow()).isCloseTo(12, EXACT);
    Plan plan = Planning.plan(counted).orThrow();
    // (406 − 14 − 2.5) / 14.5 = 26.9: 27 links.
    assertThat(plan.links()).isEqualTo(27);
    assertThat(plan.lengthMm()).isCloseTo(27 * 12 + 28 * 2.5 + 14, Offset.offset(1e-6));
  }

  @Test
  void a_clasp_that_hung_along_is_taken_off_first() {
    ChainWish counted = Recount.of(WISH, trials(trial(3, 4, 60, 14), chosen(1)));
    assertThat(counted.link().insideMm().orElseThrow()).isCloseTo(12, EXACT);
  }

  @Test
  void a_trial_shorter_than_its_rings_or_without_links_changes_no_link() {
    assertThat(Recount.of(WISH, trials(trial(3, 4, 9, 0), chosen(1))).link())
        .isEqualTo(WISH.link());
    assertThat(Recount.of(WISH, trials(trial(0, 4, 46, 0), chosen(1))).link())
        .isEqualTo(WISH.link());
  }

  @Test
  void the_sample_gives_its_blank_and_what_it_measured_inside() {
    Fact.SampleChosen sample = new Fact.SampleChosen(new EntryId("bench", 1), true);
    ChainWish counted =
        Recount.of(
            WISH, trials(piece(39.5, OptionalDouble.of(14.6), OptionalDouble.of(12.6)), sample));
    assertThat(counted.link().blankMm()).hasValue(39.5);
    assertThat(counted.link().insideMm()).hasValue(12.6);
  }

  @Test
  void a_sample_that_came_out_longer_adds_as_much_more_inside() {
    Plan plan = Planning.plan(WISH).orThrow();
    double longer = plan.formed().orElseThrow().lengthMm() + 0.4;
    Fact.SampleChosen sample = new Fact.SampleChosen(new EntryId("bench", 1), true);
    ChainWish counted =
        Recount.of(
            WISH, trials(piece(38.1, OptionalDouble.of(longer), OptionalDouble.empty()), sample));
    assertThat(counted.link().insideMm().orElseThrow())
        .isCloseTo(plan.linkInsideMm() + 0.4, Offset.offset(1e-6));
  }
}
