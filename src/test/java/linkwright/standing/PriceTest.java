package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.job.PriceList;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** One chain priced by hand; the figures are made up for the test. */
class PriceTest {
  private static final Offset<Double> TO_THE_PENNY = Offset.offset(1e-9);
  private static final PriceList PRICES =
      new PriceList(
          Map.ofEntries(
              Map.entry(PriceList.METAL_PER_G, 1.20),
              Map.entry(PriceList.SCRAP_CREDIT, 0.9),
              Map.entry(PriceList.FILINGS_CREDIT, 0.5),
              Map.entry(PriceList.SOLDER_PER_G, 2.0),
              Map.entry(PriceList.HOUR, 30.0),
              Map.entry(PriceList.OVERHEAD, 0.25),
              Map.entry(PriceList.MARGIN, 0.4),
              Map.entry(PriceList.FINDINGS, 6.0),
              Map.entry(PriceList.ASSAY, 8.0),
              Map.entry(PriceList.CARRIAGE, 5.0),
              Map.entry(PriceList.TAX, 0.2)));

  private final Price price = Price.of(new Price.Used(10, 1.5, 0.8, 0.25, 6), PRICES);

  private double line(String what) {
    return price.lines().stream()
        .filter(line -> line.what().equals(what))
        .mapToDouble(Price.Line::money)
        .sum();
  }

  @Test
  void each_line_is_its_amount_times_its_price() {
    assertThat(line("metal")).isCloseTo(12.00, TO_THE_PENNY);
    assertThat(line("scrap credited")).isCloseTo(-1.62, TO_THE_PENNY);
    assertThat(line("filings credited")).isCloseTo(-0.48, TO_THE_PENNY);
    assertThat(line("solder")).isCloseTo(0.50, TO_THE_PENNY);
    assertThat(line("work")).isCloseTo(180, TO_THE_PENNY);
    assertThat(line("overhead")).isCloseTo(45, TO_THE_PENNY);
    assertThat(line("findings")).isCloseTo(6, TO_THE_PENNY);
  }

  @Test
  void the_margin_is_on_the_cost_and_the_tax_on_all_before_it() {
    // 12 − 1.62 − 0.48 + 0.50 + 180 + 45 + 6 = 241.40; + 40 % = 337.96; + 13 = 350.96; + 20 %.
    assertThat(line("margin")).isCloseTo(96.56, TO_THE_PENNY);
    assertThat(line("tax")).isCloseTo(70.192, TO_THE_PENNY);
    assertThat(price.total()).isCloseTo(421.152, TO_THE_PENNY);
  }

  @Nested
  class WithoutPrices {
    @Test
    void nothing_is_charged_and_no_line_is_shown() {
      Price free = Price.of(new Price.Used(10, 1, 1, 1, 6), new PriceList(Map.of()));
      assertThat(free.lines()).isEmpty();
      assertThat(free.total()).isZero();
    }
  }
}
