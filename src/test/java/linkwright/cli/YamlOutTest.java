package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import linkwright.exchange.forms.YamlOut;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

class YamlOutTest {

  private static Map<String, Object> ordered(Object... keysAndValues) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      values.put((String) keysAndValues[i], keysAndValues[i + 1]);
    }
    return values;
  }

  private static Map<String, Object> readBack(String text) {
    return new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
  }

  @Test
  void writesValuesInTheirOrder() {
    String text =
        YamlOut.of(
            ordered(
                "links", 29,
                "length_mm", 455.8,
                "one_fewer_mm", Optional.empty(),
                "formers", ordered("tip", 1.0, "bow", 3.5),
                "left_mm", List.of(0.0, 37.7),
                "crossings", List.of(ordered("at_mm", 1.5, "and_mm", 9.25), ordered("at_mm", 2.0)),
                "says", List.of("a word", "an odd: one"),
                "none", List.of()));

    assertThat(text)
        .isEqualTo(
            """
            links: 29
            length_mm: 455.8
            one_fewer_mm: null
            formers:
              tip: 1.0
              bow: 3.5
            left_mm: [0.0, 37.7]
            crossings:
              - at_mm: 1.5
                and_mm: 9.25
              - at_mm: 2.0
            says:
              - a word
              - "an odd: one"
            none: []
            """);
    assertThat(readBack(text)).containsEntry("links", 29).containsEntry("one_fewer_mm", null);
  }

  @Test
  void writesNumbersPlainlyAndRounded() {
    assertThat(YamlOut.of(ordered("a", 1e-7, "b", 0.12345678, "c", 123456789.12345679, "d", 2e20)))
        .isEqualTo(
            """
            a: 0.0000001
            b: 0.123457
            c: 123456789.123457
            d: 200000000000000000000.0
            """);
  }

  @Test
  void readsBackWhatItWroteToSixDigits() {
    long seed = 7;
    Random chance = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double value = Math.pow(10, chance.nextDouble() * 14 - 7) * (chance.nextBoolean() ? 1 : -1);
      Object read = readBack(YamlOut.of(ordered("x", value))).get("x");
      assertThat(((Number) read).doubleValue())
          .as("seed " + seed + ", number " + i)
          .isCloseTo(value, within(Math.max(5.1e-7, 5.1e-6 * Math.abs(value))));
    }
  }

  @Test
  void quotesWhatYamlWouldTakeForSomethingElse() {
    for (String words :
        List.of(
            "yes",
            "null",
            "1.5",
            "",
            " x",
            "a: b",
            "#",
            "- a",
            "\"",
            "\\",
            "tab\t",
            "é",
            "“x”",
            "line\nfeed",
            "No",
            "~",
            "0x1f",
            "2026-11-25",
            "a #b",
            "end ")) {
      assertThat(readBack(YamlOut.of(ordered("x", words)))).as(words).containsEntry("x", words);
    }
  }

  @Test
  void refusesWhatIsNoNumber() {
    assertThatIllegalArgumentException().isThrownBy(() -> YamlOut.of(ordered("x", Double.NaN)));
  }
}
