package linkwright.text;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A list that gets shorter as somebody types: any part of any word will do, the best comes first, a
 * whole name before all.
 */
public final class Narrowing {
  private static final Pattern MARKS = Pattern.compile("\\p{Mn}");

  private Narrowing() {}

  /**
   * The items that hold all the words typed, those that fit best first; all in their own order if
   * nothing is typed.
   *
   * @param typed parts of words, in any order, in any case, with or without accents
   * @param wordsOf what an item goes by, the chief name first
   */
  public static <T> List<T> of(String typed, List<T> items, Function<T, List<String>> wordsOf) {
    String whole = folded(typed).strip();
    List<String> parts = List.of(whole.split("\\s+"));
    if (typed.isBlank()) {
      return List.copyOf(items);
    }
    record Ranked<T>(T item, int rank) {}
    List<Ranked<T>> found = new ArrayList<>();
    for (T item : items) {
      List<String> names = wordsOf.apply(item).stream().map(Narrowing::folded).toList();
      OptionalInt fits = names.contains(whole) ? OptionalInt.of(-1) : rank(parts, names);
      fits.ifPresent(rank -> found.add(new Ranked<>(item, rank)));
    }
    found.sort(Comparator.comparingInt(Ranked::rank));
    return found.stream().map(Ranked::item).toList();
  }

  /**
   * The items that have what is typed for a whole name, in any case, with or without accents, in
   * their own order.
   */
  public static <T> List<T> called(String typed, List<T> items, Function<T, List<String>> wordsOf) {
    String whole = folded(typed).strip();
    return items.stream()
        .filter(item -> wordsOf.apply(item).stream().map(Narrowing::folded).anyMatch(whole::equals))
        .toList();
  }

  /** The rank of all parts together, 0 the best; empty if one of them is not there. */
  private static OptionalInt rank(List<String> parts, List<String> names) {
    int sum = 0;
    for (String part : parts) {
      OptionalInt best =
          IntStream.range(0, names.size())
              .filter(i -> names.get(i).contains(part))
              .map(i -> 4 * Math.min(i, 2) + nearness(part, names.get(i)))
              .min();
      if (best.isEmpty()) {
        return best;
      }
      sum += best.getAsInt();
    }
    return OptionalInt.of(sum);
  }

  /** 0 for the whole name, 1 for its beginning, 2 for the beginning of a word in it, else 3. */
  private static int nearness(String part, String name) {
    int at = name.indexOf(part);
    if (at == 0) {
      return name.length() == part.length() ? 0 : 1;
    }
    for (; at >= 0; at = name.indexOf(part, at + 1)) {
      if (!Character.isLetterOrDigit(name.charAt(at - 1))) {
        return 2;
      }
    }
    return 3;
  }

  private static String folded(String text) {
    return MARKS
        .matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
        .replaceAll("")
        .toLowerCase(Locale.ROOT);
  }
}
