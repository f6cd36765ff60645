package linkwright.standing.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
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
import linkwright.hands.Hands;
import linkwright.hands.TaughtJob;
import linkwright.job.Fact;
import linkwright.job.PriceList;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.standing.Handbook;
import linkwright.standing.JobBook;
import org.junit.jupiter.api.Test;

/** What was typed alike for two jobs is worth keeping at the bench, if it is not there yet. */
class TypedTwiceTest {
  private static final OwnBench BARE = OwnBench.NONE;

  private static JobBook kerf(String kerf) {
    return JobBook.scroll(Wishes.common().with(WishKeys.KERF, kerf).texts());
  }

  private static JobBook priced(double hour, String currency) {
    return JobBook.scroll(Wishes.common().texts())
        .and(
            new Fact.PricesSet(Map.of(PriceList.HOUR, hour, PriceList.METAL_PER_G, 1.2), currency));
  }

  private static Handbook with(OwnBench bench, JobBook... books) {
    List<TaughtJob> jobs = new ArrayList<>();
    for (JobBook book : books) {
      jobs.add(JobBook.HANDBOOK.taught("job-" + jobs.size(), book.entries(), book.state()));
    }
    return JobBook.HANDBOOK.with(bench).with(Hands.of(jobs, Set.of()));
  }

  private static OwnBench bench(OptionalDouble kerfMm, OwnPrices prices) {
    return new OwnBench(
        "",
        List.of(),
        Optional.empty(),
        Map.of(),
        List.of(),
        kerfMm,
        Flame.NOT_SAID,
        Pickle.NOT_SAID,
        List.of(),
        prices,
        Map.of(),
        Map.of(),
        OptionalLong.empty(),
        Map.of(),
        List.of());
  }

  private static Map<String, String> of(OwnBench bench, JobBook... books) {
    return TypedTwice.of(with(bench, books));
  }

  @Test
  void the_same_kerf_in_two_jobs_is_told_once_in_one_is_not() {
    assertThat(of(BARE, kerf("0.3 mm"), kerf("0.3 mm"))).isEqualTo(Map.of("kerf", "0.3 mm"));
    assertThat(of(BARE, kerf("0.3 mm"))).isEmpty();
    assertThat(of(BARE, kerf("0.3 mm"), kerf("0.4 mm"))).isEmpty();
    assertThat(of(BARE)).isEmpty();
  }

  /** Her bench holds a usual loss too, but no coil tail. */
  @Test
  void the_same_usual_loss_in_two_jobs_is_told_as_the_kerf_is() {
    JobBook lost =
        JobBook.scroll(
            Wishes.common()
                .with(WishKeys.USUAL_LOSS, "3 %")
                .with(WishKeys.COIL_TAIL, "4 mm")
                .texts());
    assertThat(of(BARE, lost, lost)).isEqualTo(Map.of("losses.all", "3 %"));
    assertThat(TypedTwice.said(of(BARE, lost, lost))).isEqualTo("usual loss 3 %");
    OwnBench hers = BARE.with(Map.of("all", 0.05), Map.of(), Map.of());
    assertThat(of(hers, lost, lost)).isEmpty();
  }

  @Test
  void of_several_that_were_typed_again_the_commonest_is_told() {
    JobBook fine = kerf("0.2 mm");
    JobBook coarse = kerf("0.5 mm");
    assertThat(of(BARE, fine, fine, coarse, coarse, coarse)).containsEntry("kerf", "0.5 mm");
    assertThat(of(BARE, coarse, coarse, coarse, fine, fine)).containsEntry("kerf", "0.5 mm");
  }

  @Test
  void prices_are_told_with_their_money_and_not_without() {
    assertThat(of(BARE, priced(40, "EUR"), priced(40, "EUR")))
        .isEqualTo(
            Map.of(
                "prices.currency",
                "EUR",
                "prices.hour",
                "40",
                "prices.metal-per-g.sterling",
                "1.2"));
    assertThat(of(BARE, priced(40, ""), priced(40, ""))).as("bare numbers").isEmpty();
    assertThat(of(BARE, priced(40, "EUR"), priced(45, "EUR")))
        .isEqualTo(Map.of("prices.currency", "EUR", "prices.metal-per-g.sterling", "1.2"));
  }

  @Test
  void what_her_bench_holds_is_not_told_again() {
    assertThat(of(bench(OptionalDouble.of(0.4), OwnPrices.NONE), kerf("0.3 mm"), kerf("0.3 mm")))
        .isEmpty();
    OwnPrices money = new OwnPrices("EUR", Map.of(), Map.of());
    assertThat(of(bench(OptionalDouble.empty(), money), priced(40, "EUR"), priced(40, "EUR")))
        .isEqualTo(Map.of("prices.hour", "40", "prices.metal-per-g.sterling", "1.2"));
    OwnPrices hour = new OwnPrices("EUR", Map.of("copper", 0.1), Map.of(PriceList.HOUR, 50.0));
    assertThat(of(bench(OptionalDouble.empty(), hour), priced(40, "EUR"), priced(40, "EUR")))
        .isEqualTo(Map.of("prices.metal-per-g.sterling", "1.2"));
    OwnPrices metal = new OwnPrices("EUR", Map.of("sterling", 0.9), Map.of());
    assertThat(of(bench(OptionalDouble.empty(), metal), priced(40, "EUR"), priced(40, "EUR")))
        .isEqualTo(Map.of("prices.hour", "40"));
    assertThat(of(bench(OptionalDouble.empty(), metal), kerf("0.3 mm"), kerf("0.3 mm")))
        .isEqualTo(Map.of("kerf", "0.3 mm"));
  }

  private static Map<String, String> here(OwnBench bench, String slug, JobBook... books) {
    return TypedTwice.here(slug, books[0].state(), with(bench, books));
  }

  @Test
  void in_a_job_that_is_told_which_was_typed_in_another_too() {
    assertThat(here(BARE, "job-0", kerf("0.3 mm"), kerf("0.3 mm")))
        .isEqualTo(Map.of("kerf", "0.3 mm"));
    assertThat(here(BARE, "job-0", kerf("0.3 mm"), kerf("0.5 mm"))).isEmpty();
    assertThat(here(BARE, "job-0", kerf("0.3 mm"))).as("its own book is no other").isEmpty();
    assertThat(here(BARE, "new", kerf("0.3 mm"))).isEqualTo(Map.of("kerf", "0.3 mm"));
    assertThat(
            here(
                bench(OptionalDouble.of(0.4), OwnPrices.NONE),
                "job-0",
                kerf("0.3 mm"),
                kerf("0.3 mm")))
        .isEmpty();
  }

  @Test
  void a_price_typed_here_is_told_if_its_money_is_known() {
    assertThat(here(BARE, "job-0", priced(40, "EUR"), priced(40, "USD"))).isEmpty();
    assertThat(here(BARE, "job-0", priced(40, "EUR"), priced(40, "EUR")))
        .containsKeys("prices.currency", "prices.hour");
  }
}
