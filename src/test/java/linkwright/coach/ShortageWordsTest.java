package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import linkwright.coach.form.ShortageWords;
import linkwright.coach.kernel.Message;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import linkwright.standing.Standing;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What follows from a job's entries: the wire left and whether it will do. */
class ShortageWordsTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  /** Ten or so links of blanks of 38.1 mm, cut without a kerf, with rings of 3 mm. */
  private static Bencher with(String stock, String ringWire, String ringStock) {
    Map<String, String> wish = new LinkedHashMap<>();
    wish.put("metal", "sterling");
    wish.put("wire", "0.9 mm");
    wish.put("link.pattern", "scroll");
    wish.put("link.blank", "38.1 mm");
    wish.put("ring.inside", "3 mm");
    wish.put("ring.wire", ringWire);
    wish.put("ring-stock", ringStock);
    wish.put("finished-length", "15 cm");
    wish.put("stock", stock);
    wish.values().removeIf(String::isEmpty);
    return Bencher.with(new Fact.JobOpened("a", "scroll-and-ring"), new Fact.PlanSet(wish));
  }

  private static Bencher with(String stock) {
    return with(stock, "", "");
  }

  @Nested
  class WireLeft {
    @Test
    void is_what_was_on_hand_and_came_less_what_was_cut_lost_and_tried() {
      Bencher bench = with("300 mm, 500 mm");
      bench.take(kept(bench, new Fact.WireAdded(PieceKind.LINK, 0.9, 100, "soft", "")));
      bench.take(kept(bench, new Fact.WireCut(PieceKind.LINK, 3, 38.1)));
      bench.take(kept(bench, new Fact.WireDiscarded(PieceKind.LINK, 20, "kinked")));
      assertThat(bench.job().standing().stockLeft().leftMm(PieceKind.LINK))
          .isCloseTo(900 - 3 * 38.1 - 20, EXACT);
    }

    @Test
    void is_used_up_from_the_shortest_length() {
      Bencher bench = with("300 mm, 50 mm");
      bench.take(kept(bench, new Fact.WireCut(PieceKind.LINK, 2, 38.1)));
      assertThat(bench.job().standing().stockLeft().linksMm()).hasSize(1);
      assertThat(bench.job().standing().stockLeft().leftMm(PieceKind.LINK)).isCloseTo(273.8, EXACT);
    }

    @Test
    void is_never_less_than_nothing() {
      Bencher bench = with("100 mm");
      bench.take(kept(bench, new Fact.WireCut(PieceKind.LINK, 9, 38.1)));
      assertThat(bench.job().standing().stockLeft().leftMm(PieceKind.LINK)).isZero();
      assertThat(bench.job().standing().left().get(PieceKind.LINK).canCut()).isZero();
    }

    @Test
    void gives_whole_pieces_length_by_length() {
      // 2 of 38.1 from 80 mm, 1 from 40 mm, none from 38 mm.
      Bencher bench = with("80 mm, 40 mm, 38 mm");
      assertThat(bench.job().standing().left().get(PieceKind.LINK).canCut()).isEqualTo(3);
    }

    @Test
    void of_another_wire_gives_rings_less_a_tail_for_each_coil() {
      Bencher bench = with("2 m", "0.7 mm", "60 mm");
      double turn = bench.job().standing().eachMm().get(PieceKind.RING);
      assertThat(bench.job().standing().left().get(PieceKind.RING).canCut())
          .isEqualTo((int) Math.floor(50 / turn));
    }
  }

  @Nested
  class Shortages {
    @Test
    void are_none_where_the_wire_will_do() {
      assertThat(ShortageWords.of(with("2 m").job().standing())).isEmpty();
    }

    @Test
    void are_none_where_nothing_was_said_of_wire() {
      assertThat(ShortageWords.of(with("").job().standing())).isEmpty();
    }

    @Test
    void name_the_pieces_that_cannot_be_cut() {
      Bencher bench = with("100 mm", "0.7 mm", "1 m");
      int missing = bench.job().standing().left().get(PieceKind.LINK).toCut().orElseThrow() - 2;
      assertThat(ShortageWords.of(bench.job().standing()))
          .containsExactly("wire for " + missing + " more links");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 5})
    void are_told_with_a_cut_only_if_any_is_to_be_cut_after_it(int fewer) {
      Bencher full = with("5 m");
      int links = full.job().standing().left().get(PieceKind.LINK).toCut().orElseThrow();
      // As much as the links take and no more: the rings, of the same wire, lack some.
      Bencher bench = with(links * 38.1 + 1 + " mm");
      Standing before = bench.job().standing();
      int count = links - fewer;
      Fact cut = new Fact.WireCut(PieceKind.LINK, count, 38.1);
      Standing after = bench.job().standingWith(cut, bench.now(), Bencher.SHELF);
      bench.take(kept(bench, cut));
      assertThat(after.missing()).isEqualTo(bench.job().standing().missing());
      String told = ShortageWords.after(before, after, PieceKind.LINK, "", count);
      int lack = bench.job().standing().missing().getOrDefault(PieceKind.LINK, 0);
      if (lack == 0) {
        assertThat(told).isEmpty();
      } else {
        assertThat(told).startsWith("The wire on hand will not do: it lacks " + lack + " link");
      }
      if (fewer == 0) {
        assertThat(told).isEmpty();
      }
    }

    @Test
    void are_told_as_on_the_wires_own_place_where_one_wire_gives_links_or_rings_but_not_both() {
      Standing plenty = with("5 m").job().standing();
      int links = plenty.left().get(PieceKind.LINK).toCut().orElseThrow();
      Standing standing = with(links * 38.1 + 1 + " mm").job().standing();
      // Chain is cut from it, links with their rings: some of both are missing.
      assertThat(standing.missing()).containsOnlyKeys(PieceKind.LINK, PieceKind.RING);
      assertThat(ShortageWords.of(standing))
          .containsExactly(
              "wire for " + standing.missing().get(PieceKind.LINK) + " more links",
              "wire for " + standing.missing().get(PieceKind.RING) + " more rings");
    }
  }

  private static Message.Kept kept(Bencher bench, Fact fact) {
    int number = 1000 + bench.job().entries().size();
    return new Message.Kept(
        java.util.List.of(new linkwright.job.Entry(number, bench.now(), "bench", fact)));
  }
}
