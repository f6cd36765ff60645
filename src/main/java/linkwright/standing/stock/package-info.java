/**
 * Lengths of wire as they came to hand, with what went from them. Start reading at {@link
 * linkwright.standing.stock.WireLengths}. Lengths are mm. Nothing is null.
 */
package linkwright.standing.stock;
