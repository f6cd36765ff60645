/**
 * Cutting blanks and ring coils from the lengths on hand: the plan that makes the most chain, and
 * then opens the fewest lengths. Start from {@link linkwright.cutting.CutOrder} and {@link
 * linkwright.cutting.Cutting}.
 *
 * <p>Lengths are millimetres in the records and whole micrometres inside, so that what is called
 * proved rests on whole numbers; a piece is rounded up and a stock length down. Nothing is null.
 */
package linkwright.cutting;
