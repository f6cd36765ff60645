package linkwright.plan;

/**
 * What the chain's weakest ring or eye holds before it changes shape, butted and soldered.
 *
 * @param what the weakest element
 * @param buttedN the pull at which it opens unsoldered, N
 * @param solderedN the pull at which it is drawn long soldered, N
 */
public record Pull(String what, double buttedN, double solderedN) {}
