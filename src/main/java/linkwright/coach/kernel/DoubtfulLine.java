package linkwright.coach.kernel;

import java.util.Optional;
import linkwright.job.Entry;

/**
 * A line of the book whose check failed: kept, and not used until the user accepts it.
 *
 * @param line where it stands in the file, from 1
 * @param check what names the line as it stands now
 * @param text the line as it stands
 * @param reading what it says; empty if it cannot be read as an entry, nor accepted
 */
public record DoubtfulLine(int line, String check, String text, Optional<Entry> reading) {}
