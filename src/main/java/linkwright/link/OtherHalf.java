package linkwright.link;

/** How the other half of a link follows from the half that a pattern writes down. */
public enum OtherHalf {
  /** Half a turn about the middle of the blank: an S. */
  TURNED,
  /** Mirrored across the middle of the blank: a C. */
  MIRRORED,
  /** There is no other half: the pattern writes the whole link. */
  NONE
}
