package linkwright.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Hot work at a bench, by the words of all its books: a flame is lit from the word that says so
 * until a statement that names that word, in whatever book. No clock tells which of two words came
 * first, so a word that no statement is known to answer stands. Where nothing was said nothing is
 * known, and nothing is open.
 *
 * @param stand the words that are not answered, the earliest first
 * @param lastLit book → the last word there by which a flame was lit, answered or not
 * @param lastOut book → the statement that answered that word
 * @param heated the books in which something was heated after that word, by the order of the lines
 */
public record HotWork(
    List<FlameWord> stand,
    Map<String, FlameWord> lastLit,
    Map<String, FlameWord> lastOut,
    Set<String> heated) {
  /** Nothing was ever said. */
  public static final HotWork NOT_KNOWN = new HotWork(List.of(), Map.of(), Map.of(), Set.of());

  private static final Comparator<FlameWord> BY_TIME = Comparator.comparing(FlameWord::at);

  public HotWork {
    stand = List.copyOf(stand);
    lastLit = Map.copyOf(lastLit);
    lastOut = Map.copyOf(lastOut);
    heated = Set.copyOf(heated);
  }

  /**
   * What a book gives to it.
   *
   * @param book its name
   * @param words what was said in it of hot work, in its order
   * @param heat the last count or wait at a step that burns gas
   * @param ended where a watch began that was ended for a reason
   */
  public record OfBook(
      String book, List<FlameWord> words, Optional<Heat> heat, Set<EntryId> ended) {
    public OfBook {
      words = List.copyOf(words);
      ended = Set.copyOf(ended);
    }
  }

  /** What all books of a bench add up to. */
  public static HotWork of(Collection<OfBook> books) {
    List<FlameWord> shut =
        books.stream()
            .flatMap(book -> book.words().stream())
            .filter(word -> word.state() == HotWorkState.SHUT)
            .toList();
    List<FlameWord> byTime = shut.stream().filter(FlameWord::isByTime).toList();
    List<FlameWord> open = new ArrayList<>();
    Map<String, FlameWord> lit = new HashMap<>();
    Map<String, FlameWord> out = new HashMap<>();
    Set<String> heated = new HashSet<>();
    for (OfBook book : books) {
      List<FlameWord> words = book.words();
      for (int i = 0; i < words.size(); i++) {
        FlameWord word = words.get(i);
        int before = i;
        Optional<FlameWord> answer =
            inBook(word, words, i)
                .or(() -> shut.stream().filter(said -> said.names(word)).findFirst())
                .or(() -> elsewhere(word, byTime));
        boolean opens = word.state() == HotWorkState.LIT || word.state() == HotWorkState.HOT;
        if (opens && answer.isEmpty()) {
          open.add(word);
        }
        if (word.state() == HotWorkState.LIT) {
          lit.put(book.book(), word);
          answer.ifPresent(said -> out.put(book.book(), said));
          if (book.heat().filter(heat -> heat.words() > before).isPresent()) {
            heated.add(book.book());
          } else {
            heated.remove(book.book());
          }
        }
      }
    }
    open.sort(BY_TIME);
    return new HotWork(open, lit, out, heated);
  }

  /** By name wherever it stands; in an older book, and by an older program, by the lines. */
  private static Optional<FlameWord> inBook(FlameWord word, List<FlameWord> words, int at) {
    for (int i = 0; i < words.size(); i++) {
      FlameWord other = words.get(i);
      boolean follows =
          other.isByTime()
              && i > at
              && (word.isByTime() || word.id().device().equals(other.id().device()));
      if (other.state() == HotWorkState.SHUT && (other.names(word) || follows)) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }

  /** Older words of two books have no order but their times; said at one moment it is not known. */
  private static Optional<FlameWord> elsewhere(FlameWord word, List<FlameWord> statements) {
    return statements.stream()
        .filter(said -> word.isByTime() && !said.book().equals(word.book()))
        .filter(said -> said.at().isAfter(word.at()))
        .min(BY_TIME);
  }

  /** The word since which a flame may be lit; empty if none is. */
  public Optional<FlameWord> lit() {
    return first(HotWorkState.LIT);
  }

  /** The word since which a kiln or a hotplate is on; empty if none is. */
  public Optional<FlameWord> hot() {
    return first(HotWorkState.HOT);
  }

  private Optional<FlameWord> first(HotWorkState state) {
    return stand.stream().filter(word -> word.state() == state).findFirst();
  }

  /** Whether anything burns that is to be put out before she goes. */
  public boolean open() {
    return !stand.isEmpty();
  }

  /** Whether a fire watch is due: something was lit, and no flame is lit now. */
  public boolean isOut() {
    return lit().isEmpty() && !lastOut.isEmpty();
  }

  /**
   * The entry that a fire watch began with.
   *
   * @param book the book that holds the entry
   * @param id the entry
   * @param at when, by the computer's clock
   */
  public record From(String book, EntryId id, Instant at) {}

  /** Whether the watch that began with that was ended for a reason. */
  public static boolean ended(Collection<OfBook> books, From begin) {
    return books.stream()
        .anyMatch(book -> book.book().equals(begin.book()) && book.ended().contains(begin.id()));
  }
}
