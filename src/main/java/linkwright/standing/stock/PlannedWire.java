package linkwright.standing.stock;

import linkwright.plan.ChainWish;
import linkwright.plan.WishedRing;
import linkwright.quantity.Read;
import linkwright.routine.PieceKind;
import linkwright.wire.WireMass;
import linkwright.wire.WireSection;

/** The wire that a plan asks for, of links and of rings. */
public final class PlannedWire {
  /** Share by which a measured wire may be off and still be the plan's; our own choice. */
  private static final double NEAR = 0.02;

  private PlannedWire() {}

  /** Reads the thickness of a wire, with or without its section. */
  public static Read<Double> read(String typed) {
    return WireSection.read(typed).map(WireSection::thicknessMm);
  }

  /** Its thickness for that kind of piece, mm. */
  public static double mm(PieceKind piece, ChainWish wish) {
    return PieceKind.RING.equals(piece)
        ? wish.ring().map(WishedRing::wireMm).orElse(wish.wireMm())
        : wish.wireMm();
  }

  /** Whether wire of that thickness passes for it. */
  public static boolean is(double mm, PieceKind piece, ChainWish wish) {
    return Math.abs(mm - mm(piece, wish)) <= NEAR * mm(piece, wish);
  }

  /** How long so much of it is, mm. */
  public static double lengthMm(double grams, PieceKind piece, ChainWish wish) {
    return WireMass.lengthMm(
        PieceKind.RING.equals(piece) ? wish.ringAreaMm2() : wish.wireAreaMm2(),
        grams,
        wish.metal().densityGCm3().value());
  }
}
