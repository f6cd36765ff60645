package linkwright.drawer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plan.Wishes;
import linkwright.routine.PieceKind;
import linkwright.standing.JobBook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a job took of a solder and did not give back is in its chain once that is weighed. */
class SolderUsedTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private final List<Entry> job = new ArrayList<>();

  private static OptionalDouble grams(double grams) {
    return OptionalDouble.of(grams);
  }

  private void enter(Fact fact) {
    int number = job.size() + 1;
    job.add(new Entry(number, NOW.plusSeconds(number), "bench", fact));
  }

  private MetalAccount account() {
    Fact came =
        new LotFact.LotArrived("strip", "solder", "hard-silver", NONE, "", "", NONE, grams(5), "");
    Drawer drawer =
        Drawer.of(
            List.of(new Entry(1, NOW, "bench", came)),
            Taking.in("chain", job),
            JobMetal.in("chain", job).stream().toList(),
            JobBook.HANDBOOK.reference());
    return MetalAccount.of(drawer, JobBook.HANDBOOK.reference()).stream()
        .filter(account -> account.metal().equals("hard-silver"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void solder_stays_in_work_until_the_chain_is_weighed_and_the_job_closed() {
    enter(new Fact.PlanSet(Wishes.common().texts()));
    enter(new LotFact.StockTaken("strip", PieceKind.NONE, NONE, grams(1.2), ""));
    enter(new LotFact.StockReturned("strip", PieceKind.NONE, NONE, grams(0.5), ""));
    assertThat(account().openG()).isCloseTo(0.7, Offset.offset(1e-9));
    assertThat(account().chainG()).isZero();
    enter(new Fact.WeighedIn(grams(9), NONE, NONE, NONE, NONE, NONE, NONE));
    enter(new Fact.JobClosed("", Map.of("metal_out_g", 9.0, "unaccounted_g", 0.0)));
    MetalAccount closed = account();
    assertThat(closed.openG()).isCloseTo(0, Offset.offset(1e-9));
    assertThat(closed.chainG()).isCloseTo(0.7, Offset.offset(1e-9));
    assertThat(closed.backG()).isCloseTo(0.5, Offset.offset(1e-9));
    assertThat(closed.thereG()).isCloseTo(4.3, Offset.offset(1e-9));
  }
}
