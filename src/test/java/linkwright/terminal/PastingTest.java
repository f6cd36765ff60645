package linkwright.terminal;

import static linkwright.terminal.KeyDecoderTest.drain;
import static linkwright.terminal.KeyDecoderTest.key;
import static linkwright.terminal.KeyDecoderTest.read;
import static linkwright.terminal.KeyDecoderTest.typed;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import linkwright.coach.keys.Key;
import linkwright.terminal.Input.Ended;
import linkwright.terminal.Input.PasteDropped;
import linkwright.terminal.Input.Pasted;
import org.junit.jupiter.api.Test;

/** What is pasted is text up to its end, or is dropped; keys are none of it. */
class PastingTest {
  @Test
  void comeAsOneTextAndNoKeys() {
    assertThat(read("\u001b[200~412 mm,96 mm\u001b[201~x"))
        .containsExactly(new Pasted("412 mm,96 mm"), typed("x"));
  }

  private final KeyDecoder decoder = new KeyDecoder(StandardCharsets.UTF_8);

  private PastingTest type(String text) {
    for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
      decoder.take(b & 0xFF);
    }
    return this;
  }

  /** Nothing comes for as long as the decoder would wait. */
  private PastingTest quiet() {
    if (decoder.isPending()) {
      decoder.expire();
    }
    return this;
  }

  @Test
  void thatStallAreGivenAsFarAsTheyCameAndStayText() {
    type("\u001b[200~qqq");
    assertThat(decoder.patienceMillis()).isEqualTo(1000);
    quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("qqq"));
    type("a\u001b[A\r").quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("a\u001b[A\r"));
    type("b\u001b[201~").quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("b"));
    assertThat(decoder.isPending()).isFalse();
    type("a").quiet();
    assertThat(drain(decoder)).containsExactly(typed("a"));
  }

  @Test
  void thatStallInTheMiddleOfALetterOrOfTheirEndLoseNothing() {
    for (int cut = 1; cut < 12; cut++) {
      byte[] all = "a銀\u001b[201~".getBytes(StandardCharsets.UTF_8);
      int at = Math.min(cut, all.length - 1);
      type("\u001b[200~");
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < all.length; i++) {
        if (i == at) {
          quiet();
        }
        decoder.take(all[i] & 0xFF);
      }
      quiet();
      for (Input input : drain(decoder)) {
        assertThat(input).as("cut at %d", at).isInstanceOf(Pasted.class);
        text.append(((Pasted) input).text());
      }
      assertThat(text.toString()).as("cut at %d", at).isEqualTo("a銀");
      assertThat(decoder.isPending()).as("cut at %d", at).isFalse();
    }
  }

  @Test
  void whoseEndNeverComesAreLeftByTheEscapeKeyAlone() {
    type("\u001b[200~qqq").quiet();
    drain(decoder);
    type("\u001b").quiet();
    assertThat(drain(decoder)).isEmpty();
    assertThat(decoder.isPending()).isFalse();
    type("a");
    assertThat(drain(decoder)).containsExactly(typed("a"));
  }

  @Test
  void whoseEndNeverComesAreDroppedAfterFiveSecondsOfQuietAndTold() {
    type("\u001b[200~uu");
    for (int second = 1; second <= 4; second++) {
      assertThat(decoder.patienceMillis()).isEqualTo(second * 1000);
      quiet();
    }
    assertThat(drain(decoder)).containsExactly(new Pasted("uu"));
    quiet();
    assertThat(drain(decoder)).containsExactly(new PasteDropped());
    assertThat(decoder.patienceMillis()).as("till it can be read").isEqualTo(5300);
    quiet();
    assertThat(decoder.isPending()).isFalse();
    type(" ").quiet();
    assertThat(drain(decoder)).containsExactly(typed(" "));
  }

  private PastingTest dropped() {
    type("\u001b[200~foo").quiet().quiet().quiet().quiet().quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("foo"), new PasteDropped());
    return this;
  }

  @Test
  void thatWereDroppedMakeNoKeysOfTheirRestThatComesLate() {
    dropped().quiet().type("    \u001b[201~").quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("    "));
    type(" ");
    assertThat(drain(decoder)).as("from here on keys are keys").containsExactly(typed(" "));
    dropped().quiet().type(" ").quiet();
    assertThat(drain(decoder)).containsExactly(typed(" "));
    type(" q\u001b[A\u001b[201~\u001b[B").quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted(" q\u001b[A"), key(Key.Kind.DOWN));
    dropped().quiet().type(" \u001b[200~one\u001b[201~").quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted(" "), new Pasted("one"));
  }

  @Test
  void thatWereDroppedTakeTheKeyThatComesAsItIsTold() {
    dropped().type("x").quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("x"));
    type("\u001b[A").quiet();
    assertThat(drain(decoder)).containsExactly(key(Key.Kind.UP));
    dropped().type("\u0003");
    assertThat(drain(decoder)).containsExactly(new Ended());
  }

  @Test
  void thatWereDroppedHoldNoKeyBackForLong() {
    dropped().quiet();
    for (int press = 1; press <= 5; press++) {
      type("\u001b[1;5A");
      assertThat(decoder.patienceMillis()).isEqualTo(30);
      quiet().type("\u001b").quiet();
      assertThat(drain(decoder)).endsWith(key(Key.Kind.ESCAPE));
    }
    type(" ");
    assertThat(drain(decoder)).as("at once").containsExactly(typed(" "));
    dropped().quiet().type("\u0003");
    assertThat(drain(decoder)).containsExactly(new Ended());
  }

  @Test
  void whoseEndNeverComesAreDroppedThoughKeysArePressedMeanwhile() {
    type("\u001b[200~uu").quiet();
    for (int press = 1; press <= 4; press++) {
      type(" ").quiet();
    }
    assertThat(drain(decoder)).endsWith(new Pasted(" "), new PasteDropped());
  }

  @Test
  void whoseEndNeverComesAreDroppedThoughKeysArePressedFasterThanTheyStall() {
    type("\u001b[200~uu").quiet();
    for (int press = 1; press <= 4; press++) {
      type(press == 2 ? "\u001b[A" : " ");
      assertThat(decoder.patienceMillis()).as("no hand is so quick").isEqualTo(30);
      quiet();
    }
    assertThat(drain(decoder)).endsWith(new Pasted(" "), new PasteDropped());
    quiet().type(" ").quiet();
    assertThat(drain(decoder)).containsExactly(typed(" "));
  }

  @Test
  void thatComeOnInPiecesAfterAStallAreNotDropped() {
    type("\u001b[200~412").quiet();
    for (int piece = 1; piece <= 20; piece++) {
      type(piece % 3 == 0 ? " and more" : " m").quiet();
    }
    assertThat(drain(decoder)).doesNotContain(new PasteDropped());
    type("\u001b[201~").quiet();
    assertThat(decoder.isPending()).isFalse();
  }

  @Test
  void whoseEndNeverComesAreLeftByEscapeRightAfterAKeyToo() {
    type("\u001b[200~qqq").quiet();
    type(" ").quiet();
    type("\u001b").quiet();
    assertThat(decoder.isPending()).isFalse();
  }

  @Test
  void thatGoOnAfterAStallAreWaitedForAnew() {
    type("\u001b[200~412").quiet().quiet().quiet();
    type(" mm, 96 mm").quiet().quiet().quiet().quiet();
    type(" and more\u001b[201~x").quiet();
    assertThat(drain(decoder))
        .containsExactly(
            new Pasted("412"), new Pasted(" mm, 96 mm"), new Pasted(" and more"), typed("x"));
  }

  @Test
  void whoseEndNeverComesAreLeftByCtrlC() {
    type("\u001b[200~q\u0003q");
    assertThat(drain(decoder)).as("in the middle it is text").isEmpty();
    quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("q\u0003q"));
    type("\u0003");
    assertThat(drain(decoder)).containsExactly(new Ended());
  }

  @Test
  void holdWhatComesInOneGoUpToTheLastMarkOfAnEnd() {
    type("\u001b[200~one\u001b[201~qq\u001b[A\u001b[201~").quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("one"), new Pasted("qq\u001b[A"));
    type("\u001b[200~one\u001b[201~qq\u001b[200~two\u001b[201~x").quiet();
    assertThat(drain(decoder))
        .as("a mark of a beginning that is pasted makes no keys of what is before it")
        .containsExactly(new Pasted("one"), new Pasted("qq"), new Pasted("two"), typed("x"));
  }

  @Test
  void leaveTheKeysThatComeAfterThemKeys() {
    type("\u001b[200~one\u001b[201~q\u001b[A");
    assertThat(decoder.patienceMillis()).isEqualTo(30);
    quiet();
    assertThat(drain(decoder)).containsExactly(new Pasted("one"), typed("q"), key(Key.Kind.UP));
  }

  @Test
  void ofAnySizeAreReadInTimeAndInPieces() {
    String text = "~\u001b[20".repeat(200_000);
    long begin = System.nanoTime();
    type("\u001b[200~" + text + "\u001b[201~").quiet();
    assertThat(System.nanoTime() - begin).isLessThan(5_000_000_000L);
    StringBuilder all = new StringBuilder();
    drain(decoder).forEach(input -> all.append(((Pasted) input).text()));
    assertThat(all.toString()).isEqualTo(text);
  }
}
