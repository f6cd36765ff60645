package linkwright.standing.again;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.Fact;
import linkwright.job.PriceList;
import linkwright.plan.Plan;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.JobBook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a closed job came to: as it was entered, and as planned where nothing was. */
class ClosedChainTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private final JobBook book = JobBook.scroll(Wishes.common().texts());

  private static Optional<ClosedChain> told(JobBook book) {
    return ClosedChain.of(book.entries(), book.state(), book.standing(), JobBook.HANDBOOK);
  }

  private ClosedChain closed() {
    book.enter(new Fact.JobClosed(""));
    return told(book).orElseThrow();
  }

  private Plan plan() {
    return book.standing().counted().plan().orElseThrow();
  }

  private static Fact weighed(OptionalDouble chainG, OptionalDouble lengthMm) {
    return new Fact.WeighedIn(chainG, lengthMm, NONE, NONE, NONE, NONE, NONE);
  }

  private void checked(int links) {
    book.enter(new Fact.WireCut(PieceKind.LINK, links, 38.1));
    for (Stage stage : book.state().piles().of(PieceKind.LINK).stages()) {
      if (!stage.equals(Stage.CUT)
          && book.state().piles().of(PieceKind.LINK).waitingFor(stage) > 0) {
        book.enter(
            new Fact.PiecesThrough(Map.of(PieceKind.LINK, links), stage, false, new StepId("a")));
      }
    }
  }

  @Test
  void a_job_that_is_open_came_to_nothing_yet() {
    assertThat(told(book)).isEmpty();
    book.enter(new Fact.JobClosed(""));
    book.enter(new Fact.JobReopened(""));
    assertThat(told(book)).isEmpty();
  }

  @Test
  void what_was_measured_and_weighed_goes_before_what_was_planned() {
    checked(5);
    book.enter(weighed(OptionalDouble.of(9.4), OptionalDouble.of(411)));
    ClosedChain chain = closed();
    assertThat(chain.links()).isEqualTo(5);
    assertThat(chain.wanted()).isEqualTo(plan().links());
    assertThat(chain.lengthMm()).hasValue(411);
    assertThat(chain.massG()).hasValue(9.4);
    assertThat(chain.plannedMm()).isEmpty();
    assertThat(chain.plannedG()).isEmpty();
  }

  @Test
  void more_links_than_the_chain_takes_are_not_in_it() {
    checked(plan().links() + 3);
    assertThat(closed().links()).isEqualTo(plan().links());
  }

  @Test
  void what_was_not_measured_is_told_as_planned() {
    ClosedChain chain = closed();
    assertThat(chain.links()).isZero();
    assertThat(chain.lengthMm()).isEmpty();
    assertThat(chain.massG()).isEmpty();
    assertThat(chain.plannedMm()).hasValue(plan().lengthMm());
    assertThat(chain.plannedG()).hasValue(plan().massChainG());
    assertThat(chain.plannedDoubtMm()).isEqualTo(plan().plusMinusMm()).isPositive();
    assertThat(chain.price()).isEmpty();
    assertThat(chain.currency()).isEmpty();
  }

  @Test
  void one_of_the_two_may_be_planned_and_the_other_measured() {
    book.enter(weighed(OptionalDouble.of(9.4), NONE));
    ClosedChain chain = closed();
    assertThat(chain.plannedMm()).hasValue(plan().lengthMm());
    assertThat(chain.plannedG()).isEmpty();
  }

  /** 45 minutes at the bench by the clock, 40 an hour: 30. */
  @Test
  void it_costs_the_hours_at_the_bench_by_her_price() {
    book.enter(new Fact.SittingStarted(""));
    book.after(22).enter(new Fact.Noted("half way"));
    book.after(23).enter(new Fact.SteppedAway(true, true, true));
    book.enter(new Fact.PricesSet(Map.of(PriceList.HOUR, 40.0), "EUR"));
    ClosedChain chain = closed();
    assertThat(chain.seconds()).isEqualTo(45 * 60);
    assertThat(chain.price().orElseThrow()).isCloseTo(30, Offset.offset(1e-9));
    assertThat(chain.currency()).isEqualTo("EUR");
  }

  @Test
  void it_was_closed_when_it_was_closed_last() {
    book.enter(new Fact.JobClosed("once"));
    book.after(60).enter(new Fact.JobReopened("a link broke"));
    book.enter(new Fact.JobClosed("twice"));
    Instant last = book.now();
    book.after(60).enter(new Fact.Noted("fetched"));
    assertThat(told(book).orElseThrow().closedAt()).isEqualTo(last);
  }

  @Test
  void of_a_job_without_a_plan_nothing_is_told_as_planned() {
    JobBook bare =
        JobBook.of("scroll-and-ring")
            .and(weighed(OptionalDouble.of(3), NONE))
            .and(new Fact.JobClosed(""));
    ClosedChain chain = told(bare).orElseThrow();
    assertThat(chain.wanted()).isZero();
    assertThat(chain.massG()).hasValue(3);
    assertThat(chain.plannedMm()).isEmpty();
    assertThat(chain.plannedDoubtMm()).isZero();
  }
}
