/**
 * The place of trial lengths: a few finished links hung and measured, one of them followed. Start
 * from {@link linkwright.coach.trial.TrialPlace}. Lengths are mm. Nothing is null.
 */
package linkwright.coach.trial;
