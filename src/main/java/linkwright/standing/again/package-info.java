/**
 * What a job that was made gives to the next: what it came to, what it taught, and the same made
 * again. Start from {@link linkwright.standing.again.MadeAgain}. Lengths are mm, masses g, times h.
 * Nothing is null.
 */
package linkwright.standing.again;
