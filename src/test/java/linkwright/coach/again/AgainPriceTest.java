package linkwright.coach.again;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.bench.Pickle;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.form.ForecastWords;
import linkwright.hands.Hands;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.PriceList;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.standing.Closing;
import linkwright.standing.Handbook;
import linkwright.standing.JobBook;
import linkwright.standing.Price;
import linkwright.standing.Quote;
import linkwright.standing.Standing;
import linkwright.standing.again.MadeAgain;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a chain made again costs: in another metal by that metal's price, never by the old one. */
class AgainPriceTest {
  private static final double HOUR = 20;
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final double STERLING = 1;
  private static final double GOLD = 60;

  private static Handbook bench(Map<String, Double> metalPerG) {
    return JobBook.HANDBOOK.with(
        new OwnBench(
            "",
            List.of(),
            Optional.empty(),
            Map.of(),
            List.of(),
            OptionalDouble.empty(),
            Flame.NOT_SAID,
            Pickle.NOT_SAID,
            List.of(),
            new OwnPrices("EUR", metalPerG, Map.of(PriceList.HOUR, HOUR)),
            Map.of(),
            Map.of(),
            OptionalLong.empty(),
            Map.of(),
            List.of()));
  }

  private static JobState earlier() {
    return JobBook.scroll(Wishes.common().texts())
        .and(
            new Fact.PricesSet(
                Map.of(PriceList.METAL_PER_G, STERLING, PriceList.HOUR, HOUR), "EUR"))
        .and(new Fact.WeighedIn(OptionalDouble.of(9.2), NONE, NONE, NONE, NONE, NONE, NONE))
        .and(new Fact.JobClosed(""))
        .state();
  }

  private static Row row(String metal, Handbook handbook, String label) {
    MadeAgain again =
        MadeAgain.of(earlier(), handbook, Map.of(WishKeys.METAL, metal), UnitStyle.METRIC);
    Standing standing = Standing.of(again.begun(earlier(), handbook), handbook);
    return new AgainContent(UnitStyle.METRIC, earlier().accounts())
        .of(again, standing).stream()
            .filter(Rows.class::isInstance)
            .flatMap(part -> ((Rows) part).rows().stream())
            .filter(each -> each.label().equals(label))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void a_first_one_that_was_never_weighed_has_no_price_yet() {
    Handbook handbook = bench(Map.of("sterling", STERLING));
    MadeAgain priced = MadeAgain.of(earlier(), handbook, Map.of(), UnitStyle.METRIC);
    Price none = new Price(List.of(), 0);
    MadeAgain again =
        new MadeAgain(
            priced.wish(),
            priced.settled(),
            priced.carries(),
            priced.anew(),
            Optional.of(new Closing(0, OptionalDouble.empty(), 0, 0, none, none)),
            priced.firstMetal(),
            priced.inAnotherMetal());
    Standing standing = Standing.of(again.begun(earlier(), handbook), handbook);
    assertThat(
            new AgainContent(UnitStyle.METRIC, earlier().accounts())
                .of(again, standing).stream()
                    .filter(Rows.class::isInstance)
                    .flatMap(part -> ((Rows) part).rows().stream())
                    .map(Row::amount))
        .contains("not known yet: it is not weighed")
        .noneMatch(each -> each.startsWith("0.00"));
  }

  private static double money(Row row) {
    return Double.parseDouble(row.amount().replaceAll("[^\\d.]", ""));
  }

  @Test
  void another_metal_without_a_price_has_none() {
    assertThat(row("gold-14k-yellow", bench(Map.of("sterling", STERLING)), "made again").amount())
        .isEqualTo("not known: no price for this metal");
  }

  /** One figure for the hours and the money of what is made again: that of the new job's plan. */
  @Test
  void hours_and_price_again_are_those_that_the_new_jobs_plan_tells() {
    Handbook handbook = bench(Map.of("sterling", STERLING));
    MadeAgain again = MadeAgain.of(earlier(), handbook, Map.of(), UnitStyle.METRIC);
    Quote quote = Standing.of(again.begun(earlier(), handbook), handbook).quote().orElseThrow();
    assertThat(row("", handbook, "hours again").amount())
        .isEqualTo(ForecastWords.hoursAgain(quote));
    assertThat(row("", handbook, "made again").amount()).isEqualTo(ForecastWords.priceAgain(quote));
    assertThat(money(row("", handbook, "without trials")))
        .as("what the first cost, without its trials, is told by another name")
        .isNotEqualTo(quote.again().total());
  }

  /** Work timed and redone: what a closed job's own plan tells of the same again is that figure. */
  @Test
  void a_closed_jobs_plan_tells_the_hours_and_the_price_that_making_it_again_tells() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    book.enter(
        new Fact.PricesSet(Map.of(PriceList.METAL_PER_G, STERLING, PriceList.HOUR, HOUR), "EUR"));
    book.enter(new Fact.SittingStarted(""));
    book.enter(new Fact.StepOpened(new StepId("cut")));
    book.after(20).enter(new Fact.WireCut(PieceKind.LINK, 30, 38.1));
    for (String stage : List.of("annealed", "formed", "soldered", "pickled", "checked")) {
      book.enter(new Fact.StepOpened(new StepId(stage)));
      Stage at = new Stage(stage);
      book.after(50)
          .enter(new Fact.PiecesThrough(Map.of(PieceKind.LINK, 30), at, false, new StepId(stage)));
      if (stage.equals("soldered")) {
        book.enter(new Fact.PiecesSentBack(PieceKind.LINK, 5, at, at, false, "gap"));
        book.enter(new Fact.PiecesThrough(Map.of(PieceKind.LINK, 5), at, true, new StepId(stage)));
      }
    }
    book.enter(new Fact.JobClosed(""));
    Handbook bench = bench(Map.of("sterling", STERLING));
    Handbook taught =
        bench.with(Hands.of(List.of(bench.taught("a", book.entries(), book.state())), Set.of()));
    Handbook mine = taught.forJob("a", book.entries());
    Quote closed = Standing.of(book.state(), mine).quote().orElseThrow();
    MadeAgain again = MadeAgain.of(book.state(), mine, Map.of(), UnitStyle.METRIC);
    Quote next = Standing.of(again.begun(book.state(), taught), taught).quote().orElseThrow();
    assertThat(ForecastWords.hoursAgain(closed)).isEqualTo(ForecastWords.hoursAgain(next));
    assertThat(closed.hoursAgain()).isCloseTo(next.hoursAgain(), Offset.offset(0.01));
    assertThat(closed.again().total()).isCloseTo(next.again().total(), Offset.offset(0.5));
  }

