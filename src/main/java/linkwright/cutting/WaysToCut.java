package linkwright.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The ways to cut one length that are worth a thought: beside each choice of blanks as long a coil
 * as goes in, and without a coil as many of the shortest blanks as go in.
 */
final class WaysToCut {
  private final WireToCut wire;
  private final int length;
  private final int[] least;
  private final int[] most;
  private final int limit;
  private final int[] pieces;
  private final List<int[]> found = new ArrayList<>();
  private int longest;

  private WaysToCut(WireToCut wire, int length, int[] least, int[] most, int limit) {
    this.wire = wire;
    this.length = length;
    this.least = least;
    this.most = most;
    this.limit = limit;
    this.pieces = new int[wire.kinds()];
  }

  /**
   * Pieces of each kind, way by way.
   *
   * @param least the least blanks of each size
   * @param most the most pieces of each kind
   * @param limit no more ways are built once there are so many and one or two over
   */
  static List<int[]> of(WireToCut wire, int length, int[] least, int[] most, int limit) {
    WaysToCut ways = new WaysToCut(wire, length, least, most, limit);
    ways.choose(0, 0, true);
    return ways.found;
  }

  private void choose(int kind, long ofBlanks, boolean noMoreFit) {
    if (kind == wire.ring()) {
      add(ofBlanks, noMoreFit);
      return;
    }
    long fit = Math.min(most[kind], (wire.room(length) - ofBlanks) / wire.blank()[kind]);
    for (long n = fit; n >= least[kind] && found.size() <= limit; n--) {
      pieces[kind] = (int) n;
      choose(kind + 1, ofBlanks + n * wire.blank()[kind], n == fit);
    }
  }

  private void add(long ofBlanks, boolean noMoreFit) {
    if (noMoreFit) {
      found.add(pieces.clone());
      longest = 0;
    }
    int rings = (int) Math.min(most[wire.ring()], wire.ringsBeside(ofBlanks, length));
    if (rings > longest) {
      longest = rings; // a blank fewer without a ring more gains nothing
      int[] way = pieces.clone();
      way[wire.ring()] = rings;
      found.add(way);
    }
  }
}
