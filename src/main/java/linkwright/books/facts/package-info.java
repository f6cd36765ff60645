/**
 * What stands in a book for each fact: its kind and the names of its fields, written down here and
 * nowhere else, so that a Java name may change and no book with it. Start from {@link
 * linkwright.books.facts.FactCodecs}. Lengths on the disk are mm, masses g, times s, as the names
 * say; a field that is empty is absent. Nothing is null.
 */
package linkwright.books.facts;
