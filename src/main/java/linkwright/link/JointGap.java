package linkwright.link;

/**
 * How well one joint closes.
 *
 * @param joint which joint
 * @param firstTip whether it is the first tip's; true for a joint of both tips
 * @param atMm where along the wire, in millimetres from the first tip
 * @param andMm where along the wire it meets
 * @param gapMm between the two surfaces, in millimetres; below 0 where they overlap
 */
public record JointGap(Joint joint, boolean firstTip, double atMm, double andMm, double gapMm) {}
