package linkwright.fit;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The figures of the fit with more makers and more pieces, printed and not judged. Asleep unless it
 * is asked for:
 *
 * <pre>mvn test -Dtest=MakersBenchmark -Dlinkwright.benchmark=true</pre>
 */
@Tag("benchmark")
@EnabledIfSystemProperty(named = "linkwright.benchmark", matches = "true")
class MakersBenchmark {
  @ParameterizedTest
  @CsvSource({"hook-link, 1000, 1", "scroll, 1000, 1", "hook-link, 4000, 2", "scroll, 4000, 2"})
  void manyMakers(String id, int makers, long seed) {
    MakersTest.run(id, makers, 3, seed);
  }
}
