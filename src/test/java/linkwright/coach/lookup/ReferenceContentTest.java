package linkwright.coach.lookup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.coach.Bencher;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.plain.PlainLines;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Test;

class ReferenceContentTest {
  private static final List<LookUpItem> ALL =
      ReferenceContent.of(Bencher.LIBRARY.reference(), UnitStyle.METRIC);

  private static LookUpItem entry(String title) {
    return ALL.stream().filter(each -> each.name().equals(title)).findFirst().orElseThrow();
  }

  private static String said(LookUpItem entry) {
    return String.join("\n", new PlainLines(act -> "").of(entry.says()));
  }

  @Test
  void every_figure_of_a_metal_is_shown_with_its_source() {
    int tables = 0;
    for (LookUpItem metal : ALL) {
      if (metal.kind().equals("metal")) {
        for (Part part : metal.says()) {
          if (part instanceof Rows rows) {
            tables++;
            assertThat(rows.rows()).as(metal.name()).hasSize(9);
            assertThat(rows.rows()).extracting(Row::remark).noneMatch(String::isBlank);
          }
        }
      }
    }
    assertThat(tables).as("metals that were read").isPositive();
  }

  @Test
  void a_metal_reads_with_value_unit_and_source() {
    assertThat(said(entry("Sterling silver")))
        .contains("10.36 g/cm³")
        .contains("ESPI Metals, data sheet for sterling silver")
        .contains("779 to 893 °C");
  }

  /** A bare number in a source would be read in the unit of the figure beside it. */
  @Test
  void no_source_has_a_figure_without_its_unit() {
    var bare =
        java.util.regex.Pattern.compile(
            "\\b\\d+(?:\\.\\d+)? (?:to|and) \\d+(?:\\.\\d+)?(?![\\d.]| ?[°%gGMk])");
    for (UnitStyle units : UnitStyle.values()) {
      List<LookUpItem> all = ReferenceContent.of(Bencher.LIBRARY.reference(), units);
      for (LookUpItem metal : all.subList(0, 20)) {
        String said = said(metal);
        assertThat(bare.matcher(said).results().map(found -> found.group()))
            .as(metal.name() + ": " + said)
            .isEmpty();
        if (units == UnitStyle.INCH) {
          assertThat(said).doesNotContain("MPa").doesNotContainPattern("\\d °C(?! \\()");
        }
      }
    }
  }

  @Test
  void a_solder_says_which_marks_it_passes_by_the_statute() {
    // 650: UK SI 2002/506, art. 6.
    assertThat(said(entry("Silver solder, hard"))).contains("UK: passes (at least 650 of 1000)");
    assertThat(said(entry("Silver solder, extra easy")))
        .contains("UK: too low (at least 650 of 1000)");
  }

  @Test
  void clasps_laws_and_limits_say_where_they_come_from() {
    assertThat(said(entry("Bolt ring, 6 mm"))).contains("never heated").contains("Source: ");
    assertThat(said(entry("Netherlands, gold"))).contains("BWBR0042284").contains("As of ");
    assertThat(ALL)
        .filteredOn(each -> each.kind().equals("limit"))
        .allSatisfy(each -> assertThat(said(each)).contains("1907/2006"));
  }

  @Test
  void platinum_says_why_it_is_not_planned() {
    assertThat(entry("Platinum 950, with ruthenium").says().get(0))
        .isInstanceOfSatisfying(
            Prose.class, first -> assertThat(first.text()).startsWith("Platinum is not planned"));
  }
}
