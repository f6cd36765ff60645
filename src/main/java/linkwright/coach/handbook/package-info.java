/**
 * The place of the handbook: the words of the trade explained, and metals, solders, clasps, the law
 * on fineness and its limits, each figure with where it comes from. Start from {@link
 * linkwright.coach.handbook.HandbookPlace}. Nothing is null.
 */
package linkwright.coach.handbook;
