package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.kernel.Message;
import linkwright.exchange.CsvTable;
import linkwright.exchange.TakenIn;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.routine.RoutinePart;
import linkwright.routine.Step;
import linkwright.standing.Standing;
import org.junit.jupiter.api.Test;

/** What a table says was cut takes the same off the wire as what is counted at the bench. */
class TakenInAsAtBenchTest {
  private static Bencher bench() {
    Map<String, String> wish = new LinkedHashMap<>(Wishes.common().texts());
    wish.put(WishKeys.STOCK, "2100 mm, 90 mm");
    return Bencher.with(new Fact.JobOpened("a", "scroll-and-ring"), new Fact.PlanSet(wish));
  }

  private static String cutting(Bencher bench, PieceKind piece) {
    return bench.job().standing().walked().orElseThrow().steps().stream()
        .filter(step -> step.part() != RoutinePart.TRIAL)
        .filter(step -> step.stage().containsKey(piece))
        .filter(step -> bench.pile(piece).begins(step.stage().get(piece)))
        .map(Step::id)
        .findFirst()
        .orElseThrow()
        .word();
  }

  private static Standing takenIn(Bencher bench, String rows) {
    TakenIn taken =
        TakenIn.job(
            "rows.csv",
            CsvTable.read("rows.csv", "piece,stage,what,count\n" + rows),
            bench.entries(),
            bench.state(),
            bench.job().standing(),
            bench.model().handbook(),
            UnitStyle.METRIC);
    assertThat(taken.problems()).isEmpty();
    List<Entry> entries = new ArrayList<>();
    for (Fact fact : taken.facts()) {
      assertThat(fact).isInstanceOf(Fact.WireCut.class);
      entries.add(new Entry(1000 + entries.size(), bench.now(), "take-in", fact));
    }
    bench.take(new Message.Kept(entries));
    return bench.job().standing();
  }

  @Test
  void each_row_that_was_cut_is_asked_about_beside_those_before_it() {
    Bencher bench = bench();
    int can = bench.job().standing().left().get(PieceKind.LINK).canCut();
    assertThat(asked(bench, "link,cut,through," + can + "\n")).isEmpty();
    assertThat(asked(bench, "link,cut,through," + (can - 2) + "\nlink,cut,through,5\n"))
        .containsExactly("Line 3: 5 more, where the wire on hand then gives 2?");
    assertThat(asked(bench, "ring,cut,through,40\nlink,cut,through," + can + "\n"))
        .singleElement()
        .asString()
        .startsWith("Line 3: " + can + ", where the wire on hand gives ");
  }

  private static List<String> asked(Bencher bench, String rows) {
    return TakenIn.job(
            "rows.csv",
            CsvTable.read("rows.csv", "piece,stage,what,count\n" + rows),
            bench.entries(),
            bench.state(),
            bench.job().standing(),
            bench.model().handbook(),
            UnitStyle.METRIC)
        .asked();
  }

  @Test
  void links_and_rings_leave_as_much_wire_and_as_good_a_chance() {
    Bencher counted = bench();
    counted.press("enter").goTo(cutting(counted, PieceKind.LINK)).type("7").press("space");
    counted.goTo(cutting(counted, PieceKind.RING)).type("8").press("space");
    Standing atBench = counted.job().standing();
    assertThat(counted.pile(PieceKind.RING).alive()).isEqualTo(8);

    Bencher table = bench();
    double before = table.job().standing().stockLeft().leftMm(PieceKind.LINK);
    Standing fromTable = takenIn(table, "link,cut,through,7\nring,cut,through,8\n");

    assertThat(fromTable.stockLeft()).isEqualTo(atBench.stockLeft());
    assertThat(fromTable.stockLeft().leftMm(PieceKind.LINK)).isLessThan(before - 7 * 30);
    assertThat(fromTable.chance()).isEqualTo(atBench.chance());
    assertThat(fromTable.wire()).isEqualTo(atBench.wire());
  }
}
