/**
 * Walks through the whole program as a user takes them: in a real pseudo-terminal, by keys. Start
 * at {@link linkwright.walks.WalkedProgram}.
 */
package linkwright.walks;
