package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.job.Fact;
import linkwright.job.PriceList;
import linkwright.link.Pattern;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import org.junit.jupiter.api.Test;

/** What a closed job came to does not move when prices, handbook or usual values do. */
class ClosedFiguresTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** The same handbook with every former half a millimetre larger. */
  private static final Handbook CHANGED =
      new Handbook(
          JobBook.HANDBOOK.reference(),
          JobBook.HANDBOOK.patterns().stream().map(ClosedFiguresTest::larger).toList(),
          JobBook.HANDBOOK.routines(),
          JobBook.HANDBOOK.cautions(),
          List.of(),
          JobBook.HANDBOOK.own());

  private static Pattern larger(Pattern was) {
    Map<String, Double> formers =
        was.formersMm().entrySet().stream()
            .collect(
                Collectors.toMap(
                    Map.Entry::getKey,
                    each -> each.getValue() + 0.5,
                    (one, other) -> one,
                    LinkedHashMap::new));
    return new Pattern(
        was.id(),
        was.says(),
        formers,
        was.path(),
        was.other(),
        was.closed(),
        was.joints(),
        was.usual());
  }

  private static JobBook weighed() {
    return JobBook.scroll(Wishes.common().with(WishKeys.STOCK, "3 m").texts())
        .and(new Fact.PricesSet(Map.of(PriceList.METAL_PER_G, 2.0, PriceList.HOUR, 40.0), "EUR"))
        .and(new Fact.WeighedIn(OptionalDouble.of(9.2), NONE, NONE, NONE, NONE, NONE, NONE));
  }

  private static JobBook closed() {
    JobBook book = weighed();
    return book.and(
        new Fact.JobClosed("", ClosedFigures.of(book.state(), book.standing(), JobBook.HANDBOOK)));
  }

  private static Plan plan(JobBook book, Handbook handbook) {
    return Standing.of(book.state(), handbook).counted().plan().orElseThrow();
  }

  private static Closing closing(JobBook book, Handbook handbook) {
    return Closing.of(
        book.state(), plan(book, handbook), handbook.routine(book.state().course().routine()));
  }

  @Test
  void an_open_job_follows_the_handbook_and_a_closed_one_does_not() {
    assertThat(plan(weighed(), CHANGED).lengthMm())
        .isNotEqualTo(plan(weighed(), JobBook.HANDBOOK).lengthMm());
    Plan before = plan(weighed(), JobBook.HANDBOOK);
    Plan after = plan(closed(), CHANGED);
    assertThat(after.links()).isEqualTo(before.links());
    assertThat(after.lengthMm()).isEqualTo(before.lengthMm());
    assertThat(after.massChainG()).isEqualTo(before.massChainG());
    assertThat(after.linkInsideMm()).isEqualTo(before.linkInsideMm());
    assertThat(ClosedFigures.frozen(after, Map.of())).isEqualTo(after);
  }

  @Test
  void of_a_closed_job_nothing_is_to_be_cut_or_done_again() {
    Standing open = weighed().standing();
    assertThat(open.redos().orElseThrow()).isPositive();
    assertThat(open.chance()).isPresent();
    assertThat(open.wire().orElseThrow().toCut().none()).isFalse();
    Standing closed = closed().standing();
    assertThat(closed.redos().orElseThrow()).isZero();
    assertThat(closed.chance()).isEmpty();
    assertThat(closed.wire().orElseThrow().toCut().none()).isTrue();
    assertThat(closed.wire().orElseThrow().missing().none()).isTrue();
    assertThat(WireStand.overMm(closed.wire().orElseThrow().links())).isEqualTo(3000);
  }

  @Test
  void the_mark_goes_by_what_the_scale_said() {
    Standing open = JobBook.scroll(Wishes.common().texts()).standing();
    assertThat(open.made().massG(9.4)).isEqualTo(9.4);
    assertThat(weighed().standing().made().massG(9.4)).isEqualTo(9.2);
    assertThat(closed().standing().made().massG(9.4)).isEqualTo(9.2);
  }

  @Test
  void the_price_stays_whatever_prices_are_set_later() {
    Closing before = closing(weighed(), JobBook.HANDBOOK);
    Fact dearer = new Fact.PricesSet(Map.of(PriceList.METAL_PER_G, 9.0), "EUR");
    assertThat(closing(closed().and(dearer), CHANGED)).isEqualTo(before);
    assertThat(closing(weighed().and(dearer), JobBook.HANDBOOK).first().total())
        .isNotEqualTo(before.first().total());
  }

  @Test
  void opened_again_it_is_reckoned_anew() {
    JobBook book = closed().and(new Fact.JobReopened("a link broke"));
    assertThat(plan(book, CHANGED).lengthMm()).isEqualTo(plan(weighed(), CHANGED).lengthMm());
  }
}
