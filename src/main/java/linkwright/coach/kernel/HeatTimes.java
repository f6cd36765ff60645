package linkwright.coach.kernel;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.job.FlameWord;
import linkwright.job.HotWork;

/**
 * When it was heated last, by the clock that nobody can set: noted as it is entered, so that the
 * fire watch begins there whatever the computer's clock is set to before the flame is out. What was
 * entered before the program began is known by the computer's clock alone.
 *
 * @param heats book → its last heat
 * @param flame the word by which a flame was lit last
 * @param readAt when the books were read last, by the steady clock; empty for never
 * @param ahead by how much the computer's clock was ahead of the steady one then
 */
record HeatTimes(
    Map<String, Noted> heats, Optional<Noted> flame, Optional<Instant> readAt, Duration ahead) {
  static final HeatTimes NONE =
      new HeatTimes(Map.of(), Optional.empty(), Optional.empty(), Duration.ZERO);

  /** A little is no setting. */
  private static final Duration SLIGHT = Duration.ofSeconds(2);

  /**
   * An entry.
   *
   * @param from the entry, as a watch would begin with it
   * @param steady when it was made, by the steady clock
   */
  record Noted(HotWork.From from, Instant steady) {}

  HeatTimes {
    heats = Map.copyOf(heats);
  }

  /** The same with what is new since; each is noted once, at the moment it is seen first. */
  HeatTimes seen(
      List<BenchBook> books, Optional<FlameWord> lit, Instant now, Instant steady, boolean read) {
    Map<String, Noted> all = new HashMap<>();
    for (BenchBook book : books) {
      Optional<Noted> known = Optional.ofNullable(heats.get(book.slug()));
      book.flames()
          .heat()
          .map(heat -> new HotWork.From(book.slug(), heat.id(), heat.at()))
          .map(from -> noted(known, from, now, steady))
          .ifPresent(heat -> all.put(book.slug(), heat));
    }
    Optional<Noted> word =
        lit.map(said -> new HotWork.From(said.book(), said.id(), said.at()))
            .map(from -> noted(flame, from, now, steady));
    return new HeatTimes(
        all,
        word,
        read ? Optional.of(steady) : readAt,
        read ? Duration.between(steady, now) : ahead);
  }

  private Noted noted(Optional<Noted> known, HotWork.From from, Instant now, Instant steady) {
    if (known.filter(before -> before.from().equals(from)).isPresent()) {
      return known.get();
    }
    Duration age = Duration.between(from.at(), now);
    boolean set = Duration.between(steady, now).minus(ahead).abs().compareTo(SLIGHT) > 0;
    if (set && readAt.isPresent()) {
      // The clock was set since: what was not there at the last look is no older than that look.
      Duration look = Duration.between(readAt.get(), steady);
      age = age.compareTo(look) > 0 ? look : age;
    }
    return new Noted(from, steady.minus(age.isNegative() ? Duration.ZERO : age));
  }

  /** The last heat since the flame was lit; empty where nothing was heated, or none is known. */
  Optional<Noted> last() {
    return flame.flatMap(
        lit ->
            heats.values().stream()
                .filter(heat -> !heat.steady().isBefore(lit.steady()))
                .max(Comparator.comparing(Noted::steady)));
  }
}
