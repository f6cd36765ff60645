package linkwright.fit;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The figures of the fit with 1,000 makers of each kind and four pieces, printed and not judged.
 * Asleep unless it is asked for:
 *
 * <pre>mvn test -Dtest=MakersBenchmark -Dlinkwright.benchmark=true</pre>
 */
@Tag("benchmark")
@EnabledIfSystemProperty(named = "linkwright.benchmark", matches = "true")
class MakersBenchmark {
  static List<World> rows() {
    List<World> rows = new ArrayList<>();
    for (String id : List.of("hook-link", "scroll", "oval", "round")) {
      rows.add(World.alike(id));
      rows.add(World.stress(id));
      rows.add(World.perFormer(id));
      rows.add(World.misread(id, 0, false));
      rows.add(World.misread(id, 1, false));
      rows.add(World.misread(id, 1, true));
      rows.add(World.verdicts(id));
    }
    rows.add(World.curls("scroll"));
    rows.add(World.drift("hook-link"));
    rows.add(World.drift("scroll"));
    return rows;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void manyMakers(World world) {
    System.out.println(new MakersSimulation(world, 4, 1).run(1000).table());
  }
}
