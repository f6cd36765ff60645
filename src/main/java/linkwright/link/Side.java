package linkwright.link;

/** The hand to which a bend turns, as one walks along the wire from the tip. */
public enum Side {
  LEFT,
  RIGHT;

  /** The hand across. */
  public Side opposite() {
    return this == LEFT ? RIGHT : LEFT;
  }

  /** +1 for left (anticlockwise), −1 for right. */
  int sign() {
    return this == LEFT ? 1 : -1;
  }
}
