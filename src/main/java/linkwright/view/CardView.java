package linkwright.view;

import java.util.List;
import linkwright.coach.kernel.CardRows;
import linkwright.coach.kernel.Model;
import linkwright.routine.Caution;

/** A caution whole: what can happen, do, do not, if it goes wrong, what to wear. */
final class CardView {
  private CardView() {}

  /**
   * Draws a page of the card; pages beyond the last begin again at the first.
   *
   * @param before what the card stands before, or where it is in a list
   */
  static void draw(Canvas body, Model model, Caution card, String before, int page) {
    List<List<CardRows.Row>> pages = CardRows.pages(model, card);
    int shown = Math.floorMod(page, pages.size());
    int after =
        body.text(0, 0, body.width(), body.glyphs().pick("▲ ", "! ") + card.title(), Tone.WARNING);
    body.text(after + 2, 0, Math.max(0, body.width() - after - 2), before, Tone.FAINT);
    int y = 1;
    for (CardRows.Row row : pages.get(shown)) {
      body.text(0, y, CardRows.INDENT - 1, row.label(), Tone.FAINT);
      body.text(CardRows.INDENT, y, row.text(), tone(row.kind()));
      y++;
    }
    if (pages.size() > 1) {
      String part = "part " + (shown + 1) + " of " + pages.size() + ": space goes on";
      body.right(body.height() - 1, part, Tone.STRONG);
    }
  }

  private static Tone tone(CardRows.Kind kind) {
    return switch (kind) {
      case ADVICE -> Tone.PLAIN;
      case SOURCE -> Tone.FAINT;
      case DEFERS -> Tone.STRONG;
    };
  }
}
