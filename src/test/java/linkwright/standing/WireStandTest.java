package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class WireStandTest {
  private static final Offset<Double> CLOSE = Offset.offset(1.0);

  private static Standing standing(Wishes wishes) {
    return JobBook.scroll(wishes.texts()).standing();
  }

  private static double shortMm(Wishes wishes) {
    return standing(wishes).wire().orElseThrow().shortMm();
  }

  private static Plan plan(Standing standing) {
    return standing.counted().plan().orElseThrow();
  }

  @Nested
  class WireThatLacks {
    @Test
    void is_what_the_plan_says_with_rings_at_the_ends_and_with_repeats() {
      Wishes ends = Wishes.common().with(WishKeys.RING_ENDS, "5 mm");
      Wishes repeat =
          Wishes.common()
              .with(WishKeys.LINK_PATTERN, "oval")
              .with(WishKeys.LINK_BLANK, "20 mm")
              .with(WishKeys.LINK_FORMERS, "end=2.8 mm")
              .with(WishKeys.LINK_REPEAT, "1 link + 2 round ring=3 mm");
      for (Wishes wishes : List.of(ends, repeat)) {
        Standing standing = Standing.ofWish(wishes.texts(), JobBook.HANDBOOK);
        Plan plan = plan(standing);
        WireStand wire = standing.wire().orElseThrow();
        assertThat(wire.toCut().links()).isEqualTo(plan.blanksToCut());
        assertThat(wire.toCut().rings()).isEqualTo(plan.allRingsToCut());
        assertThat(wire.shortMm()).isCloseTo(plan.wireTotalMm(), Offset.offset(0.01));
        String enough = plan.wireTotalMm() + 0.2 + " mm"; // a micrometre for each piece
        assertThat(
                Standing.ofWish(wishes.with(WishKeys.STOCK, enough).texts(), JobBook.HANDBOOK)
                    .wire()
                    .orElseThrow()
                    .shortMm())
            .isZero();
      }
    }

    @Test
    void is_told_after_some_was_given_back_which_is_no_loss() {
      JobBook book = JobBook.scroll(Wishes.common().with(WishKeys.STOCK, "3 m").texts());
      WireStand before = book.standing().wire().orElseThrow();
      book.enter(
          new LotFact.StockReturned(
              "lot", PieceKind.LINK, OptionalDouble.of(76), OptionalDouble.empty(), ""));
      book.enter(new Fact.WireDiscarded(PieceKind.LINK, 20, "kinked"));
      WireStand after = book.standing().wire().orElseThrow();
      assertThat(WireStand.lostMm(after.links())).isCloseTo(20, Offset.offset(1e-9));
      assertThat(WireStand.leftMm(after.links()))
          .isCloseTo(WireStand.leftMm(before.links()) - 96, Offset.offset(1e-9));
    }

    /** Kerf 0.4 mm and a tail of 10 mm, by hand; a coil's tail is gone once other work begins. */
    @Test
    void test_pieces_take_their_kerf_and_each_coil_its_tail() {
      JobBook book =
          JobBook.scroll(
              Wishes.common().with(WishKeys.STOCK, "3 m").with(WishKeys.KERF, "0.4 mm").texts());
      OptionalDouble none = OptionalDouble.empty();
      book.enter(
          new Fact.TestPieceTried(0.9, 38, Map.of(), none, none, none, List.of("right"), ""));
      assertThat(leftMm(book)).isCloseTo(3000 - 38.4, Offset.offset(1e-9));
      book.enter(new Fact.WireCut(PieceKind.RING, 3, 11));
      book.enter(new Fact.WireCut(PieceKind.RING, 2, 11));
      assertThat(leftMm(book)).isCloseTo(3000 - 38.4 - 55, Offset.offset(1e-9));
      book.enter(new Fact.StepOpened(new StepId("solder")));
      book.enter(new Fact.StepOpened(new StepId("pickle")));
      assertThat(leftMm(book)).isCloseTo(3000 - 38.4 - 55 - 10, Offset.offset(1e-9));
      book.enter(new Fact.WireCut(PieceKind.RING, 1, 11));
      book.enter(new Fact.WireCut(PieceKind.LINK, 1, 38.5));
      assertThat(leftMm(book)).isCloseTo(3000 - 38.4 - 66 - 20 - 38.5, Offset.offset(1e-9));
    }

    /**
     * Rings that no single length holds are wound in several coils, and each is held by its tail.
     */
    @Test
    void rings_of_several_coils_take_a_tail_each() {
      String lengths = String.join(", ", Collections.nCopies(20, "100 mm"));
      Standing standing = standing(Wishes.common().with(WishKeys.STOCK, lengths));
      List<WireStand.Bar> coiled =
          standing.wire().orElseThrow().links().stream()
              .filter(bar -> bar.next().rings() > bar.ends())
              .toList();
      assertThat(coiled).hasSizeGreaterThan(1);
      Plan plan = plan(standing);
      assertThat(coiled.stream().mapToInt(bar -> bar.next().rings()).sum())
          .isEqualTo(plan.allRingsToCut());
      assertThat(coiled)
          .allSatisfy(
              bar ->
                  assertThat(bar.nextRingsMm())
                      .isCloseTo(
                          bar.next().rings() * plan.ringTurnMm() + plan.wish().coilTailMm(),
                          Offset.offset(0.01)));
    }

    private double leftMm(JobBook book) {
      return WireStand.leftMm(book.standing().wire().orElseThrow().links());
    }

    @Test
    void is_none_where_there_is_plenty() {
      assertThat(shortMm(Wishes.common().with(WishKeys.STOCK, "3 m"))).isZero();
    }

    @Test
    void is_told_by_how_much_and_as_one_length_mends_it() {
      Standing standing = standing(Wishes.common().with(WishKeys.STOCK, "500 mm"));
      double lacks = standing.wire().orElseThrow().shortMm();
      assertThat(lacks).isPositive().isLessThanOrEqualTo(plan(standing).wireTotalMm());
      assertThat(shortMm(Wishes.common().with(WishKeys.STOCK, 500 + lacks + 0.01 + " mm")))
          .isZero();
    }

    @Test
    void is_all_of_it_spares_of_rings_included_where_there_is_none() {
      Standing standing = standing(Wishes.common().with(WishKeys.STOCK, "0 mm"));
      assertThat(standing.wire().orElseThrow().shortMm())
          .isCloseTo(plan(standing).wireTotalMm(), CLOSE);
    }

    @Test
    void of_the_rings_own_wire_is_that_of_rings_alone() {
      Wishes thin = Wishes.common().with(WishKeys.RING_WIRE, "0.7 mm").with(WishKeys.STOCK, "5 m");
      Plan plan = thin.plan();
      assertThat(shortMm(thin)).isCloseTo(plan.wireRingsMm() + plan.wireSpareRingsMm(), CLOSE);
      assertThat(shortMm(thin.with(WishKeys.RING_STOCK, "1 m"))).isZero();
    }

    @Test
    void counts_what_came_and_what_was_cut_since_the_plan() {
      JobBook book =
          JobBook.scroll(
              Wishes.common().with(WishKeys.STOCK, "500 mm").with(WishKeys.KERF, "0.3 mm").texts());
      Standing before = book.standing();
      double lacks = before.wire().orElseThrow().shortMm();
      book.enter(new Fact.WireCut(PieceKind.LINK, 3, plan(before).linkEachMm()));
      assertThat(book.standing().wire().orElseThrow().shortMm()).isCloseTo(lacks, CLOSE);
      book.enter(new Fact.WireAdded(PieceKind.LINK, 0.9, lacks + 20, "soft", ""));
      assertThat(book.standing().wire().orElseThrow().shortMm()).isZero();
      assertThat(book.standing().missing()).isEmpty();
    }

    @Test
    void lacks_too_where_more_pieces_are_wanted_than_a_cutting_is_planned_for() {
      JobBook book =
          JobBook.scroll(
              Wishes.common().with(WishKeys.STOCK, "5 m").with(WishKeys.FINISHED, "600 m").texts());
      assertThat(plan(book.standing()).blanksToCut()).isGreaterThan(45_000);
      book.enter(new Fact.WireCut(PieceKind.LINK, 30, 38.1));
      book.enter(new Fact.PiecesScrapped(PieceKind.LINK, 10, Stage.ANNEALED, false, "melted"));
      assertThat(book.standing().wire().orElseThrow().shortMm()).isGreaterThan(1_000_000);
    }

    @Test
    void still_lacks_once_all_that_came_is_used_up() {
      JobBook book = JobBook.scroll(Wishes.common().texts());
      assertThat(book.standing().wireKnown()).as("nothing was said of wire").isFalse();
      book.enter(new Fact.WireAdded(PieceKind.LINK, 0.9, 80, "soft", ""));
      book.enter(new Fact.WireCut(PieceKind.LINK, 2, 40));
      assertThat(book.standing().missing()).containsKeys(PieceKind.LINK, PieceKind.RING);
    }
  }

  @Nested
  class AWishAlone {
    @Test
    void comes_to_what_a_new_job_with_it_comes_to() {
      Map<String, String> wish = Wishes.common().with(WishKeys.STOCK, "500 mm, 96 mm").texts();
      JobBook job = JobBook.of("scroll-and-ring");
      job.enter(PlanDefaults.kept(wish, job.state(), JobBook.HANDBOOK));
      assertThat(Standing.ofWish(wish, JobBook.HANDBOOK))
          .usingRecursiveComparison()
          .isEqualTo(job.standing());
    }

    @Test
    void asks_for_spare_rings_as_the_bench_does() {
      Standing standing = standing(Wishes.common().with(WishKeys.STOCK, "3 m"));
      assertThat(standing.left().get(PieceKind.RING).toCut()).hasValue(plan(standing).ringsToCut());
      assertThat(standing.left().get(PieceKind.LINK).toCut())
          .hasValue(plan(standing).blanksToCut());
      assertThat(plan(standing).ringsToCut()).isGreaterThan(plan(standing).rings());
    }
  }

  @Nested
  class TheChance {
    @Test
    void is_that_links_and_rings_both_come_good() {
      Standing plenty = standing(Wishes.common().with(WishKeys.STOCK, "20 m"));
      assertThat(plenty.chance().orElseThrow()).isGreaterThan(0.999);
      Standing none = standing(Wishes.common().with(WishKeys.STOCK, "500 mm"));
      assertThat(none.chance().orElseThrow()).isZero();
      double needed = plan(plenty).wireTotalMm();
      double just =
          standing(Wishes.common().with(WishKeys.STOCK, needed + 5 + " mm")).chance().orElseThrow();
      double links = alone(plenty, PieceKind.LINK, plan(plenty).blanksToCut());
      double rings = alone(plenty, PieceKind.RING, plan(plenty).ringsToCut());
      assertThat(just).isGreaterThanOrEqualTo(links * rings - 1e-9).isLessThan(0.97);
    }

    @Test
    void is_not_told_where_nothing_was_said_of_wire() {
      assertThat(standing(Wishes.common()).chance()).isEmpty();
    }
  }

  @Nested
  class ATrialThatIsFollowed {
    private final Fact trial =
        new Fact.TrialMeasured(3, 4, 2.5, java.util.OptionalDouble.empty(), 46, 0, "");

    /** The rings came off a coil of their own, whose tail is gone too. */
    @Test
    void counts_its_links_and_rings_as_made_and_their_wire_as_gone() {
      JobBook book = JobBook.scroll(Wishes.common().with(WishKeys.STOCK, "3 m").texts());
      var id = book.enter(trial);
      assertThat(book.standing().left().get(PieceKind.LINK).good()).isZero();
      double before = book.standing().stockLeft().leftMm(PieceKind.LINK);
      book.enter(new Fact.TrialChosen(id));
      Standing now = book.standing();
      assertThat(now.left().get(PieceKind.LINK).good()).isEqualTo(3);
      assertThat(now.left().get(PieceKind.RING).good()).isEqualTo(4);
      assertThat(before - now.stockLeft().leftMm(PieceKind.LINK))
          .isCloseTo(
              3 * plan(now).linkEachMm() + 4 * plan(now).ringTurnMm() + 10, Offset.offset(1e-6));
    }

    @Test
    void takes_the_links_that_were_cut_for_it_and_counts_none_twice() {
      JobBook book = JobBook.scroll(Wishes.common().with(WishKeys.STOCK, "3 m").texts());
      book.enter(new Fact.WireCut(PieceKind.LINK, 5, 38.1));
      var id = book.enter(trial);
      book.enter(new Fact.TrialChosen(id));
      book.enter(new Fact.TrialChosen(id));
      assertThat(book.state().piles().of(PieceKind.LINK).alive()).isEqualTo(5);
      assertThat(book.standing().left().get(PieceKind.LINK).good()).isEqualTo(3);
      assertThat(book.state().wire().uncut()).allMatch(made -> made.links() == 0);
    }
  }

  private static double alone(Standing standing, PieceKind piece, int blanks) {
    StillToDo still = standing.left().get(piece);
    return linkwright.yield.ChanceOfEnough.of(still.more(), blanks, still.loss());
  }
}
