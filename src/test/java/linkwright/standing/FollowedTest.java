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
import linkwright.plan.FigureSource;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.shell.Start;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class FollowedTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

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

  private static Handbook handbook() {
    return Start.handbook(Wishes.LIBRARY);
  }

  private static Plan plan(Fact... facts) {
    List<Entry> book = new ArrayList<>();
    book.add(entry(book, new Fact.JobOpened("a", "scroll-and-ring")));
    book.add(entry(book, new Fact.PlanSet(Wishes.common().texts())));
    for (Fact fact : facts) {
      book.add(entry(book, fact));
    }
    JobState state = JobState.replay(book, handbook().stages());
    return Standing.of(state, handbook()).counted().plan().orElseThrow();
  }

  private static Entry entry(List<Entry> book, Fact fact) {
    return new Entry(book.size() + 1, Instant.ofEpochSecond(book.size()), "bench", fact);
  }

  /** The first entry after opening and plan. */
  private static final int FIRST = 3;

  @Test
  void with_nothing_tried_the_wish_stays() {
    assertThat(plan()).usingRecursiveComparison().isEqualTo(Wishes.common().plan());
    assertThat(plan(trial(3, 4, 52, 0)))
        .as("not followed")
        .usingRecursiveComparison()
        .isEqualTo(Wishes.common().plan());
  }

  @Test
  void three_links_and_four_rings_that_hang_46_mm_make_each_link_add_12_mm() {
    Plan plan = plan(trial(3, 4, 46, 0), chosen(FIRST));
    assertThat(plan.linkInsideMm()).isCloseTo(12, EXACT);
    assertThat(plan.link().insideFrom()).isEqualTo(FigureSource.MEASURED);
    // (406 − 14 − 2.5) / 14.5 = 26.9: 27 links.
    assertThat(plan.links()).isEqualTo(27);
    assertThat(plan.lengthMm()).isCloseTo(27 * 12 + 28 * 2.5 + 14, Offset.offset(1e-6));
  }

  @Test
  void a_clasp_that_hung_along_is_taken_off_first() {
    assertThat(plan(trial(3, 4, 60, 14), chosen(FIRST)).linkInsideMm()).isCloseTo(12, EXACT);
  }

  @Test
  void a_trial_shorter_than_its_rings_or_without_links_changes_no_link() {
    double untried = Wishes.common().plan().linkInsideMm();
    assertThat(plan(trial(3, 4, 9, 0), chosen(FIRST)).linkInsideMm()).isEqualTo(untried);
    assertThat(plan(trial(0, 4, 46, 0), chosen(FIRST)).linkInsideMm()).isEqualTo(untried);
  }

  @Test
  void the_sample_gives_its_blank_and_what_it_measured() {
    Fact.SampleChosen sample = new Fact.SampleChosen(new EntryId("bench", FIRST), true);
    Plan plan = plan(piece(39.5, OptionalDouble.of(14.6), OptionalDouble.of(12.6)), sample);
    assertThat(plan.linkBlankMm()).isEqualTo(39.5);
    assertThat(plan.linkInsideMm()).isEqualTo(12.6);
    assertThat(plan.link().lengthMm()).hasValue(14.6);
    assertThat(plan.link().sizeFrom()).isEqualTo(FigureSource.MEASURED);
  }

  @Test
  void a_sample_that_came_out_longer_adds_as_much_more_inside() {
    Fact.SampleChosen sample = new Fact.SampleChosen(new EntryId("bench", FIRST), true);
    Plan short14 = plan(piece(38.1, OptionalDouble.of(14), OptionalDouble.empty()), sample);
    Plan long15 = plan(piece(38.1, OptionalDouble.of(15), OptionalDouble.empty()), sample);
    // What the ends take may differ a little, as the longer piece taught other hands.
    assertThat(long15.linkInsideMm() - short14.linkInsideMm()).isCloseTo(1, Offset.offset(0.1));
    assertThat(short14.link().lengthMm()).hasValue(14);
  }

  @Test
  void of_a_link_in_her_hand_no_shape_is_told_that_it_has_not() {
    Fact.SampleChosen sample = new Fact.SampleChosen(new EntryId("bench", FIRST), true);
    Plan plan = plan(piece(30, OptionalDouble.of(14), OptionalDouble.of(12.2)), sample);
    assertThat(plan.remarks()).noneMatch(remark -> remark.contains("crosses itself"));
    assertThat(plan.link().lengthMm()).hasValue(14);
  }

  @Test
  void a_ring_wished_after_the_trial_counts_and_the_trial_still_says_what_a_link_adds() {
    Map<String, String> wider = Wishes.common().with(WishKeys.RING_INSIDE, "3.5 mm").texts();
    Plan plan = plan(trial(3, 4, 46, 0), chosen(FIRST), new Fact.PlanSet(wider));
    assertThat(plan.wish().ring().orElseThrow().insideMm()).isEqualTo(3.5);
    assertThat(plan.linkInsideMm()).isCloseTo(12, EXACT);
    // (406 − 14 − 3.5) / 15.5 = 25.06: 25 links.
    assertThat(plan.lengthMm()).isCloseTo(25 * 12 + 26 * 3.5 + 14, Offset.offset(1e-6));
  }

  @Test
  void another_finished_length_leaves_the_ring_of_the_trial() {
    Map<String, String> longer = Wishes.common().with(WishKeys.FINISHED, "450 mm").texts();
    Fact wide = new Fact.TrialMeasured(3, 4, 3, OptionalDouble.empty(), 48, 0, "");
    Plan plan = plan(wide, chosen(FIRST), new Fact.PlanSet(longer));
    assertThat(plan.wish().ring().orElseThrow().insideMm()).isEqualTo(3);
    assertThat(plan.linkInsideMm()).isCloseTo(12, EXACT);
  }

  @Test
  void another_link_wished_after_the_sample_counts() {
    Fact.SampleChosen sample = new Fact.SampleChosen(new EntryId("bench", FIRST), true);
    Map<String, String> longer = Wishes.common().with(WishKeys.LINK_BLANK, "42 mm").texts();
    Plan plan =
        plan(
            piece(38.1, OptionalDouble.of(14), OptionalDouble.of(12.2)),
            sample,
            new Fact.PlanSet(longer));
    assertThat(plan.linkBlankMm()).isEqualTo(42);
    assertThat(plan.link().insideFrom()).isEqualTo(FigureSource.LEARNED);
  }

  @Test
  void a_found_blank_typed_back_gives_the_same_chain() {
    Wishes found =
        Wishes.common()
            .without(WishKeys.LINK_BLANK)
            .with(WishKeys.LINK_LENGTH, "14 mm")
            .with(WishKeys.LINK_WIDTH, "5 mm");
    Plan plan = found.plan();
    Plan typed = found.with(WishKeys.LINK_BLANK, plan.linkBlankMm() + " mm").plan();
    assertThat(typed.links()).isEqualTo(plan.links());
    assertThat(typed.lengthMm()).isCloseTo(plan.lengthMm(), Offset.offset(1e-6));
    assertThat(typed.linkInsideMm()).isCloseTo(plan.linkInsideMm(), Offset.offset(1e-9));
    assertThat(plan.link().blankFrom()).isEqualTo(FigureSource.RECKONED);
    assertThat(typed.link().blankFrom()).isEqualTo(FigureSource.HERS);
  }
}
