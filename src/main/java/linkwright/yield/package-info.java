/**
 * How many blanks to cut so that enough come good, from what was usual and what was seen in this
 * job. Start from {@link linkwright.yield.Yield}.
 *
 * <p>A joint that fails can be done again; a melted link is lost. They are two {@link
 * linkwright.yield.Rate}s and are never added together. Counts are pieces, shares and chances lie
 * in 0 to 1. Nothing is null.
 */
package linkwright.yield;
