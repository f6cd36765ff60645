/**
 * The nearest chains to a wished one that can be had. Start reading at {@link
 * linkwright.standing.nearest.ChainChoices}. Lengths are mm. Nothing is null.
 */
package linkwright.standing.nearest;
