/**
 * The place where a plan is typed field by field and worked out at every key. Start from {@link
 * linkwright.coach.plan.PlanPlace}. Lengths are mm, masses g. Nothing is null.
 */
package linkwright.coach.plan;