  @Test
  void the_firsts_price_is_told_with_its_own_metal_and_with_hours_that_nobody_timed() {
    Handbook handbook = bench(Map.of("sterling", STERLING));
    assertThat(sentences("gold-14k-yellow", handbook))
        .contains(
            "The first one's price is of its own metal, Sterling silver, and without any work:"
                + " none of its hours were timed.");
    assertThat(sentences("sterling", handbook))
        .contains("The first one's price is without any work: none of its hours were timed.");
    assertThat(row("gold-14k-yellow", handbook, "metal").value()).contains("14 k yellow");
  }

  private static List<String> sentences(String metal, Handbook handbook) {
    MadeAgain again =
        MadeAgain.of(earlier(), handbook, Map.of(WishKeys.METAL, metal), UnitStyle.METRIC);
    Standing standing = Standing.of(again.begun(earlier(), handbook), handbook);
    return new AgainContent(UnitStyle.METRIC, earlier().accounts())
        .of(again, standing).stream()
            .filter(Prose.class::isInstance)
            .map(part -> ((Prose) part).text())
            .toList();
  }

  @Test
  void another_metal_is_priced_by_its_own_price() {
    Handbook both = bench(Map.of("sterling", STERLING, "gold-14k-yellow", GOLD));
    double grams = money(row("gold-14k-yellow", both, "chain weighs"));
    double sterling = money(row("sterling", both, "made again"));
    assertThat(money(row("gold-14k-yellow", both, "made again")))
        .isBetween(
            sterling + 0.8 * grams * (GOLD - STERLING), sterling + 8 * HOUR + 2 * grams * GOLD);
  }

  @Test
  void the_length_is_told_with_its_doubt_as_the_plan_tells_it() {
    Handbook handbook = bench(Map.of());
    Standing standing = Standing.of(earlier(), handbook);
    Plan plan = standing.counted().plan().orElseThrow();
    assertThat(row("sterling", handbook, "length").amount())
        .isEqualTo(UnitStyle.METRIC.about(plan.lengthMm(), plan.plusMinusMm()));
  }
}
