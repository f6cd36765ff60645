package linkwright.standing.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.drawer.Drawer;
import linkwright.drawer.JobMetal;
import linkwright.drawer.MetalAccount;
import linkwright.drawer.Taking;
import linkwright.job.Accounts;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.standing.ClosedFigures;
import linkwright.standing.JobBook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Wire at the bench of a job that is closed is neither lost nor back: it is told apart. */
class WireAtBenchTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** A millimetre of 0.9 mm sterling, g: a circle's area by 10.36 g/cm³ (supplier's data sheet). */
  private static final double MM_G = Math.PI * 0.81 / 4 * 10.36 / 1000;

  /** Took 3 m, cut 1.2 m of it into 30 blanks of 40 mm; the chain came to 7 g. */
  private static JobBook job() {
    JobBook book =
        JobBook.scroll(Wishes.common().without(WishKeys.STOCK).with(WishKeys.KERF, "0 mm").texts());
    book.enter(new Fact.WireAdded(PieceKind.LINK, 0.9, 3000, "soft", "b7", "march"));
    book.enter(new Fact.WireCut(PieceKind.LINK, 30, 40));
    return book;
  }

  private static Fact weighedIn(OptionalDouble wireG) {
    return new Fact.WeighedIn(OptionalDouble.of(7), NONE, wireG, NONE, NONE, NONE, NONE);
  }

  private static MetalAccount closed(JobBook book) {
    return closed(book, ClosedFigures.of(book.state(), book.standing(), JobBook.HANDBOOK));
  }

  private static MetalAccount closed(JobBook book, Map<String, Double> figures) {
    book.enter(new Fact.JobClosed("", figures));
    Fact came =
        new LotFact.LotArrived(
            "march",
            "wire",
            "sterling",
            OptionalDouble.of(0.9),
            "soft",
            "b7",
            OptionalDouble.of(5000),
            NONE,
            "");
    Drawer drawer =
        Drawer.of(
            List.of(new Entry(1, Instant.EPOCH, "bench", came)),
            Taking.in("chain", book.entries()),
            JobMetal.in("chain", book.entries()).stream().toList(),
            JobBook.HANDBOOK.reference());
    return MetalAccount.of(drawer, JobBook.HANDBOOK.reference()).get(0);
  }

  private static double accounted(MetalAccount account) {
    return account.chainG()
        + account.backG()
        + account.cleanG()
        + account.solderedG()
        + account.filingsG()
        + account.sweepsG()
        + account.atBenchG()
        + account.overG()
        + account.lostG();
  }

  @Test
  void wire_that_nothing_was_said_of_is_at_the_bench_and_not_lost() {
    JobBook book = job().and(weighedIn(NONE));
    MetalAccount account = closed(book);
    assertThat(account.atBenchG()).isCloseTo(1800 * MM_G, Offset.offset(1e-6));
    assertThat(account.lostG()).isLessThan(1200 * MM_G);
    assertThat(accounted(account)).isCloseTo(account.workG(), Offset.offset(1e-6));
  }

  @Test
  void wire_that_was_weighed_in_or_given_back_is_not_at_the_bench() {
    MetalAccount weighed = closed(job().and(weighedIn(OptionalDouble.of(1800 * MM_G))));
    assertThat(weighed.atBenchG()).isZero();
    JobBook back =
        job()
            .and(
                new LotFact.StockReturned(
                    "march", PieceKind.LINK, OptionalDouble.of(1800), NONE, ""))
            .and(weighedIn(NONE));
    MetalAccount given = closed(back);
    assertThat(given.atBenchG()).isZero();
    assertThat(given.lostG()).isCloseTo(weighed.lostG(), Offset.offset(1e-6));
    assertThat(accounted(given)).isCloseTo(given.workG(), Offset.offset(1e-6));
  }

  @Test
  void of_wire_that_only_the_plan_names_nothing_is_asked() {
    JobBook book = JobBook.scroll(Wishes.common().with(WishKeys.STOCK, "3 m").texts());
    assertThat(WireAtBench.of(book.standing().counted().plan().orElseThrow(), book.state()))
        .isEqualTo(WireAtBench.NONE);
    assertThat(ClosedFigures.of(book.state(), book.standing(), JobBook.HANDBOOK))
        .doesNotContainKey(Accounts.WIRE_AT_BENCH_G);
  }

  @Test
  void more_is_never_at_the_bench_than_the_account_lacks() {
    Map<String, Double> figures =
        Map.of("metal_out_g", 19.0, "unaccounted_g", 0.0, Accounts.WIRE_AT_BENCH_G, 100.0);
    MetalAccount account = closed(job().and(weighedIn(NONE)), figures);
    assertThat(account.atBenchG()).isCloseTo(3000 * MM_G - 19, Offset.offset(1e-6));
    assertThat(account.lostG()).isCloseTo(0, Offset.offset(1e-9));
  }

  /** Five links more than the chain takes lie over: with them the account adds up. */
  @Test
  void pieces_that_the_chain_did_not_take_are_neither_lost_nor_scrap() {
    JobBook book = JobBook.scroll(Wishes.common().with(WishKeys.KERF, "0 mm").texts());
    Plan plan = book.standing().counted().plan().orElseThrow();
    book.enter(new Fact.WireAdded(PieceKind.LINK, 0.9, 3000, "soft", "b7", "march"));
    book.enter(new Fact.WireCut(PieceKind.LINK, plan.links() + 5, plan.linkBlankMm()));
    double leftG = (3000 - (plan.links() + 5) * plan.linkBlankMm()) * MM_G;
    double linksG = plan.links() * plan.linkBlankMm() * MM_G;
    double chainG = linksG + plan.wish().claspG() + plan.solderPlacedG();
    MetalAccount account =
        closed(
            book.and(
                new Fact.WeighedIn(
                    OptionalDouble.of(chainG),
                    NONE,
                    OptionalDouble.of(leftG),
                    NONE,
                    NONE,
                    NONE,
                    NONE)));
    assertThat(account.overG()).isCloseTo(5 * plan.linkBlankMm() * MM_G, Offset.offset(1e-6));
    assertThat(account.lostG()).isCloseTo(0, Offset.offset(1e-6));
    assertThat(accounted(account)).isCloseTo(account.workG(), Offset.offset(1e-6));
  }

  @Test
  void more_is_never_over_than_the_account_lacks() {
    Map<String, Double> figures =
        Map.of("metal_out_g", 19.0, "unaccounted_g", 0.0, Accounts.PIECES_OVER_G, 100.0);
    MetalAccount account = closed(job().and(weighedIn(NONE)), figures);
    assertThat(account.overG()).isCloseTo(3000 * MM_G - 19, Offset.offset(1e-6));
    assertThat(account.lostG()).isCloseTo(0, Offset.offset(1e-9));
  }
}
