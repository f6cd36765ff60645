/**
 * What she typed for more than one job, to be kept where it would be typed once. Start from {@link
 * linkwright.standing.typed.TypedTwice}. Nothing is null.
 */
package linkwright.standing.typed;
