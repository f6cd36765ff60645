package linkwright.coach.kernel;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import linkwright.job.Entry;

/**
 * The entries of a book in words, ready to be searched: put into words once when the book is
 * opened, so that a key in the search costs no more than a look through them.
 */
public final class BookWords {
  /** One for each entry, in small letters, in the order of the book. */
  private final List<String> words;

  private BookWords(List<String> words) {
    this.words = words;
  }

  public static BookWords of(List<Entry> entries, BookTitles titles, Settings settings) {
    List<String> words = new ArrayList<>(entries.size());
    entries.forEach(entry -> words.add(plain(EntryWords.of(entry.fact(), titles, settings))));
    return new BookWords(Collections.unmodifiableList(words));
  }

  public BookWords and(List<Entry> more, BookTitles titles, Settings settings) {
    List<String> all = new ArrayList<>(words.size() + more.size());
    all.addAll(words);
    more.forEach(entry -> all.add(plain(EntryWords.of(entry.fact(), titles, settings))));
    return new BookWords(Collections.unmodifiableList(all));
  }

  /** The places of the entries that hold every word typed, the newest first. */
  public List<Integer> holding(String search) {
    String[] wanted = plain(search).strip().split("\\s+");
    List<Integer> found = new ArrayList<>();
    for (int i = words.size() - 1; i >= 0; i--) {
      if (holds(words.get(i), wanted)) {
        found.add(i);
      }
    }
    return Collections.unmodifiableList(found);
  }

  private static boolean holds(String text, String[] wanted) {
    for (String word : wanted) {
      if (!text.contains(word)) {
        return false;
      }
    }
    return true;
  }

  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
  }
}
