/**
 * Routines and cautions as data: the ordered steps for one kind of chain, what each step does to
 * the work and to the person, and the checks that hold a routine together.
 *
 * <p>Start from {@link linkwright.routine.Routine}; {@link linkwright.routine.RoutineChecks} says
 * what is wrong with one, {@link linkwright.routine.Wording} makes its texts readable in the units
 * and trade words of the user's choice.
 *
 * <p>Times are in seconds; shares run from 0 to 1. Texts hold placeholders in braces and British
 * trade words, as they stand in the files. Every collection keeps the order of the file and cannot
 * be changed. Nothing is null: what is absent is an empty string, list or optional.
 */
package linkwright.routine;
