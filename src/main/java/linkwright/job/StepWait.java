package linkwright.job;

import linkwright.routine.StepId;
import linkwright.routine.WaitId;

/**
 * Which wait of which step. A timer of one's own is none, whatever it is called.
 *
 * @param step which step
 * @param id which of its waits
 */
public record StepWait(StepId step, WaitId id) {}
