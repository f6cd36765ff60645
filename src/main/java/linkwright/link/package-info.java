/**
 * The shape of one link and the count of a chain: patterns of runs and bends, their size once
 * formed, their joints and crossings, rings and ovals, repeats and chain length.
 *
 * <p>Start from {@link linkwright.link.Pattern}. Units: millimetres and degrees at the doors, as
 * every name says; radians inside. Nothing is null. What a jeweller can get wrong comes back as a
 * {@code Read.Bad} sentence, not as an exception.
 */
package linkwright.link;
