package linkwright.job;

/** How a wait ended. */
public enum WaitEnd {
  /** It was not said, or the timer was no wait. */
  NOT_SAID,
  /** By its time. */
  TIME,
  /** By a look at the pieces. */
  LOOKED,
  /** Before either, for a reason that was given. */
  REASON
}
