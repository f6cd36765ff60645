package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Variants of one wish beside each other, and a metal's name that several have. */
class WhatIfPlaceTest {
  private static Apprentice asked(String second, String third, String fourth) {
    Apprentice bench = Apprentice.withAJob(Map.of()).press("esc", "x");
    bench.press("n").type(second).press("down", "down", "down", "down").type(third);
    return bench.press("down", "down", "down", "down").type(fourth).press("ctrl-k");
  }

  /** Long names made prose of the table. */
  @Test
  void four_variants_are_a_table_at_80_by_24_however_long_their_names_are() {
    String shown = asked("gold-9k-yellow", "gold-14k-yellow", "gold-18k-yellow").shown();
    assertThat(shown.lines().map(String::strip))
        .anyMatch(line -> line.matches("1 +2 +3 +4"))
        .anyMatch(line -> line.matches("links +\\d+ +\\d+ +\\d+ +\\d+"));
    assertThat(shown).contains("1: as planned; 2: ").doesNotContain("gold-9k-yellow");
  }

  @Test
  void a_word_that_several_metals_have_is_asked_about_and_not_taken_for_the_first() {
    Apprentice bench = asked("gold", "", "");
    assertThat(bench.shown()).contains("Which “gold”?");
    assertThat(bench.model().held().form().orElseThrow().text("metal 2")).isEqualTo("gold");
  }

  @Test
  void a_part_that_one_metal_alone_has_is_that_metal() {
    assertThat(asked("fine sil", "", "").shown()).contains("2: Fine silver");
  }
}
