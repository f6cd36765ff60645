package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeReferenceTest {
  /** ASTM B258, solid round wire, inches to four places. */
  @ParameterizedTest
  @CsvSource({
    "8, .1285",
    "10, .1019",
    "12, .0808",
    "14, .0641",
    "16, .0508",
    "18, .0403",
    "20, .0320",
    "22, .0253",
    "24, .0201",
    "26, .0159",
    "28, .0126",
    "30, .0100",
  })
  void americanGauge(int number, double inches) {
    assertThat(Gauge.awgMm(number) / 25.4).isCloseTo(inches, within(0.00005));
  }

  /** ASTM B258: the two sizes that define the gauge, 4/0 = 0.4600 in and 36 = 0.0050 in, exact. */
  @ParameterizedTest
  @CsvSource({"-3, .46", "36, .005"})
  void americanGaugeIsHungOnTwoExactSizes(int number, double inches) {
    assertThat(Gauge.awgMm(number)).isCloseTo(inches * 25.4, within(1e-12));
  }

  /**
   * BS 3737:1964, millimetres as tabulated to three places (the inches are in the program), as
   * reprinted in a public table; 7/0 to 2/0 are −6 to −1. That prints 8.236 for 0, which is a slip:
   * 0.324 in is 8.230 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "-6, 12.700",
    "-5, 11.786",
    "-4, 10.973",
    "-3, 10.160",
    "-2, 9.449",
    "-1, 8.839",
    "0, 8.230",
    "1, 7.620",
    "2, 7.010",
    "3, 6.401",
    "4, 5.893",
    "5, 5.385",
    "6, 4.877",
    "7, 4.470",
    "8, 4.064",
    "9, 3.658",
    "10, 3.251",
    "11, 2.946",
    "12, 2.642",
    "13, 2.337",
    "14, 2.032",
    "15, 1.829",
    "16, 1.626",
    "17, 1.422",
    "18, 1.219",
    "19, 1.016",
    "20, 0.914",
    "21, 0.813",
    "22, 0.711",
    "23, 0.610",
    "24, 0.559",
    "25, 0.508",
    "26, 0.457",
    "27, 0.417",
    "28, 0.376",
    "29, 0.345",
    "30, 0.315",
    "31, 0.295",
    "32, 0.274",
    "33, 0.254",
    "34, 0.234",
    "35, 0.213",
    "36, 0.193",
    "37, 0.173",
    "38, 0.152",
    "39, 0.132",
    "40, 0.122",
    "41, 0.112",
    "42, 0.102",
    "43, 0.091",
    "44, 0.081",
    "45, 0.071",
    "46, 0.061",
    "47, 0.051",
    "48, 0.041",
    "49, 0.030",
    "50, 0.025",
  })
  void britishGauge(int number, double millimetres) {
    assertThat(Gauge.swgMm(number).orThrow()).isCloseTo(millimetres, within(0.00051));
  }
}
