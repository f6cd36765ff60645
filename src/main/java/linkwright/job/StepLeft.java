package linkwright.job;

/** How a step was left that was passed with nothing done at it. */
public enum StepLeft {
  /** With work left there, or nothing said of it. */
  OPEN,
  /** Its mark is not due: nothing is to be done there. */
  NOT_DUE
}
