package linkwright.coach.kernel;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import linkwright.job.ClockMoves;
import linkwright.job.FlameWord;
import linkwright.job.HotWork;

/**
 * When it was heated, lit and put out last, by the clock that nobody can set: noted as it is
 * entered, so that the fire watch begins there whatever the computer's clock is set to before the
 * flame is out. What was entered before the program began is known by the computer's clock alone.
 *
 * @param heats book → its last heat
 * @param lit book → the last word there by which a flame was lit
 * @param out book → the statement that answered that word
 * @param heated the books in which something was heated after that word, by the order of the lines
 * @param readAt when the books were read last, by the steady clock; empty for never
 * @param ahead by how much the computer's clock was ahead of the steady one then
 */
record HeatTimes(
    Map<String, Noted> heats,
    Map<String, Noted> lit,
    Map<String, Noted> out,
    Set<String> heated,
    Optional<Instant> readAt,
    Duration ahead) {
  static final HeatTimes NONE =
      new HeatTimes(Map.of(), Map.of(), Map.of(), Set.of(), Optional.empty(), Duration.ZERO);

  private static final Comparator<Noted> BY_STEADY = Comparator.comparing(Noted::steady);

  /** A little is no setting. */
  private static final Duration SLIGHT = Duration.ofSeconds(2);

  /**
   * An entry.
   *
   * @param from the entry, as a watch would begin with it
   * @param steady when it was made, by the steady clock; at the latest, where that is not known
   * @param sure whether it was made while the program ran, so that no set clock moves it
   */
  record Noted(HotWork.From from, Instant steady, boolean sure) {
    /** Whether it is known to have been made after that one. */
    private boolean follows(Noted other) {
      return sure && (!other.sure() || steady.isAfter(other.steady()));
    }
  }

  HeatTimes {
    heats = Map.copyOf(heats);
    lit = Map.copyOf(lit);
    out = Map.copyOf(out);
    heated = Set.copyOf(heated);
  }

  /** The same with what is new since; each is noted once, at the moment it is seen first. */
  HeatTimes seen(
      Collection<HotWork.OfBook> books,
      HotWork now,
      ClockMoves moves,
      Instant at,
      Instant steady,
      boolean read) {
    Map<String, HotWork.From> heat = new HashMap<>();
    for (HotWork.OfBook book : books) {
      book.heat()
          .ifPresent(
              last -> heat.put(book.book(), new HotWork.From(book.book(), last.id(), last.at())));
    }
    return new HeatTimes(
        noted(heats, heat, moves, at, steady),
        noted(lit, froms(now.lastLit()), moves, at, steady),
        noted(out, froms(now.lastOut()), moves, at, steady),
        now.heated(),
        read ? Optional.of(steady) : readAt,
        read ? Duration.between(steady, at) : ahead);
  }

  private static Map<String, HotWork.From> froms(Map<String, FlameWord> words) {
    Map<String, HotWork.From> all = new HashMap<>();
    words.forEach(
        (book, word) -> all.put(book, new HotWork.From(word.book(), word.id(), word.at())));
    return all;
  }

  private Map<String, Noted> noted(
      Map<String, Noted> known,
      Map<String, HotWork.From> last,
      ClockMoves moves,
      Instant now,
      Instant steady) {
    Map<String, Noted> all = new HashMap<>();
    last.forEach(
        (book, from) ->
            all.put(
                book,
                Optional.ofNullable(known.get(book))
                    .filter(before -> before.from().equals(from))
                    .orElseGet(() -> noted(from, moves.age(from.at(), now), now, steady))));
    return all;
  }

  private Noted noted(HotWork.From from, Duration age, Instant now, Instant steady) {
    boolean set = Duration.between(steady, now).minus(ahead).abs().compareTo(SLIGHT) > 0;
    boolean unknown = age.isNegative() || (set && readAt.isPresent());
    // Another machine's entry, where the clock was set since the last look: no older than that
    // look.
    return new Noted(from, unknown ? steady : steady.minus(age), readAt.isPresent());
  }

  /**
   * With what the fire watch begins: the last of these, a heat whose watch was not ended; before it
   * what it would begin with else. A flame after which nothing is known to have been heated gives
   * the statement that it is out, which is later than any heat. What was ended hides no other,
   * however late a set clock makes it.
   */
  List<Noted> begins(Predicate<HotWork.From> ended) {
    Stream<Noted> statements =
        out.keySet().stream().filter(book -> !isHeatedSince(book)).map(out::get);
    return Stream.concat(heats.values().stream(), statements)
        .filter(begin -> !ended.test(begin.from()))
        .sorted(BY_STEADY)
        .toList();
  }

  /** Whether that is a heat, not a statement. */
  boolean isHeat(Noted begin) {
    return heats.containsValue(begin);
  }

  private boolean isHeatedSince(String book) {
    return heated.contains(book)
        || heats.values().stream().anyMatch(heat -> heat.follows(lit.get(book)));
  }
}
