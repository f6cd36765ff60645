/** Lengths of wire as they came to hand, with what went from them. */
package linkwright.standing.stock;
