/**
 * Amounts as a jeweller writes them and as the program keeps them. Start from {@link
 * linkwright.quantity.Length} and {@link linkwright.quantity.Read}.
 *
 * <p>Inside: millimetres, grams, radians, seconds, shares from 0 to 1. Reading answers with a
 * {@link linkwright.quantity.Read}, whose bad case is a sentence for the person who typed. Nothing
 * is null.
 */
package linkwright.quantity;
