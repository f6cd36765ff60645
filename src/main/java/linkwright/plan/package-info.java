/**
 * The plan of a chain: from what is wished to links, rings, wire, metal and what is short. Start
 * from {@link linkwright.plan.WishReading}, which reads a wish as it was typed, and {@link
 * linkwright.plan.Planning}, which works it out; the plan screen and the plan command use both.
 *
 * <p>Lengths are mm, masses g, shares 0 to 1. Nothing is null.
 */
package linkwright.plan;
