/**
 * The place where a job is weighed in, priced and closed. Start from {@link
 * linkwright.coach.weigh.WeighPlace}. Masses are g, prices in the user's currency. Nothing is null.
 */
package linkwright.coach.weigh;
