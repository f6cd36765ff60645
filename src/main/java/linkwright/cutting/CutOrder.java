package linkwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is asked of the cutting: the lengths on hand, the blanks and rings wanted, the kerf.
 *
 * @param stockMm lengths of the links' wire on hand, in any order; may be empty
 * @param ringStockMm lengths of the rings' wire when that is another wire; empty when the rings are
 *     cut from {@code stockMm} too
 * @param blanks blanks wanted, one entry a size; may be empty where only rings are wanted
 * @param rings rings wanted, if any
 * @param kerfMm wire that one cut turns to dust, 0 or more
 */
public record CutOrder(
    List<Double> stockMm,
    Optional<List<Double>> ringStockMm,
    List<BlanksWanted> blanks,
    Optional<RingsWanted> rings,
    double kerfMm) {

  /** The most blanks and rings together for which a cutting is planned. */
  public static final int MOST_PIECES = 100_000;

  private static final double LONGEST_MM = 1e6;
  private static final double SHORTEST_MM = 0.1;
  private static final int MOST_LENGTHS = 10_000;
  private static final int MOST_SIZES = 6;

  /** Copies the lists, so that an order never changes. */
  public CutOrder {
    stockMm = List.copyOf(stockMm);
    ringStockMm = ringStockMm.map(List::copyOf);
    blanks = List.copyOf(blanks);
  }

  /** Blanks, and rings of the same wire or none. */
  public static CutOrder of(
      List<Double> stockMm, List<BlanksWanted> blanks, Optional<RingsWanted> rings, double kerfMm) {
    return new CutOrder(stockMm, Optional.empty(), blanks, rings, kerfMm);
  }

  /**
   * What is wrong with the order, a sentence each, all at once; empty when it can be planned. A
   * blank longer than every length is no fault: it comes out as short.
   */
  public List<String> problems() {
    List<String> wrong = new ArrayList<>();
    lengths(wrong, "stock length", stockMm);
    ringStockMm.ifPresent(list -> lengths(wrong, "length of ring wire", list));
    int onHand = stockMm.size() + ringStockMm.map(List::size).orElse(0);
    if (onHand > MOST_LENGTHS) {
      wrong.add(onHand + " lengths are on hand: at most " + MOST_LENGTHS + " at once.");
    }
    long pieces = 0;
    for (BlanksWanted blank : blanks) {
      positive(wrong, "blank", blank.mm());
      count(wrong, "number of blanks wanted", blank.wanted(), 0);
      count(wrong, "number of blanks to a repeat", blank.perRepeat(), 1);
      count(wrong, "number of spare blanks", blank.spare(), 0);
      pieces += Math.max(0, blank.wanted());
    }
    if (rings.isPresent()) {
      RingsWanted ring = rings.get();
      positive(wrong, "ring's turn", ring.turnMm());
      zeroOrMore(wrong, "coil's tail", ring.tailMm());
      count(wrong, "number of rings wanted", ring.wanted(), 0);
      count(wrong, "number of rings to a repeat", ring.perRepeat(), 1);
      count(wrong, "number of spare rings", ring.spare(), 0);
      pieces += Math.max(0, ring.wanted());
    }
    if (blanks.size() > MOST_SIZES) {
      wrong.add(blanks.size() + " sizes of blank are wanted: at most " + MOST_SIZES + " at once.");
    }
    zeroOrMore(wrong, "kerf", kerfMm);
    if (pieces > MOST_PIECES) {
      wrong.add(
          pieces + " pieces are wanted: more than " + MOST_PIECES + " cannot be planned at once.");
    }
    return List.copyOf(wrong);
  }

  private static void lengths(List<String> wrong, String what, List<Double> lengthsMm) {
    for (int i = 0; i < lengthsMm.size(); i++) {
      zeroOrMore(wrong, what + " no. " + (i + 1), lengthsMm.get(i));
    }
  }

  private static void positive(List<String> wrong, String what, double mm) {
    if (mm == 0) {
      wrong.add("The " + what + " is 0 mm: it must be longer than nothing.");
    } else if (mm > 0 && mm < SHORTEST_MM) {
      wrong.add("The " + what + " is shorter than 0.1 mm: check its unit.");
    } else {
      zeroOrMore(wrong, what, mm);
    }
  }

  private static void zeroOrMore(List<String> wrong, String what, double mm) {
    if (Double.isNaN(mm)) {
      wrong.add("The " + what + " is not a number.");
    } else if (mm < 0) {
      wrong.add("The " + what + " is " + mm + " mm: a length cannot be less than nothing.");
    } else if (mm > LONGEST_MM) {
      wrong.add("The " + what + " is longer than 1 km: check its unit.");
    }
  }

  private static void count(List<String> wrong, String what, int number, int least) {
    if (number < least) {
      wrong.add("The " + what + " is " + number + ": it must be " + least + " or more.");
    }
  }
}
