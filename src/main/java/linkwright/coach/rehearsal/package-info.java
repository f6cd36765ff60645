/**
 * The place of the rehearsal: a routine walked dry, forwards and back, its waits sixty times as
 * fast; nothing is entered anywhere. Start from {@link linkwright.coach.rehearsal.RehearsalPlace}.
 * Nothing is null.
 */
package linkwright.coach.rehearsal;
