package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linkwright.coach.content.Content;
import linkwright.coach.content.Prose;
import linkwright.text.Text;

/**
 * What stands above the line of keys: the sentence that is told, else what is still to do. What has
 * no room at once is turned over like a page, and says so: nothing of it is cut.
 *
 * @param told the sentence; empty for none
 * @param still what is still to do; empty for nothing
 * @param card whether a card is shown, of which no row may be pushed away
 */
record Foot(String told, String still, boolean card) {
  /** What stands before the line of what is still to do, where it has room. */
  private static final String STILL = "Still to do: ";

  /** Rows of a sentence in the lowest window. */
  private static final int LEAST = 3;

  /** Lower windows have few rows: a sentence of so many leaves one to what is still to do. */
  private static final int LOW = 16;

  private static final int BRIEF = 2;

  /** Whether a place shows a card. */
  static boolean isCard(Content content) {
    return content.parts().stream()
        .anyMatch(part -> part instanceof Prose prose && prose.kind() == Prose.Kind.CAUTION_TITLE);
  }

  /** Rows that it takes in a window so high: one, or as many as the sentence needs. */
  int rows(int width, int height) {
    int rows = Math.max(1, Math.min(most(height), Text.wrap(told, width).size()));
    return both(width, height) ? rows + 1 : rows;
  }

  /** Whether what is still to do keeps its row below a short sentence in a low window. */
  private boolean both(int width, int height) {
    return !told.isEmpty()
        && !still.isEmpty()
        && !card
        && height < LOW
        && Text.wrap(told, width).size() <= BRIEF;
  }

  /** How often it is turned over by that key. */
  int parts(int width, int height, String key) {
    int room = room(width, key);
    return told.isEmpty() || both(width, height)
        ? still(width, room).size()
        : told(width, height, room).size();
  }

  /** Its rows, turned on so often; where there are more, they end with the key that turns on. */
  List<String> shown(int width, int height, int turned, String key) {
    int room = room(width, key);
    List<List<String>> parts = new ArrayList<>();
    if (told.isEmpty() || both(width, height)) {
      List<String> above = told.isEmpty() ? List.of() : Text.wrap(told, width);
      still(width, room)
          .forEach(line -> parts.add(Stream.concat(above.stream(), Stream.of(line)).toList()));
    } else {
      parts.addAll(told(width, height, room));
    }
    int at = Math.floorMod(turned, parts.size());
    List<String> rows = new ArrayList<>(parts.get(at));
    if (parts.size() > 1) {
      String last = Text.pad(rows.get(rows.size() - 1), room);
      rows.set(rows.size() - 1, last + counter(width, at, parts.size(), key));
    }
    return rows;
  }

  private int most(int height) {
    return card ? 1 : Math.max(LEAST, (height - 4) / 2);
  }

  private List<List<String>> told(int width, int height, int room) {
    int most = most(height);
    List<String> lines = Text.wrap(told, width);
    if (lines.size() <= most) {
      return List.of(lines);
    }
    lines = Text.wrap(told, room - 1);
    List<List<String>> parts = new ArrayList<>();
    for (int from = 0; from < lines.size(); from += most) {
      List<String> part = new ArrayList<>(lines.subList(from, Math.min(lines.size(), from + most)));
      while (part.size() < most) {
        part.add("");
      }
      parts.add(part);
    }
    return parts;
  }

  /** Columns before the page of it and its key. */
  private static int room(int width, String key) {
    return Math.max(3, width - Text.width(counter(width, 8, 9, key)));
  }

  /**
   * A page of the place may be told above by the same key: this says that it is the foot's own, and
   * no word of it.
   */
  private static String counter(int width, int at, int all, String key) {
    String of = (at + 1) + " of " + all + "  " + key;
    // A narrow foot has no room for the word.
    return width < 60 ? of : "(this " + of + ")";
  }

  /** What is still to do, in fewer words where there is little room; else it is turned over. */
  private List<String> still(int width, int room) {
    if (Text.width(still) <= width) {
      return List.of(still);
    }
    String fewer = still.replace(STILL, "");
    return Text.width(fewer) <= width ? List.of(fewer) : byKinds(fewer, room - 1);
  }

  /** As lines that end behind a kind of piece, for a number far from its words says nothing. */
  private static List<String> byKinds(String still, int columns) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String kind : still.split("; ", -1)) {
      String longer = line.isEmpty() ? kind : line + "; " + kind;
      if (!line.isEmpty() && Text.width(longer) > columns) {
        lines.addAll(Text.wrap(line, columns));
        longer = kind;
      }
      line = longer;
    }
    lines.addAll(Text.wrap(line, columns));
    return lines;
  }
}
