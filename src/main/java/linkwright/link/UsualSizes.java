package linkwright.link;

import java.util.OptionalDouble;

/**
 * Sizes at which a pattern is usually made; a start, not a rule.
 *
 * @param wireMm the wire's diameter in millimetres
 * @param blankMm the blank's length in millimetres
 * @param ringInsideMm the inside diameter of the rings that join its links; empty where links hook
 *     into each other
 * @param ringWireMm those rings' wire; empty where it is the links' own
 */
public record UsualSizes(
    double wireMm, double blankMm, OptionalDouble ringInsideMm, OptionalDouble ringWireMm) {}
