/**
 * The coach line by line, over standard input and output: for screen readers, terminals that can do
 * nothing, and scripts. Start from {@link linkwright.cli.walk.Walk}. What is typed becomes the keys
 * of the very same coach that the screens show, so both enter the same facts. No cursor is moved
 * and nothing is coloured. Nothing is null.
 */
package linkwright.cli.walk;
