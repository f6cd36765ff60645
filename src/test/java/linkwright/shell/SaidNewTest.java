package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import org.junit.jupiter.api.Test;

/** What of a new page is worth a sentence, and that sentences end. */
class SaidNewTest {
  @Test
  void what_is_typed_to_find_is_not_spelt_aloud() {
    Bencher bench = Bencher.withTheDemo().press("f");
    for (String letter : List.of("p", "i", "c")) {
      Page before = Pages.of(bench.model());
      bench.press(letter);
      assertThat(Utterances.between(before, Pages.of(bench.model()))).isEmpty();
    }
  }

  @Test
  void a_question_and_each_of_its_answers_ends_in_a_stop() {
    Bencher bench = Bencher.atTheTray();
    bench.take(new Message.Led(PlaceId.LESSON, "jump-rings own"));
    Page asked = Pages.of(bench.model());
    bench.press("f");
    assertThat(Utterances.between(Pages.of(bench.model()), asked).get(0).text())
        .matches(".*[.?] 1: .*[.] 2: .*[.] 0: .*[.]");
  }

  @Test
  void the_title_of_a_card_is_parted_from_its_number_by_a_comma() {
    Bencher bench = Bencher.withTheDemo();
    Page before = Pages.of(bench.model());
    String heard =
        Utterances.between(before, Pages.of(bench.press("esc", "b").model())).get(0).text();
    assertThat(heard)
        .matches("Caution\\. [^.]+, card 1 of 7, before step 1\\. .*")
        .doesNotContain("  ");
  }
}
