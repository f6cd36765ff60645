package linkwright.standing.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import linkwright.job.Fact;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.standing.JobBook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pieces that lengths still give, and those that are over, by hand. */
class StockLeftTest {
  private static final ChainWish WISH =
      Wishes.common()
          .with(WishKeys.KERF, "1 mm")
          .with(WishKeys.COIL_TAIL, "10 mm")
          .read()
          .wish()
          .orElseThrow();

  /** The last cut of a length needs no saw: 101 mm of blanks; a coil loses its tail of 10 mm. */
  @ParameterizedTest
  @CsvSource({
    "link, 20, 7", // 5 and 2
    "link, 25.25, 6", // 4 exactly and 2
    "link, 25.5, 5", // 3 and 2
    "link, 200, 0",
    "ring, 20, 6", // 4 and 2
    "ring, 45, 2", // 2 and none
    "ring, 91, 0",
    "ring, 0, 0",
    "link, -1, 0",
  })
  void each_length_gives_pieces_by_itself(String kind, double eachMm, int pieces) {
    StockLeft left = new StockLeft(List.of(100.0, 50.0, 4.0), Optional.empty());
    assertThat(left.canCut(new PieceKind(kind), eachMm, WISH)).isEqualTo(pieces);
  }

  @Test
  void rings_of_their_own_wire_are_cut_from_that() {
    StockLeft left = new StockLeft(List.of(100.0), Optional.of(List.of(30.0, 40.0)));
    assertThat(left.leftMm(PieceKind.RING)).isEqualTo(70);
    assertThat(left.leftMm(PieceKind.LINK)).isEqualTo(100);
    assertThat(left.canCut(PieceKind.RING, 10, WISH)).isEqualTo(2 + 3);
    assertThat(new StockLeft(List.of(100.0), Optional.empty()).leftMm(PieceKind.RING))
        .isEqualTo(100);
  }

  @Test
  void without_a_plan_nothing_is_on_hand() {
    JobBook bare = JobBook.of("scroll-and-ring");
    assertThat(StockLeft.of(Optional.empty(), bare.state().wire()))
        .isEqualTo(new StockLeft(List.of(), Optional.empty()));
  }

  /** Links and rings beyond the chain weigh as those in it; those that lack weigh nothing off. */
  @Test
  void pieces_over_weigh_as_those_of_the_chain() {
    JobBook book = JobBook.scroll(Wishes.common().texts());
    Plan plan = book.standing().counted().plan().orElseThrow();
    book.enter(new Fact.WireCut(PieceKind.LINK, plan.links() - 1, 38.1));
    book.enter(new Fact.WireCut(PieceKind.RING, plan.rings() + 3, 11));
    double ringG = plan.massRingsG() / plan.rings();
    assertThat(PiecesOver.massG(plan, book.state())).isCloseTo(3 * ringG, Offset.offset(1e-9));
    book.enter(new Fact.WireCut(PieceKind.LINK, 3, 38.1));
    double linkG = plan.massLinksG() / plan.links();
    assertThat(PiecesOver.massG(plan, book.state()))
        .isCloseTo(3 * ringG + 2 * linkG, Offset.offset(1e-9));
  }

  /** 18 long and 18 round: three round ones over, though long ones lack. */
  @Test
  void of_several_sizes_each_is_over_by_itself() {
    JobBook book = JobBook.of("figaro").and(new Fact.PlanSet(Wishes.figaro().texts()));
    Plan plan = book.standing().counted().plan().orElseThrow();
    book.enter(new Fact.WireCut(PieceKind.LINK, 5, 38, "long"));
    book.enter(new Fact.WireCut(PieceKind.LINK, 21, 12.6, "round"));
    double roundG = plan.sizes().get(1).massG() / 18;
    assertThat(PiecesOver.massG(plan, book.state())).isCloseTo(3 * roundG, Offset.offset(1e-9));
  }
}
