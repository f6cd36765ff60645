package linkwright.books.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import linkwright.books.facts.FieldShape.Sort;
import linkwright.job.EntryId;
import linkwright.quantity.Nearest;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.routine.WaitId;

/**
 * The fields of a fact while they are read. What is wrong is told and a stand-in given back, so
 * that all of it is found at once; fields that nobody asks for are a newer version's, and passed
 * over.
 */
final class FactIn {
  /** More pieces, links or joints than any job; also what a slip of the keyboard comes to. */
  private static final long MOST_COUNT = 1_000_000;

  /** Ten thousand hours, as for any time that is typed. */
  private static final long MOST_SECONDS = 36_000_000;

  private static final double MOST = 1e9;
  private static final EntryId NO_ENTRY = new EntryId("?", 1);

  private final Map<String, Object> fields;
  private final List<String> troubles = new ArrayList<>();
  private final Map<String, FieldShape> asked = new LinkedHashMap<>();
  private final Map<String, FactIn> groups = new LinkedHashMap<>();
  private final boolean shapeOnly;

  FactIn(Map<String, Object> fields) {
    this(fields, false);
  }

  private FactIn(Map<String, Object> fields, boolean shapeOnly) {
    this.fields = fields;
    this.shapeOnly = shapeOnly;
  }

  /** Without a field; what is read from it tells what a fact can say, see {@link #asked}. */
  static FactIn ofShape() {
    return new FactIn(Map.of(), true);
  }

  /** The fields that were asked for, in that order. */
  Map<String, FieldShape> asked() {
    groups.forEach(
        (name, group) ->
            asked.put(name, new FieldShape(Sort.GROUPS_BY_NAME, false, List.of(), group.asked())));
    return asked;
  }

  List<String> troubles() {
    return troubles;
  }

  String text(String name) {
    return needed(name, Sort.TEXT).map(raw -> text(name, raw)).orElse("");
  }

  String some(String name) {
    return found(name, Sort.TEXT).map(raw -> text(name, raw)).orElse("");
  }

  int count(String name) {
    return needed(name, Sort.COUNT).map(raw -> (int) whole(name, raw, MOST_COUNT)).orElse(0);
  }

  long seconds(String name) {
    return needed(name, Sort.SECONDS).map(raw -> whole(name, raw, MOST_SECONDS)).orElse(0L);
  }

  /** A whole number of any size that is exact, below nothing too. */
  long number(String name) {
    Object raw = needed(name, Sort.NUMBER).orElse(0L);
    if (raw instanceof Long number) {
      return number;
    }
    return wrong(name, raw, "a whole number", 0L);
  }

  double decimal(String name) {
    return needed(name, Sort.DECIMAL).map(raw -> decimal(name, raw)).orElse(0.0);
  }

  OptionalDouble measured(String name) {
    Optional<Object> raw = found(name, Sort.DECIMAL);
    return raw.isPresent() ? OptionalDouble.of(decimal(name, raw.get())) : OptionalDouble.empty();
  }

  boolean flag(String name) {
    return needed(name, Sort.FLAG).map(raw -> flag(name, raw)).orElse(false);
  }

  boolean raised(String name) {
    return found(name, Sort.FLAG).map(raw -> flag(name, raw)).orElse(false);
  }

  EntryId entry(String name) {
    String text = needed(name, Sort.ENTRY).map(raw -> text(name, raw)).orElse("");
    return entry(name, text);
  }

  private EntryId entry(String name, String text) {
    return EntryId.parse(text)
        .orElseGet(() -> wrong(name, text, "the name of an entry, such as bench-7", NO_ENTRY));
  }

  /** One of a few words; the first of them if the field is absent and may be. */
  <E> E word(String name, Words<E> words, boolean mayBeAbsent) {
    if (shapeOnly) {
      asked.put(name, new FieldShape(Sort.WORD, !mayBeAbsent, words.all(), Map.of()));
    }
    Optional<Object> raw = mayBeAbsent ? found(name) : needed(name);
    if (raw.isEmpty()) {
      return words.usual();
    }
    String text = text(name, raw.get());
    return words
        .of(text)
        .orElseGet(
            () -> wrong(name, text, "one of " + String.join(", ", words.all()), words.usual()));
  }

  Map<String, String> texts(String name) {
    return map(name, needed(name, Sort.TEXTS_BY_NAME), this::text);
  }

  PieceKind kind() {
    return new PieceKind(text("piece"));
  }

  StepId step() {
    return new StepId(text("step"));
  }

  StepId someStep() {
    return new StepId(some("step"));
  }

  WaitId someWait() {
    return new WaitId(some("wait"));
  }

  Stage stage(String name) {
    return new Stage(text(name));
  }

  /** How many of each kind of piece. */
  Map<PieceKind, Integer> pieces() {
    Map<PieceKind, Integer> pieces = new LinkedHashMap<>();
    map(
            "pieces",
            needed("pieces", Sort.COUNTS_BY_NAME),
            (key, raw) -> (int) whole(key, raw, MOST_COUNT))
        .forEach((kind, count) -> pieces.put(new PieceKind(kind), count));
    return pieces;
  }

