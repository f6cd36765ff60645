package linkwright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class TextTest {
  @Nested
  class MakingSafe {
    @Test
    void plainTextStaysTheSameObject() {
      String text = "Sterling trace, 0.9 mm";
      assertThat(Text.safe(text)).isSameAs(text);
    }

    @Test
    void controlsShowAsASignAndDoNothing() {
      assertThat(Text.safe("a\u001b[2Jb")).isEqualTo("a□[2Jb");
      assertThat(Text.safe("\u0007\u0000\u007f")).isEqualTo("□□□");
      assertThat(Text.safe("\u009b2J")).as("a control of the second set").isEqualTo("□2J");
    }

    @Test
    void lineBreaksShowAsOneSignAndTabsAsSpaces() {
      assertThat(Text.safe("a\r\nb\nc\td")).isEqualTo("a□b□c d");
    }

    @Test
    void textThatTurnsTheDirectionIsSeen() {
      assertThat(Text.safe("ab\u202Ecd\u2066e")).doesNotContain("\u202E", "\u2066").contains("□");
    }

    @Test
    void accentsAreJoinedToTheirLetters() {
      assertThat(Text.safe("Ame\u0301lie")).isEqualTo("Amélie");
    }

    @Test
    void aMarkThatJoinsNothingIsSeenBesideItsLetter() {
      assertThat(Text.safe("q\u0301x")).isEqualTo("q□x");
    }

    @Test
    void anEmojiOfManyPartsIsOneSign() {
      assertThat(Text.safe("a👩‍👩‍👧b")).isEqualTo("a□b");
      assertThat(Text.safe("✅")).isEqualTo("□");
    }

    @Test
    void halfASurrogatePairIsASign() {
      assertThat(Text.safe("a\ud83db")).isEqualTo("a□b");
    }

    @Test
    void safeTextIsSafeWhateverItWas() {
      long seed = 20261125;
      Random random = new Random(seed);
      for (int run = 0; run < 3000; run++) {
        StringBuilder wild = new StringBuilder();
        for (int i = random.nextInt(12); i >= 0; i--) {
          wild.appendCodePoint(random.nextInt(run % 2 == 0 ? 0x3100 : 0x11000));
        }
        String safe = Text.safe(wild.toString());
        assertThat(Text.safe(safe)).as("seed %d run %d", seed, run).isEqualTo(safe);
        assertThat(safe.chars().allMatch(c -> Columns.of((char) c) > 0)).isTrue();
        assertThat(Text.width(wild.toString())).isEqualTo(Text.widthOfSafe(safe));
      }
    }
  }

  @Nested
  class Measuring {
    @Test
    void eastAsianLettersTakeTwoColumns() {
      assertThat(Text.width("銀の鎖")).isEqualTo(6);
      assertThat(Text.width("은 사슬")).isEqualTo(7);
    }

    @Test
    void latinGreekBrailleAndBlocksTakeOne() {
      assertThat(Text.width("éßΩ⣿█…")).isEqualTo(6);
    }
  }

  @Nested
  class Cutting {
    @Test
    void whatFitsIsWhole() {
      assertThat(Text.cut("chain", 5)).isEqualTo("chain");
    }

    @Test
    void whatWasCutIsMarked() {
      assertThat(Text.cut("chains", 5)).isEqualTo("chai…");
      assertThat(Text.cut("chains", 5, "~")).isEqualTo("chai~");
      assertThat(Text.cut("chains", 1)).isEqualTo("…");
      assertThat(Text.cut("chains", 0)).isEmpty();
    }

    @Test
    void aWideLetterIsNeverHalved() {
      assertThat(Text.cut("銀の鎖", 4)).isEqualTo("銀…");
      assertThat(Text.pad("銀の鎖", 4)).isEqualTo("銀… ");
    }
  }

  @Nested
  class Wrapping {
    @Test
    void linesBreakAtSpaces() {
      assertThat(Text.wrap("Heat the whole link evenly", 10))
          .isEqualTo(List.of("Heat the", "whole link", "evenly"));
    }

    @Test
    void aWordLongerThanALineIsBroken() {
      assertThat(Text.wrap("antidisestablish me", 8))
          .isEqualTo(List.of("antidise", "stablish", "me"));
    }

    @Test
    void givenLineBreaksStay() {
      assertThat(Text.wrap("one\ntwo\n\nthree", 20)).containsExactly("one", "two", "", "three");
      assertThat(Text.wrap("", 20)).containsExactly("");
    }

    @Test
    void wideLettersWrapByColumns() {
      assertThat(Text.wrap("銀の鎖", 5)).containsExactly("銀の", "鎖");
    }

    @Test
    void aSingleColumnIsRefused() {
      assertThatThrownBy(() -> Text.wrap("a", 1)).hasMessageContaining("1 columns");
    }

    @Test
    void aFigureKeepsItsUnit() {
      assertThat(Text.wrap("The chain weighs 8.00 g in all", 21))
          .containsExactly("The chain weighs", "8.00 g in all");
      assertThat(Text.wrap("It is 99 % sure", 8)).containsExactly("It is", "99 %", "sure");
      assertThat(Text.wrap("9 grains", 3)).startsWith("9");
    }

    @Test
    void noLineIsTooWideAndNoLetterIsLost() {
      long seed = 7;
      Random random = new Random(seed);
      for (int run = 0; run < 500; run++) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(80); i >= 0; i--) {
          text.append("ab銀 é".charAt(random.nextInt(5)));
        }
        int columns = 2 + random.nextInt(20);
        List<String> lines = Text.wrap(text.toString(), columns);
        assertThat(lines).as("seed %d run %d", seed, run).allMatch(l -> Text.width(l) <= columns);
        assertThat(String.join("", lines).replace(" ", ""))
            .isEqualTo(text.toString().replace(" ", ""));
      }
    }
  }
}
