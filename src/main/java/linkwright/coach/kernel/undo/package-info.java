/**
 * Taking back what the last acts at a place entered, and bringing it back. Start from {@link
 * linkwright.coach.kernel.undo.Undo}. Nothing is erased, and nothing is null.
 */
package linkwright.coach.kernel.undo;
