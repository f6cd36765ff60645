/**
 * What the coach says, laid out in lines: to be read by a screen reader, printed, or compared by a
 * script. It words nothing itself: labels, sentences and values are those of {@link
 * linkwright.coach.content.Content}. Start at {@link linkwright.plain.PlainLines}. Nothing is null.
 */
package linkwright.plain;
