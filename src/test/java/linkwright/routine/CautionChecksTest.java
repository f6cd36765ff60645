package linkwright.routine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CautionChecksTest {
  private static List<String> sentences(Caution caution) {
    return CautionChecks.check(caution).stream()
        .map(found -> (found.wrong() + " " + found.expected()).strip())
        .toList();
  }

  private static Caution caution(String source, String defers, String sign) {
    return new Caution(
        "heat",
        "Heat",
        Set.of(Hazard.HEATS),
        "Mind it.",
        "It burns.",
        List.of("Take care."),
        List.of(),
        List.of(),
        List.of(new Gear(sign, "eyes")),
        source,
        defers,
        When.ALWAYS,
        List.of(),
        false);
  }

  @Test
  void aWholeCautionHasNothingToSay() {
    assertThat(sentences(caution("common practice, no source", "Local rules first.", "M004")))
        .isEmpty();
  }

  @Test
  void aCautionWithoutASourceIsTold() {
    assertThat(sentences(caution(" ", "Local rules first.", "M004")))
        .containsExactly(
            "The caution \"heat\" does not say where its advice comes from. Give a source, or write"
                + " \"common practice, no source\".");
  }

  @Test
  void aCautionThatDefersToNobodyIsTold() {
    assertThat(sentences(caution("a book", "", "M004")))
        .containsExactly(
            "The caution \"heat\" does not put local rules first. Write under defers that local"
                + " rules, the maker's sheet and licensed practice come first.");
  }

  @Test
  void aSignThatIsNoCodeIsTold() {
    assertThat(sentences(caution("a book", "Local rules first.", "goggles")))
        .containsExactly(
            "The caution \"heat\" has the sign \"goggles\", which is no ISO 7010 code. A code is"
                + " one of W, M, P, E, F and three digits, such as M004.");
  }

  @Test
  void aCautionThatSaysNothingIsToldForEachThingThatItLacks() {
    Caution empty =
        new Caution(
            "void",
            "",
            Set.of(),
            "",
            "",
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            "",
            "",
            When.ALWAYS,
            List.of(),
            false);
    assertThat(CautionChecks.check(empty).stream().map(Finding::key))
        .containsExactly("source", "defers", "short", "can-happen", "do");
  }
}
