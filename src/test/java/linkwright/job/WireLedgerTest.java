package linkwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.routine.PieceKind;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

class WireLedgerTest {
  private static WireLedger ledger(Fact... facts) {
    return ShortBook.state(facts).wire();
  }

  private static Fact came(PieceKind piece, double mm) {
    return new Fact.WireAdded(piece, 0.9, mm, "soft", "");
  }

  @Test
  void wire_that_came_stands_length_by_length_for_the_pieces_it_serves() {
    WireLedger ledger =
        ledger(came(PieceKind.LINK, 412), came(PieceKind.RING, 130), came(PieceKind.LINK, 96));
    assertThat(ledger.addedMm(PieceKind.LINK)).containsExactly(412.0, 96.0);
    assertThat(ledger.addedMm(PieceKind.RING)).containsExactly(130.0);
    assertThat(ledger.addedMm(new PieceKind("clasp"))).isEmpty();
    assertThat(ledger.added()).hasSize(3);
  }

  @Test
  void wire_cut_is_what_each_piece_took_times_how_many() {
    WireLedger ledger =
        ledger(
            new Fact.WireCut(PieceKind.LINK, 3, 38.4),
            new Fact.WireCut(PieceKind.LINK, 1, 40),
            new Fact.WireCut(PieceKind.RING, 10, 11));
    assertThat(ledger.usedMm(PieceKind.LINK)).isEqualTo(3 * 38.4 + 40);
    assertThat(ledger.usedMm(PieceKind.RING)).isEqualTo(110);
    assertThat(ledger.usedMm(new PieceKind("clasp"))).isZero();
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
    assertThat(ledger(tried, tried).usedMm(PieceKind.LINK)).isEqualTo(76);
    assertThat(ledger(tried).usedMm(PieceKind.RING)).isZero();
  }

  @Test
  void wire_lost_uncut_is_kept_apart_from_wire_cut() {
    WireLedger ledger =
        ledger(
            came(PieceKind.LINK, 412),
            new Fact.WireCut(PieceKind.LINK, 1, 38),
            new Fact.WireDiscarded(PieceKind.LINK, 60, "kinked"),
            new Fact.WireDiscarded(PieceKind.LINK, 5, "pointed"),
            new Fact.WireDiscarded(PieceKind.RING, 7, "melted"));
    assertThat(ledger.discardedMm(PieceKind.LINK)).isEqualTo(65);
    assertThat(ledger.discardedMm(PieceKind.RING)).isEqualTo(7);
    assertThat(ledger.discardedMm(new PieceKind("clasp"))).isZero();
    assertThat(ledger.usedMm(PieceKind.LINK)).isEqualTo(38);
    assertThat(ledger.addedMm(PieceKind.LINK)).containsExactly(412.0);
  }

  @Test
  void wire_given_back_went_uncut_and_is_known_to_lie_in_the_drawer() {
    WireLedger ledger =
        ledger(
            new Fact.WireDiscarded(PieceKind.LINK, 60, "kinked"),
            returned(OptionalDouble.of(150)),
            returned(OptionalDouble.of(25)),
            returned(OptionalDouble.empty()));
    assertThat(ledger.returnedMm(PieceKind.LINK)).isEqualTo(175);
    assertThat(ledger.discardedMm(PieceKind.LINK)).isEqualTo(235);
    assertThat(ledger.returnedMm(PieceKind.RING)).isZero();
  }

  private static Fact returned(OptionalDouble mm) {
    return new LotFact.StockReturned("W1", PieceKind.LINK, mm, OptionalDouble.empty(), "");
  }

  /** What is left of a coil once other work is begun is its tail, and there is one of each coil. */
  @Test
  void a_coil_of_rings_is_left_with_the_next_other_work() {
    Fact rings = new Fact.WireCut(PieceKind.RING, 5, 11);
    Fact links = new Fact.WireCut(PieceKind.LINK, 1, 38);
    Fact open = new Fact.StepOpened(new StepId("join"));
    Fact done = new Fact.StepDone(new StepId("wind"));
    assertThat(ledger(rings, rings).coils()).isZero();
    assertThat(ledger(rings, rings).coiling()).isTrue();
    assertThat(ledger(rings, rings, links).coils()).isEqualTo(1);
    assertThat(ledger(rings, open, done, links).coils()).isEqualTo(1);
    assertThat(ledger(rings, links, rings, done).coils()).isEqualTo(2);
    assertThat(ledger(links, open, done).coils()).isZero();
    assertThat(ledger(rings, new Fact.Noted("even turns")).coils()).isZero();
  }

  @Test
  void test_pieces_are_counted_and_leave_the_coil() {
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
    WireLedger ledger = ledger(new Fact.WireCut(PieceKind.RING, 5, 11), tried, tried);
    assertThat(ledger.tried()).isEqualTo(2);
    assertThat(ledger.coiling()).isTrue();
  }
}
