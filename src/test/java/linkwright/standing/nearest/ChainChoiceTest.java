package linkwright.standing.nearest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChainChoiceTest {
  @ParameterizedTest
  @CsvSource({
    "FIT_RING, '', rings of 2.4 mm inside, 23 links and rings of 2.4 mm inside",
    "FIT_LINK, '', links of 2.4 mm, 23 links and links of 2.4 mm",
    "FIT_LINK, 'links over a former of ', links over a former of 2.4 mm,"
        + " 23 links and links over a former of 2.4 mm",
    "JUMP_RINGS, '', a jump ring of 2.4 mm inside at each end,"
        + " 23 links and a jump ring of 2.4 mm inside at each end",
    "CLASP, Toggle, Toggle, 23 links and Toggle",
    "ONE_FEWER, '', 23 links, 23 links",
    "ONE_MORE, '', 23 links, 23 links",
  })
  void a_choice_says_what_it_takes(
      ChainChoice.Way way, String what, String says, String saysWithLinks) {
    ChainChoice choice = new ChainChoice(way, what, OptionalDouble.of(2.4), 23, 400, Map.of());
    assertThat(choice.says(UnitStyle.METRIC)).isEqualTo(says);
    assertThat(choice.saysWithLinks(UnitStyle.METRIC)).isEqualTo(saysWithLinks);
    assertThat(way.id())
        .isEqualTo(way.name().toLowerCase(Locale.ROOT).replace("fit_", "").replace('_', '-'));
  }
}
