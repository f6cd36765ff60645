/**
 * The place that shows what the books taught of the hands that work here, and lets a book be left
 * out. Start from {@link linkwright.coach.hands.HandsPlace}. Nothing is null.
 */
package linkwright.coach.hands;
