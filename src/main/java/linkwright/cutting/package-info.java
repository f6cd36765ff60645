/**
 * Cutting blanks and ring coils from the lengths on hand: the plan that makes the most chain, and
 * then opens the fewest lengths. Start from {@link linkwright.cutting.CutOrder} and {@link
 * linkwright.cutting.Cutting}.
 *
 * <p>A good way is found at once ({@code QuickCut}); a table of all ways proves or betters it as
 * far as one budget reaches ({@code CutTable}). Lengths are millimetres in the records and whole
 * micrometres inside, so that what is called proved rests on whole numbers; a piece is rounded up
 * and a length of stock down. Nothing is null.
 */
package linkwright.cutting;
