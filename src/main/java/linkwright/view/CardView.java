package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.JobWords;
import linkwright.coach.Model;
import linkwright.routine.Caution;

/** A caution whole: what can happen, do, do not, if it goes wrong, what to wear. */
final class CardView {
  private static final int INDENT = 9;

  private CardView() {}

  /** A row of the card as it will stand. */
  private record Row(String label, String text, Tone tone) {}

  static void draw(Canvas body, Model model, Caution card, String before) {
    List<Row> rows = rows(model, card, body.width());
    body.text(0, 0, body.width(), before, Tone.FAINT);
    title(body, card);
    boolean whole = rows.size() <= body.height() - 2;
    rows(body, rows, 0, whole ? rows.size() : body.height() - 3);
    if (!whole) {
      String defers = JobWords.fill(card.defers(), model);
      body.text(0, body.height() - 1, body.width() - 10, defers, Tone.STRONG);
    }
  }

  /** A part of the card where all of it has no room; the pages go round. */
  static void drawPage(Canvas body, Model model, Caution card, String before, int page) {
    List<Row> rows = rows(model, card, body.width());
    int room = Math.max(1, body.height() - 2);
    int onePage = rows.size() <= room ? room : Math.max(1, room - 1);
    int pages = (rows.size() + onePage - 1) / onePage;
    int shown = pages == 0 ? 0 : Math.floorMod(page, pages);
    body.text(0, 0, body.width(), before, Tone.FAINT);
    title(body, card);
    rows(body, rows, shown * onePage, onePage);
    if (pages > 1) {
      String part = "part " + (shown + 1) + " of " + pages + ": space goes on";
      body.right(body.height() - 1, part, Tone.STRONG);
    }
  }

  private static void title(Canvas body, Caution card) {
    body.text(0, 1, body.width(), body.glyphs().pick("▲ ", "! ") + card.title(), Tone.WARNING);
  }

  private static void rows(Canvas body, List<Row> rows, int first, int count) {
    for (int i = first; i < Math.min(rows.size(), first + count); i++) {
      Row row = rows.get(i);
      body.text(0, 2 + i - first, INDENT - 1, row.label(), Tone.FAINT);
      body.text(INDENT, 2 + i - first, row.text(), row.tone());
    }
  }

  private static List<Row> rows(Model model, Caution card, int width) {
    List<Row> rows = new ArrayList<>();
    int room = Math.max(2, width - INDENT);
    add(rows, model, room, "", List.of(card.canHappen()), Tone.PLAIN);
    add(rows, model, room, "do", card.doList(), Tone.PLAIN);
    add(rows, model, room, "do not", card.doNot(), Tone.PLAIN);
    add(rows, model, room, "if it", card.ifItGoesWrong(), Tone.PLAIN);
    add(rows, model, room, "wear", List.of(wear(card)), Tone.PLAIN);
    add(rows, model, room, "source", List.of(card.source()), Tone.FAINT);
    add(rows, model, room, "", List.of(card.defers()), Tone.STRONG);
    return rows;
  }

  private static void add(
      List<Row> rows, Model model, int room, String label, List<String> items, Tone tone) {
    String word = label;
    for (String item : items) {
      if (!item.isBlank()) {
        for (String line : Text.wrap(JobWords.fill(item, model), room)) {
          rows.add(new Row(word, line, tone));
          word = "";
        }
      }
    }
  }

  private static String wear(Caution card) {
    List<String> gear = new ArrayList<>();
    card.wear().forEach(each -> gear.add(each.says() + " (" + each.sign() + ")"));
    return String.join(", ", gear);
  }
}