  /** How many of each kind of piece; none if the field is absent. */
  Map<PieceKind, Integer> someCounted(String name) {
    Map<PieceKind, Integer> pieces = new LinkedHashMap<>();
    map(name, found(name, Sort.COUNTS_BY_NAME), (key, raw) -> (int) whole(key, raw, MOST_COUNT))
        .forEach((kind, count) -> pieces.put(new PieceKind(kind), count));
    return pieces;
  }

  /** How many links of each size; none if the field is absent. */
  Map<String, Integer> sizes(String name) {
    return map(
        name, found(name, Sort.COUNTS_BY_NAME), (key, raw) -> (int) whole(key, raw, MOST_COUNT));
  }

  /** The stage of each kind of piece; none if the field is absent. */
  Map<PieceKind, Stage> someStages(String name) {
    Map<PieceKind, Stage> stages = new LinkedHashMap<>();
    map(name, found(name, Sort.TEXTS_BY_NAME), this::text)
        .forEach((kind, stage) -> stages.put(new PieceKind(kind), new Stage(stage)));
    return stages;
  }

  Map<String, Double> decimals(String name) {
    return map(name, needed(name, Sort.DECIMALS_BY_NAME), this::decimal);
  }

  /** Numbers of any sign; empty if the field is absent. */
  Map<String, Double> someNumbers(String name) {
    return map(
        name,
        found(name, Sort.NUMBERS_BY_NAME),
        (key, raw) ->
            raw instanceof Number number && Math.abs(number.doubleValue()) <= MOST
                ? number.doubleValue()
                : wrong(key, raw, "a number", 0.0));
  }

  /** Counts by name; empty if the field is absent. */
  Map<String, Integer> someCounts(String name) {
    return map(name, found(name), (key, raw) -> (int) whole(key, raw, MOST_COUNT));
  }

  /** Groups of fields by their names; empty if the field is absent. */
  Map<String, FactIn> someGroups(String name) {
    if (shapeOnly) {
      FactIn group = ofShape();
      groups.put(name, group);
      return Map.of("", group);
    }
    return map(
        name,
        found(name),
        (key, raw) -> {
          Map<String, Object> group = new LinkedHashMap<>();
          if (raw instanceof Map<?, ?> map) {
            map.forEach((inner, value) -> group.put(String.valueOf(inner), value));
          } else {
            wrong(key, raw, "a group of fields", "");
          }
          return new FactIn(group);
        });
  }

  List<String> list(String name) {
    Object raw = needed(name, Sort.LIST).orElse(List.of());
    if (!(raw instanceof List<?> list)) {
      return wrong(name, raw, "a list", List.of());
    }
    return list.stream().map(item -> text(name, item)).toList();
  }

  /** Entries by name; empty if the field is absent. */
  Optional<List<EntryId>> someEntries(String name) {
    return found(name, Sort.LIST)
        .map(raw -> raw instanceof List<?> list ? list : wrong(name, raw, "a list", List.of()))
        .map(list -> list.stream().map(item -> entry(name, text(name, item))).toList());
  }

  private <T> Map<String, T> map(
      String name, Optional<Object> found, BiFunction<String, Object, T> each) {
    Map<String, T> read = new LinkedHashMap<>();
    Object raw = found.orElse(Map.of());
    if (raw instanceof Map<?, ?> map) {
      map.forEach(
          (key, value) -> read.put(String.valueOf(key), each.apply(String.valueOf(key), value)));
    } else {
      wrong(name, raw, "a group of fields", "");
    }
    return read;
  }

  private void asking(String name, Sort sort, boolean needed) {
    if (shapeOnly) {
      asked.put(name, FieldShape.of(sort, needed));
    }
  }

  private Optional<Object> found(String name, Sort sort) {
    asking(name, sort, false);
    return found(name);
  }

  private Optional<Object> needed(String name, Sort sort) {
    asking(name, sort, true);
    return needed(name);
  }

  private Optional<Object> found(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  private Optional<Object> needed(String name) {
    Optional<Object> raw = found(name);
    if (raw.isEmpty()) {
      String near = Nearest.of(name, fields.keySet()).map(is -> "; is it " + is + "?").orElse("");
      troubles.add("it has no " + name + near);
    }
    return raw;
  }

  private String text(String name, Object raw) {
    return raw instanceof Map || raw instanceof List
        ? wrong(name, raw, "a text", "")
        : String.valueOf(raw);
  }

  private boolean flag(String name, Object raw) {
    return raw instanceof Boolean flag ? flag : wrong(name, raw, "true or false", false);
  }

  private long whole(String name, Object raw, long most) {
    boolean whole =
        raw instanceof Number number
            && number.doubleValue() == Math.rint(number.doubleValue())
            && number.doubleValue() >= 0
            && number.doubleValue() <= most;
    return whole
        ? ((Number) raw).longValue()
        : wrong(name, raw, "a whole number from 0 to " + most, 0L);
  }

  /** Lengths, masses, times and prices: nothing in a book is below nothing. */
  private double decimal(String name, Object raw) {
    boolean sound =
        raw instanceof Number number && number.doubleValue() >= 0 && number.doubleValue() <= MOST;
    return sound ? ((Number) raw).doubleValue() : wrong(name, raw, "a number of 0 or more", 0.0);
  }

  private <T> T wrong(String name, Object raw, String wanted, T standIn) {
    String text = String.valueOf(raw);
    String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
    troubles.add("its " + name + " is " + shown + ", which is not " + wanted);
    return standIn;
  }
}
