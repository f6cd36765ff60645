/**
 * What was reckoned from the books once and need not be again while nothing changed. Start from
 * {@link linkwright.shell.remembered.RememberedHands}. Nothing is null.
 */
package linkwright.shell.remembered;
