package linkwright.cutting;

import java.util.List;

/**
 * What is cut from one length of stock. Its pieces, dust and rest add up to the length: {@code
 * piecesMm + coilMm + kerfsMm + restMm = stockMm}.
 *
 * @param place which length, counted from 0 in the order's own list
 * @param fromRingStock whether it is counted in the list of the rings' own wire
 * @param stockMm its length, rounded down to a micrometre
 * @param blanks how many blanks of each size, in the order's order
 * @param rings turns of the coil, 0 for none
 * @param piecesMm length of all blanks together
 * @param coilMm length of the coil with its tail
 * @param kerfsMm wire lost to the saw; the last cut takes only what remains
 * @param restMm what is left in one piece
 */
public record LengthCut(
    int place,
    boolean fromRingStock,
    double stockMm,
    List<Integer> blanks,
    int rings,
    double piecesMm,
    double coilMm,
    double kerfsMm,
    double restMm) {

  /** Copies the list. */
  public LengthCut {
    blanks = List.copyOf(blanks);
  }

  /** Whether anything is cut from it. */
  public boolean opened() {
    return piecesMm + coilMm > 0;
  }
}
