package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.form.AskMeasure;
import linkwright.quantity.UnitStyle;
import linkwright.reckon.Ask;
import linkwright.reckon.Reckoner;
import org.junit.jupiter.api.Test;

/** A number typed without a unit takes the one that the example of what is asked has. */
class AskMeasureTest {
  private static final Pattern EXAMPLE =
      Pattern.compile("(\\d+(?:\\.\\d+)?)(?: (mm|cm|m|g|%)(?![\\w/]))?");

  @Test
  void a_bare_number_is_taken_as_the_example_is() {
    Reckoner.sums().stream()
        .flatMap(sum -> sum.asks().stream())
        .filter(ask -> ask.kind() == Ask.Kind.FREE)
        .forEach(AskMeasureTest::taken);
  }

  private static void taken(Ask ask) {
    Matcher example = EXAMPLE.matcher(ask.hint());
    if (!example.lookingAt()) {
      return;
    }
    String unit = example.group(2) == null ? "" : example.group(2);
    String complete = AskMeasure.of(ask).complete("20.5", UnitStyle.METRIC);
    if (List.of("mm", "cm", "m").contains(unit)) {
      assertThat(complete).as(ask.key()).isIn("20.5 mm", "20.5");
    } else {
      assertThat(complete).as(ask.key()).isEqualTo(unit.isEmpty() ? "20.5" : "20.5 " + unit);
    }
  }
}
