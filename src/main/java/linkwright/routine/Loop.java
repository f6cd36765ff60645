package linkwright.routine;

/**
 * Steps that are gone through again until something is reached: draw, anneal, draw.
 *
 * @param backTo id of the step that comes next while it is not
 * @param until what is to be reached, in words
 */
public record Loop(String backTo, String until) {}
