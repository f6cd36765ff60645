package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FormTest {
  private Form form =
      Form.of(
          Form.Purpose.NOTE,
          "A form",
          "keep it",
          List.of(
              Field.of("name", "name", "", "a name"),
              Field.choice("metal", "metal", "copper", "", List.of("silver", "copper", "gold"))));

  private FormTest press(String... names) {
    for (String name : names) {
      Form.KeyOutcome outcome = form.key(KeyNames.read(name).orElseThrow());
      form = ((Form.KeyOutcome.Edited) outcome).form();
    }
    return this;
  }

  /** Types a character as the terminal gives it, which may be several code points. */
  private FormTest type(String grapheme) {
    form = ((Form.KeyOutcome.Edited) form.key(Key.of(grapheme))).form();
    return this;
  }

  private String text() {
    return form.text("name");
  }

  @Nested
  class Editing {
    @Test
    void goes_on_where_the_caret_is() {
      type("a").type("c").press("left").type("b");
      assertThat(text()).isEqualTo("abc");
      press("home", "delete", "end", "backspace");
      assertThat(text()).isEqualTo("b");
    }

    @Test
    void ends_at_the_ends_of_the_text() {
      type("a").press("right", "right", "delete", "left", "left", "left", "backspace");
      assertThat(text()).isEqualTo("a");
    }

    @Test
    void moves_over_a_character_whole_however_it_is_made_up() {
      for (String whole : List.of("鎖", "😀", "é", "👍🏽", "👩‍🔧", "🇬🇧")) {
        form = form.withTexts(Map.of("name", ""));
        type("x").type(whole).type("y").press("left", "left");
        type("z");
        assertThat(text()).as(whole).isEqualTo("xz" + whole + "y");
        press("delete");
        assertThat(text()).as(whole).isEqualTo("xzy");
        type(whole).press("backspace");
        assertThat(text()).as(whole).isEqualTo("xzy");
      }
    }

    @Test
    void a_caret_never_stands_inside_a_character() {
      form = form.withTexts(Map.of("name", "a😀b"));
      for (int i = 0; i < 5; i++) {
        press("left");
        int caret = form.fields().get(0).caret();
        assertThat(caret).isNotEqualTo(2);
      }
    }
  }

  @Nested
  class Choices {
    @Test
    void left_and_right_go_round_them() {
      press("down", "right");
      assertThat(form.text("metal")).isEqualTo("gold");
      press("right");
      assertThat(form.text("metal")).isEqualTo("silver");
      press("left", "left");
      assertThat(form.text("metal")).isEqualTo("copper");
    }

    @Test
    void what_is_none_of_them_can_be_typed_and_they_begin_at_an_end() {
      form = form.withTexts(Map.of("metal", ""));
      press("down").type("z");
      assertThat(form.text("metal")).isEqualTo("z");
      press("left");
      assertThat(form.text("metal")).isEqualTo("gold");
    }
  }

  @Nested
  class Moving {
    @Test
    void enter_goes_through_the_fields_to_the_line_that_keeps_it() {
      press("enter", "enter");
      assertThat(form.at()).isEqualTo(2);
      assertThat(form.key(Key.of(Key.Kind.ENTER))).isInstanceOf(Form.KeyOutcome.Confirmed.class);
      press("down");
      assertThat(form.at()).isZero();
      press("up");
      assertThat(form.at()).isEqualTo(2);
    }

    @Test
    void ctrl_k_keeps_it_from_anywhere() {
      assertThat(form.key(Key.ctrl("k"))).isInstanceOf(Form.KeyOutcome.Confirmed.class);
    }

    @Test
    void the_caret_goes_to_the_first_trouble() {
      Form told = form.withTroubles(Map.of("metal", "no such metal")).atFirstTrouble();
      assertThat(told.at()).isEqualTo(1);
      assertThat(Troubles.in(told)).isTrue();
      assertThat(Troubles.in(told.withTroubles(Map.of()))).isFalse();
    }
  }

  @Nested
  class Pasting {
    private final Bencher bench = Bencher.atTheTray().press("n");

    @Test
    void goes_into_the_field_as_one_line() {
      bench.take(new Message.Pasted("Anna's\r\nbracelet\tin silver"));
      assertThat(bench.form().text("name")).isEqualTo("Anna's bracelet in silver");
    }

    @Test
    void brings_no_control_characters_with_it() {
      bench.take(new Message.Pasted("a\u001b[31mb\u0007c\u0000d\u007f\u202ee"));
      assertThat(bench.form().text("name")).isEqualTo("a[31mbcde");
    }

    @Test
    void does_nothing_where_no_field_is_open() {
      Bencher tray = Bencher.atTheTray();
      tray.take(new Message.Pasted("q"));
      assertThat(tray.performed(Effect.Leave.class)).isEmpty();
    }
  }
}
