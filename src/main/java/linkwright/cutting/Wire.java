package linkwright.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The lengths of one wire and what is cut from it, between millimetres and the search's view. */
final class Wire {
  private final List<Double> lengthsMm;
  private final boolean ringsOwn;
  private final CutOrder order;
  private final List<Integer> sizes; // the order's sizes of blank, longest first
  private final List<Integer> places; // of the usable lengths, shortest first
  private final Bench bench;

  /**
   * @param blanks whether blanks are cut from this wire
   * @param rings whether rings are
   */
  Wire(CutOrder order, boolean blanks, boolean rings) {
    this.order = order;
    this.ringsOwn = !blanks;
    this.lengthsMm = blanks ? order.stockMm() : order.ringStockMm().orElseThrow();
    this.sizes =
        IntStream.range(0, order.blanks().size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -order.blanks().get(i).mm()))
            .toList();
    long kerf = Micrometres.up(order.kerfMm());
    long[] piece =
        sizes.stream().mapToLong(i -> Micrometres.up(order.blanks().get(i).mm()) + kerf).toArray();
    long turn = order.ring().map(ring -> Micrometres.up(ring.turnMm())).orElse(1L);
    long tail = order.ring().map(ring -> Micrometres.up(ring.tailMm())).orElse(0L);
    long shortest = rings && order.ring().isPresent() ? turn + tail : Long.MAX_VALUE;
    for (int k = 0; blanks && k < piece.length; k++) {
      if (order.blanks().get(sizes.get(k)).wanted() > 0) {
        shortest = Math.min(shortest, piece[k] - kerf);
      }
    }
    long least = shortest;
    this.places =
        IntStream.range(0, lengthsMm.size())
            .boxed()
            .filter(i -> Micrometres.down(lengthsMm.get(i)) >= least)
            .sorted(Comparator.comparingDouble(lengthsMm::get))
            .toList();
    long[] stock = places.stream().mapToLong(i -> Micrometres.down(lengthsMm.get(i))).toArray();
    this.bench = new Bench(stock, piece, kerf, turn, tail);
  }

  Bench bench() {
    return bench;
  }

  /** Blanks wanted of each size, longest first. */
  int[] wanted() {
    return sizes.stream().mapToInt(i -> order.blanks().get(i).wanted()).toArray();
  }

  /** The counts, longest first, in the order's own order. */
  List<Integer> inOrder(int[] pieces) {
    Integer[] counts = new Integer[sizes.size()];
    for (int k = 0; k < counts.length; k++) {
      counts[sizes.get(k)] = pieces[k];
    }
    return List.of(counts);
  }

  /**
   * The cuts of each length, in the order's own order. What was to come from one length goes to the
   * shortest that holds it, the longest load choosing first; so long lengths stay whole.
   */
  List<Cut> cuts(int[][] cut) {
    Integer[] loads =
        IntStream.range(0, cut.length)
            .boxed()
            .sorted(Comparator.comparingLong(j -> -needed(cut[j])))
            .toArray(Integer[]::new);
    int[][] at = new int[lengthsMm.size()][bench.kinds()];
    boolean[] given = new boolean[bench.size()];
    for (int load : loads) {
      int length = 0;
      while (given[length] || bench.stock()[length] < needed(cut[load])) {
        length++;
      }
      given[length] = true;
      at[places.get(length)] = cut[load];
    }
    List<Cut> cuts = new ArrayList<>();
    for (int place = 0; place < at.length; place++) {
      cuts.add(told(place, at[place]));
    }
    return cuts;
  }

  private long needed(int[] pieces) {
    long bare = 0;
    long blanks = 0;
    for (int k = 0; k < bench.piece().length; k++) {
      bare += bench.piece()[k] * pieces[k];
      blanks += pieces[k];
    }
    return bare - (blanks > 0 ? bench.kerf() : 0) + coil(pieces);
  }

  private long coil(int[] pieces) {
    int rings = pieces[bench.ring()];
    return rings > 0 ? bench.tail() + bench.turn() * rings : 0;
  }

  private Cut told(int place, int[] pieces) {
    long length = Micrometres.down(lengthsMm.get(place));
    long bare = 0;
    long blanks = 0;
    for (int k = 0; k < bench.piece().length; k++) {
      bare += (bench.piece()[k] - bench.kerf()) * pieces[k];
      blanks += pieces[k];
    }
    long remains = length - bare - coil(pieces);
    long kerfs = Math.min(remains, blanks * bench.kerf());
    return new Cut(
        place,
        ringsOwn,
        Micrometres.mm(length),
        inOrder(pieces),
        pieces[bench.ring()],
        Micrometres.mm(bare),
        Micrometres.mm(coil(pieces)),
        Micrometres.mm(kerfs),
        Micrometres.mm(remains - kerfs));
  }
}
