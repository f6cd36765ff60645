package linkwright.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linkwright.view.Tone;
import org.junit.jupiter.api.Test;

class ThemeTest {
  /** The darkest and the lightest background that each look is made for. */
  private static final Map<Look, List<Integer>> BACKGROUNDS =
      Map.of(
          Look.DARK, List.of(0x000000, 0x2B2B2B, Theme.background(Look.DARK)),
          Look.LIGHT, List.of(0xFFFFFF, 0xE8E8E8, Theme.background(Look.LIGHT)),
          Look.HIGH_CONTRAST, List.of(0x000000));

  /** Relative luminance: W3C, WCAG 2.1, "relative luminance". */
  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16)
        + 0.7152 * linear(rgb >> 8 & 0xFF)
        + 0.0722 * linear(rgb & 0xFF);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /** Contrast ratio: W3C, WCAG 2.1, "contrast ratio". */
  private static double contrast(int one, int other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static int rgb(TextColor colour) {
    return colour.getRed() << 16 | colour.getGreen() << 8 | colour.getBlue();
  }

  @Test
  void blackOnWhiteIsTwentyOneToOne() {
    assertThat(contrast(0x000000, 0xFFFFFF)).isCloseTo(21, within(1e-9));
  }

  @Test
  void everyColourIsLegibleOnTheBackgroundsItIsMadeFor() {
    int checked = 0;
    for (Look look : BACKGROUNDS.keySet()) {
      double least = look == Look.HIGH_CONTRAST ? 7 : 4.5;
      for (ColourDepth depth : List.of(ColourDepth.RGB, ColourDepth.INDEXED)) {
        for (Tone tone : Tone.values()) {
          TextColor colour = Theme.of(look, depth).style(tone).colour();
          if (!colour.equals(TextColor.ANSI.DEFAULT)) {
            for (int background : BACKGROUNDS.get(look)) {
              checked++;
              assertThat(contrast(rgb(colour), background))
                  .as("%s %s %s on #%06x", look, depth, tone, background)
                  .isGreaterThanOrEqualTo(least);
            }
          }
        }
      }
    }
    assertThat(checked).isGreaterThanOrEqualTo(3 * 2 * 7);
  }

  @Test
  void theWindowsOwnColoursAreLegible() {
    for (Look look : Look.values()) {
      assertThat(contrast(Theme.plain(look), Theme.background(look))).isGreaterThan(7);
    }
  }

  @Test
  void withoutColourNoneIsAskedFor() {
    for (Tone tone : Tone.values()) {
      for (Look look : Look.values()) {
        assertThat(Theme.of(look, ColourDepth.NONE).style(tone).colour())
            .isEqualTo(TextColor.ANSI.DEFAULT);
      }
      for (ColourDepth depth : ColourDepth.values()) {
        assertThat(Theme.of(Look.NO_COLOUR, depth).style(tone).colour())
            .isEqualTo(TextColor.ANSI.DEFAULT);
      }
    }
  }

  @Test
  void copperIsTheOnlyColourBesidesGreys() {
    for (Look look : BACKGROUNDS.keySet()) {
      Set<Integer> colours = new HashSet<>();
      for (Tone tone : Tone.values()) {
        TextColor colour = Theme.of(look, ColourDepth.RGB).style(tone).colour();
        int spread = colour.getRed() - colour.getBlue();
        if (!colour.equals(TextColor.ANSI.DEFAULT) && spread > 40) {
          colours.add(rgb(colour));
        }
      }
      assertThat(colours).hasSize(1);
    }
  }

  @Test
  void withoutColourWhatMattersStillStandsOut() {
    Theme theme = Theme.of(Look.DARK, ColourDepth.NONE);
    assertThat(theme.style(Tone.ACCENT).attributes()).contains(SGR.BOLD);
    assertThat(theme.style(Tone.REVERSED).attributes()).contains(SGR.REVERSE);
    assertThat(theme.style(Tone.WARNING)).isNotEqualTo(theme.style(Tone.PLAIN));
    assertThat(theme.style(Tone.ALARM)).isNotEqualTo(theme.style(Tone.ACCENT));
  }

  @Test
  void everyLookHasAWordToAskForIt() {
    for (Look look : Look.values()) {
      assertThat(Look.named(look.word())).contains(look);
    }
    assertThat(Look.named(" High-Contrast ")).contains(Look.HIGH_CONTRAST);
    assertThat(Look.named("sepia")).isEmpty();
  }
}
