package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Page;
import linkwright.coach.content.WaitShown;
import linkwright.coach.kernel.Spot;
import linkwright.coach.keys.Act;
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

  /** Lower windows have no row to be left free. */
  private static final int LOW = 16;

  /** A job's name is cut to no fewer columns. */
  private static final int LEAST_NAME = 5;

  private final Page page;
  private final KeyMap keys;
  private final Foot foot;

  Frame(Page page, KeyMap keys) {
    this.page = page;
    this.keys = keys;
    String told = ActMention.fill((page.trouble() ? "! " : "") + page.told(), keys::spokenOf);
    this.foot = new Foot(page.told().isEmpty() ? "" : told, page.still(), Foot.isCard(page.body()));
  }

  /** Rows at the head: title, with a job open its chain, and a free row where there is room. */
  static int head(boolean chain, int height) {
    return (chain ? 2 : 1) + (height < LOW ? 0 : 1);
  }

  /** Draws the head and returns the room that is left for the place itself. */
  Canvas draw(Canvas canvas) {
    head(canvas);
    int head = head(page.chain().isPresent(), canvas.height());
    // A long sentence takes rows of the place: nothing lies under it.
    int more = foot.rows(canvas.width() - 2, canvas.height()) - 1;
    int high = Math.max(1, canvas.height() - head - FOOT - more);
    return canvas.area(1, head, Math.max(2, canvas.width() - 2), high);
  }

  private void head(Canvas canvas) {
    String place = page.body().title();
    int most = canvas.width() - 2 - Text.width(place) - 2;
    List<Said> right = right(canvas, most);
    int taken = right.stream().mapToInt(said -> Text.width(said.text()) + 2).sum();
    int room = canvas.width() - 2 - taken;
    int jobRoom = room - Text.width(place) - 3;
    int after = 1;
    // The place is told whole before the job; a few letters of a name say nothing.
    if (jobRoom >= LEAST_NAME) {
      after = canvas.text(1, 0, jobRoom, page.job(), Tone.STRONG);
      String dot = canvas.glyphs().pick("·", "-");
      after = canvas.text(after, 0, " " + dot + " ", Tone.PLAIN);
    }
    canvas.text(after, 0, Math.max(0, room + 1 - after), place, Tone.PLAIN);
    int end = canvas.width() - 1;
    for (int i = right.size() - 1; i >= 0; i--) {
      Said said = right.get(i);
      canvas.right(end, 0, Text.width(said.text()), said.text(), said.tone());
      end -= Text.width(said.text()) + 2;
    }
    page.chain()
        .ifPresent(
            chain -> new PiecesBlock(chain).draw(canvas.area(1, 1, canvas.width() - 2, 1), 0));
  }

  /** What stands at the right of the first line. */
  private record Said(String text, Tone tone) {}

  /**
   * The flame or the fire watch, then the other wait that ends first. Where both have no room since
   * when it is lit goes first, then what is waited for, then how long; the safety of it never.
   */
  private List<Said> right(Canvas canvas, int most) {
    List<WaitShown> waits = page.nextWaits();
    if (!page.hotWork().isEmpty()) {
      int named = narrow(canvas) ? 8 : 24;
      String wait = waits.isEmpty() ? "" : wait(canvas, waits.get(0), named);
      boolean since =
          Text.width(page.hotWork()) <= most - (wait.isEmpty() ? 0 : Text.width(wait) + 2);
      String flame = since ? page.hotWork() : page.hotWork().replaceFirst(" .*", "");
      List<Said> both = new ArrayList<>(List.of(new Said(flame, Tone.WARNING)));
      waits.stream().limit(1).forEach(next -> both.add(new Said(wait, tone(next))));
      return both;
    }
    if (waits.size() < 2) {
      int named = narrow(canvas) ? 14 : 24;
      return waits.stream().map(wait -> new Said(wait(canvas, wait, named), tone(wait))).toList();
    }
    WaitShown watch = waits.get(0);
    WaitShown next = waits.get(1);
    String whole = watch.name() + " " + watch.left();
    String brief = "watch " + watch.left();
    List<List<String>> ways =
        List.of(
            List.of(whole, wait(canvas, next, 24)),
            List.of(whole, wait(canvas, next, 14)),
            List.of(brief, wait(canvas, next, 8)),
            List.of(brief, next.due() ? " due " : next.left()),
            List.of(brief));
    List<String> way =
        ways.stream()
            .filter(
                texts -> texts.stream().mapToInt(text -> Text.width(text) + 2).sum() - 2 <= most)
            .findFirst()
            .orElse(List.of(brief));
    List<Said> said = new ArrayList<>();
    for (int i = 0; i < way.size(); i++) {
      said.add(new Said(way.get(i), tone(waits.get(i))));
    }
    return said;
  }

  private static Tone tone(WaitShown wait) {
    return wait.due() && wait.loud() ? Tone.ALARM : Tone.ACCENT;
  }

  private static boolean narrow(Canvas canvas) {
    return canvas.width() < 72;
  }

  private static String wait(Canvas canvas, WaitShown wait, int room) {
    String mark = canvas.glyphs().cutMark();
    // Whose it is comes first: a pickle has the same name in every job.
    String whose = wait.job().isEmpty() ? "" : Text.cut(wait.job(), room / 2, mark) + ": ";
    String name = whose + Text.cut(wait.name(), room - Text.width(whose), mark);
    return wait.due() ? " " + name + " is due " : name + " " + wait.left();
  }

  /** Draws the foot, after the place: a long sentence takes rows of it, whole. */
  void foot(Canvas canvas) {
    int width = canvas.width() - 2;
    int row = canvas.height() - 2;
    Tone tone = page.told().isEmpty() ? Tone.PLAIN : page.trouble() ? Tone.WARNING : Tone.STRONG;
    List<String> lines =
        foot.shown(width, canvas.height(), page.turned(), keys.firstOf(page.turns()));
    for (int i = 0; i < lines.size(); i++) {
      canvas.text(1, row - lines.size() + 1 + i, width, lines.get(i), tone);
    }
    acts(canvas, width);
  }

  /**
   * As many as fit. What comes first is the common key and has its word, whatever else is left off;
   * those that are always told have their room kept, if need be for the key alone and for fewer of
   * the common key's words: the place says them all.
   */
  private void acts(Canvas canvas, int width) {
    int y = canvas.height() - 1;
    int x = 1;
    List<Page.Open> open = page.open();
    List<String> words = new ArrayList<>(open.stream().map(this::word).toList());
    // Help says fewer words before it stands by its key alone.
    int last = open.size() - 1;
    boolean help = last > 0 && open.get(last).act().filter(Act.HELP::equals).isPresent();
    if (help && kept(open, words) > width) {
      words.set(last, words.get(last).replaceFirst(" .* ", " "));
    }
    for (int i = open.size() - 1; i > 0 && kept(open, words) > width; i--) {
      if (open.get(i).always() && open.get(i).act().isPresent()) {
        words.set(i, keys.firstOf(open.get(i).act().get()));
      }
    }
    while (!words.isEmpty() && kept(open, words) > width && words.get(0).contains(" ")) {
      words.set(0, words.get(0).replaceFirst("[,:;]* [^ ]*$", ""));
    }
    int kept = kept(open, words) + GAP;
    for (int i = 0; i < open.size(); i++) {
      Page.Open each = open.get(i);
      String word = words.get(i);
      if (i == 0 || each.always()) {
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

  /** Columns that the common key and what is always told take. */
  private static int kept(List<Page.Open> open, List<String> words) {
    int kept = -GAP;
    for (int i = 0; i < open.size(); i++) {
      kept += i == 0 || open.get(i).always() ? Text.width(words.get(i)) + GAP : 0;
    }
    return kept;
  }

  private String word(Page.Open open) {
    return open.act().map(act -> keys.firstOf(act) + " " + open.says()).orElse(open.says());
  }
}
