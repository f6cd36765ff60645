/**
 * The place where the work is done: one step at a time, its cautions first, then one key for the
 * common act. Start from {@link linkwright.coach.bench.BenchPlace}. Waits are s. Nothing is null.
 */
package linkwright.coach.bench;
