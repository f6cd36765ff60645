package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What holds for any pattern; seeds are fixed, and the failing one is in the message. */
class FormedPropertyTest {
  private static final int SEEDS = 80;

  private static void eachSeed(Consumer<Random> property) {
    for (long seed = 1; seed <= SEEDS; seed++) {
      try {
        property.accept(new Random(seed));
      } catch (AssertionError failed) {
        throw new AssertionError("seed " + seed + ": " + failed.getMessage(), failed);
      }
    }
  }

  /** A link of wire 1 mm with a tip bend, an eye and a bend back, any of them growing. */
  private record Drawn(Pattern pattern, double blankMm) {}

  private static Drawn draw(Random chance) {
    Map<String, Double> formers = new HashMap<>();
    formers.put("tip", 1 + 2 * chance.nextDouble());
    formers.put("eye", 2 + 3 * chance.nextDouble());
    List<PatternPart> path = new ArrayList<>();
    path.add(
        new Bend(
            "tip",
            chance.nextBoolean() ? Optional.of("eye") : Optional.empty(),
            30 + 270 * chance.nextDouble(),
            chance.nextBoolean() ? Side.LEFT : Side.RIGHT,
            false,
            true,
            false));
    path.add(
        new Bend(
            "eye",
            chance.nextBoolean() ? Optional.of("tip") : Optional.empty(),
            120 + 220 * chance.nextDouble(),
            Side.LEFT,
            true,
            false,
            false));
    path.add(Bends.of("tip", 5 + 60 * chance.nextDouble(), Side.RIGHT));
    path.add(Run.rest());
    Pattern pattern =
        Shapes.of(
            formers,
            chance.nextBoolean() ? OtherHalf.TURNED : OtherHalf.MIRRORED,
            false,
            List.of(Joint.TIP_TO_BODY, Joint.CURL_TO_BODY),
            path.toArray(new PatternPart[0]));
    return new Drawn(pattern, 75 + 20 * chance.nextDouble());
  }

  @Test
  void extentsAreThoseOfAFineDrawing() {
    eachSeed(
        chance -> {
          Drawn drawn = draw(chance);
          Formed formed = Shapes.form(drawn.pattern, 1, drawn.blankMm);
          double minX = 0;
          double maxX = 0;
          double minY = Double.MAX_VALUE;
          double maxY = -Double.MAX_VALUE;
          for (Point point : formed.centreLine().points(0.01)) {
            minX = Math.min(minX, point.xMm());
            maxX = Math.max(maxX, point.xMm());
            minY = Math.min(minY, point.yMm());
            maxY = Math.max(maxY, point.yMm());
          }
          assertThat(formed.lengthMm()).isCloseTo(maxX - minX + 1, within(1e-4));
          assertThat(formed.widthMm()).isCloseTo(maxY - minY + 1, within(1e-4));
        });
  }

  @Test
  void theWireIsAsLongAsTheBlank() {
    eachSeed(
        chance -> {
          Drawn drawn = draw(chance);
          List<Point> points =
              Shapes.form(drawn.pattern, 1, drawn.blankMm).centreLine().points(0.01);
          double sum = 0;
          for (int i = 1; i < points.size(); i++) {
            sum += points.get(i).distanceMm(points.get(i - 1));
          }
          assertThat(sum).isCloseTo(drawn.blankMm, within(0.001));
        });
  }

  @Test
  void allLengthsTimesAFactorMakeTheSizeTimesThatFactor() {
    eachSeed(
        chance -> {
          Drawn drawn = draw(chance);
          double factor = 0.2 + 5 * chance.nextDouble();
          Map<String, Double> scaled = new HashMap<>();
          drawn.pattern.formersMm().forEach((name, mm) -> scaled.put(name, mm * factor));
          Formed small = Shapes.form(drawn.pattern, 1, drawn.blankMm);
          Formed large =
              Forming.form(drawn.pattern, factor, drawn.blankMm * factor, scaled, Bending.TRUE)
                  .orThrow();
          assertThat(large.lengthMm()).isCloseTo(small.lengthMm() * factor, within(1e-9 * factor));
          assertThat(large.widthMm()).isCloseTo(small.widthMm() * factor, within(1e-9 * factor));
          assertThat(large.insideLengthMm())
              .isCloseTo(small.insideLengthMm() * factor, within(1e-9 * factor));
          assertThat(large.shortestBlankMm())
              .isCloseTo(small.shortestBlankMm() * factor, within(1e-9 * factor));
          for (int i = 0; i < small.jointGaps().size(); i++) {
            assertThat(large.jointGaps().get(i).gapMm())
                .isCloseTo(small.jointGaps().get(i).gapMm() * factor, within(1e-4 * factor));
          }
        });
  }

  @Test
  void crossingsAreFoundWhereTheyAreAndNowhereElse() {
    int[] seen = new int[2];
    eachSeed(
        chance -> {
          Drawn drawn = draw(chance);
          // No joint, so that nothing is excepted and the plain definition can be looked up.
          Pattern open =
              Shapes.of(
                  drawn.pattern.formersMm(),
                  drawn.pattern.other(),
                  false,
                  List.of(),
                  drawn.pattern.path().toArray(new PatternPart[0]));
          Formed formed = Shapes.form(open, 1, 45 + drawn.blankMm / 4);
          List<Crossing> crossings = formed.crossings();
          double step = 0.06;
          List<Point> points = formed.centreLine().points(step);
          double spacing = formed.centreLine().lengthMm() / (points.size() - 1);
          double nearest = Double.POSITIVE_INFINITY;
          for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
              if ((j - i) * spacing > Math.PI / 2) {
                nearest = Math.min(nearest, points.get(i).distanceMm(points.get(j)));
              }
            }
          }
          seen[crossings.isEmpty() ? 0 : 1]++;
          if (nearest < 0.99) {
            assertThat(crossings).isNotEmpty();
            assertThat(crossings.stream().mapToDouble(Crossing::gapMm).min().orElseThrow() + 1)
                .isBetween(nearest - step, nearest + 1e-9);
          } else if (nearest > 0.99 + step) {
            assertThat(crossings).isEmpty();
          }
          for (Crossing crossing : crossings) {
            assertThat(crossing.andMm() - crossing.atMm()).isGreaterThan(Math.PI / 2);
            assertThat(
                    formed
                        .centreLine()
                        .at(crossing.atMm())
                        .distanceMm(formed.centreLine().at(crossing.andMm())))
                .isCloseTo(crossing.gapMm() + 1, within(1e-9))
                .isLessThan(0.99);
          }
        });
    assertThat(seen[0]).as("links that cross nowhere").isGreaterThan(10);
    assertThat(seen[1]).as("links that cross").isGreaterThan(10);
  }
}
