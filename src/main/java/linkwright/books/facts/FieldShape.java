package linkwright.books.facts;

import java.util.List;
import java.util.Map;

/**
 * What a field of a fact may hold, as its codec reads it.
 *
 * @param sort the sort of value
 * @param needed whether the fact has to have it
 * @param words the words it may be; empty where it is no word
 * @param group the fields of each group, for groups by name; else empty
 */
public record FieldShape(
    Sort sort, boolean needed, List<String> words, Map<String, FieldShape> group) {
  /** The sorts of value that stand in a book. */
  public enum Sort {
    TEXT,
    WORD,
    ENTRY,
    COUNT,
    SECONDS,
    NUMBER,
    DECIMAL,
    FLAG,
    TEXTS_BY_NAME,
    COUNTS_BY_NAME,
    DECIMALS_BY_NAME,
    NUMBERS_BY_NAME,
    GROUPS_BY_NAME,
    LIST
  }

  /** Copies the collections. */
  public FieldShape {
    words = List.copyOf(words);
    group = Map.copyOf(group);
  }

  static FieldShape of(Sort sort, boolean needed) {
    return new FieldShape(sort, needed, List.of(), Map.of());
  }
}
