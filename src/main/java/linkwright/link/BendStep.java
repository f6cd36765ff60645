package linkwright.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;

/**
 * One bend on the way from the straight blank to the link, made at one end or alike at both.
 *
 * @param number its place in the order of bending, from 1
 * @param former the former's name
 * @param formerMm the former's inside diameter, mm
 * @param to the former to which the bend grows, with its name; empty where it keeps its radius
 * @param toMm that former's inside diameter, mm; {@code formerMm} where the bend keeps its radius
 * @param fromMm where it begins on the straight blank, mm from the end it belongs to
 * @param toEndMm where it ends, mm from that end
 * @param ends the ends of the blank at which it is made
 * @param side to which hand it turns, looking along the wire from its own end
 * @param mirrored whether the other end turns to the other hand, so that both turn up alike
 * @param turnDeg how far round the finished bend goes, degrees
 * @param overDeg how far round it is bent on the former, before it springs back, degrees
 * @param curl whether it is a tip rolled up
 * @param line the wire's centre line after this bend, mm, the middle of the blank at the origin and
 *     along x
 * @param bent the parts of it that were just bent
 */
public record BendStep(
    int number,
    String former,
    double formerMm,
    Optional<String> to,
    double toMm,
    double fromMm,
    double toEndMm,
    BlankEnds ends,
    Side side,
    boolean mirrored,
    double turnDeg,
    double overDeg,
    boolean curl,
    List<Point> line,
    List<List<Point>> bent) {
  /** At which ends of the blank a bend is made. */
  public enum BlankEnds {
    FIRST,
    OTHER,
    BOTH
  }

  /** Springing back by less than this is not felt, degrees. */
  private static final double FELT_DEG = 2;

  /** Nearer than this, mm, a bend begins at the end of the blank or where the last one ended. */
  static final double AT_MM = 0.05;

  public BendStep {
    line = List.copyOf(line);
    bent = bent.stream().map(List::copyOf).toList();
  }

  /** The step in words: where on the blank, over what, which way, how far round. */
  public String says(UnitStyle units) {
    List<String> words = new ArrayList<>();
    words.add(
        "%s%s, from %s to %s"
            .formatted(
                switch (ends) {
                  case FIRST -> "from the first end";
                  case OTHER -> "from the other end";
                  case BOTH -> "from each end";
                },
                curl ? " roll the tip" : "",
                fromMm < AT_MM ? units.length(0) : units.length(fromMm),
                units.length(toEndMm)));
    words.add(
        "over %s (%s)%s"
            .formatted(
                former,
                units.length(formerMm),
                to.map(name -> " growing to " + name + " (" + units.length(toMm) + ")")
                    .orElse("")));
    words.add(hand());
    words.add(round());
    return number + ": " + String.join(", ", words) + ".";
  }

  private String hand() {
    String word = side.name().toLowerCase(Locale.ROOT);
    return "to the "
        + word
        + (mirrored
            ? " (at the other end to the " + side.opposite().name().toLowerCase(Locale.ROOT) + ")"
            : "");
  }

  private String round() {
    String turn = Decimals.fixed(turnDeg, 0) + "° round";
    return overDeg - turnDeg < FELT_DEG
        ? turn
        : turn + " (" + Decimals.fixed(overDeg, 0) + "° on the former, for it springs back)";
  }

  /** What stands below its drawing. */
  public String caption(UnitStyle units) {
    return "%s: %s %s, %s %s°"
        .formatted(
            number,
            former,
            units.length(formerMm) + to.map(name -> " to " + name).orElse(""),
            side.name().toLowerCase(Locale.ROOT),
            Decimals.fixed(turnDeg, 0));
  }
}
