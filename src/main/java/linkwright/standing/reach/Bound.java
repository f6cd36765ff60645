package linkwright.standing.reach;

import java.util.OptionalDouble;
import linkwright.plan.Plan;
import linkwright.plan.WireToOrder;
import linkwright.routine.PieceKind;
import linkwright.standing.Quote;
import linkwright.standing.Standing;

/** What a chain takes that there may be only so much of. */
public enum Bound {
  /** Lengths of the links' wire, cut as they lie there, mm. */
  WIRE("wire") {
    @Override
    OptionalDouble takenBy(Standing standing) {
      return standing
          .counted()
          .plan()
          .map(plan -> OptionalDouble.of(WireToOrder.of(plan).linksMm()))
          .orElse(OptionalDouble.empty());
    }
  },
  /** Metal in all to make it from, spares and kerf in it, solder and clasp apart, g. */
  METAL("metal") {
    @Override
    OptionalDouble takenBy(Standing standing) {
      return standing
          .counted()
          .plan()
          .map(plan -> OptionalDouble.of(WireToOrder.of(plan).massG()))
          .orElse(OptionalDouble.empty());
    }
  },
  /** The price of the first of its kind, in her money. */
  MONEY("money") {
    @Override
    OptionalDouble takenBy(Standing standing) {
      return standing
          .quote()
          .flatMap(Quote::price)
          .map(OptionalDouble::of)
          .orElse(OptionalDouble.empty());
    }
  },
  /** Hours of the first of its kind, test pieces in it, h. */
  HOURS("hours") {
    @Override
    OptionalDouble takenBy(Standing standing) {
      return standing
          .quote()
          .map(quote -> OptionalDouble.of(quote.hoursFirst()))
          .orElse(OptionalDouble.empty());
    }
  };

  private static final double ROUNDING = 1e-9;

  private final String word;

  Bound(String word) {
    this.word = word;
  }

  /** What it is called. */
  public String word() {
    return word;
  }

  /** What a chain takes of it; empty where that is not known: no price, no routine. */
  abstract OptionalDouble takenBy(Standing standing);

  /** Why it holds nothing back where what a chain takes of it is not known. */
  String unknown() {
    return this == MONEY
        ? "No prices are known, so money holds nothing back here: your bench and weigh in take"
            + " them."
        : "No routine says how long this takes, so hours hold nothing back here.";
  }

  /** Whether a chain can be had from that much; wire has to give every piece, length by length. */
  boolean allows(Standing standing, OnHand there) {
    if (this == WIRE) {
      return standing.counted().plan().filter(plan -> cuts(plan, standing)).isPresent();
    }
    OptionalDouble taken = takenBy(standing);
    return taken.isPresent() && taken.getAsDouble() <= there.amount(this) + ROUNDING;
  }

  /** Rings of another wire are not cut from it, so they hold nothing back. */
  private static boolean cuts(Plan plan, Standing standing) {
    Integer rings = standing.missing().get(PieceKind.RING);
    boolean linksDo = !standing.missing().containsKey(PieceKind.LINK);
    return linksDo && (rings == null || !plan.wish().ringsOfSameWire());
  }
}
