package linkwright.fit;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The figures of the fit with more makers, more pieces and more than one seed, printed and not
 * judged. Asleep unless it is asked for:
 *
 * <pre>mvn test -Dtest=MakersBenchmark -Dlinkwright.benchmark=true</pre>
 */
@Tag("benchmark")
@EnabledIfSystemProperty(named = "linkwright.benchmark", matches = "true")
class MakersBenchmark {
  @ParameterizedTest
  @CsvSource({"hook-link, 1", "hook-link, 2", "scroll, 1", "scroll, 2"})
  void fourThousandMakers(String id, long seed) {
    MakersTest.run(id, 4000, 4, seed);
  }
}
