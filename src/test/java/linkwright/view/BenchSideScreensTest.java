package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.Apprentice;
import linkwright.coach.kernel.DoubtfulLine;
import linkwright.job.Fact;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Wire, book, cautions and timers as they stand at 80 x 24, and what must hold at any size. */
class BenchSideScreensTest {
  private static final Map<String, String> LITTLE_WIRE = Map.of("stock", "260 mm, 150 mm");

  private static Apprentice timers() {
    Apprentice apprentice = Apprentice.withAJob(Map.of());
    apprentice.press("esc", "m", "n").type("pickle").press("enter").type("8 min").press("ctrl-k");
    apprentice.wait(30).press("n").type("second pot").press("enter").type("20 s").press("ctrl-k");
    return apprentice.wait(95);
  }

  private static Apprentice wire() {
    Apprentice apprentice = Apprentice.withAJob(LITTLE_WIRE).press("esc", "w");
    return apprentice.press("c", "enter").type("3").press("ctrl-k");
  }

  private static Apprentice book() {
    Apprentice apprentice = Apprentice.withAJob(Map.of()).press("esc", "k", "n");
    apprentice.type("鎖 for Ana").press("ctrl-k", "x").type("wrong job").press("ctrl-k");
    return apprentice.press("n").type("eye a little tight").press("ctrl-k", "down", "down");
  }

  private static void looks(Apprentice apprentice, String picture) {
    assertThat(apprentice.shown()).isEqualTo(picture.stripTrailing());
  }

  @Test
  void timersAt80x24() {
    Golden.looks("beside/timers", timers().shown());
  }

  @Test
  void wireAt80x24() {
    looks(
        wire(),
        """
             Gate chain · wire
             (▁▁)∘(▁▁)∘(▁▁)∘(··)∘(··)∘(··)∘(··)∘(··)∘(··)∘

             Wire for links and rings, 1 mm, Sterling silver, soft
                150 mm ▏█████ cut ███████▏░░                23.1 mm over
                260 mm ▏▓▓▓ 3 links ▓▓▓▓▓▏▓▓▓ 9 rings ▓▓▓▓▓ 3 links, 9 rings, 1.31 mm over
                       █ cut   ▓ to be cut   ░ over   ╳ lost
             ! Short: 262.1 mm more wire is needed, for 5 links and 3 rings.
             Still to cut 8 links of 42.3 mm, 12 rings of 13.5 mm of wire each
             On hand 283.1 mm, cut 126.9 mm
             Enter wire that came, or see what thicker wire drawn down would give.











             Still to do: 9 links, 8 to cut; 10 rings, 12 to cut
             n wire came  c wire was cut  x wire lost  f find  esc back  u undo  ? all keys
            """);
  }

  @Test
  void bookAt80x24() {
    Golden.looks("beside/book", book().shown());
  }

  @Test
  void cautionsAt80x24() {
    Golden.looks("beside/cautions", Apprentice.atTheTray().press("c", "down").shown());
  }

  @Test
  void aCautionWholeAt80x24() {
    Golden.looks(
        "beside/a-caution-whole", Apprentice.atTheTray().press("c", "down", "enter").shown());
  }

  @Nested
  class AtAnySize {
    @Test
    void aCardThatHasNoRoomIsReadPartByPart() {
      Apprentice reader = Apprentice.atTheTray().press("c", "enter").window(40, 12);
      assertThat(reader.shown()).contains("page 1 of 2").doesNotContain("Local rules come first.");
      reader.press("space");
      assertThat(reader.shown()).contains("page 2 of 2").contains("Local rules come first.");
      reader.press("space");
      assertThat(reader.shown()).contains("page 1 of 2");
    }

    @Test
    void aTimerThatIsDueSaysSoInWordsAndInTheWarningTone() {
      Apprentice apprentice = timers();
      for (int[] size : new int[][] {{60, 20}, {80, 24}, {140, 45}}) {
        apprentice.window(size[0], size[1]);
        Grid grid = Shown.draw(apprentice.model(), Glyphs.FULL);
        assertThat(grid.text()).contains("due for 76 s").contains("second pot");
        assertThat(tones(grid, "due for 76 s")).isEqualTo(Tone.WARNING);
      }
    }

    private Tone tones(Grid grid, String words) {
      for (int y = 0; y < grid.height(); y++) {
        int x = grid.row(y).indexOf(words);
        if (x >= 0) {
          return grid.at(x, y).tone();
        }
      }
      throw new AssertionError("not shown: " + words);
    }

    @Test
    void shortWireIsToldInWordsAtEverySize() {
      Apprentice apprentice = wire();
      for (int[] size : new int[][] {{60, 20}, {80, 24}, {140, 45}}) {
        apprentice.window(size[0], size[1]);
        assertThat(apprentice.shown().replaceAll("\\s+", " "))
            .contains("! Short: 262.1 mm more wire is needed, for 5 links and 3 rings.");
      }
    }

    @Test
    void thoseLengthsFromWhichNothingIsCutComeOnALaterPage() {
      Apprentice many =
          Apprentice.withAJob(
              Map.of(
                  "stock",
                  "20 mm, 21 mm, 22 mm, 23 mm, 24 mm, 25 mm, 26 mm, 27 mm, 28 mm, 29 mm, 30 mm,"
                      + " 31 mm, 32 mm, 33 mm, 900 mm"));
      many.press("esc", "w").window(60, 20);
      assertThat(many.shown()).contains("   900 mm").contains("page 1 of");
    }

    @Test
    void whatIsStruckIsMarkedByASignAndAWord() {
      assertThat(book().shown()).contains("× struck: note: 鎖 for Ana");
    }

    @Test
    void aLineWhoseCheckFailedIsShownAsItStands() {
      Apprentice apprentice = Apprentice.withAJob(Map.of());
      apprentice.opensWith(new DoubtfulLine(7, "1b2c3d4e", "- {n: 6, at: 20", Optional.empty()));
      assertThat(apprentice.press("esc", "k").shown())
          .contains("! line 7 fails its check, is kept and not used: it cannot be read")
          .contains("- {n: 6, at: 20")
          .contains("g accept the line");
    }

    @Test
    void aLongNameTakesRowsOfItsOwnAndTheColumnsStay() {
      Apprentice apprentice = Apprentice.withAJob(Map.of());
      apprentice.enter(new Fact.TimerStarted("銀の酸洗い".repeat(12), 60));
      apprentice.opensWith().press("esc", "m").window(60, 20);
      Grid grid = Shown.draw(apprentice.model(), Glyphs.FULL);
      assertThat(grid.text()).contains("銀の酸洗い").contains("ends 18:01");
    }
  }
}
