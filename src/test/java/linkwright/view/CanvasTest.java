package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import linkwright.text.Text;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CanvasTest {
  @Nested
  class Writing {
    @Test
    void textStandsWhereItWasPutWithItsTone() {
      Canvas canvas = new Canvas(8, 2, Glyphs.FULL);
      int after = canvas.text(2, 1, "oval", Tone.STRONG);
      assertThat(after).isEqualTo(6);
      assertThat(canvas.toGrid().row(1)).isEqualTo("  oval  ");
      assertThat(canvas.toGrid().rowTones(1)).isEqualTo("  SSSS  ");
    }

    @Test
    void textThatIsTooLongIsMarked() {
      Canvas canvas = new Canvas(6, 1, Glyphs.FULL);
      canvas.text(1, 0, "planished", Tone.PLAIN);
      assertThat(canvas.toGrid().row(0)).isEqualTo(" plan…");
    }

    @Test
    void withoutUnicodeTheMarkIsATilde() {
      Canvas canvas = new Canvas(6, 1, Glyphs.ASCII);
      canvas.text(1, 0, "planished", Tone.PLAIN);
      assertThat(canvas.toGrid().row(0)).isEqualTo(" plan~");
    }

    @Test
    void outsideNothingHappens() {
      Canvas canvas = new Canvas(4, 1, Glyphs.FULL);
      canvas.text(0, 5, "no", Tone.PLAIN);
      canvas.text(9, 0, "no", Tone.PLAIN);
      canvas.text(-2, 0, "abcd", Tone.PLAIN);
      canvas.fill(-1, -1, 1, 9, "#", Tone.PLAIN);
      assertThat(canvas.toGrid().row(0)).isEqualTo("cd  ");
    }

    @Test
    void rightAndCentredKnowTheirColumns() {
      Canvas canvas = new Canvas(9, 2, Glyphs.FULL);
      canvas.right(0, "12 g", Tone.PLAIN);
      canvas.centred(1, "now", Tone.ACCENT);
      assertThat(canvas.toGrid().text()).isEqualTo("     12 g\n   now\n");
    }

    @Test
    void wrappedTextThatNeedsMoreRowsIsMarked() {
      Canvas canvas = new Canvas(10, 2, Glyphs.FULL);
      int rows = canvas.wrapped(0, 0, 10, 2, "Heat the whole link evenly", Tone.PLAIN);
      assertThat(rows).isEqualTo(2);
      assertThat(canvas.toGrid().text()).isEqualTo("Heat the\nwhole lin…\n");
    }

    @Test
    void inASingleColumnTheMarkIsLeft() {
      Canvas canvas = new Canvas(1, 3, Glyphs.FULL);
      assertThat(canvas.wrapped(0, 0, 1, 3, "Heat the link", Tone.PLAIN)).isEqualTo(1);
      assertThat(canvas.toGrid().text()).isEqualTo("…\n\n\n");
    }

    @Test
    void aFillOfTwoColumnsIsRefused() {
      assertThatThrownBy(() -> new Canvas(4, 4, Glyphs.FULL).fill(0, 0, 4, 4, "銀", Tone.PLAIN))
          .hasMessageContaining("銀");
    }
  }

  @Nested
  class WideLetters {
    @Test
    void oneStandsInTwoCells() {
      Canvas canvas = new Canvas(4, 1, Glyphs.FULL);
      canvas.text(0, 0, "銀x", Tone.PLAIN);
      Grid grid = canvas.toGrid();
      assertThat(grid.at(0, 0)).isEqualTo(new Cell("銀", 2, Tone.PLAIN));
      assertThat(grid.at(1, 0)).isEqualTo(new Cell("", 0, Tone.PLAIN));
      assertThat(grid.row(0)).isEqualTo("銀x ");
    }

    @Test
    void halfOfOneNeverStays() {
      Canvas canvas = new Canvas(4, 1, Glyphs.FULL);
      canvas.text(0, 0, "銀銀", Tone.PLAIN);
      canvas.text(1, 0, "ab", Tone.PLAIN);
      assertThat(canvas.toGrid().row(0)).isEqualTo(" ab ");
    }

    @Test
    void everyRowKeepsItsColumnsWhateverIsWrittenOver() {
      long seed = 99;
      Random random = new Random(seed);
      for (int run = 0; run < 300; run++) {
        Canvas canvas = new Canvas(12, 1, Glyphs.FULL);
        for (int i = 0; i < 6; i++) {
          canvas
              .area(random.nextInt(10), 0, random.nextInt(12), 1)
              .text(random.nextInt(6) - 2, 0, "銀a鎖鎖b".substring(random.nextInt(5)), Tone.PLAIN);
        }
        assertThat(Text.width(canvas.toGrid().row(0)))
            .as("seed %d run %d", seed, run)
            .isEqualTo(12);
      }
    }
  }

  @Nested
  class Areas {
    @Test
    void anAreaHasItsOwnCornerAndEdges() {
      Canvas canvas = new Canvas(10, 3, Glyphs.FULL);
      Canvas area = canvas.area(3, 1, 4, 1);
      area.text(0, 0, "finished", Tone.PLAIN);
      area.cursor(2, 0);
      assertThat(canvas.toGrid().row(1)).isEqualTo("   fin…   ");
      assertThat(canvas.toGrid().cursor()).contains(new Grid.Cursor(5, 1));
      assertThat(area.toGrid().row(0)).isEqualTo("fin…");
    }

    @Test
    void anAreaBeyondTheEdgeIsAsBigAsWhatIsLeft() {
      Canvas area = new Canvas(10, 3, Glyphs.FULL).area(8, 2, 50, 50);
      assertThat(area.width()).isEqualTo(2);
      assertThat(area.height()).isEqualTo(1);
      assertThat(new Canvas(10, 3, Glyphs.FULL).area(20, 20, 5, 5).width()).isZero();
      assertThat(new Canvas(10, 3, Glyphs.FULL).area(2, 2, -5, 5).width()).isZero();
    }
  }

  @Test
  void equalPicturesAreEqualGrids() {
    Canvas one = new Canvas(5, 1, Glyphs.FULL);
    Canvas two = new Canvas(5, 1, Glyphs.FULL);
    one.text(0, 0, "ring", Tone.PLAIN);
    two.text(0, 0, "ring", Tone.PLAIN);
    assertThat(one.toGrid()).isEqualTo(two.toGrid()).hasSameHashCodeAs(two.toGrid());
    two.text(0, 0, "r", Tone.ACCENT);
    assertThat(one.toGrid()).isNotEqualTo(two.toGrid());
  }

  @Test
  void aFinishedGridStaysAsItWas() {
    Canvas canvas = new Canvas(5, 1, Glyphs.FULL);
    Grid before = canvas.toGrid();
    canvas.text(0, 0, "ring", Tone.PLAIN);
    assertThat(before.row(0)).isBlank();
  }

  @Test
  void inAsciiTheColumnsStayAndNothingElseIsLeft() {
    Canvas canvas = new Canvas(12, 1, Glyphs.FULL);
    canvas.text(0, 0, "銀 é×½ ⣿█…", Tone.PLAIN);
    Grid ascii = Ascii.of(canvas.toGrid());
    assertThat(ascii.row(0)).isEqualTo("?? ex/ ?#~  ");
    assertThat(Ascii.of("銀 é×½ ⣿█…")).isEqualTo("?? ex/ ?#~");
  }
}
