package linkwright.cutting;

import java.util.Arrays;

/**
 * What each further bit of chain takes: level by level, every level holding all of the one below.
 * So the most chain is the highest level that can be cut.
 *
 * <p>Where each blank is a link, level n is the n shortest of the blanks wanted: whatever n blanks
 * can be cut, the n shortest can too. Levels past the last link are further rings, one by one.
 */
sealed class Ladder {
  private final int[] wanted;
  private final int ringsWanted;
  private final int perLink;
  private final int ends;
  private final int repeats;
  private final int links;

  /**
   * @param wanted blanks wanted of each size, longest first
   * @param repeats 0 where each blank is a link
   */
  Ladder(int[] wanted, int ringsWanted, int perLink, int ends, int repeats) {
    this.wanted = wanted.clone();
    this.ringsWanted = ringsWanted;
    this.perLink = perLink;
    this.ends = ends;
    this.repeats = repeats;
    this.links = repeats > 0 ? repeats : Arrays.stream(wanted).sum();
  }

  /** Levels that are chain; those above are rings alone. */
  int links() {
    return links;
  }

  /** The highest level: everything that is wanted. */
  int top() {
    return links + ringsWanted - ringsFor(links);
  }

  /** Pieces of each kind that the level takes, rings last. */
  int[] at(int level) {
    int chain = Math.min(level, links);
    int[] pieces = new int[wanted.length + 1];
    int left = chain;
    for (int k = wanted.length - 1; k >= 0; k--) {
      pieces[k] = repeats > 0 ? share(wanted[k], chain) : Math.min(left, wanted[k]);
      left -= pieces[k];
    }
    pieces[wanted.length] = ringsFor(chain) + (level - chain);
    return pieces;
  }

  /** A ladder of one step, from nothing to the demand. */
  static final class Fixed extends Ladder {
    private final int[] demand;

    Fixed(int[] demand) {
      super(new int[demand.length - 1], 1, 0, 0, 0);
      this.demand = demand.clone();
    }

    @Override
    int[] at(int level) {
      return level == 0 ? new int[demand.length] : demand.clone();
    }
  }

  /** The blanks of a ladder without its rings, or its rings without the blanks. */
  static final class Only extends Ladder {
    private final Ladder whole;
    private final boolean blanks;

    Only(Ladder whole, boolean blanks) {
      super(whole.wanted, whole.ringsWanted, whole.perLink, whole.ends, whole.repeats);
      this.whole = whole;
      this.blanks = blanks;
    }

    @Override
    int top() {
      return blanks ? whole.links() : whole.top();
    }

    @Override
    int[] at(int level) {
      int[] pieces = whole.at(level);
      for (int k = 0; k < pieces.length; k++) {
        if (blanks == (k == pieces.length - 1)) {
          pieces[k] = 0;
        }
      }
      return pieces;
    }
  }

  private int ringsFor(int chain) {
    if (chain == 0) {
      return 0;
    }
    if (repeats > 0) {
      int atEnds = Math.min(ends, ringsWanted);
      return atEnds + share(ringsWanted - atEnds, chain);
    }
    return (int) Math.min(ringsWanted, (long) chain * perLink + ends);
  }

  private int share(int all, int chain) {
    return (int) (((long) all * chain + repeats - 1) / repeats);
  }
}
