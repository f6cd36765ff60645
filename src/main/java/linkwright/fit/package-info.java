/**
 * What test pieces teach about the hands that made them, and the blank and former to take next.
 * Start from {@link linkwright.fit.Fit}.
 *
 * <p>Three things are unknown of a maker: the growth of the formers' radius, the wire lost from a
 * blank, and the turn given to an eye beyond the pattern's. Lengths are in millimetres, turns in
 * degrees, spreads are one standard deviation. Nothing is null.
 */
package linkwright.fit;
