package linkwright.job;

/** When pieces that failed are to be redone. */
public enum Again {
  /** It was not said. */
  NOT_SAID,
  /** With the next heat. */
  NEXT_HEAT,
  /** At once. */
  NOW,
  /** Not at all: spares cover them. */
  SPARES
}
