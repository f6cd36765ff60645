/**
 * The commands of the program: what is typed behind {@code linkwright} goes in, text or YAML comes
 * out. Start from {@link linkwright.cli.Commands}.
 *
 * <p>Results go to the standard output, what is wrong to the standard error, as sentences. Exit
 * codes: 0 good, 1 something is wrong in what was given, 2 the command was used wrongly. Nothing is
 * null.
 */
package linkwright.cli;
