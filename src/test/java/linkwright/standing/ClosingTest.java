package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.PriceList;
import linkwright.plan.Plan;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.StepId;
import linkwright.standing.stock.PiecesOver;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** A job weighed in; every figure is worked by hand beside it. */
class ClosingTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);
  private static final Routine ROUTINE = Wishes.LIBRARY.routines().get("scroll-and-ring");
  private static final Plan PLAN = Wishes.common().plan();

  private final List<Entry> book = new ArrayList<>();
  private Instant now = Instant.parse("2026-03-02T08:00:00Z");

  private ClosingTest enter(Fact fact) {
    book.add(new Entry(book.size() + 1, now, "bench", fact));
    return this;
  }

  private ClosingTest pass(long minutes) {
    now = now.plusSeconds(60 * minutes);
    return this;
  }

  private Closing closing() {
    JobState state = JobState.replay(book, routine -> ROUTINE.pieces());
    return Closing.of(state, PLAN, Optional.of(ROUTINE));
  }

  private static Fact weighedIn(
      double chain, double wire, double clean, double soldered, double filings, double sweeps) {
    return new Fact.WeighedIn(
        OptionalDouble.of(chain),
        OptionalDouble.of(406),
        OptionalDouble.of(wire),
        OptionalDouble.of(clean),
        OptionalDouble.of(soldered),
        OptionalDouble.of(filings),
        OptionalDouble.of(sweeps));
  }

  @Test
  void what_was_weighed_out_and_did_not_come_back_is_told() {
    enter(new Fact.MetalWeighedOut(14, "wire")).enter(new Fact.MetalWeighedOut(2, "wire"));
    enter(weighedIn(9.4, 4.5, 0.8, 0.5, 0.6, 0.2));
    double ownMetal = 9.4 - 0.9 - PLAN.solderPlacedG();
    assertThat(closing().metalOutG()).isEqualTo(16);
    assertThat(closing().unaccountedG().orElseThrow())
        .isCloseTo(16 - (ownMetal + 4.5 + 1.3 + 0.8), EXACT);
  }

  @Test
  void metal_out_is_what_is_in_the_chain_and_came_back_and_is_unaccounted_for() {
    enter(new Fact.MetalWeighedOut(15, "wire")).enter(weighedIn(9, 3, 1, 0.5, 0.7, 0.1));
    Closing closing = closing();
    double chain = 9 - 0.9 - PLAN.solderPlacedG();
    assertThat(chain + 3 + 1.5 + 0.8 + closing.unaccountedG().orElseThrow())
        .isCloseTo(closing.metalOutG(), EXACT);
  }

  /** The drawer said so much lost, the weighing in more: pieces that lie over were in it. */
  @Test
  void what_lies_over_is_neither_lost_nor_in_the_price_of_this_chain() {
    int more = PLAN.rings() + 4;
    enter(new Fact.JobOpened("a", ROUTINE.id()));
    enter(new Fact.WireCut(PieceKind.RING, more, 10, ""));
    enter(new Fact.MetalWeighedOut(16, "wire")).enter(weighedIn(9.4, 4.5, 0.8, 0.5, 0.6, 0.2));
    enter(new Fact.PricesSet(Map.of(PriceList.METAL_PER_G, 1.0), "£"));
    JobState state = JobState.replay(book, routine -> ROUTINE.pieces());
    double over = PLAN.massRingsG() / PLAN.rings() * 4;
    assertThat(PiecesOver.massG(PLAN, state)).isCloseTo(over, EXACT);
    double missing = closing().unaccountedG().orElseThrow();
    assertThat(PiecesOver.apart(missing, PLAN, state).lostG()).isCloseTo(missing - over, EXACT);
    assertThat(closing().first().total()).isCloseTo(16 - 4.5 - over, EXACT);
    assertThat(closing().again().total()).isCloseTo(16 - 4.5 - over, EXACT);
  }

  @Test
  void without_a_weighing_out_nothing_is_said_to_be_missing() {
    enter(weighedIn(9.4, 4.5, 0.8, 0.5, 0.6, 0.2));
    assertThat(closing().unaccountedG()).isEmpty();
    assertThat(closing().metalOutG()).isPositive();
  }

  @Test
  void before_anything_was_weighed_there_is_no_price_of_metal_and_no_exception() {
    assertThat(closing().unaccountedG()).isEmpty();
    assertThat(closing().first().total()).isZero();
  }

  @Nested
  class TheSecondChain {
    ClosingTest made() {
      enter(new Fact.JobOpened("a", ROUTINE.id())).enter(new Fact.SittingStarted(""));
      enter(new Fact.StepOpened(new StepId("form-test"))).pass(30);
      for (int i = 0; i < 3; i++) {
        enter(
            new Fact.TestPieceTried(
                0.9,
                38.1,
                Map.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                ""));
      }
      enter(new Fact.SampleChosen(new EntryId("bench", 6), true));
      enter(new Fact.StepOpened(new StepId("form-links")))
          .pass(45)
          .enter(new Fact.Noted("half way"))
          .pass(45);
      enter(new Fact.SteppedAway(true, true, true));
      enter(new Fact.MetalWeighedOut(15, "wire")).enter(weighedIn(9, 3, 1.5, 0, 0, 0));
      return enter(
          new Fact.PricesSet(
              Map.of(PriceList.HOUR, 20.0, PriceList.METAL_PER_G, 1.0, PriceList.SCRAP_CREDIT, 0.5),
              "£"));
    }

    @Test
    void takes_no_hours_of_test_pieces_and_trial_length() {
      Closing closing = made().closing();
      assertThat(closing.hours()).isCloseTo(2.0, EXACT);
      assertThat(closing.trialHours()).isCloseTo(0.5, EXACT);
      assertThat(money(closing.first(), "work")).isCloseTo(40, EXACT);
      assertThat(money(closing.again(), "work")).isCloseTo(30, EXACT);
    }

    @Test
    void takes_no_metal_of_test_pieces_but_that_of_the_sample_which_is_link_1() {
      Closing closing = made().closing();
      // Three pieces of 38.1 mm, of which one is in the chain.
      double density = PLAN.wish().metal().densityGCm3().value();
      double trial = 2 * 38.1 * Math.PI * 0.81 / 4 * density / 1000;
      assertThat(money(closing.first(), "metal")).isCloseTo(12, EXACT);
      assertThat(money(closing.again(), "metal")).isCloseTo(12 - trial, EXACT);
      assertThat(money(closing.first(), "scrap credited")).isCloseTo(-0.75, EXACT);
      assertThat(money(closing.again(), "scrap credited")).isCloseTo(-(1.5 - trial) / 2, EXACT);
    }

    private double money(linkwright.standing.Price price, String what) {
      return price.lines().stream()
          .filter(line -> line.what().equals(what))
          .mapToDouble(linkwright.standing.Price.Line::money)
          .sum();
    }
  }
}
