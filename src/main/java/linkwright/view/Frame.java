package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Page;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Wait;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.KeyMap;
import linkwright.text.Text;

/**
 * What every screen has: a line that says which job and where in it, the chain across the top while
 * a job is open, and at the foot one line of what is to be told and one of the keys that matter.
 */
final class Frame {
  /** Rows at the foot: what is told, and the keys. */
  static final int FOOT = 2;

  private static final int GAP = 2;

  /** Rows that a sentence may take; more is cut with its mark. */
  private static final int MOST_TOLD = 3;

  private final Page page;
  private final KeyMap keys;

  Frame(Page page, KeyMap keys) {
    this.page = page;
    this.keys = keys;
  }

  /** Rows at the head: title and, with a job open, its chain. */
  static int head(boolean chain) {
    return chain ? 3 : 2;
  }

  /** Draws the head and returns the room that is left for the place itself. */
  Canvas draw(Canvas canvas) {
    head(canvas);
    int head = head(page.chain().isPresent());
    // A long sentence takes rows of the place: nothing lies under it.
    int more = told(canvas.width() - 2).size() - 1;
    int high = Math.max(1, canvas.height() - head - FOOT - Math.max(0, more));
    return canvas.area(1, head, Math.max(2, canvas.width() - 2), high);
  }

  private void head(Canvas canvas) {
    boolean lit = !page.hotWork().isEmpty();
    int hot = lit ? Text.width(page.hotWork()) + 2 : 0;
    String wait = page.nextWait().map(next -> wait(canvas, next, lit)).orElse("");
    boolean due = page.nextWait().map(Wait::due).orElse(false);
    int right = hot + (wait.isEmpty() ? 0 : Text.width(wait) + 2);
    int room = canvas.width() - 2 - right;
    String place = page.body().title();
    int placeRoom = Math.min(Text.width(place) + 3, Math.max(0, room - 8));
    int after = canvas.text(1, 0, Math.max(4, room - placeRoom), page.job(), Tone.STRONG);
    String dot = canvas.glyphs().pick("·", "-");
    canvas.text(after, 0, Math.max(0, room + 1 - after), " " + dot + " " + place, Tone.PLAIN);
    if (!wait.isEmpty()) {
      canvas.right(canvas.width() - 1, 0, Text.width(wait), wait, due ? Tone.ALARM : Tone.ACCENT);
    }
    if (lit) {
      int end = canvas.width() + 1 - right + hot - 2;
      canvas.right(end, 0, hot - 2, page.hotWork(), Tone.WARNING);
    }
    page.chain()
        .ifPresent(
            chain -> new PiecesBlock(chain).draw(canvas.area(1, 1, canvas.width() - 2, 1), 0));
  }

  private static String wait(Canvas canvas, Wait wait, boolean lit) {
    String whose = wait.job().isEmpty() ? "" : ", " + wait.job();
    int room = canvas.width() < 72 ? (lit ? 8 : 14) : 24;
    String name = Text.cut(wait.name() + whose, room, canvas.glyphs().cutMark());
    return wait.due() ? " " + name + " is due " : name + " " + wait.left();
  }

  /** What is told, in rows; before a caution in one, for nothing of a card may be pushed away. */
  private List<String> told(int width) {
    if (page.told().isEmpty()) {
      return List.of();
    }
    String mark = page.trouble() ? "! " : "";
    String text = mark + ActMention.fill(page.told(), keys::spokenOf);
    boolean card =
        page.body().parts().stream()
            .anyMatch(
                part -> part instanceof Prose prose && prose.kind() == Prose.Kind.CAUTION_TITLE);
    List<String> lines = Text.wrap(text, width);
    if (card || lines.size() == 1) {
      return List.of(text);
    }
    if (lines.size() <= MOST_TOLD) {
      return lines;
    }
    List<String> first = new ArrayList<>(lines.subList(0, MOST_TOLD - 1));
    first.add(String.join(" ", lines.subList(MOST_TOLD - 1, lines.size())));
    return first;
  }

  /** Draws the foot, after the place: a long sentence takes rows of it, whole. */
  void foot(Canvas canvas) {
    int width = canvas.width() - 2;
    int row = canvas.height() - 2;
    if (page.told().isEmpty()) {
      canvas.text(1, row, width, page.still(), Tone.PLAIN);
    } else {
      Tone tone = page.trouble() ? Tone.WARNING : Tone.STRONG;
      List<String> lines = told(width);
      for (int i = 0; i < lines.size(); i++) {
        canvas.text(1, row - lines.size() + 1 + i, width, lines.get(i), tone);
      }
    }
    acts(canvas, width);
  }

  /** As many as fit; those that are always told have their room kept. */
  private void acts(Canvas canvas, int width) {
    int y = canvas.height() - 1;
    int x = 1;
    List<Page.Open> open = page.open();
    int kept = 0;
    for (Page.Open each : open) {
      kept += each.always() ? Text.width(word(each)) + GAP : 0;
    }
    for (Page.Open each : open) {
      String word = word(each);
      if (each.always()) {
        kept -= Text.width(word) + GAP;
      } else if (x + Text.width(word) + GAP > width + 1 - Math.max(0, kept - GAP)) {
        continue;
      }
      int from = x;
      x = canvas.text(from, y, Math.max(0, width + 1 - from), word, Tone.FAINT);
      int wide = x - from;
      each.act().ifPresent(act -> canvas.spot(from, y, wide, 1, new Spot.ToAct(act)));
      x += GAP;
    }
  }

  private String word(Page.Open open) {
    return open.act().map(act -> keys.firstOf(act) + " " + open.says()).orElse(open.says());
  }
}
