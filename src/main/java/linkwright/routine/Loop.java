package linkwright.routine;

/**
 * Steps that are gone through again until something is reached: draw, anneal, draw.
 *
 * @param backTo the step that comes next while it is not
 * @param until what is to be reached, in words
 */
public record Loop(StepId backTo, String until) {}
