/**
 * What all books taught of the hands that work here: how they bend, what they lose and do again,
 * how long each stage takes them. Reckoned from the books, never typed. Start from {@link
 * linkwright.hands.Hands}. Lengths are mm, times s, shares 0 to 1. Nothing is null.
 */
package linkwright.hands;
