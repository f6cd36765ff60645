package linkwright.link;

/** What joins the links of a chain. */
public enum Joining {
  /** A ring between any two links and one at each end: n + 1. */
  RING_AT_EACH_END,
  /** A ring between any two links, the clasp straight on the end links: n − 1. */
  RINGS_BETWEEN,
  /** The links hook into each other; half of them are closed before they are joined. */
  EACH_OTHER;

  /** How many rings a number of links takes. */
  public long rings(long links) {
    return switch (this) {
      case RING_AT_EACH_END -> links + 1;
      case RINGS_BETWEEN -> Math.max(0, links - 1);
      case EACH_OTHER -> 0;
    };
  }
}
