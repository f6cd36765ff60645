/**
 * Where grids are shown and keys come from: a terminal or a window, both over Lanterna. Start at
 * {@link linkwright.terminal.Displays}, which chooses one; {@link linkwright.terminal.Display} is
 * all that the rest of the program sees of it.
 *
 * <p>Columns and rows count from 0 at the top left, times are in milliseconds. Nothing is null.
 */
package linkwright.terminal;
