/**
 * What is typed into forms and waits until it is entered: a job's beside its book, the rest for
 * itself. Start from {@link linkwright.coach.kernel.drafting.Drafting}. Nothing is null.
 */
package linkwright.coach.kernel.drafting;
