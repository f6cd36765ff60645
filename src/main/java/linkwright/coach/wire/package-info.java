/**
 * The place of the wire: what came, what was cut and lost, what is short, and drawing it down.
 * Start from {@link linkwright.coach.wire.WirePlace}. Lengths are mm, masses g. Nothing is null.
 */
package linkwright.coach.wire;
