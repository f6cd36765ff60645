package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WireLedgerTest {
  private static WireLedger ledger(Fact... facts) {
    return ShortBook.state(facts).wire();
  }

  private static Fact came(String piece, double mm) {
    return new Fact.WireAdded(piece, 0.9, mm, "soft", "");
  }

  @Test
  void wire_that_came_stands_length_by_length_for_the_pieces_it_serves() {
    WireLedger ledger = ledger(came("link", 412), came("ring", 130), came("link", 96));
    assertThat(ledger.addedMm("link")).containsExactly(412.0, 96.0);
    assertThat(ledger.addedMm("ring")).containsExactly(130.0);
    assertThat(ledger.addedMm("clasp")).isEmpty();
    assertThat(ledger.added()).hasSize(3);
  }

  @Test
  void wire_cut_is_what_each_piece_took_times_how_many() {
    WireLedger ledger =
        ledger(
            new Fact.WireCut("link", 3, 38.4),
            new Fact.WireCut("link", 1, 40),
            new Fact.WireCut("ring", 10, 11));
    assertThat(ledger.usedMm("link")).isEqualTo(3 * 38.4 + 40);
    assertThat(ledger.usedMm("ring")).isEqualTo(110);
    assertThat(ledger.usedMm("clasp")).isZero();
  }

  @Test
  void a_test_piece_takes_links_wire() {
    Fact tried =
        new Fact.TestPieceTried(
            0.9,
            38,
            Map.of(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of("right"),
            "");
    assertThat(ledger(tried, tried).usedMm("link")).isEqualTo(76);
    assertThat(ledger(tried).usedMm("ring")).isZero();
  }

  @Test
  void wire_lost_uncut_is_kept_apart_from_wire_cut() {
    WireLedger ledger =
        ledger(
            came("link", 412),
            new Fact.WireCut("link", 1, 38),
            new Fact.WireDiscarded("link", 60, "kinked"),
            new Fact.WireDiscarded("link", 5, "pointed"),
            new Fact.WireDiscarded("ring", 7, "melted"));
    assertThat(ledger.discardedMm("link")).isEqualTo(65);
    assertThat(ledger.discardedMm("ring")).isEqualTo(7);
    assertThat(ledger.discardedMm("clasp")).isZero();
    assertThat(ledger.usedMm("link")).isEqualTo(38);
    assertThat(ledger.addedMm("link")).containsExactly(412.0);
  }
}
