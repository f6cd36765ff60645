package linkwright.files;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.FactFields;

/** Entries of a job as lines of its book, and back. */
public final class EntryLines {
  private EntryLines() {}

  /** The entries that lines stand for, in their order. */
  public static List<Entry> entries(List<BookLine> lines) {
    List<Entry> entries = new ArrayList<>(lines.size());
    for (BookLine line : lines) {
      entries.add(entry(line));
    }
    return entries;
  }

  /** The entry that a line stands for; a kind that is not known is kept as it is. */
  public static Entry entry(BookLine line) {
    Fact fact = FactFields.read(line.kind(), line.fields());
    return new Entry(line.number(), line.at(), line.device(), fact);
  }

  /** The line of a new entry. */
  public static BookLine line(int number, Instant at, String device, Fact fact) {
    return new BookLine(number, at, device, fact.kind(), FactFields.of(fact));
  }
}
