package linkwright.job;

/** Whether a flame may be lit at a bench. */
public enum HotWorkState {
  /** A flame is lit, or was and nothing says that it is out. */
  LIT,
  /** No flame, but something that burns who touches it: a kiln, a hotplate. */
  HOT,
  /** Every flame out, gas shut. */
  SHUT,
  /** Nobody can tell. */
  NOT_KNOWN
}
