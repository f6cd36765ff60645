package linkwright.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import linkwright.coach.keys.Key;
import linkwright.terminal.Input.Clicked;
import linkwright.terminal.Input.Ended;
import linkwright.terminal.Input.Pressed;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeyDecoderTest {
  /** Sequences that terminals send and Linkwright has no use for; none may leave a tail. */
  private static final List<String> UNKNOWN =
      List.of(
          "\u001b[I", // focus gained
          "\u001b[O", // focus lost
          "\u001b[11~", // F1 in old terminals
          "\u001b[15;5~",
          "\u001b[2~", // Insert
          "\u001bOP", // F1
          "\u001bO5P",
          "\u001b[[A", // F1 on the Linux console
          "\u001b[57414;1u", // keypad Enter in a newer protocol
          "\u001b[?1;2c", // an answer about the terminal's kind
          "\u001b[24;80R", // an answer about the cursor
          "\u001b]11;rgb:1111/2222/3333\u0007", // an answer about a colour
          "\u001b]11;rgb:1111/2222/3333\u001b\\",
          "\u001bP1$r0m\u001b\\",
          "\u001b[<64;10;10M", // the wheel
          "\u001b[<0;10;10m", // a button let go
          "\u001b[M#!!",
          "\u001bx", // Alt and a letter
          "\u001bé",
          "\u001b\r",
          "\u0000",
          "\u001c");

  static List<Input> read(Charset charset, byte[] bytes) {
    KeyDecoder decoder = new KeyDecoder(charset);
    for (byte b : bytes) {
      decoder.take(b & 0xFF);
    }
    if (decoder.isPending()) {
      decoder.expire();
    }
    return drain(decoder);
  }

  static List<Input> drain(KeyDecoder decoder) {
    List<Input> all = new ArrayList<>();
    for (var next = decoder.next(); next.isPresent(); next = decoder.next()) {
      all.add(next.get());
    }
    return all;
  }

  static List<Input> read(String text) {
    return read(StandardCharsets.UTF_8, text.getBytes(StandardCharsets.UTF_8));
  }

  static Input key(Key.Kind kind) {
    return new Pressed(Key.of(kind));
  }

  static Input typed(String text) {
    return new Pressed(Key.of(text));
  }

  @Nested
  class Letters {
    @Test
    void areTyped() {
      assertThat(read("a 9")).containsExactly(typed("a"), typed(" "), typed("9"));
    }

    @Test
    void ofSeveralBytesAreOneKey() {
      assertThat(read("é銀😀")).containsExactly(typed("é"), typed("銀"), typed("😀"));
    }

    @Test
    void thatAreBrokenAreDroppedAlone() {
      byte[] broken = {(byte) 0xC3, 'a', (byte) 0x80, 'b', (byte) 0xFF, 'c', (byte) 0xE9};
      assertThat(read(StandardCharsets.UTF_8, broken))
          .containsExactly(typed("a"), typed("b"), typed("c"));
    }

    @Test
    void ofAnOldEncodingAreRead() {
      assertThat(read(StandardCharsets.ISO_8859_1, new byte[] {(byte) 0xE9, 'a'}))
          .containsExactly(typed("é"), typed("a"));
    }

    @Test
    void withCtrlAreTold() {
      assertThat(read("\u001a\u0013"))
          .containsExactly(new Pressed(Key.ctrl("z")), new Pressed(Key.ctrl("s")));
    }

    @Test
    void ctrlCEnds() {
      assertThat(read("\u0003")).containsExactly(new Ended());
    }
  }

  @Nested
  class Keys {
    @Test
    void thatTypeNothing() {
      assertThat(read("\r\n\t\u007f\u0008"))
          .containsExactly(
              key(Key.Kind.ENTER),
              key(Key.Kind.ENTER),
              key(Key.Kind.TAB),
              key(Key.Kind.BACKSPACE),
              key(Key.Kind.BACKSPACE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u001b[A", "\u001bOA", "\u001b[1;5A", "\u001b\u001b[A"})
    void arrowsInAllTheirForms(String sequence) {
      assertThat(read(sequence)).containsExactly(key(Key.Kind.UP));
    }

    @Test
    void homeAndEndInAllTheirForms() {
      assertThat(read("\u001b[H\u001bOH\u001b[1~\u001b[7~"))
          .hasSize(4)
          .containsOnly(key(Key.Kind.HOME));
      assertThat(read("\u001b[F\u001bOF\u001b[4~\u001b[8~"))
          .hasSize(4)
          .containsOnly(key(Key.Kind.END));
    }

    @Test
    void pagesDeleteAndBackTab() {
      assertThat(read("\u001b[5~\u001b[6~\u001b[3~\u001b[Z"))
          .containsExactly(
              key(Key.Kind.PAGE_UP),
              key(Key.Kind.PAGE_DOWN),
              key(Key.Kind.DELETE),
              key(Key.Kind.BACK_TAB));
    }

    @Test
    void theKeypadsEnterAndFigures() {
      assertThat(read("\u001bOM\u001bOp\u001bOy\u001bOn\u001bOk"))
          .containsExactly(key(Key.Kind.ENTER), typed("0"), typed("9"), typed("."), typed("+"));
    }
  }

  @Nested
  class Escape {
    @Test
    void isKnownOnceNothingFollows() {
      KeyDecoder decoder = new KeyDecoder(StandardCharsets.UTF_8);
      decoder.take(0x1B);
      assertThat(decoder.isPending()).isTrue();
      assertThat(decoder.patienceMillis()).isEqualTo(30);
      assertThat(decoder.next()).isEmpty();
      decoder.expire();
      assertThat(drain(decoder)).containsExactly(key(Key.Kind.ESCAPE));
      assertThat(decoder.isPending()).isFalse();
    }

    @Test
    void pressedManyTimesIsCounted() {
      assertThat(read("\u001b\u001b\u001b")).hasSize(3).containsOnly(key(Key.Kind.ESCAPE));
    }

    @Test
    void aSequenceCutShortLeavesNothing() {
      assertThat(read("\u001b[5")).isEmpty();
      assertThat(read("\u001b[5$")).as("Page Up with Shift in rxvt").isEmpty();
      assertThat(read("\u001bO")).isEmpty();
      assertThat(read("\u001b]0;tit")).isEmpty();
    }
  }

  @Nested
  class Unknown {
    @Test
    void sequencesLeaveNoTail() {
      for (String sequence : UNKNOWN) {
        assertThat(read(sequence + "a")).as(sequence.substring(1)).containsExactly(typed("a"));
      }
    }

    @Test
    void sequencesLeaveNoTailHoweverTheyArriveCutUp() {
      long seed = 4711;
      Random random = new Random(seed);
      for (int run = 0; run < 500; run++) {
        KeyDecoder decoder = new KeyDecoder(StandardCharsets.UTF_8);
        List<Input> seen = new ArrayList<>();
        int letters = 0;
        for (int i = 0; i < 20; i++) {
          boolean letter = random.nextBoolean();
          letters += letter ? 1 : 0;
          String next = letter ? "q" : UNKNOWN.get(random.nextInt(UNKNOWN.size()));
          for (byte b : next.getBytes(StandardCharsets.UTF_8)) {
            decoder.take(b & 0xFF);
            seen.addAll(drain(decoder));
          }
        }
        assertThat(seen).as("seed %d run %d", seed, run).hasSize(letters);
        assertThat(seen).allMatch(typed("q")::equals);
      }
    }

    @Test
    void bytesOfAnySortNeverBreakIt() {
      long seed = 12;
      Random random = new Random(seed);
      byte[] wild = new byte[20_000];
      random.nextBytes(wild);
      assertThat(read(StandardCharsets.UTF_8, wild)).as("seed %d", seed).isNotEmpty();
    }
  }

  @Nested
  class Clicks {
    @Test
    void areToldFromTheTopLeftCorner() {
      assertThat(read("\u001b[<0;1;1M")).containsExactly(new Clicked(0, 0));
      assertThat(read("\u001b[<0;231;45M")).containsExactly(new Clicked(230, 44));
    }

    @Test
    void inTheOldestFormToo() {
      assertThat(read("\u001b[M !\"")).containsExactly(new Clicked(0, 1));
    }
  }
}
