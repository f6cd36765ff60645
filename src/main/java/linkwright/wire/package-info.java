/**
 * Wire before it is a link: its section and mass, drawing it down, how far it springs back, what a
 * joint takes of solder and what a ring holds. Start from {@link linkwright.wire.WireSection}.
 *
 * <p>Millimetres, square millimetres, grams, g/cm³, megapascals (newtons per square millimetre),
 * newtons, shares from 0 to 1. Sizes out of their domain are the programmer's fault and throw; what
 * a bench may really meet (a plate without the hole, wire that springs back whole) is a value.
 * Nothing is null.
 */
package linkwright.wire;
