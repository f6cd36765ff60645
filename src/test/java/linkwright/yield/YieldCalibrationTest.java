package linkwright.yield;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Locale;
import org.hipparchus.random.RandomDataGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A stated chance must come true as often as it says. Run it to see the tables. */
class YieldCalibrationTest {
  private static final long SEED = 27_000_028;
  private static final int RUNS = 50_000;
  private static final int ENOUGH = 1_000;

  /** Stated and true chances, by tenths of what was stated. */
  private static final class Table {
    private final int[] runs = new int[10];
    private final double[] stated = new double[10];
    private final int[] cameTrue = new int[10];

    void add(double chance, boolean finished) {
      int tenth = Math.min(9, (int) (chance * 10));
      runs[tenth]++;
      stated[tenth] += chance;
      cameTrue[tenth] += finished ? 1 : 0;
    }

    String print(String title) {
      StringBuilder text = new StringBuilder(title).append("\n  tenth   runs  stated    true\n");
      for (int i = 0; i < 10; i++) {
        if (runs[i] > 0) {
          text.append(
              String.format(
                  Locale.ROOT,
                  "  %d-%3d %% %5d  %5.1f %%  %5.1f %%%n",
                  10 * i,
                  10 * i + 10,
                  runs[i],
                  100 * stated[i] / runs[i],
                  100.0 * cameTrue[i] / runs[i]));
        }
      }
      return text.toString();
    }
  }

  /** One job somewhere on its way: some pieces seen, so many wanted, so many blanks cut. */
  private static void run(Table table, RandomDataGenerator random, double usual, double loss) {
    int seen = random.nextInt(0, 20);
    int good = goodOf(seen, loss, random);
    int more = random.nextInt(3, 40);
    Rate believed = Rate.usual(usual).seen(good, seen - good);
    double wish = random.nextUniform(0.01, 0.99);
    int blanks =
        Yield.cut(more, believed, wish) instanceof BlanksToCut.Blanks cut
            ? cut.blanks()
            : 10 * more;
    double stated = ChanceOfEnough.of(more, blanks, believed);
    table.add(stated, goodOf(blanks, loss, random) >= more);
  }

  private static int goodOf(int pieces, double loss, RandomDataGenerator random) {
    int good = 0;
    for (int i = 0; i < pieces; i++) {
      good += random.nextDouble() >= loss ? 1 : 0;
    }
    return good;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.05, 0.15, 0.40})
  void aStatedChanceComesTrueAsOftenAsStated(double usual) {
    RandomDataGenerator random = new RandomDataGenerator(SEED);
    Table table = new Table();
    for (int i = 0; i < RUNS; i++) {
      run(table, random, usual, random.nextBeta(10 * usual, 10 * (1 - usual)));
    }
    String print = table.print("loss from the habit " + usual + ", seed " + SEED);
    System.out.println(print);
    int judged = 0;
    for (int i = 0; i < 10; i++) {
      if (table.runs[i] >= ENOUGH) {
        judged++;
        assertThat((double) table.cameTrue[i] / table.runs[i])
            .as(print)
            .isCloseTo(table.stated[i] / table.runs[i], within(0.03));
      }
    }
    assertThat(judged).as(print).isGreaterThanOrEqualTo(3);
  }

  /** No pass mark: a habit of 15 % told of hands whose loss is anything from 2 to 40 %. */
  @Test
  void theTableForLossesThatTheHabitDoesNotDescribe() {
    RandomDataGenerator random = new RandomDataGenerator(SEED);
    Table table = new Table();
    for (int i = 0; i < RUNS; i++) {
      run(table, random, 0.15, random.nextUniform(0.02, 0.40));
    }
    String print = table.print("loss uniform on 2 to 40 %, habit 15 %, seed " + SEED);
    System.out.println(print);
    assertThat(Arrays.stream(table.runs).sum()).isEqualTo(RUNS);
  }
}
