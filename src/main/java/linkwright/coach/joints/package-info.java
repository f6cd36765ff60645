/**
 * The place where joints that were looked at are entered, so many failed of so many; they count by
 * link. Start from {@link linkwright.coach.joints.JointsPlace}. Nothing is null.
 */
package linkwright.coach.joints;
