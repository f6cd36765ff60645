package linkwright.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linkwright.coach.content.Bars;
import linkwright.text.Text;

/** Lengths as bars to one scale, and what each sign means. */
final class BarsBlock implements Block {
  private static final int LENGTH = 10;
  private static final int LEAST = 4;

  private final Bars bars;

  BarsBlock(Bars bars) {
    this.bars = bars;
  }

  @Override
  public int wanted() {
    return 2 + Math.max(1, bars.bars().size());
  }

  @Override
  public int least() {
    return Math.min(LEAST, wanted());
  }

  @Override
  public Yield yields() {
    return Yield.SCROLLS;
  }

  @Override
  public boolean apart() {
    return false;
  }

  @Override
  public void draw(Canvas area, int turned) {
    area.text(0, 0, area.width(), bars.title(), Tone.ACCENT);
    if (bars.bars().isEmpty()) {
      area.text(LENGTH, 1, area.width() - LENGTH, "none is entered yet", Tone.FAINT);
      return;
    }
    int rows = area.height() - 2;
    int shown = bars.bars().size() <= rows ? bars.bars().size() : Math.max(0, rows - 1);
    double longest = bars.bars().stream().mapToDouble(Bars.Bar::mm).max().orElse(0);
    List<Bars.Bar> chosen = worthSeeing(shown);
    for (int i = 0; i < shown; i++) {
      bar(area, i + 1, chosen.get(i), longest);
    }
    if (shown < bars.bars().size()) {
      String more = (bars.bars().size() - shown) + " more lengths, counted below";
      area.text(LENGTH, shown + 1, area.width() - LENGTH, more, Tone.FAINT);
      shown++;
    }
    legend(area, shown + 1);
  }

  /** Where not all have room: those from which something is to be cut or was, then the longest. */
  private List<Bars.Bar> worthSeeing(int count) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < bars.bars().size(); i++) {
      order.add(i);
    }
    order.sort(
        Comparator.comparing((Integer i) -> !has(i, Bars.Use.PLANNED))
            .thenComparing(i -> !has(i, Bars.Use.CUT) && !has(i, Bars.Use.LOST))
            .thenComparing(Comparator.reverseOrder()));
    return order.stream().limit(count).sorted().map(bars.bars()::get).toList();
  }

  private boolean has(int bar, Bars.Use use) {
    return bars.bars().get(bar).stretches().stream()
        .anyMatch(stretch -> stretch.use() == use && stretch.mm() > 0);
  }

  private static void bar(Canvas area, int y, Bars.Bar bar, double longest) {
    int words = Math.min(32, area.width() * 2 / 5);
    String told = bar.words();
    String kept = Text.width(told) <= words ? told : told.replaceAll(", [^,]*$", "");
    area.right(LENGTH - 1, y, LENGTH - 1, bar.amount(), Tone.PLAIN);
    List<LengthBar.Piece> pieces = new ArrayList<>();
    for (Bars.Stretch stretch : bar.stretches()) {
      if (stretch.mm() > 0) {
        pieces.add(
            new LengthBar.Piece(stretch.mm(), stretch.label(), LengthBar.kind(stretch.use())));
      }
    }
    Canvas drawing = area.area(LENGTH, y, area.width() - LENGTH - words - 1, 1);
    if (longest > 0 && drawing.width() > 0) {
      LengthBar.draw(drawing, 0, longest, pieces);
    }
    area.text(area.width() - words, y, words, kept, Tone.FAINT);
  }

  private static void legend(Canvas area, int y) {
    int x = LENGTH;
    for (Bars.Use use : Bars.Use.values()) {
      String sign = LengthBar.kind(use).glyph(area.glyphs()) + " " + use.word();
      x = area.text(x, y, sign, Tone.FAINT) + 3;
    }
  }
}
