/**
 * The machinery of the coach, which knows no place: the model, what reaches it ({@link
 * linkwright.coach.kernel.Message}), what it asks for ({@link linkwright.coach.kernel.Effect}), and
 * what every place is to it ({@link linkwright.coach.kernel.Place}, {@link
 * linkwright.coach.kernel.Held}). Nothing is null.
 */
package linkwright.coach.kernel;
