package linkwright.job;

/**
 * Which wait of which step. A timer of one's own is none, whatever it is called.
 *
 * @param step the step's id
 * @param name the wait's name in it
 */
public record StepWait(String step, String name) {}
