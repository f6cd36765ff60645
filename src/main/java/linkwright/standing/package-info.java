/**
 * The one truth: from what a job's entries add up to, what can be looked up and what the maker's
 * pieces taught → every figure that a screen, a sheet, a command or a spoken line shows. Start from
 * {@link linkwright.standing.Standing}.
 *
 * <p>Lengths are mm, masses g, times s, shares 0 to 1. Nothing is null; what is not known is empty.
 */
package linkwright.standing;
