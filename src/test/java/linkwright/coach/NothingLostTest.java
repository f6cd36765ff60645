package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.plan.PlanHeld;
import linkwright.coach.round.RoundHeld;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is typed and cannot be entered stays where it was typed. */
class NothingLostTest {
  @ParameterizedTest
  @CsvSource({
    "t, test-piece, test-piece-tried",
    "l, trial-length, trial-measured",
    "i, weigh-in, weighed-in"
  })
  void a_form_that_could_not_be_written_stays_open_with_its_texts_until_it_is(
      String place, String draft, String kind) {
    Bencher bench = Bencher.withTheDemo().press(place, "enter").diskIsFull(true);
    fill(bench);
    Form typed = bench.form();

    bench.press("ctrl-k");

    assertThat(bench.notice()).contains("Not written").contains("the disk is full");
    assertThat(bench.form().texts()).isEqualTo(typed.texts());
    assertThat(bench.performed(Effect.DropDraft.class)).isEmpty();
    assertThat(bench.job().drafts()).containsEntry(draft, typed.texts());

    bench.diskIsFull(false).press("space");

    assertThat(bench.entries())
        .last()
        .satisfies(
            e -> assertThat(linkwright.books.facts.FactCodecs.kind(e.fact())).isEqualTo(kind));
    assertThat(bench.model().held().form()).isEmpty();
    assertThat(bench.job().drafts()).doesNotContainKey(draft);
    assertThat(bench.performed(Effect.DropDraft.class))
        .containsExactly(new Effect.DropDraft("job", draft));
  }

  @Test
  void a_plan_that_could_not_be_written_stays_open_with_its_texts_until_it_is() {
    Bencher bench = Bencher.withTheDemo().press("p");
    bench
        .diskIsFull(true)
        .press("down", "end", "backspace", "backspace")
        .type("cm")
        .press("ctrl-k");
    assertThat(bench.model().held()).isInstanceOf(PlanHeld.class);

    bench.press("backspace", "backspace").type("mm").press("home").type("0");
    String typed = bench.form().text("wire");
    bench.press("ctrl-k");

    assertThat(bench.notice()).contains("Not written");
    assertThat(bench.form().text("wire")).isEqualTo(typed);
    assertThat(bench.job().drafts()).containsKey("plan");

    bench.diskIsFull(false).press("space");

    assertThat(bench.notice()).isEqualTo("The plan is kept.");
    assertThat(bench.model().held()).isInstanceOf(RoundHeld.class);
    assertThat(bench.job().drafts()).isEmpty();
    assertThat(bench.state().course().wish()).containsEntry("wire", typed);
  }

  @Test
  void in_a_book_that_is_open_to_look_at_only_nothing_typed_is_thrown_away() {
    Bencher bench = Bencher.lookingOnly().press("i", "enter");
    fill(bench);
    List<String> before = List.copyOf(bench.form().texts().values());

    bench.press("ctrl-k");

    assertThat(bench.notice()).contains("open here to look").contains("Another Linkwright");
    assertThat(bench.form().texts().values()).containsExactlyElementsOf(before);
    assertThat(bench.performed(Effect.DropDraft.class)).isEmpty();
  }

  @Test
  void a_form_that_is_left_and_opened_again_holds_what_was_typed() {
    Bencher bench = Bencher.withTheDemo().press("t", "enter");
    fill(bench);
    Form typed = bench.form();
    bench.press("esc", "n");
    assertThat(bench.form().texts()).isEqualTo(typed.texts());
  }

  @Test
  void what_could_not_be_written_at_the_bench_is_not_counted() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("cut-blanks").press("space");
    int cut = bench.pile("link").alive();
    OpenJob before = bench.job();

    bench.diskIsFull(true).press("space");

    assertThat(bench.job()).isEqualTo(before);
    assertThat(bench.pile("link").alive()).isEqualTo(cut);
    assertThat(bench.notice()).isEqualTo("Not written, and not counted: the disk is full.");
  }

  /** Something right in each field that asks for a length, a mass or a number. */
  private static void fill(Bencher bench) {
    for (Field field : bench.form().fields()) {
      String text =
          switch (field.id()) {
            case "length" -> bench.form().purpose() == Form.Purpose.WEIGH_IN ? "19 cm" : "15 mm";
            case "width" -> "5.4 mm";
            case "hung" -> "60 mm";
            case "chain" -> "6.5 g";
            case "note" -> "lies flat 鎖";
            default -> "";
          };
      if (!text.isEmpty()) {
        bench.put(field.id(), text);
      }
    }
  }
}
