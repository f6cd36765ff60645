package linkwright.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import linkwright.coach.Form;
import linkwright.coach.Model;
import linkwright.coach.OpenJob;
import linkwright.coach.Screen;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.standing.WireStand;
import linkwright.text.Text;

/** The wire: every length as a bar to scale, then what it comes to in words. */
final class WireView {
  private static final int LENGTH = 10;
  private static final int LEAST_FORM = 4;

  private WireView() {}

  static void draw(Canvas body, Model model, Screen.Wire screen) {
    if (screen.form().isPresent()) {
      form(body, screen, screen.form().get());
      return;
    }
    Plan plan = model.job().flatMap(job -> job.standing().counted().plan()).orElse(null);
    if (screen.stand().isEmpty() || plan == null) {
      boolean chain = model.job().map(OpenJob::makesChain).orElse(true);
      String why =
          chain
              ? "The wire is counted once the plan is set."
              : "This routine makes no chain: its wire is not counted. o weighs metal out; the"
                  + " reckoner (esc, then r) works out how to draw wire down.";
      body.wrapped(0, 1, body.width(), 3, why, Tone.PLAIN);
      return;
    }
    WireStand stand = screen.stand().get();
    List<Line> words = words(stand, plan, screen, model);
    int high = rows(words, body.width());
    int room = Math.max(4, body.height() - high - 1);
    int row = bars(body.area(0, 0, body.width(), room), stand, plan, model);
    for (Line line : words) {
      row += body.wrapped(0, row, body.width(), body.height() - row, line.text, line.tone);
    }
    List<Line> passes = lines(screen.drawn());
    if (passes.size() > 1 && rows(passes, body.width()) <= body.height() - row + 1) {
      Canvas below = body.area(0, row, body.width(), body.height() - row);
      lines(below, passes.subList(1, passes.size()));
    }
  }

  /** The form; in a low window it gives way to what it comes to, down to the field at hand. */
  private static void form(Canvas body, Screen.Wire screen, Form form) {
    boolean drawing = form.purpose() == Form.Purpose.DRAW_DOWN;
    List<Line> lines = drawing ? lines(screen.drawn()) : List.of();
    int wanted = rows(lines, body.width());
    int high = wanted == 0 ? body.height() : Math.max(LEAST_FORM, body.height() - wanted - 1);
    int row = FormView.draw(body.area(0, 0, body.width(), high), form) + 1;
    lines(body.area(0, row, body.width(), body.height() - row), lines);
  }

  private static List<Line> lines(List<String> drawn) {
    List<Line> lines = new ArrayList<>();
    for (String text : drawn) {
      lines.add(new Line(text, lines.isEmpty() ? Tone.STRONG : Tone.PLAIN));
    }
    return lines;
  }

  private static int rows(List<Line> lines, int width) {
    return lines.stream().mapToInt(line -> line.rows(width)).sum();
  }

  /** The lines as far as there is room, with a mark where there is not. */
  private static void lines(Canvas area, List<Line> lines) {
    int row = 0;
    for (int i = 0; i < lines.size() && row < area.height(); i++) {
      Line line = lines.get(i);
      boolean last = row + line.rows(area.width()) >= area.height() && i < lines.size() - 1;
      if (last) {
        String more = area.glyphs().cutMark() + " " + (lines.size() - i) + " more lines";
        area.text(0, row, area.width(), more, Tone.FAINT);
        return;
      }
      row += area.wrapped(0, row, area.width(), area.height() - row, line.text, line.tone);
    }
  }

  private record Line(String text, Tone tone) {
    int rows(int width) {
      return Text.wrap(text, Math.max(2, width)).size();
    }
  }

  private static List<Line> words(WireStand stand, Plan plan, Screen.Wire screen, Model model) {
    UnitStyle units = model.settings().units();
    List<Line> lines = new ArrayList<>();
    boolean ringsApart = stand.rings().isPresent();
    lines.add(new Line(sums(ringsApart ? "links: " : "", stand.links(), units), Tone.PLAIN));
    stand.rings().ifPresent(bars -> lines.add(new Line(sums("rings: ", bars, units), Tone.PLAIN)));
    lines.add(new Line(toCut(stand, plan, units), Tone.PLAIN));
    lines.add(
        stand.missing().none()
            ? new Line(enough(stand, units), Tone.STRONG)
            : new Line("! " + lacking(stand, units), Tone.WARNING));
    if (!stand.missing().none() && screen.drawn().isEmpty()) {
      lines.add(
          new Line(
              "Enter wire that came, or see what thicker wire drawn down would give.", Tone.FAINT));
    }
    if (!screen.drawn().isEmpty()) {
      lines.add(new Line("Drawn down, " + screen.drawn().get(0), Tone.PLAIN));
    }
    double out = model.job().orElseThrow().state().accounts().weighedOutG();
    if (out > 0) {
      lines.add(new Line("weighed out so far " + units.mass(out), Tone.FAINT));
    }
    return lines;
  }

