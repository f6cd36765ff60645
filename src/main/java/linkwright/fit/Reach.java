package linkwright.fit;

/** How near in size the best blank and formers come to a wish. */
public enum Reach {
  /** Both sizes, the length to 3 %, the width to 8 %. */
  REACHED,
  /** Even the shortest blank that works gives too long a link. */
  TOO_LONG_AT_THE_SHORTEST,
  /** No former owned comes near the wished width. */
  WIDTH_OFF
}
