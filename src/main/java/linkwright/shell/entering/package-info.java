/**
 * What is typed and becomes an entry: never both, whenever the program dies. Start from {@link
 * linkwright.shell.entering.EnteringDrafts}. Nothing is null.
 */
package linkwright.shell.entering;
