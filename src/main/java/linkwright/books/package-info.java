/**
 * Job books: how an entry stands on the disk, reading what others wrote or cut off, only ever
 * adding to the end, who may write, and putting two books of a job together. Start from {@link
 * linkwright.books.BookFile}. Faults of a book and of the disk are values ({@code Problem}, {@code
 * Read.Bad}), never exceptions. Nothing is null.
 */
package linkwright.books;