  private static String sums(String which, List<WireStand.Bar> bars, UnitStyle units) {
    double lost = WireStand.lostMm(bars);
    return which
        + "on hand "
        + units.length(WireStand.leftMm(bars))
        + ", cut "
        + units.length(WireStand.cutMm(bars))
        + (lost > 0 ? ", lost " + units.length(lost) : "");
  }

  private static String toCut(WireStand stand, Plan plan, UnitStyle units) {
    if (stand.toCut().none()) {
      return "Nothing is left to cut.";
    }
    List<String> parts = new ArrayList<>();
    if (stand.toCut().links() > 0) {
      parts.add(pieces(stand.toCut().links(), "link") + " of " + units.length(plan.linkEachMm()));
    }
    if (stand.toCut().rings() > 0) {
      parts.add(pieces(stand.toCut().rings(), "ring") + " of " + units.length(plan.ringTurnMm()));
    }
    return "still to cut " + String.join(", ", parts) + " of wire each";
  }

  private static String enough(WireStand stand, UnitStyle units) {
    double over = WireStand.overMm(stand.links());
    String links = "The wire will do; " + units.length(over) + " will be over";
    return stand
        .rings()
        .map(
            bars ->
                links
                    + " of the links' wire, "
                    + units.length(WireStand.overMm(bars))
                    + " of the rings'.")
        .orElse(links + ".");
  }

  private static String lacking(WireStand stand, UnitStyle units) {
    List<String> parts = new ArrayList<>();
    if (stand.missing().links() > 0) {
      parts.add(pieces(stand.missing().links(), "link"));
    }
    if (stand.missing().rings() > 0) {
      parts.add(pieces(stand.missing().rings(), "ring"));
    }
    String what = String.join(" and ", parts);
    if (stand.rings().isEmpty()) {
      return "Short: " + units.length(stand.shortMm()) + " more wire is needed, for " + what + ".";
    }
    List<String> wires = new ArrayList<>();
    if (stand.shortLinksMm() > 0) {
      wires.add(units.length(stand.shortLinksMm()) + " of the links' wire");
    }
    if (stand.shortRingsMm() > 0) {
      wires.add(units.length(stand.shortRingsMm()) + " of the rings' wire");
    }
    return "Short: " + String.join(" and ", wires) + " more needed, for " + what + ".";
  }

  private static String pieces(int count, String piece) {
    return count + " " + piece + (count == 1 ? "" : "s");
  }

  private static int bars(Canvas area, WireStand stand, Plan plan, Model model) {
    UnitStyle units = model.settings().units();
    ChainWish wish = plan.wish();
    double longest =
        Math.max(longest(stand.links()), stand.rings().map(WireView::longest).orElse(0.0));
    boolean shared = stand.rings().isEmpty() && plan.rings() > 0;
    String of = ", " + wish.metal().name() + ", " + temper(wish);
    String title =
        (shared ? "Wire for links and rings, " : "Wire for links, ") + units.wire(wish.wireMm());
    int rooms = area.height() - 1;
    int ringRows = stand.rings().map(bars -> Math.min(bars.size() + 1, rooms / 2)).orElse(0);
    int row =
        side(
            area.area(0, 0, area.width(), rooms - ringRows),
            title + of,
            stand.links(),
            longest,
            units);
    if (stand.rings().isPresent()) {
      String ringTitle =
          "Wire for rings, " + wish.ring().map(ring -> units.wire(ring.wireMm())).orElse("");
      Canvas below = area.area(0, row, area.width(), rooms - row);
      row += side(below, ringTitle, stand.rings().get(), longest, units);
    }
    legend(area, row);
    return row + 1;
  }

