package linkwright.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a terminal answers, as xterm's "Control Sequences" and the notes of others write it. */
class TerminalAnswersTest {
  private static TerminalAnswers heard(String bytes) {
    KeyDecoder decoder = new KeyDecoder(StandardCharsets.UTF_8);
    for (byte b : bytes.getBytes(StandardCharsets.US_ASCII)) {
      decoder.take(b & 0xFF);
    }
    assertThat(decoder.next()).as("no answer is a key").isEmpty();
    TerminalAnswers answers = TerminalAnswers.NONE;
    for (Optional<String> next = decoder.answer(); next.isPresent(); next = decoder.answer()) {
      answers = answers.and(next.get());
    }
    return answers;
  }

  @Test
  void one_that_says_nothing_is_told_nothing() {
    assertThat(TerminalAnswers.NONE.title("a job")).isEmpty();
    assertThat(TerminalAnswers.NONE.notice("due")).isEmpty();
    assertThat(TerminalAnswers.NONE.synchronizes()).isFalse();
  }

  @Test
  void its_background_is_taken_from_its_answer() {
    assertThat(heard("\u001b]11;rgb:ffff/fbfb/f4f4\u001b\\").backgroundRgb()).contains(0xFFFBF4);
    assertThat(heard("\u001b]11;rgb:1b/19/17\u0007").backgroundRgb()).contains(0x1B1917);
  }

  @Test
  void a_picture_is_held_back_only_where_the_mode_is_known() {
    assertThat(heard("\u001b[?2026;2$y").synchronizes()).isTrue();
    assertThat(heard("\u001b[?2026;0$y").synchronizes()).isFalse();
  }

  @Test
  void it_speaks_once_it_answered_what_every_terminal_answers() {
    assertThat(heard("\u001b[?62;22c").title("Window chain: 5 of 9"))
        .contains("\u001b]2;Window chain: 5 of 9\u001b\\");
  }

  @Test
  void a_notice_goes_where_it_was_said_to_be_known() {
    assertThat(heard("\u001b]99;i=linkwright:p=?;p=title,body\u001b\\").notice("Pickle; due"))
        .contains("\u001b]99;i=linkwright;Pickle  due\u001b\\");
    assertThat(heard("\u001bP>|unknown 1\u001b\\").notice("due")).isEmpty();
  }

  @Test
  void the_look_follows_the_background_that_was_told() {
    Environment environment = new Environment(Map.of("TERM", "xterm"), true, "Linux");
    TerminalAnswers white = heard("\u001b]11;rgb:ffff/ffff/ffff\u001b\\");
    assertThat(Displays.look(environment, DisplayWishes.NONE, white)).isEqualTo(Look.LIGHT);
    assertThat(Displays.look(environment, DisplayWishes.NONE, TerminalAnswers.NONE))
        .isEqualTo(Look.EITHER);
    DisplayWishes contrast = new DisplayWishes(false, Optional.of(Look.HIGH_CONTRAST), 18, true);
    assertThat(Displays.look(environment, contrast, white)).isEqualTo(Look.HIGH_CONTRAST_LIGHT);
  }

  @Test
  void a_text_is_handed_on_only_where_the_terminal_said_that_it_takes_it() {
    String coded = "\u001b]52;c;NSBvZiA5\u001b\\";
    assertThat(heard("\u001b[?62;22c").copy("5 of 9")).isEmpty();
    assertThat(heard("\u001b[?62;22;52c").copy("5 of 9")).contains(coded);
    assertThat(heard("\u001bP1+r4D73=1B5D\u001b\\").copy("5 of 9")).contains(coded);
    assertThat(heard("\u001bP0+r4D73\u001b\\").copy("5 of 9")).isEmpty();
    assertThat(heard("\u001bP>|tmux 3.3a\u001b\\").copy("5 of 9")).contains(coded);
    assertThat(heard("\u001b[?62;52c").copy("x".repeat(100_000))).isEmpty();
  }

  @Test
  void addresses_go_behind_words_only_where_the_terminal_is_known_to_follow_them() {
    assertThat(heard("\u001b[?62;22c").follows()).isFalse();
    assertThat(heard("\u001bP>|XTerm(379)\u001b\\").follows()).isFalse();
    assertThat(heard("\u001bP>|foot(1.16.2)\u001b\\").follows()).isTrue();
  }
}
