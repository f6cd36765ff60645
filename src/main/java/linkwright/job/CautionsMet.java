package linkwright.job;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which cautions each person has met, by the entries of one book or of all of them.
 *
 * @param last person (empty where nobody said who it is) → caution → when and how it was met last
 */
public record CautionsMet(Map<String, Map<String, Last>> last) {
  /** Nobody has met any. */
  public static final CautionsMet NONE = new CautionsMet(Map.of());

  /** After so long without being shown or worked under, it is shown whole again. */
  public static final Duration FORGOTTEN = Duration.ofDays(14);

  /** However often she works under it, it is shown whole after so long. */
  public static final Duration LONGEST = Duration.ofDays(90);

  /** Met so lately that another line in the book would say nothing new. */
  private static final Duration LATELY = Duration.ofHours(12);

  public CautionsMet {
    last = Map.copyOf(last);
  }

  /**
   * How one was met last.
   *
   * @param met when it was last shown, asked or worked under
   * @param whole when it was last shown whole; empty if it never was
   * @param digest of its text and reason as they were then; empty where that was not kept
   */
  public record Last(Instant met, Optional<Instant> whole, String digest) {
    private Last and(Last other) {
      boolean later = other.met.isAfter(met);
      Optional<Instant> both =
          other.whole.filter(at -> whole.map(at::isAfter).orElse(true)).or(() -> whole);
      return new Last(later ? other.met : met, both, later ? other.digest : digest);
    }
  }

  CautionsMet after(Entry entry) {
    if (!(entry.fact() instanceof Fact.CautionSeen seen)) {
      return this;
    }
    boolean whole = seen.how() == CautionMet.WHOLE || seen.how() == CautionMet.ASKED_WRONG;
    Last now =
        new Last(entry.at(), whole ? Optional.of(entry.at()) : Optional.empty(), seen.digest());
    return and(Map.of(entry.person(), Map.of(seen.caution(), now)));
  }

  /** Those of both, the later of each. */
  public CautionsMet and(CautionsMet others) {
    return others.last.isEmpty() ? this : and(others.last);
  }

  private CautionsMet and(Map<String, Map<String, Last>> more) {
    Map<String, Map<String, Last>> all = new HashMap<>(last);
    more.forEach(
        (person, cards) -> {
          Map<String, Last> both = new HashMap<>(all.getOrDefault(person, Map.of()));
          cards.forEach((caution, met) -> both.merge(caution, met, Last::and));
          all.put(person, Map.copyOf(both));
        });
    return new CautionsMet(all);
  }

  private Optional<Last> last(String person, String caution) {
    return Optional.ofNullable(last.getOrDefault(person, Map.of()).get(caution));
  }

  /** Whether it is to be shown whole: never met, another text or reason, or too long ago. */
  public boolean comesWhole(String person, String caution, String digest, Instant now) {
    return last(person, caution)
        .filter(met -> met.digest().isEmpty() || met.digest().equals(digest))
        .filter(met -> since(met.met(), now).compareTo(FORGOTTEN) <= 0)
        .flatMap(Last::whole)
        .filter(whole -> since(whole, now).compareTo(LONGEST) <= 0)
        .isEmpty();
  }

  /**
   * Whether it comes whole for no more than that it was not met for a while: its text and reason
   * are those she was shown, and not longer ago than it may be.
   */
  public boolean isReread(String person, String caution, String digest, Instant now) {
    return last(person, caution)
        .filter(met -> met.digest().equals(digest))
        .flatMap(Last::whole)
        .filter(whole -> since(whole, now).compareTo(LONGEST) <= 0)
        .isPresent();
  }

  /** Whether it was met so lately that it need not be entered again. */
  public boolean lately(String person, String caution, Instant now) {
    return last(person, caution)
        .filter(met -> since(met.met(), now).compareTo(LATELY) < 0)
        .isPresent();
  }

  private static Duration since(Instant then, Instant now) {
    return Duration.between(then, now);
  }
}
