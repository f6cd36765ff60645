/**
 * Links of several sizes on their way through the steps. Start reading at {@link
 * linkwright.standing.sizes.SizeAtBench}. Counts are pieces. Nothing is null.
 */
package linkwright.standing.sizes;
