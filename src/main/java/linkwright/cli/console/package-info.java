/**
 * What every command and the plain walk stand on: where lines go and come from, the user's choices,
 * the name of this machine, what a command answers the shell. Start from {@link
 * linkwright.cli.console.Surroundings}. Nothing is null.
 */
package linkwright.cli.console;
