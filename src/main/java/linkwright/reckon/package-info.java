/**
 * The bench reckoner: each piece of the bench mathematics by itself, for the command line and the
 * screen alike. Start from {@link linkwright.reckon.Reckoner}.
 *
 * <p>A {@link linkwright.reckon.Sum} says what it asks for; what was typed goes in as text and
 * comes out as a {@link linkwright.reckon.Reckoning}: values by key, sentences, or what is wrong by
 * ask. Keys of lengths end in {@code _mm}, of masses in {@code _g}, of areas in {@code _mm2}, of
 * forces in {@code _n}, of stresses in {@code _mpa}. Nothing is worked out here that another room
 * works out. Nothing is null.
 */
package linkwright.reckon;
