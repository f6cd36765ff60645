package linkwright.fit;

/** What the maker says of a test piece: the direction that the next one should take. */
public enum Verdict {
  /** The next should be longer: this one is shorter than wished. */
  LONGER,
  /** The next should be shorter. */
  SHORTER,
  /** The next should be wider. */
  WIDER,
  /** The next should be narrower. */
  NARROWER,
  /** The next should be of lighter wire; says nothing of the hands. */
  LIGHTER_WIRE,
  /** The next should be of heavier wire; says nothing of the hands. */
  HEAVIER_WIRE,
  /** The next eye should be larger: another former; says nothing of the hands. */
  EYE_LARGER,
  /** The next eye should be smaller: another former; says nothing of the hands. */
  EYE_SMALLER,
  /** This is the one: near enough to the wish to be the sample link. */
  RIGHT
}
