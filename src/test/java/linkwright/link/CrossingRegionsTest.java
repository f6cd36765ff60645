package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Crossings against the plain definition, looked up pair by pair on a grid of its own: as many as
 * there are connected regions, each as deep as its region.
 */
class CrossingRegionsTest {
  private static final double STEP_MM = 1 / 25.0;

  @Test
  void thereIsOneCrossingForEachConnectedRegion() {
    int several = 0;
    for (long seed = 1; seed <= 30; seed++) {
      Formed link = draw(new Random(seed));
      List<Double> regions = regions(link.centreLine());
      List<Crossing> crossings = link.crossings();
      assertThat(crossings).as("seed " + seed).hasSameSizeAs(regions);
      for (double least : regions) {
        assertThat(crossings)
            .as("seed " + seed)
            .anyMatch(
                crossing ->
                    crossing.gapMm() + 1 <= least + 1e-9
                        && crossing.gapMm() + 1 >= least - 1.5 * STEP_MM);
      }
      several += regions.size() > 1 ? 1 : 0;
    }
    assertThat(several).as("links with several crossings").isGreaterThan(5);
  }

  @Test
  void thoseThatAreAskedForByTheirDepthAreTheDeepOnesOfAll() {
    int deep = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Formed link = draw(new Random(seed));
      double deepestMm = deepestMm(link.crossings());
      double found = deepestMm(link.crossings(0.25));
      assertThat(found)
          .as("seed " + seed)
          .isCloseTo(deepestMm > 0.25 ? deepestMm : 0, within(1e-6));
      deep += found > 0 ? 1 : 0;
    }
    assertThat(deep).as("links with a deep crossing").isBetween(10, 55);
  }

  private static double deepestMm(List<Crossing> crossings) {
    return crossings.stream().mapToDouble(crossing -> -crossing.gapMm()).max().orElse(0);
  }

  /** A link of wire 1 mm, tangled more often than not. */
  private static Formed draw(Random chance) {
    Map<String, Double> formers =
        Map.of("small", 1 + 2 * chance.nextDouble(), "large", 2 + 3 * chance.nextDouble());
    Pattern pattern =
        Shapes.of(
            formers,
            chance.nextBoolean() ? OtherHalf.TURNED : OtherHalf.MIRRORED,
            false,
            List.of(),
            Run.of(0.2 + 4 * chance.nextDouble()),
            Bends.of(
                "small",
                30 + 300 * chance.nextDouble(),
                chance.nextBoolean() ? Side.LEFT : Side.RIGHT),
            Bends.eye("large", 100 + 220 * chance.nextDouble(), Side.LEFT),
            Bends.of("small", 1 + 60 * chance.nextDouble(), Side.RIGHT),
            Run.rest());
    double shortestMm = Shapes.form(pattern, 1, 500).shortestBlankMm();
    return Shapes.form(pattern, 1, shortestMm + 1 + 10 * chance.nextDouble());
  }

  /** The least distance of each connected region of pairs that are too near. */
  private static List<Double> regions(CentreLine line) {
    int last = (int) Math.ceil(line.lengthMm() / STEP_MM);
    double stepMm = line.lengthMm() / last;
    List<Point> points = line.points(STEP_MM);
    int wide = last + 1;
    BitSet near = new BitSet();
    for (int i = 0; i <= last; i++) {
      for (int j = i + 1; j <= last; j++) {
        boolean apart = (j - i) * stepMm > Math.PI / 2;
        if (apart && points.get(i).distanceMm(points.get(j)) < 0.99) {
          near.set(i * wide + j);
        }
      }
    }
    List<Double> least = new ArrayList<>();
    for (int seed = near.nextSetBit(0); seed >= 0; seed = near.nextSetBit(seed)) {
      least.add(flood(seed, near, points, wide));
    }
    return least;
  }

  private static double flood(int seed, BitSet near, List<Point> points, int wide) {
    double least = Double.POSITIVE_INFINITY;
    Deque<Integer> open = new ArrayDeque<>(List.of(seed));
    near.clear(seed);
    while (!open.isEmpty()) {
      int cell = open.pop();
      least = Math.min(least, points.get(cell / wide).distanceMm(points.get(cell % wide)));
      for (int around : new int[] {-wide - 1, -wide, 1 - wide, -1, 1, wide - 1, wide, wide + 1}) {
        int next = cell + around;
        if (next >= 0 && near.get(next)) {
          near.clear(next);
          open.push(next);
        }
      }
    }
    return least;
  }
}
