package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import linkwright.coach.content.Drawing;
import linkwright.coach.form.Form;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import org.junit.jupiter.api.Test;

/** A chain of long and round links: what is proposed of a test piece is the chosen link's own. */
class TestPieceOfSizeTest {
  private final Bencher bench =
      Bencher.with(
              new Fact.JobOpened("figaro", "figaro"),
              new Fact.PlanSet(Wishes.figaro().with(WishKeys.STOCK, "3 m").texts()))
          .press("esc", "t", "n");

  private Form form() {
    return bench.model().held().form().orElseThrow();
  }

  private double blankMm() {
    return Double.parseDouble(form().text("blank").replace(" mm", ""));
  }

  private void choose(String size) {
    while (!form().fields().get(form().at()).id().equals("size")) {
      bench.press("up");
    }
    bench.press("ctrl-u").type(size);
    assertThat(form().text("size")).isEqualTo(size);
  }

  @Test
  void the_blank_is_that_of_the_chosen_link() {
    double planned = blankMm();
    choose("round");
    assertThat(blankMm()).isLessThan(planned / 1.5);
    choose("long");
    assertThat(blankMm()).isEqualTo(planned);
  }

  @Test
  void what_was_typed_stays() {
    while (!form().fields().get(form().at()).id().equals("blank")) {
      bench.press("up");
    }
    bench.type("19.5 mm");
    choose("round");
    assertThat(blankMm()).isEqualTo(19.5);
  }

  /** A round link's blank that is logged as a long one's would turn the long one's size. */
  @Test
  void the_blank_of_another_link_is_asked_about_before_it_is_logged() {
    choose("round");
    String round = form().text("blank");
    choose("");
    bench.put("blank", round).put("length", "8 mm").press("ctrl-k");
    assertThat(bench.notice()).contains("is about the blank of the round link, not of the long");
    assertThat(bench.entered(Fact.TestPieceTried.class)).isEmpty();

    choose("round");
    bench.press("ctrl-k");
    for (int i = 0; i < 2 && bench.model().held().form().isPresent(); i++) {
      bench.press("ctrl-k");
    }
    assertThat(bench.entered(Fact.TestPieceTried.class))
        .extracting(Fact.TestPieceTried::size)
        .containsExactly("round");
  }

  @Test
  void it_is_gone_on_with_for_the_link_that_was_chosen() {
    choose("round");
    double round = blankMm();
    bench.press("esc", "n");
    assertThat(form().text("size")).isEqualTo("round");
    assertThat(blankMm()).isEqualTo(round);
  }

  /** The blank that was proposed for the long one stands there still. */
  @Test
  void the_measures_of_another_link_are_asked_about_by_the_field_that_is_wrong() {
    bench.put("length", "5 mm").put("width", "5 mm").press("ctrl-k");
    assertThat(bench.notice()).contains("is about the length of the round link, not of the long");
    assertThat(form().fields().get(form().at()).id()).isEqualTo("size");
    assertThat(bench.entered(Fact.TestPieceTried.class)).isEmpty();
  }

  @Test
  void the_drawing_is_of_the_link_of_the_chosen_piece() {
    choose("round");
    bench.put("length", "4.9 mm").put("width", "4.9 mm");
    for (int i = 0; i < 3 && bench.model().held().form().isPresent(); i++) {
      bench.press("ctrl-k");
    }
    assertThat(bench.entered(Fact.TestPieceTried.class)).hasSize(1);
    Drawing drawn =
        Pages.of(bench.model()).body().parts().stream()
            .filter(Drawing.class::isInstance)
            .map(Drawing.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(drawn.shapes()).as("wished, the piece, the next").hasSize(3);
  }
}
