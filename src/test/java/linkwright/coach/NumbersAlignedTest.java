package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import linkwright.coach.content.Part;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.job.Entry;
import linkwright.job.Fact;
import org.junit.jupiter.api.Test;

/** Whatever place shows a table of numbers, they stand aligned on the decimal sign. */
class NumbersAlignedTest {
  /** A number, its spread, its unit. */
  private static final Pattern NUMBER =
      Pattern.compile("[-−]?\\d+([.]\\d+)?( ± \\d+([.]\\d+)?)?( ?(mm|m|g|N|h|%|°|s|min))?");

  @Test
  void a_column_of_numbers_is_one_in_every_place() {
    Bencher bench = Bencher.withTheDemo();
    bench.take(
        new Message.Kept(
            List.of(
                entry(
                    bench,
                    new Fact.TestPieceTried(
                        0.9,
                        38,
                        Map.of("bow", 3.5, "tip", 1.0),
                        OptionalDouble.of(14.2),
                        OptionalDouble.of(5.3),
                        OptionalDouble.empty(),
                        List.of("right"),
                        "")))));
    List<String> wrong = new ArrayList<>();
    int tables = 0;
    for (PlaceId place : PlaceId.values()) {
      Model there = Coach.update(bench.model(), new Message.ActChosen(Act.ROUND)).model();
      there = Coach.update(there, new Message.ActChosen(place.act())).model();
      for (Part part : Pages.of(there).body().parts()) {
        if (part instanceof Table table) {
          tables++;
          wrong(place, table, wrong);
        }
      }
    }
    assertThat(tables).isGreaterThan(4);
    assertThat(wrong).isEmpty();
  }

  private static Entry entry(Bencher bench, Fact fact) {
    return new Entry(bench.entries().size() + 1, bench.now(), "bench", fact);
  }

  private static void wrong(PlaceId place, Table table, List<String> wrong) {
    for (int c = 0; c < table.columns().size(); c++) {
      int at = c;
      List<String> cells =
          table.lines().stream()
              .filter(line -> line.cells().size() > at)
              .map(line -> line.cells().get(at))
              .filter(cell -> !cell.isBlank() && !cell.equals("-"))
              .toList();
      boolean numbers =
          cells.size() > 1 && cells.stream().allMatch(cell -> NUMBER.matcher(cell).matches());
      if (numbers && !table.columns().get(c).number()) {
        wrong.add(place + ", column " + c + ": " + cells);
      }
    }
  }
}
