package linkwright.reckon;

import java.util.List;
import java.util.stream.Stream;
import linkwright.link.Pattern;
import linkwright.reference.Metal;
import linkwright.reference.Solder;

/**
 * One thing that a sum asks for.
 *
 * @param key its name: an option without its dashes, a field of the form
 * @param label what it is, a noun that reads after "the"
 * @param hint what would be right, as an example
 * @param needed whether the sum cannot do without it
 * @param kind where its answers come from
 * @param fixed the words there are, for {@link Kind#WORDS}; else empty
 */
public record Ask(
    String key, String label, String hint, boolean needed, Kind kind, List<String> fixed) {
  /** Where the answers to an ask come from. */
  public enum Kind {
    /** Typed freely: an amount, a number. */
    FREE,
    /** Typed freely, and may be given several times. */
    MANY,
    /** One of a few words. */
    WORDS,
    /** Asked for or not. */
    SWITCH,
    /** A metal that is known. */
    METAL,
    /** A solder that is known. */
    SOLDER,
    /** A link pattern that is known. */
    PATTERN,
    /** What a file holds; it is not typed but handed over with {@link ReckoningBasis}. */
    FILE
  }

  /** Copies the list. */
  public Ask {
    fixed = List.copyOf(fixed);
  }

  static Ask needed(String key, String label, String hint) {
    return new Ask(key, label, hint, true, Kind.FREE, List.of());
  }

  static Ask optional(String key, String label, String hint) {
    return new Ask(key, label, hint, false, Kind.FREE, List.of());
  }

  static Ask words(String key, String label, String hint, String... words) {
    return new Ask(key, label, hint, false, Kind.WORDS, List.of(words));
  }

  /** Something told besides if it is asked for. */
  static Ask whether(String key, String label, String hint) {
    return new Ask(key, label, hint, false, Kind.SWITCH, List.of("", "yes"));
  }

  static Ask metal(boolean needed) {
    return new Ask("metal", "metal", "sterling", needed, Kind.METAL, List.of());
  }

  static Ask temper() {
    return words("temper", "temper", "soft, as annealed, or hard, as drawn; soft", "soft", "hard");
  }

  static Ask pattern() {
    return new Ask("pattern", "link pattern", "scroll", true, Kind.PATTERN, List.of());
  }

  Ask as(Kind other) {
    return new Ask(key, label, hint, needed, other, fixed);
  }

  /** The answers to choose from; empty where any text may be right. */
  public List<String> choices(ReckoningBasis given) {
    Stream<String> found =
        switch (kind) {
          case METAL -> given.reference().metals().stream().map(Metal::id);
          case SOLDER -> given.reference().solders().stream().map(Solder::id);
          case PATTERN -> given.patterns().stream().map(Pattern::id);
          case WORDS, SWITCH -> fixed.stream();
          case FREE, MANY, FILE -> Stream.empty();
        };
    return found.toList();
  }
}
