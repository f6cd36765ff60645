package linkwright.link;

/**
 * A place where the wire would cross or press into itself: the deepest of one connected region.
 *
 * @param atMm where along the wire, in millimetres from the first tip
 * @param andMm where along the wire it meets itself, beyond {@code atMm}
 * @param gapMm distance of the two places' centres less d, in millimetres: below −0.01, and −d
 *     where the centre lines meet
 */
public record Crossing(double atMm, double andMm, double gapMm) {}
