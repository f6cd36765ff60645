package linkwright.books;

import java.util.Optional;

/**
 * A line of a job book that is kept but not used: its check fails or is missing.
 *
 * @param line where it stands in the file, from 1
 * @param check the CRC-32C of the whole line as it stands now; an entry that accepts the line names
 *     it by this
 * @param text the line as it stands
 * @param reading what it would say if it were accepted; empty if it cannot be read as an entry
 */
public record Suspect(int line, String check, String text, Optional<BookLine> reading) {}
