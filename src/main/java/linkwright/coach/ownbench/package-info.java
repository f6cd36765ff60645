/**
 * The place of the maker's own bench: her tools, prices and habits whatever the job. Start from
 * {@link linkwright.coach.ownbench.OwnBenchPlace}. Nothing is null.
 */
package linkwright.coach.ownbench;
