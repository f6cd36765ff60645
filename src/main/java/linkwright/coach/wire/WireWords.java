package linkwright.coach.wire;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.plan.LinksOfSize;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.WireStand;

/**
 * How the wire stands, in sentences: whether it will do, still to cut, on hand; of a closed job
 * that nothing more is cut.
 */
record WireWords(WireStand stand, Plan plan, UnitStyle units, boolean closed) {
  List<Part> stands() {
    List<Part> parts = new ArrayList<>();
    boolean apart = stand.rings().isPresent();
    boolean willDo = stand.missing().none();
    if (closed) {
      parts.add(new Prose(Prose.Kind.MAIN, "The job is closed: nothing more is cut for it."));
    } else {
      parts.add(willDo ? new Prose(Prose.Kind.MAIN, enough()) : Prose.stop(lacking()));
      parts.add(Prose.says(toCut()));
    }
    parts.add(Prose.says(sums(apart ? "Links: on hand " : "On hand ", stand.links())));
    stand.rings().ifPresent(bars -> parts.add(Prose.says(sums("Rings: on hand ", bars))));
    return parts;
  }

  private String sums(String which, List<WireStand.Bar> bars) {
    double lost = WireStand.lostMm(bars);
    return which
        + units.length(WireStand.leftMm(bars))
        + ", cut "
        + units.length(WireStand.cutMm(bars))
        + (lost > 0 ? ", lost " + units.length(lost) : "");
  }

  private String toCut() {
    if (stand.toCut().none()) {
      return "Nothing is left to cut.";
    }
    List<String> parts = new ArrayList<>();
    if (stand.toCut().links() > 0) {
      List<Integer> left = stand.blanks();
      for (int i = 0; i < left.size(); i++) {
        LinksOfSize size = plan.sizes().get(i);
        if (left.get(i) > 0) {
          parts.add(
              (plan.sized() ? left.get(i) + " " + size.name() : PieceKind.LINK.counted(left.get(i)))
                  + " of "
                  + units.length(size.eachMm(plan.wish())));
        }
      }
    }
    if (stand.toCut().rings() > 0) {
      parts.add(
          PieceKind.RING.counted(stand.toCut().rings()) + " of " + units.length(plan.ringTurnMm()));
    }
    return "Still to cut " + String.join(", ", parts) + " of wire each";
  }

  private String enough() {
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

  private String lacking() {
    String what = piecesOf(stand.missing(), " and ");
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

  /** {@code 3 links and 1 ring}; empty for none of either. */
  static String piecesOf(WireStand.LinksAndRings count, String between) {
    List<String> parts = new ArrayList<>();
    if (count.links() > 0) {
      parts.add(PieceKind.LINK.counted(count.links()));
    }
    if (count.rings() > 0) {
      parts.add(PieceKind.RING.counted(count.rings()));
    }
    return String.join(between, parts);
  }
}
