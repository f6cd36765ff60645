package linkwright.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Hot work at a bench, by the latest word over all its books: a flame is lit from the word that
 * says so until every flame is said to be out. Where nothing was said nothing is known, and nothing
 * is open.
 *
 * @param lit the word since which a flame may be lit; empty if none is
 * @param hot the word since which a kiln or a hotplate is on; empty if none is
 * @param flame the word by which a flame was lit last, though it is out by now
 * @param watch from where the fire watch runs by the entries' times, though it was ended; empty
 *     where nothing was lit, or a flame still is
 */
public record HotWork(
    Optional<FlameWord> lit,
    Optional<FlameWord> hot,
    Optional<FlameWord> flame,
    Optional<From> watch) {
  /** Nothing was ever said. */
  public static final HotWork NOT_KNOWN =
      new HotWork(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * Where a fire watch begins: the last heat, or the statement where nothing was heated.
   *
   * @param book the book that holds the entry
   * @param id the entry
   * @param at when
   */
  public record From(String book, EntryId id, Instant at) {}

  /**
   * What a book gives to it.
   *
   * @param book its name
   * @param words what was said in it of hot work
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
    List<FlameWord> words = new ArrayList<>();
    books.forEach(book -> words.addAll(book.words()));
    // Said at one moment, words of one book stay in its order.
    words.sort(Comparator.comparing(FlameWord::at));
    Optional<FlameWord> lit = Optional.empty();
    Optional<FlameWord> hot = Optional.empty();
    Optional<FlameWord> wasLit = Optional.empty();
    Optional<FlameWord> shut = Optional.empty();
    for (FlameWord word : words) {
      switch (word.state()) {
        case LIT -> lit = lit.or(() -> Optional.of(word));
        case HOT -> hot = hot.or(() -> Optional.of(word));
        case SHUT -> {
          if (lit.isPresent()) {
            wasLit = lit;
            shut = Optional.of(word);
          }
          lit = Optional.empty();
          hot = Optional.empty();
        }
        case NOT_KNOWN -> {
          // Nothing follows from it.
        }
      }
    }
    return lit.isPresent()
        ? new HotWork(lit, hot, lit, Optional.empty())
        : new HotWork(lit, hot, wasLit, watch(books, wasLit, shut));
  }

  private static Optional<From> watch(
      Collection<OfBook> books, Optional<FlameWord> lit, Optional<FlameWord> shut) {
    if (lit.isEmpty() || shut.isEmpty()) {
      return Optional.empty();
    }
    Instant since = lit.get().at();
    FlameWord said = shut.get();
    return Optional.of(
        books.stream()
            .flatMap(
                book ->
                    book.heat().stream().map(heat -> new From(book.book(), heat.id(), heat.at())))
            .filter(heat -> !heat.at().isBefore(since))
            .max(Comparator.comparing(From::at))
            .orElseGet(() -> new From(said.book(), said.id(), said.at())));
  }

  /** Whether the watch that began with that was ended for a reason. */
  public static boolean ended(Collection<OfBook> books, From begin) {
    return books.stream()
        .anyMatch(book -> book.book().equals(begin.book()) && book.ended().contains(begin.id()));
  }

  /** Whether anything burns that is to be put out before she goes. */
  public boolean open() {
    return lit.isPresent() || hot.isPresent();
  }
}
