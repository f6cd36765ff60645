package linkwright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How good the proposals are, and whether the stated spread holds, beside an oracle that knows its
 * maker: every row of the benchmark with fewer makers, always the same ones. Prints the figures.
 */
class MakersTest {
  private static final long SEED = 20_261_126;
  private static final int MAKERS = 100;
  private static final int PIECES = 3;

  /**
   * A row, and what these very makers came to on 2026-11-26 with some 7 % more: the median error
   * after one piece and after three, in % of the wish. The makers are the same at every run, so it
   * is the fit that moves these figures, not chance.
   *
   * <p>Where the turn drifts by degrees the spread is told too narrow: that it does not get worse.
   *
   * @param least for how many after one to three pieces the stated spread has to hold at least
   */
  private record Row(World world, double afterOne, double afterThree, double least) {
    @Override
    public String toString() {
      return world.patternId() + ", " + world.name();
    }
  }

  /** Of 68 to be expected; 100 makers with three pieces each stray from it by some four. */
  private static final double LEAST = 0.6;

  private static final double MOST = 0.76;

  static Stream<Row> rows() {
    return Stream.of(
        new Row(World.alike("hook-link"), 2.2, 1.8, LEAST),
        new Row(World.stress("hook-link"), 2.15, 1.75, LEAST),
        new Row(World.perFormer("hook-link"), 2.25, 1.7, LEAST),
        new Row(World.verdicts("hook-link"), 3.5, 1.8, LEAST),
        new Row(World.misread("hook-link", 1, false), 2.2, 2.1, LEAST),
        new Row(World.misread("hook-link", 1, true), 2.2, 2.0, LEAST),
        new Row(World.drift("hook-link"), 2.3, 2.8, 0.5),
        new Row(World.stress("scroll"), 1.9, 1.6, LEAST),
        new Row(World.curls("scroll"), 1.75, 1.8, LEAST),
        new Row(World.alike("oval"), 0.85, 0.5, LEAST),
        new Row(World.misread("oval", 1, false), 0.85, 0.62, LEAST),
        new Row(World.verdicts("oval"), 1.1, 0.92, LEAST),
        new Row(World.alike("round"), 1.35, 1.45, LEAST),
        new Row(World.verdicts("round"), 1.35, 1.45, LEAST));
  }

  private static MakersSimulation run(World world, int pieces) {
    MakersSimulation simulation = new MakersSimulation(world, pieces, SEED).run(MAKERS);
    System.out.println(simulation.table() + ", seed " + SEED);
    return simulation;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void makersComeAsNearAsTheyDidAndWhatIsStatedHolds(Row row) {
    MakersSimulation simulation = run(row.world(), PIECES);
    assertThat(100 * simulation.error(1, 0.5)).as(simulation.table()).isLessThan(row.afterOne());
    assertThat(100 * simulation.error(PIECES, 0.5))
        .as(simulation.table())
        .isLessThan(row.afterThree());
    double held = (simulation.holds(1) + simulation.holds(2) + simulation.holds(3)) / 3;
    assertThat(held).as(simulation.table()).isBetween(row.least(), MOST);
  }
}
