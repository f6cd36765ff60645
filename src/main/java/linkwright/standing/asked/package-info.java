/**
 * What is asked before an entry is kept, because it is out of reason. Start reading at {@link
 * linkwright.standing.asked.Questions}. Lengths are mm, masses g. Nothing is null.
 */
package linkwright.standing.asked;
