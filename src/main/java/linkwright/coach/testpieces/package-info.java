/**
 * The place where test pieces are logged and compared with the wish, where the next one is proposed
 * and one is made the sample link. Start from {@link linkwright.coach.testpieces.TestsPlace}.
 * Lengths are mm. Nothing is null.
 */
package linkwright.coach.testpieces;
