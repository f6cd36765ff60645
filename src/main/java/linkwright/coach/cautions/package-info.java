/**
 * The place of the cautions: all of them, one read whole at a time. Start from {@link
 * linkwright.coach.cautions.CautionsPlace}. Nothing is null.
 */
package linkwright.coach.cautions;
