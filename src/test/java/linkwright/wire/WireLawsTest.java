package linkwright.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What holds for any wire: nothing is lost by drawing, and scaling all lengths scales the result.
 */
class WireLawsTest {
  private static final long SEED = 20_261_126;

  @Test
  void massIsConservedByDrawing() {
    forAny(
        (random, run) -> {
          double from = 0.5 + 5 * random.nextDouble();
          double to = from * (0.1 + 0.9 * random.nextDouble());
          double length = 1000 * random.nextDouble();
          WireDrawing drawing = WireDrawing.of(from, to, length).orThrow();
          double before = WireMass.grams(WireSection.round(from).areaMm2(), length, 10.36);
          double after = WireMass.grams(WireSection.round(to).areaMm2(), drawing.lengthMm(), 10.36);
          assertThat(after).as(run).isCloseTo(before, near(before));
        });
  }

  @Test
  void massIsConservedThroughAPlateButForThePoints() {
    forAny(
        (random, run) -> {
          List<Double> holes = plate(random);
          double to = holes.get(holes.size() - 1);
          DrawPlan plan = WireDrawing.passes(holes, 3, to, 0.5, 5).orThrow();
          double wished = 100 + 5000 * random.nextDouble();
          double rod = plan.rodLengthMm(wished);
          double points = plan.passes().stream().mapToDouble(pass -> 5 * area(pass.fromMm())).sum();
          assertThat(rod * area(3)).as(run).isCloseTo(wished * area(to) + points, near(rod * 10));
          assertThat(plan.lengthMm(rod).orThrow()).as(run).isCloseTo(wished, near(wished));
        });
  }

  @Test
  void drawingInStepsIsDrawingAtOnce() {
    forAny(
        (random, run) -> {
          List<Double> holes = plate(random);
          double to = holes.get(holes.size() - 1);
          double steps = WireDrawing.passes(holes, 3, to, 0.5, 0).orThrow().lengthMm(100).orThrow();
          assertThat(steps).as(run).isCloseTo(new WireDrawing(3, to, 100).lengthMm(), near(steps));
        });
  }

  @Test
  void scalingAllLengthsScalesTheResult() {
    forAny(
        (random, run) -> {
          double k = 0.2 + 5 * random.nextDouble();
          double d = 0.3 + 2 * random.nextDouble();
          double inside = 1 + 10 * random.nextDouble();
          double gap = 0.2 * random.nextDouble();
          double mass = WireMass.grams(area(d), inside, 10.36);
          assertThat(WireMass.grams(area(k * d), k * inside, 10.36))
              .as(run)
              .isCloseTo(k * k * k * mass, near(k * k * k * mass));
          double growth = Springback.growth(d, inside, 75_000, 124).orElseThrow();
          assertThat(Springback.growth(k * d, k * inside, 75_000, 124).orElseThrow())
              .as(run)
              .isCloseTo(growth, near(growth));
          double pull = Strength.buttedN(d, inside, 124);
          assertThat(Strength.buttedN(k * d, k * inside, 124))
              .as(run)
              .isCloseTo(k * k * pull, near(k * k * pull));
          SolderNeed one = SolderNeed.of(d, gap, 0.5, 1, 0.3, 9.5, JointKind.SIDE);
          SolderNeed other = SolderNeed.of(k * d, k * gap, 0.5, k, 0.3 * k, 9.5, JointKind.SIDE);
          assertThat(other.leastPieceMm())
              .as(run)
              .isCloseTo(k * one.leastPieceMm(), near(k * one.leastPieceMm()));
          assertThat(other.massG()).as(run).isCloseTo(k * k * k * one.massG(), near(other.massG()));
        });
  }

  @Test
  void scalingAPlateLeavesItsAnnealsWhereTheyWere() {
    forAny(
        (random, run) -> {
          List<Double> holes = plate(random);
          double to = holes.get(holes.size() - 1);
          double k = 1 + random.nextDouble();
          List<Double> scaled = holes.stream().map(hole -> hole * k).toList();
          List<Boolean> one = anneals(WireDrawing.passes(holes, 3, to, 0.5, 0).orThrow());
          List<Boolean> other =
              anneals(WireDrawing.passes(scaled, 3 * k, to * k, 0.5, 0).orThrow());
          assertThat(other).as(run).isEqualTo(one);
        });
  }

  private static List<Boolean> anneals(DrawPlan plan) {
    return plan.passes().stream().map(Pass::annealBefore).toList();
  }

  private static List<Double> plate(Random random) {
    List<Double> holes = new ArrayList<>();
    double hole = 3;
    int count = 1 + random.nextInt(12);
    for (int i = 0; i < count; i++) {
      hole *= 0.8 + 0.15 * random.nextDouble();
      holes.add(hole);
    }
    return holes;
  }

  private static double area(double diameterMm) {
    return WireSection.round(diameterMm).areaMm2();
  }

  private static Offset<Double> near(double value) {
    return within(1e-9 * Math.abs(value) + 1e-15);
  }

  private static void forAny(BiConsumer<Random, String> law) {
    Random random = new Random(SEED);
    for (int i = 0; i < 500; i++) {
      law.accept(random, "seed " + SEED + ", run " + i);
    }
  }
}
