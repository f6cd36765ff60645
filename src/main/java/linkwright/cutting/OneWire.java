package linkwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** One wire of an order: in millimetres as it was asked for, and as it is to be cut. */
final class OneWire {
  /** Of a micrometre: far more than a double errs on a kilometre. */
  private static final double SLACK = 1e-6;

  private final List<Double> lengthsMm;
  private final boolean ringsOwn;
  private final List<BlanksWanted> blanks;
  private final List<Integer> sizes; // places in the order of the blanks, longest first
  private final List<Integer> places; // places in the order of the lengths, longest first
  private final WireToCut wire;

  private OneWire(
      List<Double> lengthsMm, boolean ringsOwn, CutOrder order, Optional<RingsWanted> rings) {
    this.lengthsMm = lengthsMm;
    this.ringsOwn = ringsOwn;
    this.blanks = order.blanks();
    this.sizes =
        longestFirst(ringsOwn ? List.of() : blanks.stream().map(BlanksWanted::mm).toList());
    this.places = longestFirst(lengthsMm);
    long kerf = up(order.kerfMm());
    int ring = sizes.size();
    int[] wanted = new int[ring + 1];
    int[] perRepeat = new int[ring + 1];
    int[] spare = new int[ring + 1];
    for (int k = 0; k < ring; k++) {
      wanted[k] = blanks.get(sizes.get(k)).wanted();
      perRepeat[k] = blanks.get(sizes.get(k)).perRepeat();
      spare[k] = Math.min(wanted[k], blanks.get(sizes.get(k)).spare());
    }
    wanted[ring] = rings.map(RingsWanted::wanted).orElse(0);
    perRepeat[ring] = rings.map(RingsWanted::perRepeat).orElse(1);
    spare[ring] = Math.min(wanted[ring], rings.map(RingsWanted::spare).orElse(0));
    this.wire =
        new WireToCut(
            places.stream().mapToLong(i -> down(lengthsMm.get(i))).toArray(),
            sizes.stream().mapToLong(i -> up(blanks.get(i).mm()) + kerf).toArray(),
            kerf,
            rings.map(each -> up(each.turnMm())).orElse(1L),
            rings.map(each -> up(each.tailMm())).orElse(0L),
            wanted,
            perRepeat,
            spare);
  }

  /** The links' wire, from which the rings are cut too unless they have a wire of their own. */
  static List<OneWire> of(CutOrder order) {
    List<Double> lengths = order.stockMm();
    return order
        .ringStockMm()
        .map(
            own ->
                List.of(
                    new OneWire(lengths, false, order, Optional.empty()),
                    new OneWire(own, true, order, order.rings())))
        .orElseGet(() -> List.of(new OneWire(lengths, false, order, order.rings())));
  }

  private static List<Integer> longestFirst(List<Double> mm) {
    return IntStream.range(0, mm.size())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -mm.get(i)))
        .toList();
  }

  WireToCut toCut() {
    return wire;
  }

  /**
   * The cuts of each length, in the order's own order. What was to come from one length goes to the
   * shortest that holds it, the longest load choosing first; so long lengths stay whole.
   */
  List<LengthCut> cuts(CutCounts counts) {
    int[][] at = new int[lengthsMm.size()][];
    List<int[]> loads = new ArrayList<>(List.of(counts.of()));
    loads.sort(Comparator.comparingLong(pieces -> -takes(pieces)));
    List<Integer> free = new ArrayList<>(places);
    for (int[] pieces : loads) {
      int place = free.size() - 1;
      while (down(lengthsMm.get(free.get(place))) < takes(pieces)) {
        place--;
      }
      at[free.remove(place)] = pieces;
    }
    return IntStream.range(0, at.length).mapToObj(place -> cut(place, at[place])).toList();
  }

  /** The shortest length that yields the pieces: the last kerf need not be there. */
  private long takes(int[] pieces) {
    long blanks = wire.ofBlanks(pieces);
    return ofCoil(pieces) + (blanks > 0 ? blanks - wire.kerf() + pastTail(pieces) : 0);
  }

  private long ofCoil(int[] pieces) {
    int rings = pieces[wire.ring()];
    return rings > 0 ? wire.tail() + wire.turn() * rings : 0;
  }

  /** What the cut that frees the coil takes beyond its tail. */
  private long pastTail(int[] pieces) {
    return pieces[wire.ring()] > 0 ? wire.hold() - wire.tail() : 0;
  }

  private LengthCut cut(int place, int[] pieces) {
    Integer[] counts = new Integer[blanks.size()];
    Arrays.fill(counts, 0);
    long kerfs = 0;
    for (int k = 0; k < sizes.size(); k++) {
      counts[sizes.get(k)] = pieces[k];
      kerfs += wire.kerf() * pieces[k];
    }
    long length = down(lengthsMm.get(place));
    long bare = wire.ofBlanks(pieces) - kerfs;
    long remains = length - bare - ofCoil(pieces);
    long dust = Math.min(remains, kerfs + pastTail(pieces));
    return new LengthCut(
        place,
        ringsOwn,
        mm(length),
        List.of(counts),
        pieces[wire.ring()],
        mm(bare),
        mm(ofCoil(pieces)),
        mm(dust),
        mm(remains - dust));
  }

  /** Whole micrometres of a piece. */
  private static long up(double mm) {
    return (long) Math.ceil(mm * 1000 - SLACK);
  }

  /** Whole micrometres of a length. */
  private static long down(double mm) {
    return (long) Math.floor(mm * 1000 + SLACK);
  }

  private static double mm(long micrometres) {
    return micrometres / 1000.0;
  }
}
