package linkwright.books;

import java.util.ArrayList;
import java.util.List;
import linkwright.books.facts.FactCodecs;
import linkwright.job.Entry;
import linkwright.job.Fact;

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
    Fact fact = FactCodecs.fact(line.kind(), line.fields());
    return new Entry(line.number(), line.at(), line.device(), line.person(), fact);
  }

  /** The line of a new entry. */
  public static BookLine line(Entry entry) {
    return new BookLine(
        entry.number(),
        entry.at(),
        entry.device(),
        entry.person(),
        FactCodecs.kind(entry.fact()),
        FactCodecs.fields(entry.fact()));
  }
}
