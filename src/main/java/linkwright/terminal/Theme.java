package linkwright.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import linkwright.view.Tone;

/**
 * How each tone looks. The background is always the terminal's own; copper is the only colour, and
 * everything that it says is said in words or signs too.
 */
final class Theme {
  /** A colour of text and its attributes. */
  record Style(TextColor colour, Set<SGR> attributes) {
    /** Text and background changed round; what was so already is turned back. */
    Style reversed() {
      boolean already = attributes.contains(SGR.REVERSE);
      return new Style(colour, already ? EnumSet.noneOf(SGR.class) : EnumSet.of(SGR.REVERSE));
    }
  }

  /** Red, green and blue, 0 to 255, as 0xRRGGBB, and the nearest in the 256 and 16 colours. */
  private record Paint(int rgb, int indexed, TextColor.ANSI sixteen) {
    TextColor at(ColourDepth depth) {
      return switch (depth) {
        case RGB -> new TextColor.RGB(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff);
        case INDEXED -> new TextColor.Indexed(indexed);
        case SIXTEEN -> sixteen;
        case NONE -> TextColor.ANSI.DEFAULT;
      };
    }
  }

  private final Map<Tone, Style> styles;

  private Theme(Map<Tone, Style> styles) {
    this.styles = styles;
  }

  static Theme of(Look look, ColourDepth wished) {
    ColourDepth depth = look == Look.NO_COLOUR ? ColourDepth.NONE : wished;
    TextColor accent = accent(look).at(depth);
    TextColor faint = faint(look).at(depth);
    TextColor own = TextColor.ANSI.DEFAULT;
    boolean strongAccent =
        depth == ColourDepth.NONE || look == Look.HIGH_CONTRAST || look == Look.HIGH_CONTRAST_LIGHT;
    Map<Tone, Style> styles = new EnumMap<>(Tone.class);
    for (Tone tone : Tone.values()) {
      styles.put(
          tone,
          switch (tone) {
            case PLAIN -> style(own);
            case ACCENT -> strongAccent ? style(accent, SGR.BOLD) : style(accent);
            case STRONG -> style(own, SGR.BOLD);
            case FAINT -> style(faint);
            case WARNING -> style(own, SGR.BOLD, SGR.UNDERLINE);
            case REVERSED -> style(own, SGR.REVERSE);
            case FIELD -> style(own, SGR.UNDERLINE);
            case ALARM -> style(accent, SGR.BOLD, SGR.REVERSE);
          });
    }
    return new Theme(styles);
  }

  Style style(Tone tone) {
    return styles.get(tone);
  }

  private static Style style(TextColor colour, SGR... attributes) {
    Set<SGR> set = EnumSet.noneOf(SGR.class);
    set.addAll(Set.of(attributes));
    return new Style(colour, set);
  }

  private static Paint accent(Look look) {
    return switch (look) {
      case DARK, NO_COLOUR -> new Paint(0xE0935F, 173, TextColor.ANSI.YELLOW);
      case LIGHT -> new Paint(0x8F4A1C, 94, TextColor.ANSI.RED);
      case EITHER -> new Paint(0xB85B28, 130, TextColor.ANSI.DEFAULT);
      case HIGH_CONTRAST_LIGHT -> new Paint(0x5F2B00, 52, TextColor.ANSI.RED);
      case HIGH_CONTRAST -> new Paint(0xFFBE94, 216, TextColor.ANSI.YELLOW_BRIGHT);
    };
  }

  private static Paint faint(Look look) {
    return switch (look) {
      // The sixteen colours differ too much between terminals for a grey to be sure to be legible.
      case DARK, NO_COLOUR -> new Paint(0xA9A29B, 248, TextColor.ANSI.DEFAULT);
      case LIGHT -> new Paint(0x5C5650, 240, TextColor.ANSI.DEFAULT);
      case EITHER -> new Paint(0x767676, 243, TextColor.ANSI.DEFAULT);
      case HIGH_CONTRAST_LIGHT -> new Paint(0x303030, 236, TextColor.ANSI.DEFAULT);
      case HIGH_CONTRAST -> new Paint(0xE4E4E4, 254, TextColor.ANSI.DEFAULT);
    };
  }

  /** The window's own background for a look, as 0xRRGGBB. */
  static int background(Look look) {
    return switch (look) {
      case DARK, NO_COLOUR -> 0x1B1917;
      case LIGHT -> 0xFBF8F4;
      case EITHER, HIGH_CONTRAST_LIGHT -> 0xFFFFFF;
      case HIGH_CONTRAST -> 0x000000;
    };
  }

  /** The window's own colour of plain text for a look, as 0xRRGGBB. */
  static int plain(Look look) {
    return switch (look) {
      case DARK, NO_COLOUR -> 0xE6E1DB;
      case LIGHT -> 0x1F1B18;
      case EITHER, HIGH_CONTRAST_LIGHT -> 0x000000;
      case HIGH_CONTRAST -> 0xFFFFFF;
    };
  }
}
