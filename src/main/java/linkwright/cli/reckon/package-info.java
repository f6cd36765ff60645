/**
 * The reckoner as commands: one for each sum, from its options to its lines. Start from {@link
 * linkwright.cli.reckon.ReckonCommand}. Nothing is null.
 */
package linkwright.cli.reckon;
