package linkwright.link;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import linkwright.quantity.Read;
import linkwright.wire.Springback;

/** The numbers of each bit of a walk: its radii, its turn and its length along the wire. */
final class Radii {
  private final double[] startMm;
  private final double[] endMm;
  private final double[] turn;
  private final double[] lengthMm;

  private Radii(int bits) {
    startMm = new double[bits];
    endMm = new double[bits];
    turn = new double[bits];
    lengthMm = new double[bits];
  }

  static Read<Radii> of(
      Pattern pattern,
      List<PatternPart> bits,
      double wireMm,
      Map<String, Double> formersMm,
      Bending hand) {
    for (String name : formersMm.keySet()) {
      if (!pattern.formersMm().containsKey(name)) {
        return Read.bad(unknown(pattern, name));
      }
    }
    Radii radii = new Radii(bits.size());
    for (int at = 0; at < bits.size(); at++) {
      PatternPart bit = bits.get(at);
      if (bit instanceof Bend bend) {
        String other = bend.to().orElse(bend.over());
        double over = formerMm(pattern, formersMm, bend.over());
        double to = formerMm(pattern, formersMm, other);
        if (!bends(over, wireMm)) {
          return Read.bad(wrongFormer(bend.over(), over, wireMm));
        }
        if (!bends(to, wireMm)) {
          return Read.bad(wrongFormer(other, to, wireMm));
        }
        double extra = bend.eye() && !pattern.closed() ? hand.extraTurnDeg() : 0;
        if (!(bend.turnDeg() + extra > 0)) {
          return Read.bad(
              "The eye of \""
                  + pattern.id()
                  + "\" would turn no further than straight: it needs"
                  + " a turn of more than 0 degrees.");
        }
        OptionalDouble start = sprung(over, wireMm, hand);
        OptionalDouble end = sprung(to, wireMm, hand);
        if (start.isEmpty() || end.isEmpty()) {
          return Read.bad(straight(start.isEmpty() ? bend.over() : other, Math.max(over, to)));
        }
        radii.startMm[at] = start.getAsDouble();
        radii.endMm[at] = end.getAsDouble();
        double angle = Math.toRadians(bend.turnDeg() + extra);
        radii.turn[at] = bend.side().sign() * angle;
        radii.lengthMm[at] = angle * (radii.startMm[at] + radii.endMm[at]) / 2;
      } else if (bit instanceof Run run) {
        radii.lengthMm[at] = run.mm().orElse(0);
      }
    }
    return Read.good(radii);
  }

  /** The radius of the centre line once it has sprung back; empty if it goes straight again. */
  private static OptionalDouble sprung(double formerMm, double wireMm, Bending hand) {
    double onFormer = (formerMm + wireMm) / 2 + hand.clearanceShare() * wireMm;
    // Wire cannot be drawn into a former beyond its middle, whatever a wild guess says.
    double radiusMm = Math.max(onFormer, wireMm / 2);
    OptionalDouble growth = Springback.growthAt(radiusMm, wireMm, hand.stressShare());
    return growth.isEmpty() ? growth : OptionalDouble.of(growth.getAsDouble() * radiusMm);
  }

  private static String straight(String name, double formerMm) {
    return "Over the former \""
        + name
        + "\" of "
        + Sizes.given(formerMm)
        + " the wire only bends like a spring and goes straight again: take a smaller former, or"
        + " anneal the wire.";
  }

  private static double formerMm(Pattern pattern, Map<String, Double> formersMm, String name) {
    Double own = formersMm.get(name);
    return own == null ? pattern.formersMm().get(name) : own;
  }

  private static boolean bends(double formerMm, double wireMm) {
    return formerMm >= wireMm && formerMm <= 1e6;
  }

  private static String unknown(Pattern pattern, String name) {
    return "\""
        + pattern.id()
        + "\" has no former \""
        + name
        + "\": it has "
        + String.join(", ", new TreeSet<>(pattern.formersMm().keySet()))
        + ".";
  }

  private static String wrongFormer(String name, double formerMm, double wireMm) {
    Optional<String> fault = SizeFault.faultUnlessPositive("The former \"" + name + "\"", formerMm);
    if (fault.isPresent()) {
      return fault.get();
    }
    return "The wire of "
        + Sizes.given(wireMm)
        + " is thicker than the former \""
        + name
        + "\" of "
        + Sizes.given(formerMm)
        + ": take a former of at least "
        + Sizes.given(wireMm)
        + ", or thinner wire.";
  }

  /** The length along the wire of a bit, in millimetres; 0 for a run that the blank decides. */
  double lengthMm(int bit) {
    return lengthMm[bit];
  }

  Stretch stretch(int bit, double fromMm, Point at, double heading, double lengthMm) {
    return new Stretch(
        fromMm, at.xMm(), at.yMm(), heading, lengthMm, turn[bit], startMm[bit], endMm[bit], bit);
  }
}
