package linkwright.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The chain as its own progress bar: every link a sign that stands the higher the further the link
 * has come, rings between them where there is room. A chain with more links than columns is drawn
 * with several links to a sign.
 */
public final class ChainBar {
  private static final String FULL = "·▁▂▃▄▅▆▇█";
  private static final String ASCII = ".123456789abcdefg";

  /**
   * Links that stand at one stage.
   *
   * @param links how many, not negative
   * @param passed how many stages they have passed: 0 not begun, all of them finished
   * @param now whether they are to be done again
   */
  public record Portion(int links, int passed, boolean now) {
    /** Checks the counts. */
    public Portion {
      if (links < 0 || passed < 0) {
        throw new IllegalArgumentException(links + " links past stage " + passed);
      }
    }
  }

  private ChainBar() {}

  /** The sign of a link that has passed so many of the stages, without regard to colour. */
  public static String sign(int stage, int stages, Glyphs glyphs) {
    if (stage < 0 || stage > stages || stages < 1) {
      throw new IllegalArgumentException("No sign for stage " + stage + " of " + stages);
    }
    if (stage == stages) {
      return glyphs.pick("█", "#");
    }
    if (stage == 0) {
      return glyphs.pick("·", ".");
    }
    int steps = FULL.length() - 2;
    return glyphs == Glyphs.ASCII
        ? String.valueOf(ASCII.charAt(Math.min(stage, ASCII.length() - 1)))
        : String.valueOf(FULL.charAt((stage * steps + stages - 1) / stages));
  }

  /**
   * Draws the chain over a row, from its left edge.
   *
   * @param portions in the order in which they are drawn
   * @param stages how many stages there are in all, 1 or more
   * @return links that one sign stands for: 1 where every link is drawn
   */
  public static int draw(Canvas area, int y, List<Portion> portions, int stages) {
    int links = portions.stream().mapToInt(Portion::links).sum();
    if (links == 0 || area.width() == 0) {
      return 1;
    }
    Form form = Form.forRoom(links, area.width());
    int perSign = form == Form.MANY ? (links + area.width() - 1) / area.width() : 1;
    int x = 0;
    int drawn = 0;
    while (drawn < links) {
      List<Portion> under = portionsOf(portions, drawn, Math.min(links, drawn + perSign));
      // The one that has come least far gives the sign: the bar never claims more than is done.
      Portion least = under.stream().min(Comparator.comparingInt(Portion::passed)).orElseThrow();
      boolean now = under.stream().anyMatch(Portion::now);
      Tone tone = now ? Tone.ACCENT : tone(least, stages);
      // What is to be done again has a shape of its own, whatever the colours.
      String sign =
          now ? area.glyphs().pick("◇", "r") : sign(least.passed(), stages, area.glyphs());
      x = form.draw(area, x, y, sign, tone);
      drawn += perSign;
    }
    return perSign;
  }

  /** The portions that links from one up to before another belong to. */
  private static List<Portion> portionsOf(List<Portion> portions, int from, int to) {
    List<Portion> under = new ArrayList<>();
    int before = 0;
    for (Portion portion : portions) {
      int after = before + portion.links();
      if (before < to && after > from) {
        under.add(portion);
      }
      before = after;
    }
    return under;
  }

  private static Tone tone(Portion portion, int stages) {
    return portion.passed() == stages || portion.passed() == 0 ? Tone.FAINT : Tone.PLAIN;
  }

  /** How much of a link can be drawn in the room there is. */
  private enum Form {
    /** Link with both its ends, and the ring: five columns. */
    WHOLE(5),
    /** Sign and ring: two columns. */
    RINGS(2),
    /** The sign alone. */
    SIGNS(1),
    /** One sign for several links. */
    MANY(1);

    private final int columns;

    Form(int columns) {
      this.columns = columns;
    }

    static Form forRoom(int links, int columns) {
      for (Form form : values()) {
        if (links * form.columns <= columns) {
          return form;
        }
      }
      return MANY;
    }

    int draw(Canvas area, int x, int y, String sign, Tone tone) {
      String ring = area.glyphs().pick("∘", "o");
      return switch (this) {
        case WHOLE -> {
          int after = area.text(x, y, "(" + sign + sign + ")", tone);
          yield area.text(after, y, ring, Tone.FAINT);
        }
        case RINGS -> area.text(area.text(x, y, sign, tone), y, ring, Tone.FAINT);
        case SIGNS, MANY -> area.text(x, y, sign, tone);
      };
    }
  }
}
