/**
 * What a place has to say, once: titles, rows, tables, figures, texts, drawings, pieces, waits,
 * questions. In the user's words and units, without widths, colours or keys; a grid of cells, a
 * plain line and a spoken sentence are laid out from the same value. Start at {@link
 * linkwright.coach.content.Content}. A sentence that names a key names the act instead, {@code
 * {do:redo}}: see {@link linkwright.coach.content.ActMention}. Nothing is null.
 */
package linkwright.coach.content;
