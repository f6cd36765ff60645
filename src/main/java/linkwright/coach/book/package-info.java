/**
 * The place where a job's book is read and searched, where entries are struck and brought back,
 * notes written and doubtful lines accepted. Start from {@link linkwright.coach.book.BookPlace}.
 * Nothing is null.
 */
package linkwright.coach.book;
