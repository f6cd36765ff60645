package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.plan.FigureSource;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** A chain of long and round links on its way, against reckoning by hand. */
class SizesAtBenchTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  /** One turn of the coil: π · (3 + 1), a wire's thickness to the side. */
  private static final double TURN = Math.hypot(4 * Math.PI, 1);

  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** 18 long of 38 mm that add 15, 18 round of 12.6 that add 3, 37 rings of 3 mm: 447 mm. */
  private static Wishes wish() {
    return Wishes.figaro().with(WishKeys.COIL_TAIL, "10 mm");
  }

  private static JobBook job(Wishes wish) {
    return JobBook.of("figaro").and(new Fact.PlanSet(wish.texts()));
  }

  private static Plan plan(JobBook job) {
    return job.standing().counted().plan().orElseThrow();
  }

  /** 18 · 38 + 18 · 12.6 + 37 · 12.606 + 10 = 1387.23 mm. */
  @Test
  void the_wire_that_does_is_that_of_all_sizes() {
    JobBook enough = job(wish().with(WishKeys.STOCK, "1387.3 mm"));
    JobBook less = job(wish().with(WishKeys.STOCK, "1387 mm"));

    assertThat(plan(enough).wireTotalMm()).isCloseTo(910.8 + 37 * TURN + 10, EXACT);
    assertThat(enough.standing().missing()).isEmpty();
    assertThat(less.standing().missing()).isNotEmpty();
  }

  @Test
  void blanks_are_cut_size_by_size_in_the_order_in_which_they_are_named() {
    JobBook job = job(wish().with(WishKeys.STOCK, "2 m"));
    assertThat(job.standing().eachMm().get(PieceKind.LINK)).isEqualTo(38);

    job.enter(new Fact.WireCut(PieceKind.LINK, 18, 38));
    Standing standing = job.standing();

    assertThat(standing.eachMm().get(PieceKind.LINK)).isCloseTo(12.6, EXACT);
    assertThat(standing.left().get(PieceKind.LINK).toCutBySize()).containsExactly(0, 18);
    double cut = 2000 - 18 * 38;
    double next = 18 * 12.6 + 37 * TURN + 10;
    assertThat(WireStand.leftMm(standing.wire().orElseThrow().links())).isCloseTo(cut, EXACT);
    assertThat(WireStand.overMm(standing.wire().orElseThrow().links()))
        .isCloseTo(cut - next, Offset.offset(0.1));
  }

  /**
   * Two repeats hung: 4 links and 5 rings in 53 mm, so 38 of links, 9.5 each where 9 is counted.
   */
  @Test
  void a_hung_length_moves_all_sizes_alike() {
    JobBook job = job(wish());
    EntryId trial = job.enter(new Fact.TrialMeasured(4, 5, 3, NONE, 53, 0, ""));
    job.enter(new Fact.TrialChosen(trial));
    Plan plan = plan(job);

    assertThat(plan.sizes()).extracting(size -> size.link().insideMm()).containsExactly(15.5, 3.5);
    assertThat(plan.sizes().get(1).link().insideFrom()).isEqualTo(FigureSource.MEASURED);
    // 25 m + 15 is nearest 450 at m = 17: 440.
    assertThat(plan.links()).isEqualTo(34);
    assertThat(plan.lengthMm()).isCloseTo(440, EXACT);
    assertThat(plan.plusMinusTrialMm()).isEmpty();
  }

  @Test
  void each_size_has_test_pieces_and_a_sample_of_its_own() {
    JobBook job = job(wish());
    EntryId round =
        job.enter(
            new Fact.TestPieceTried(
                1,
                12.9,
                Map.of("ring", 3.0),
                OptionalDouble.of(5.2),
                OptionalDouble.of(5.2),
                OptionalDouble.of(3.2),
                List.of("right"),
                "",
                "",
                false,
                "round"));
    job.enter(new Fact.SampleChosen(round, true));
    Standing standing = job.standing();
    assertThat(standing.counted().sentence()).isEmpty();
    List<LinksOfSize> sizes = standing.counted().plan().orElseThrow().sizes();

    assertThat(sizes.get(0).link().blankMm()).isEqualTo(38);
    assertThat(sizes.get(0).link().insideMm()).isEqualTo(15);
    assertThat(sizes.get(1).link().blankMm()).isEqualTo(12.9);
    assertThat(sizes.get(1).link().insideMm()).isEqualTo(3.2);
    assertThat(job.state().trials().sample()).isEmpty();
    assertThat(job.state().piles().of(PieceKind.LINK).alive()).isEqualTo(1);
    assertThat(TestPieces.of(standing, job.state(), "round").orElseThrow().wireMm()).isEqualTo(1);
  }

  @Test
  void made_again_it_keeps_every_size() {
    JobBook job = job(wish());
    EntryId trial = job.enter(new Fact.TrialMeasured(4, 5, 3, NONE, 53, 0, ""));
    job.enter(new Fact.TrialChosen(trial));
    Plan first = plan(job);
    String written =
        first.wish().repeat().written(first.sizes(), linkwright.quantity.UnitStyle.METRIC);
    Plan again =
        wish().with(WishKeys.LINK_INSIDE, "15.5 mm").with(WishKeys.LINK_REPEAT, written).plan();

    assertThat(again.lengthMm()).isCloseTo(first.lengthMm(), EXACT);
    assertThat(again.wireTotalMm()).isCloseTo(first.wireTotalMm(), EXACT);
    assertThat(again.sizes().get(1).link().insideMm()).isEqualTo(3.5);
  }

  /** The two rings at the ends are the last of 39, and lack as such. */
  @Test
  void rings_at_the_ends_are_cut_and_counted_with_the_rings() {
    Wishes ends = wish().with(WishKeys.RING_ENDS, "6 mm").with(WishKeys.FINISHED, "459 mm");
    JobBook job = job(ends.with(WishKeys.STOCK, "1387.3 mm"));

    assertThat(job.standing().left().get(PieceKind.RING).wanted()).isEqualTo(39);
    assertThat(job.standing().missing().values().stream().mapToInt(n -> n).sum()).isPositive();
    assertThat(job(ends.with(WishKeys.STOCK, "1431.3 mm")).standing().missing()).isEmpty();

    job.enter(new Fact.WireCut(PieceKind.RING, 39, TURN));
    job.enter(
        new Fact.PiecesThrough(
            Map.of(PieceKind.RING, 39), Stage.JOINED, false, new StepId("join")));
    assertThat(job.standing().wire().orElseThrow().toCut().rings()).isZero();
  }
}
