package linkwright.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import linkwright.coach.content.Bars;
import linkwright.text.Text;

/**
 * Lengths as bars to one scale, group by group, and below them what each sign means; turned over
 * where not all have room at once. What has no room beside its bar stands below it.
 */
final class BarsBlock implements Block {
  private static final int LENGTH = 10;
  private static final int MOST_WORDS = 32;
  private static final int LEAST_WORDS = 18;
  private static final int LEAST = 4;

  /** A row: a text, or a length with its bar and the first words beside it. */
  private record BarRow(int indent, String text, Tone tone, List<Bars.Bar> bar) {}

  private final List<BarRow> rows;

  /** The same, those that are to be cut from first. */
  private final List<BarRow> pages;

  private final double longestMm;
  private final int words;
  private final String key;
  private final boolean told;

  /**
   * Such bars.
   *
   * @param key the key that turns them over
   * @param told whether they say themselves which page is shown and how to turn on
   */
  BarsBlock(Bars bars, Glyphs glyphs, int width, String key, boolean told) {
    this.key = key;
    this.told = told;
    this.words = Math.min(MOST_WORDS, Math.max(LEAST_WORDS, width * 2 / 5));
    this.longestMm =
        bars.groups().stream()
            .flatMap(group -> group.bars().stream())
            .mapToDouble(Bars.Bar::mm)
            .max()
            .orElse(0);
    this.rows = rows(bars, glyphs, width, Bars.Group::bars);
    this.pages = rows(bars, glyphs, width, BarsBlock::worthFirst);
  }

  private List<BarRow> rows(
      Bars bars, Glyphs glyphs, int width, Function<Bars.Group, List<Bars.Bar>> order) {
    List<BarRow> rows = new ArrayList<>();
    for (Bars.Group group : bars.groups()) {
      texts(rows, 0, width, glyphs.spelt(group.title()), Tone.ACCENT);
      if (group.bars().isEmpty()) {
        texts(rows, LENGTH, width, "none is entered yet", Tone.FAINT);
      }
      order.apply(group).forEach(bar -> bar(rows, bar, glyphs, width));
    }
    String legend = legend(glyphs);
    texts(rows, Text.width(legend) <= width - LENGTH ? LENGTH : 0, width, legend, Tone.FAINT);
    return rows;
  }

  /** Those from which something is to be cut, then those from which something was. */
  private static List<Bars.Bar> worthFirst(Bars.Group group) {
    return group.bars().stream()
        .sorted(
            Comparator.comparing((Bars.Bar bar) -> !has(bar, Bars.Use.PLANNED))
                .thenComparing(bar -> !has(bar, Bars.Use.CUT) && !has(bar, Bars.Use.LOST)))
        .toList();
  }

  private static boolean has(Bars.Bar bar, Bars.Use use) {
    return bar.stretches().stream().anyMatch(stretch -> stretch.use() == use && stretch.mm() > 0);
  }

  private static void texts(List<BarRow> rows, int indent, int width, String text, Tone tone) {
    for (String line : Text.wrap(text, Math.max(2, width - indent))) {
      rows.add(new BarRow(indent, line, tone, List.of()));
    }
  }

  private void bar(List<BarRow> rows, Bars.Bar bar, Glyphs glyphs, int width) {
    List<String> lines = Text.wrap(glyphs.spelt(bar.words()), words);
    rows.add(new BarRow(width - words, lines.get(0), Tone.FAINT, List.of(bar)));
    for (String line : lines.subList(1, lines.size())) {
      rows.add(new BarRow(width - words, line, Tone.FAINT, List.of()));
    }
  }

  private static String legend(Glyphs glyphs) {
    List<String> signs = new ArrayList<>();
    for (Bars.Use use : Bars.Use.values()) {
      signs.add(LengthBar.kind(use).glyph(glyphs) + " " + use.word());
    }
    return String.join("   ", signs);
  }

  @Override
  public int wanted() {
    return rows.size();
  }

  @Override
  public int least() {
    return Math.min(LEAST, rows.size());
  }

  @Override
  public int parts(int high) {
    int room = room(high);
    return (rows.size() + room - 1) / room;
  }

  private int room(int high) {
    return Math.max(1, told && rows.size() > high ? high - 1 : high);
  }

  @Override
  public GivesWay yields() {
    return GivesWay.TURNS;
  }

  @Override
  public boolean apart() {
    return false;
  }

  @Override
  public void draw(Canvas area, int turned) {
    if (area.height() < 1) {
      return;
    }
    int room = room(area.height());
    int parts = parts(area.height());
    int shown = Math.floorMod(turned, parts);
    int end = Math.min(rows.size(), (shown + 1) * room);
    for (int i = shown * room; i < end; i++) {
      row(area, i - shown * room, parts > 1 ? pages.get(i) : rows.get(i));
    }
    if (told && parts > 1) {
      PageLine.draw(area, shown, parts, key);
    }
  }

  private void row(Canvas area, int y, BarRow row) {
    for (Bars.Bar bar : row.bar()) {
      area.right(LENGTH - 1, y, LENGTH - 1, bar.amount(), Tone.PLAIN);
      Canvas drawing = area.area(LENGTH, y, area.width() - LENGTH - words - 1, 1);
      if (longestMm > 0 && drawing.width() > 0) {
        LengthBar.draw(drawing, 0, longestMm, pieces(bar));
      }
    }
    area.text(row.indent(), y, row.text(), row.tone());
  }

  private static List<LengthBar.Piece> pieces(Bars.Bar bar) {
    List<LengthBar.Piece> pieces = new ArrayList<>();
    for (Bars.Segment stretch : bar.stretches()) {
      if (stretch.mm() > 0) {
        pieces.add(
            new LengthBar.Piece(stretch.mm(), stretch.label(), LengthBar.kind(stretch.use())));
      }
    }
    return pieces;
  }
}
