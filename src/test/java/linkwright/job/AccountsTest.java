package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AccountsTest {
  private static Accounts accounts(Fact... facts) {
    return ShortBook.state(facts).accounts();
  }

  private static Fact.WeighedIn chainOf(double grams) {
    OptionalDouble none = OptionalDouble.empty();
    return new Fact.WeighedIn(OptionalDouble.of(grams), none, none, none, none, none, none);
  }

  @Test
  void metal_weighed_out_adds_up() {
    assertThat(
            accounts(
                    new Fact.MetalWeighedOut(14.5, "wire"), new Fact.MetalWeighedOut(0.5, "solder"))
                .weighedOutG())
        .isEqualTo(15);
    assertThat(accounts().weighedOutG()).isZero();
  }

  @Test
  void the_last_weighing_in_counts() {
    Accounts accounts =
        accounts(new Fact.MetalWeighedOut(14.5, "wire"), chainOf(9.4), chainOf(9.2));
    assertThat(accounts.weighedIn().chainG()).hasValue(9.2);
    assertThat(accounts.weighedOutG()).isEqualTo(14.5);
    assertThat(accounts().weighedIn().chainG()).isEmpty();
  }

  @Test
  void the_last_prices_set_count_with_their_currency_and_leave_the_weights() {
    Accounts accounts =
        accounts(
            new Fact.MetalWeighedOut(14.5, "wire"),
            chainOf(9.4),
            new Fact.PricesSet(Map.of(PriceList.HOUR, 30.0), "£"),
            new Fact.PricesSet(Map.of(PriceList.HOUR, 32.0, PriceList.TAX, 0.2), "€"));
    assertThat(accounts.prices()).containsOnly(Map.entry("hour", 32.0), Map.entry("tax", 0.2));
    assertThat(accounts.currency()).isEqualTo("€");
    assertThat(accounts.weighedOutG()).isEqualTo(14.5);
    assertThat(accounts.weighedIn().chainG()).hasValue(9.4);
    assertThat(accounts(new Fact.MetalWeighedOut(1, "wire")).currency()).isEmpty();
  }

  @Test
  void a_price_that_was_not_given_counts_nothing() {
    PriceList prices = new PriceList(Map.of(PriceList.HOUR, 32.0));
    assertThat(prices.of(PriceList.HOUR)).isEqualTo(32);
    assertThat(prices.of(PriceList.MARGIN)).isZero();
    assertThat(PriceList.NAMES).doesNotHaveDuplicates().contains(PriceList.HOUR, PriceList.TAX);
  }

  @Test
  void figures_of_a_closing_stay_until_the_job_is_opened_again() {
    Fact closed = new Fact.JobClosed("", Map.of(Accounts.METAL_OUT_G, 14.5));
    assertThat(accounts(closed).figures()).containsEntry("metal_out_g", 14.5);
    assertThat(accounts(closed, new Fact.Noted("sold")).figures()).hasSize(1);
    assertThat(accounts(closed, new Fact.JobReopened("a link came loose")).figures()).isEmpty();
  }

  @Test
  void a_share_is_told_from_an_amount_of_money() {
    assertThat(PriceList.NAMES.stream().filter(PriceList::isShare))
        .containsExactlyInAnyOrder("scrap-credit", "filings-credit", "overhead", "margin", "tax");
  }
}
