/**
 * Metals, solders, fineness rules and clasps: what the program knows of the world, each figure with
 * its source. Start from {@link linkwright.reference.Reference}.
 *
 * <p>Densities in g/cm³, temperatures in °C, modulus in GPa, stresses in MPa, lengths in mm, masses
 * in g, shares from 0 to 1. The figures themselves are data and are read elsewhere. Nothing is
 * null.
 */
package linkwright.reference;
