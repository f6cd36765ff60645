/**
 * A page spelt in the signs of a place that has few, before it is laid out. Start from {@link
 * linkwright.view.spelt.Spelt}. Nothing is null.
 */
package linkwright.view.spelt;
