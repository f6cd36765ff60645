package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Acts;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.KeyMap;
import linkwright.text.Text;

/** Acts as a list: key, word, how it stands there; turned over where not all have room at once. */
final class ActsBlock implements Block {
  private static final int KEY = 2;
  private static final int WORD = 6;
  private static final int GAP = 2;

  /** Fewer columns for how it stands would break every line: it follows the word there. */
  private static final int LEAST_STANDS = 28;

  /** Fewer rows would be turned over too often. */
  private static final int LEAST = 6;

  /** A choice in rows: the first stands beside its word. */
  private record Lines(Acts.Choice choice, int first, List<String> stands) {}

  private final List<Lines> lines;
  private final KeyMap keys;
  private final String key;
  private final boolean told;

  /**
   * Such a list.
   *
   * @param key the key that turns it over
   * @param told whether it says itself which page is shown and how to turn on
   */
  ActsBlock(Acts acts, KeyMap keys, Glyphs glyphs, int width, String key, boolean told) {
    this.keys = keys;
    this.key = key;
    this.told = told;
    int longest = 0;
    for (Acts.Choice choice : acts.choices()) {
      longest = Math.max(longest, Text.width(choice.act().words()));
    }
    int column = WORD + longest + GAP;
    boolean columns = width - column >= LEAST_STANDS;
    this.lines =
        acts.choices().stream()
            .map(each -> said(each, glyphs))
            .map(each -> columns ? inColumn(each, column, width) : following(each, width))
            .toList();
  }

  private static Acts.Choice said(Acts.Choice choice, Glyphs glyphs) {
    return new Acts.Choice(
        choice.act(), glyphs.spelt(choice.stands()), choice.now(), choice.groupEnds());
  }

  private static Lines inColumn(Acts.Choice choice, int column, int width) {
    return new Lines(choice, column, Text.wrap(choice.stands(), width - column));
  }

  /** How it stands goes on where the word has ended. */
  private static Lines following(Acts.Choice choice, int width) {
    int word = Text.width(choice.act().words()) + GAP;
    String kept = "-".repeat(word) + choice.stands();
    List<String> stands = new ArrayList<>(Text.wrap(kept, Math.max(2, width - WORD)));
    stands.set(0, stands.get(0).substring(Math.min(word, stands.get(0).length())));
    return new Lines(choice, WORD + word, stands);
  }

  private int rows() {
    return lines.stream().mapToInt(each -> each.stands().size()).sum();
  }

  @Override
  public int wanted() {
    return rows() + (int) lines.stream().filter(each -> each.choice().groupEnds()).count();
  }

  @Override
  public int least() {
    return Math.min(LEAST, rows());
  }

  @Override
  public int parts(int rows) {
    return rows < 1 ? 1 : pages(rows).size();
  }

  /** As many of them a page as have room; one that has none by itself keeps what has. */
  private List<List<Lines>> pages(int high) {
    if (rows() <= high) {
      return List.of(lines);
    }
    int room = Math.max(1, told ? high - 1 : high);
    List<List<Lines>> pages = new ArrayList<>();
    int used = room;
    for (Lines each : lines) {
      if (used + each.stands().size() > room) {
        pages.add(new ArrayList<>());
        used = 0;
      }
      pages.get(pages.size() - 1).add(each);
      used += each.stands().size();
    }
    return pages;
  }

  @Override
  public GivesWay yields() {
    return GivesWay.TURNS;
  }

  @Override
  public void draw(Canvas area, int turned) {
    if (area.height() < 1) {
      return;
    }
    boolean gaps = area.height() >= wanted();
    List<List<Lines>> pages = pages(area.height());
    int shown = Math.floorMod(turned, pages.size());
    int y = 0;
    for (Lines each : pages.get(shown)) {
      choice(area, y, each);
      y += each.stands().size() + (gaps && each.choice().groupEnds() ? 1 : 0);
    }
    if (told && pages.size() > 1) {
      PageLine.draw(area, shown, pages.size(), key);
    }
  }

  private void choice(Canvas area, int y, Lines line) {
    Acts.Choice choice = line.choice();
    boolean now = choice.now();
    area.text(0, y, 1, now ? area.glyphs().pick("▸", ">") : " ", Tone.ACCENT);
    if (now) {
      area.cursorUnlessTyped(0, y);
    }
    area.text(KEY, y, WORD - KEY, keys.firstOf(choice.act()), Tone.STRONG);
    area.text(WORD, y, choice.act().words(), now ? Tone.ACCENT : Tone.PLAIN);
    boolean column = line.first() > WORD + Text.width(choice.act().words()) + GAP;
    for (int i = 0; i < line.stands().size(); i++) {
      int x = i == 0 || column ? line.first() : WORD;
      area.text(x, y + i, line.stands().get(i), now ? Tone.PLAIN : Tone.FAINT);
    }
    area.spot(0, y, area.width(), line.stands().size(), new Spot.ToAct(choice.act()));
  }
}
