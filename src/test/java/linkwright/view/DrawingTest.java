package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import linkwright.text.Dots;
import linkwright.text.Dots.At;
import linkwright.view.ChainBar.Portion;
import linkwright.view.LengthBar.Kind;
import linkwright.view.LengthBar.Piece;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class DrawingTest {
  @Nested
  class Figures {
    @Test
    void growWithTheRoom() {
      assertThat(BigFigures.fit("23/96", 19, 3, Glyphs.FULL)).isEqualTo(1);
      assertThat(BigFigures.fit("23/96", 38, 5, Glyphs.FULL)).isEqualTo(2);
      assertThat(BigFigures.fit("23/96", 80, 10, Glyphs.FULL)).isEqualTo(4);
      assertThat(BigFigures.fit("23/96", 10, 3, Glyphs.FULL)).isZero();
    }

    @Test
    void haveOnlyWholeBlocksWhereHalvesDoNotMeetThem() {
      for (int size : new int[] {1, 2, 4}) {
        List<String> rows = BigFigures.rows("0/12:", size, Glyphs.WHOLE_BLOCKS);
        assertThat(rows).hasSize(BigFigures.rowsAt(size, Glyphs.WHOLE_BLOCKS));
        assertThat(String.join("", rows)).matches("[ █]+");
      }
      int size = BigFigures.fit("0/12", 60, 8, Glyphs.WHOLE_BLOCKS);
      assertThat(size).as("a step of a whole row").isEqualTo(2);
    }

    @Test
    void standAsBlocks() {
      assertThat(String.join("\n", BigFigures.rows("12:5", 2, Glyphs.FULL)))
          .isEqualTo(
              """
                ██    ██████      ██████
              ████        ██  ██  ██   \s
                ██    ██████      ██████
                ██    ██      ██      ██
              ██████  ██████      ██████\
              """);
    }

    @Test
    void useHalfRowsWhenSmall() {
      assertThat(BigFigures.rows("42", 1, Glyphs.FULL))
          .containsExactly("█ █ ▀▀█", "▀▀█ █▀▀", "  ▀ ▀▀▀");
    }

    @Test
    void areAsciiWhereUnicodeIsNot() {
      for (int size = 1; size <= 4; size += size == 1 ? 1 : 2) {
        List<String> rows = BigFigures.rows("0123456789:/.,-+ ", size, Glyphs.ASCII);
        assertThat(String.join("", rows)).matches("[# ]+");
        assertThat(rows).hasSize(BigFigures.rowsAt(size, Glyphs.ASCII));
      }
    }

    @Test
    void areAllDifferentAndAsWideAsSaid() {
      for (Glyphs glyphs : Glyphs.values()) {
        for (int size : new int[] {1, 2, 4}) {
          List<List<String>> seen = new ArrayList<>();
          for (String c :
              List.of(
                  "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", ":", "/", ".", ",", "-", "+",
                  " ")) {
            List<String> rows = BigFigures.rows(c, size, glyphs);
            int columns = BigFigures.columnsAt(c, size);
            assertThat(rows).allMatch(row -> row.length() == columns);
            seen.add(rows);
          }
          assertThat(seen).doesNotHaveDuplicates();
        }
      }
    }

    @Test
    void withoutRoomAreWrittenSmall() {
      Canvas canvas = new Canvas(10, 2, Glyphs.FULL);
      assertThat(BigFigures.draw(canvas, "23/96", Tone.STRONG)).isEqualTo(1);
      assertThat(canvas.toGrid().text()).contains("23/96");
    }

    @Test
    void refuseLetters() {
      assertThatThrownBy(() -> BigFigures.rows("x", 1, Glyphs.FULL)).hasMessageContaining("\"x\"");
    }
  }

  @Nested
  class Braille {
    @Test
    void aCircleIsAsHighAsItIsWide() {
      List<At> circle = new ArrayList<>();
      for (int i = 0; i <= 72; i++) {
        double a = Math.toRadians(i * 5);
        circle.add(new At(3 + 2 * Math.cos(a), 1 + 2 * Math.sin(a)));
      }
      Dots dots = new Dots(10, 5, Dots.scale(4, 4, 10, 5), new At(3, 1));
      dots.line(circle);
      String drawn =
          IntStream.range(0, 5)
              .mapToObj(row -> dots.row(row, false).stripTrailing() + "\n")
              .collect(Collectors.joining());
      assertThat(drawn)
          .isEqualTo(
              """
              ⠀⣠⠔⠊⠉⠉⠑⠢⣄
              ⡰⠁⠀⠀⠀⠀⠀⠀⠈⢆
              ⡇⠀⠀⠀⠀⠀⠀⠀⠀⢸
              ⠱⡀⠀⠀⠀⠀⠀⠀⢀⠎
              ⠀⠙⠢⢄⣀⣀⡠⠔⠋
              """
                  .replace('⠀', ' '));
    }

    @Test
    void thickWireIsThickToScale() {
      Dots dots = new Dots(4, 3, 4, new At(0, 0));
      dots.wire(List.of(new At(-9, 0), new At(9, 0)), 1.0);
      assertThat(dots.row(0, false)).isEqualTo("    ");
      assertThat(dots.row(1, false)).isEqualTo("⣿⣿⣿⣿");
      assertThat(dots.row(2, false)).isEqualTo("    ");
    }

    @Test
    void upIsUp() {
      Dots dots = new Dots(2, 2, 1, new At(0, 0));
      dots.line(List.of(new At(-5, 3.5), new At(5, 3.5)));
      assertThat(dots.row(0, false)).isEqualTo("⠉⠉");
      assertThat(dots.row(1, false)).isBlank();
    }

    @Test
    void withoutUnicodeItIsDrawnInAscii() {
      Dots dots = new Dots(6, 3, 2, new At(0, 0));
      dots.wire(List.of(new At(-2, -2), new At(2, 2)), 0.5);
      for (int row = 0; row < 3; row++) {
        assertThat(dots.row(row, true)).matches("[ -~]{6}");
      }
      assertThat(dots.row(1, true)).isNotBlank();
    }

    @Test
    void aScaleOfNothingIsRefused() {
      assertThatThrownBy(() -> Dots.scale(0, 4, 10, 5)).hasMessageContaining("0.0 x 4.0 mm");
      assertThatThrownBy(() -> new Dots(1, 1, Double.NaN, new At(0, 0)))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Nested
  class StockBars {
    private final List<Piece> pieces =
        List.of(
            new Piece(100, "4 links", Kind.USED),
            new Piece(60, "", Kind.OTHER),
            new Piece(2, "", Kind.LOST),
            new Piece(38, "38 mm", Kind.LEFT));

    @Test
    void areToScale() {
      Canvas canvas = new Canvas(40, 1, Glyphs.FULL);
      assertThat(LengthBar.draw(canvas, 0, 400, pieces)).isEqualTo(20);
      assertThat(LengthBar.draw(canvas, 0, 200, pieces)).isEqualTo(40);
      assertThat(canvas.toGrid().row(0)).isEqualTo("▏████ 4 links ██████▏▓▓▓▓▓▓▓▓▓▓▓▏░░░░░░░");
    }

    @Test
    void neverRunOverTheEdge() {
      Canvas canvas = new Canvas(10, 1, Glyphs.ASCII);
      assertThat(LengthBar.draw(canvas, 0, 50, pieces)).isEqualTo(10);
      assertThat(canvas.toGrid().row(0)).matches("[ -~]{10}");
    }
  }

  @Nested
  class Chain {
    private final List<Portion> portions =
        List.of(new Portion(4, 9, false), new Portion(3, 1, true), new Portion(3, 0, false));

    private String drawn(int columns, Glyphs glyphs) {
      Canvas canvas = new Canvas(columns, 1, glyphs);
      ChainBar.draw(canvas, 0, portions, 9);
      return canvas.toGrid().row(0);
    }

    @Test
    void showsLinksAndRingsWhereThereIsRoom() {
      assertThat(drawn(50, Glyphs.FULL))
          .isEqualTo("(██)∘(██)∘(██)∘(██)∘(◇◇)∘(◇◇)∘(◇◇)∘(··)∘(··)∘(··)∘");
      assertThat(drawn(20, Glyphs.FULL)).isEqualTo("█∘█∘█∘█∘◇∘◇∘◇∘·∘·∘·∘");
      assertThat(drawn(12, Glyphs.FULL)).isEqualTo("████◇◇◇···  ");
      assertThat(drawn(20, Glyphs.ASCII)).isEqualTo("#o#o#o#orororo.o.o.o");
    }

    @Test
    void putsSeveralLinksUnderASignAndNeverClaimsTooMuch() {
      Canvas canvas = new Canvas(4, 1, Glyphs.FULL);
      assertThat(ChainBar.draw(canvas, 0, portions, 9)).isEqualTo(3);
      assertThat(canvas.toGrid().row(0)).isEqualTo("█◇◇·");
      assertThat(canvas.toGrid().rowTones(0)).isEqualTo("fAAf");
    }

    @Test
    void tellsStagesApartWithoutColour() {
      for (int stages = 1; stages <= 9; stages++) {
        List<String> signs = new ArrayList<>();
        for (int stage = 0; stage <= stages; stage++) {
          signs.add(ChainBar.sign(stage, stages, Glyphs.ASCII));
        }
        assertThat(signs).doesNotHaveDuplicates();
      }
      List<String> signs = new ArrayList<>();
      for (int stage = 0; stage <= 8; stage++) {
        signs.add(ChainBar.sign(stage, 8, Glyphs.FULL));
      }
      assertThat(signs).doesNotHaveDuplicates();
    }

    @Test
    void standsHigherTheFurtherTheLinkHasCome() {
      for (int stages : new int[] {3, 8, 11, 14}) {
        int last = -1;
        for (int stage = 0; stage <= stages; stage++) {
          int height = "·▁▂▃▄▅▆▇█".indexOf(ChainBar.sign(stage, stages, Glyphs.FULL));
          assertThat(height).isGreaterThanOrEqualTo(last);
          last = height;
        }
      }
    }
  }
}
