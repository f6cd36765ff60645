package linkwright.coach.kernel;

import java.util.ArrayList;
import java.util.List;
import linkwright.routine.Caution;
import linkwright.routine.Gear;
import linkwright.text.Text;

/** A caution laid out in rows, and in as many pages as the room asks for. */
public final class CardRows {
  /** Columns for the word in the margin. */
  public static final int INDENT = 7;

  /** Rows above the card: its title. */
  private static final int TITLE = 1;

  private CardRows() {}

  /** What a row holds. */
  public enum Kind {
    ADVICE,
    SOURCE,
    DEFERS
  }

  /**
   * A row of a card.
   *
   * @param label the word in the margin; empty in rows that go on
   * @param text what it says
   * @param kind what it holds
   */
  public record Row(String label, String text, Kind kind) {}

  /** A card with all its pages. */
  public static List<List<Row>> pages(Model model, Caution card) {
    List<Row> rows = rows(model, card);
    int room = Math.max(1, Layout.height(model) - TITLE);
    if (rows.size() <= room) {
      return List.of(rows);
    }
    // On a page of several the last row says so.
    int onePage = Math.max(1, room - 1);
    List<List<Row>> pages = new ArrayList<>();
    for (int from = 0; from < rows.size(); from += onePage) {
      pages.add(rows.subList(from, Math.min(rows.size(), from + onePage)));
    }
    return pages;
  }

  private static List<Row> rows(Model model, Caution card) {
    int room = Math.max(2, Layout.width(model) - INDENT);
    List<Row> rows = new ArrayList<>();
    add(rows, model, room, "", List.of(card.canHappen()), Kind.ADVICE);
    add(rows, model, room, "do", card.doList(), Kind.ADVICE);
    add(rows, model, room, "do not", card.doNot(), Kind.ADVICE);
    add(rows, model, room, "if so", card.ifItGoesWrong(), Kind.ADVICE);
    add(rows, model, room, "wear", List.of(wear(card)), Kind.ADVICE);
    add(rows, model, room, "from", List.of(card.source()), Kind.SOURCE);
    add(rows, model, room, "", List.of(card.defers()), Kind.DEFERS);
    return rows;
  }

  private static void add(
      List<Row> rows, Model model, int room, String label, List<String> items, Kind kind) {
    String word = label;
    for (String item : items) {
      if (!item.isBlank()) {
        for (String line : Text.wrap(JobWords.fill(item, model), room)) {
          rows.add(new Row(word, line, kind));
          word = "";
        }
      }
    }
  }

  private static String wear(Caution card) {
    List<String> gear = new ArrayList<>();
    for (Gear each : card.wear()) {
      gear.add(each.says() + " (" + each.sign() + ")");
    }
    return String.join(", ", gear);
  }
}
