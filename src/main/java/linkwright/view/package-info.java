/**
 * What is to be seen, as values: a {@link linkwright.view.Grid} of cells that some terminal, window
 * or test may show. Start at {@link linkwright.view.Canvas}, which builds one; {@link
 * linkwright.text.Text} makes strings from outside safe and measures them in columns; {@link
 * linkwright.view.BigFigures}, {@link linkwright.text.Dots}, {@link linkwright.view.LengthBar} and
 * {@link linkwright.view.ChainBar} draw what words can't say.
 *
 * <p>Columns and rows count from 0 at the top left; lengths of drawn things are in millimetres.
 * Pure: no file, thread, clock or terminal. Nothing is null.
 */
package linkwright.view;
