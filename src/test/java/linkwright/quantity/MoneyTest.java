package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
  @ParameterizedTest
  @CsvSource({
    "90, 90, ''",
    "'90,50', 90.5, ''",
    "12.50 EUR, 12.5, EUR",
    "£90, 90, £",
    "CHF 7, 7, CHF",
    "0, 0, ''",
    "90€, 90, €"
  })
  void an_amount_has_its_currency_before_it_or_behind(String typed, double amount, String of) {
    assertThat(Money.read(typed)).isEqualTo(Read.good(new Money(amount, of)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "EUR", "EUR 90 EUR", "£90 GBP", "-4", "90 hours", "1,000,000"})
  void what_is_no_amount_is_told_with_what_would_be(String typed) {
    assertThat(Money.read(typed).problem().orElseThrow())
        .startsWith("“" + typed + "” is not an amount of money")
        .contains("12.50 EUR");
  }
}