  private static String temper(ChainWish wish) {
    return wish.temper().name().toLowerCase(Locale.ROOT);
  }

  private static double longest(List<WireStand.Bar> bars) {
    return bars.stream().mapToDouble(WireStand.Bar::mm).max().orElse(0);
  }

  private static int side(
      Canvas area, String title, List<WireStand.Bar> bars, double longest, UnitStyle units) {
    area.text(0, 0, area.width(), title, Tone.ACCENT);
    if (bars.isEmpty()) {
      area.text(LENGTH, 1, area.width() - LENGTH, "none is entered yet", Tone.FAINT);
      return Math.min(2, area.height());
    }
    int rows = area.height() - 1;
    int shown = bars.size() <= rows ? bars.size() : Math.max(0, rows - 1);
    List<WireStand.Bar> chosen = worthSeeing(bars, shown);
    for (int i = 0; i < shown; i++) {
      bar(area, i + 1, chosen.get(i), longest, units);
    }
    if (shown < bars.size()) {
      String more = (bars.size() - shown) + " more lengths, counted below";
      area.text(LENGTH, shown + 1, area.width() - LENGTH, more, Tone.FAINT);
      shown++;
    }
    return shown + 1;
  }

  /** Where not all have room: those from which something is to be cut or was, then the longest. */
  private static List<WireStand.Bar> worthSeeing(List<WireStand.Bar> bars, int count) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < bars.size(); i++) {
      order.add(i);
    }
    order.sort(
        Comparator.comparing((Integer i) -> bars.get(i).next().none())
            .thenComparing(i -> bars.get(i).cutMm() + bars.get(i).lostMm() == 0)
            .thenComparing(Comparator.reverseOrder()));
    return order.stream().limit(count).sorted().map(bars::get).toList();
  }

  private static void bar(Canvas area, int y, WireStand.Bar bar, double longest, UnitStyle units) {
    int words = Math.min(32, area.width() * 2 / 5);
    String told = inWords(bar, units);
    String kept = Text.width(told) <= words ? told : told.replaceAll(", [^,]*$", "");
    area.right(LENGTH - 1, y, LENGTH - 1, units.length(bar.mm()), Tone.PLAIN);
    List<Bars.Piece> pieces = new ArrayList<>();
    add(pieces, bar.cutMm(), "cut", Bars.Kind.USED);
    add(pieces, bar.lostMm(), "lost", Bars.Kind.LOST);
    add(pieces, bar.nextLinksMm(), pieces(bar.next().links(), "link"), Bars.Kind.OTHER);
    add(pieces, bar.nextRingsMm(), pieces(bar.next().rings(), "ring"), Bars.Kind.OTHER);
    add(pieces, bar.overMm(), "", Bars.Kind.LEFT);
    Canvas drawing = area.area(LENGTH, y, area.width() - LENGTH - words - 1, 1);
    if (longest > 0 && drawing.width() > 0) {
      Bars.draw(drawing, 0, longest, pieces);
    }
    area.text(area.width() - words, y, words, kept, Tone.FAINT);
  }

  private static void add(List<Bars.Piece> pieces, double mm, String label, Bars.Kind kind) {
    if (mm > 0) {
      pieces.add(new Bars.Piece(mm, label, kind));
    }
  }

  private static String inWords(WireStand.Bar bar, UnitStyle units) {
    if (bar.leftMm() < 0.05) {
      return "used up";
    }
    List<String> parts = new ArrayList<>();
    if (bar.next().links() > 0) {
      parts.add(pieces(bar.next().links(), "link"));
    }
    if (bar.next().rings() > 0) {
      parts.add(pieces(bar.next().rings(), "ring"));
    }
    String over = units.length(bar.overMm()) + " over";
    return parts.isEmpty() ? over : String.join(", ", parts) + ", " + over;
  }

  private static void legend(Canvas area, int y) {
    int x = LENGTH;
    x = sign(area, x, y, Bars.Kind.USED, "cut");
    x = sign(area, x, y, Bars.Kind.OTHER, "to be cut");
    x = sign(area, x, y, Bars.Kind.LEFT, "over");
    sign(area, x, y, Bars.Kind.LOST, "lost");
  }

  private static int sign(Canvas area, int x, int y, Bars.Kind kind, String says) {
    return area.text(x, y, kind.glyph(area.glyphs()) + " " + says, Tone.FAINT) + 3;
  }
}
