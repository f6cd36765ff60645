package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.kernel.drawn.JobWords;
import linkwright.routine.PieceKind;
import org.junit.jupiter.api.Test;

class BenchCutTest {
  @Test
  void so_many_blanks_as_no_chain_takes_are_asked_about_first() {
    Bencher asked = Bencher.withTheDemo().press("enter").goTo("cut-blanks");
    asked.type("999").press("space");
    assertThat(asked.pile("link").alive()).isZero();
    assertThat(asked.notice()).startsWith("999? ");
    asked.press("r").type("999").press("space", "u").type("7").press("space");
    assertThat(asked.pile("link").alive()).as("another number is another answer").isEqualTo(7);
    asked.type("999").press("space", "space");
    assertThat(asked.pile("link").alive()).as("said twice").isEqualTo(1006);
  }

  @Test
  void the_text_of_cutting_says_what_is_still_to_cut() {
    Bencher cutting = Bencher.withTheDemo().press("enter").goTo("cut-blanks");
    cutting.type("5").press("space");
    int left = cutting.job().standing().left().get(PieceKind.LINK).toCutOrAsMany();
    assertThat(JobWords.fill("Cut {blanks} blanks.", cutting.model()))
        .isEqualTo("Cut " + left + " blanks.");
  }
}
