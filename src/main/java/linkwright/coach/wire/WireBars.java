package linkwright.coach.wire;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Bars;
import linkwright.plan.ChainWish;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.WireStand;

/** Every length of wire as a bar: cut, lost, to be cut, over. */
record WireBars(UnitStyle units) {
  Bars of(WireStand stand, Plan plan) {
    ChainWish wish = plan.wish();
    boolean shared = stand.rings().isEmpty() && plan.rings() > 0;
    String title = shared ? "Wire for links and rings, " : "Wire for links, ";
    List<Bars.Group> groups = new ArrayList<>();
    groups.add(
        group(
            title + wish.wireSaid(units) + ", " + wish.metal().name() + ", " + wish.temper().word(),
            stand.links()));
    stand
        .rings()
        .ifPresent(
            bars -> {
              String wire = wish.ring().map(ring -> wish.ringWireSaid(units)).orElse("");
              groups.add(group("Wire for rings, " + wire, bars));
            });
    return new Bars(groups);
  }

  private Bars.Group group(String title, List<WireStand.Bar> bars) {
    return new Bars.Group(title, bars.stream().map(this::bar).toList());
  }

  private Bars.Bar bar(WireStand.Bar bar) {
    List<Bars.Segment> stretches = new ArrayList<>();
    add(stretches, bar.cutMm(), Bars.Use.CUT, "cut");
    add(stretches, bar.lostMm(), Bars.Use.LOST, "lost");
    String links = PieceKind.LINK.counted(bar.next().links());
    add(stretches, bar.nextLinksMm(), Bars.Use.PLANNED, links);
    String rings = PieceKind.RING.counted(bar.next().rings());
    add(stretches, bar.nextRingsMm(), Bars.Use.PLANNED, rings);
    add(stretches, bar.overMm(), Bars.Use.LEFT, "");
    return new Bars.Bar(units.length(bar.mm()), stretches, words(bar));
  }

  private static void add(List<Bars.Segment> stretches, double mm, Bars.Use use, String label) {
    if (mm > 0) {
      stretches.add(new Bars.Segment(mm, use, label));
    }
  }

  private String words(WireStand.Bar bar) {
    if (bar.usedUp()) {
      return "used up";
    }
    String over = units.length(bar.overMm()) + " over";
    return bar.next().none() ? over : WireWords.piecesOf(bar.next(), ", ") + ", " + over;
  }
}
