/**
 * Text for a grid of cells: made safe, measured in columns, cut with a mark, wrapped; a drawing in
 * dots of Braille. Start from {@link linkwright.text.Text}. Knows no other room; nothing is null.
 */
package linkwright.text;
