package linkwright.job;

/** How a caution was met. */
public enum CautionMet {
  /** Shown whole and answered. */
  WHOLE,
  /** Worked under its one line. */
  LINE,
  /** Asked in place of a look, and known. */
  ASKED_RIGHT,
  /** Asked in place of a look, and not known: it was shown whole then. */
  ASKED_WRONG
}
