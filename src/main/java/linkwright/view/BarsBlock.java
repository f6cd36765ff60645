package linkwright.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linkwright.coach.content.Bars;
import linkwright.text.Text;

/** Lengths as bars to one scale, group by group, and below them what each sign means. */
final class BarsBlock implements Block {
  private static final int LENGTH = 10;
  private static final int MOST_WORDS = 32;
  private static final int LEAST_WORDS = 18;
  private static final int LEAST = 4;

  private final Bars bars;
  private final double longestMm;

  BarsBlock(Bars bars) {
    this.bars = bars;
    this.longestMm =
        bars.groups().stream()
            .flatMap(group -> group.bars().stream())
            .mapToDouble(Bars.Bar::mm)
            .max()
            .orElse(0);
  }

  @Override
  public int wanted() {
    return 1 + bars.groups().stream().mapToInt(BarsBlock::rows).sum();
  }

  /** A title, then a row for each length, or for there being none. */
  private static int rows(Bars.Group group) {
    return 1 + Math.max(1, group.bars().size());
  }

  @Override
  public int least() {
    return Math.min(LEAST, wanted());
  }

  @Override
  public GivesWay yields() {
    return GivesWay.SCROLLS;
  }

  @Override
  public boolean apart() {
    return false;
  }

  @Override
  public void draw(Canvas area, int turned) {
    boolean legend = area.height() > 2 * bars.groups().size();
    int room = area.height() - (legend ? 1 : 0);
    int y = 0;
    for (int i = 0; i < bars.groups().size(); i++) {
      int later = 0;
      for (Bars.Group after : bars.groups().subList(i + 1, bars.groups().size())) {
        later += Math.min(rows(after), room / bars.groups().size());
      }
      y += group(area.area(0, y, area.width(), room - y - later), bars.groups().get(i));
    }
    if (legend) {
      legend(area, y);
    }
  }

  private int group(Canvas area, Bars.Group group) {
    area.text(0, 0, area.width(), group.title(), Tone.ACCENT);
    if (group.bars().isEmpty()) {
      area.text(LENGTH, 1, area.width() - LENGTH, "none is entered yet", Tone.FAINT);
      return Math.min(rows(group), area.height());
    }
    int rows = Math.max(0, area.height() - 1);
    int all = group.bars().size();
    int shown = all <= rows ? all : Math.max(0, rows - 1);
    List<Bars.Bar> chosen = worthSeeing(group.bars(), shown);
    for (int i = 0; i < shown; i++) {
      bar(area, i + 1, chosen.get(i));
    }
    if (shown < all) {
      String more = (all - shown) + " more, counted below";
      area.text(LENGTH, shown + 1, area.width() - LENGTH, more, Tone.FAINT);
    }
    return Math.min(rows(group), area.height());
  }

  /** Where not all have room: those from which something is to be cut or was, then the longest. */
  private static List<Bars.Bar> worthSeeing(List<Bars.Bar> bars, int count) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < bars.size(); i++) {
      order.add(i);
    }
    order.sort(
        Comparator.comparing((Integer i) -> !has(bars.get(i), Bars.Use.PLANNED))
            .thenComparing(i -> !has(bars.get(i), Bars.Use.CUT) && !has(bars.get(i), Bars.Use.LOST))
            .thenComparing(Comparator.reverseOrder()));
    return order.stream().limit(count).sorted().map(bars::get).toList();
  }

  private static boolean has(Bars.Bar bar, Bars.Use use) {
    return bar.stretches().stream().anyMatch(stretch -> stretch.use() == use && stretch.mm() > 0);
  }

  private void bar(Canvas area, int y, Bars.Bar bar) {
    int words = Math.min(MOST_WORDS, Math.max(LEAST_WORDS, area.width() * 2 / 5));
    String told = bar.words();
    String kept = Text.width(told) <= words ? told : told.replaceAll(", [^,]*$", "");
    area.right(LENGTH - 1, y, LENGTH - 1, bar.amount(), Tone.PLAIN);
    List<LengthBar.Piece> pieces = new ArrayList<>();
    for (Bars.Segment stretch : bar.stretches()) {
      if (stretch.mm() > 0) {
        pieces.add(
            new LengthBar.Piece(stretch.mm(), stretch.label(), LengthBar.kind(stretch.use())));
      }
    }
    Canvas drawing = area.area(LENGTH, y, area.width() - LENGTH - words - 1, 1);
    if (longestMm > 0 && drawing.width() > 0) {
      LengthBar.draw(drawing, 0, longestMm, pieces);
    }
    area.text(area.width() - words, y, words, kept, Tone.FAINT);
  }

  private static void legend(Canvas area, int y) {
    List<String> signs = new ArrayList<>();
    for (Bars.Use use : Bars.Use.values()) {
      signs.add(LengthBar.kind(use).glyph(area.glyphs()) + " " + use.word());
    }
    String legend = String.join("   ", signs);
    int x = Math.max(0, Math.min(LENGTH, area.width() - Text.width(legend)));
    area.text(x, y, Math.max(0, area.width() - x), legend, Tone.FAINT);
  }
}
