package linkwright.reckon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import linkwright.link.Pattern;
import linkwright.quantity.Count;
import linkwright.quantity.Length;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import linkwright.quantity.SaidIn;
import linkwright.quantity.Share;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Metal;
import linkwright.reference.Temper;

/** What was typed for a sum, read by its asks; what is wrong is noted by ask. */
final class Answers {
  private final Sum sum;
  private final Map<String, String> typed;
  private final ReckoningBasis given;
  private final Map<String, String> problems = new LinkedHashMap<>();
  private final List<String> missing = new ArrayList<>();

  Answers(Sum sum, Map<String, String> typed, ReckoningBasis given) {
    this.sum = sum;
    this.typed = typed;
    this.given = given;
  }

  ReckoningBasis given() {
    return given;
  }

  UnitStyle units() {
    return given.units();
  }

  /** Whether there is an answer, right or wrong. */
  boolean has(String key) {
    return !text(key).isEmpty();
  }

  /** Whether an answer was given in numbers of a gauge. */
  boolean inGauge(String key) {
    return text(key).matches("(?i).*(AWG|SWG|B&S|\\bga(uge)?\\b).*");
  }

  private String text(String key) {
    return typed.getOrDefault(sum.ask(key).key(), "").strip();
  }

  /** Reads an answer; empty if it is missing or wrong, which is noted. */
  <T> Optional<T> read(String key, Function<String, Read<T>> reading) {
    Ask ask = sum.ask(key);
    if (!has(key)) {
      if (ask.needed()) {
        String example = SaidIn.units(ask.hint(), units());
        ask(key, "Give the " + ask.label() + ", such as " + example + ".");
      }
      return Optional.empty();
    }
    Read<T> read = reading.apply(text(key));
    read.problem().ifPresent(sentence -> problem(key, exampled(sentence)));
    return read.found();
  }

  /** The sentence with the example at its end in the user's units. */
  private String exampled(String sentence) {
    int at = sentence.lastIndexOf("Write it like this: ");
    return at < 0
        ? sentence
        : sentence.substring(0, at) + SaidIn.units(sentence.substring(at), units());
  }

  /** A length of more than nothing, mm. */
  Optional<Double> size(String key) {
    return read(key, Length::readSize).map(Length::mm);
  }

  /** A length, which may be nothing, mm. */
  Optional<Double> length(String key) {
    return read(key, Length::read).map(Length::mm);
  }

  /** A wire's diameter, mm. */
  Optional<Double> wire(String key) {
    return read(key, Length::readWire).map(Length::mm);
  }

  /** A whole number, 0 or more. */
  Optional<Integer> count(String key) {
    return read(key, Count::read);
  }

  Optional<Double> share(String key) {
    return read(key, Share::read).map(Share::value);
  }

  Optional<Metal> metal() {
    return read("metal", given.reference()::metal);
  }

  Temper temper() {
    return read("temper", Temper::read).orElse(Temper.SOFT);
  }

  Optional<Pattern> pattern() {
    return read("pattern", this::pattern);
  }

  private Read<Pattern> pattern(String id) {
    List<String> known = given.patterns().stream().map(Pattern::id).toList();
    return given.patterns().stream()
        .filter(pattern -> pattern.id().equals(id))
        .findFirst()
        .map(Read::good)
        .orElseGet(
            () ->
                Read.bad(
                    "No pattern is called “"
                        + id
                        + "”. "
                        + Nearest.of(id, known)
                            .map(near -> "Did you mean " + near + "?")
                            .orElse("There are: " + String.join(", ", known) + ".")));
  }

  /** Notes the sentence unless the condition holds. */
  void check(String key, boolean holds, String sentence) {
    if (!holds) {
      problem(key, sentence);
    }
  }

  /** Notes that an answer is still needed, unless there is one. */
  void ask(String key, String sentence) {
    if (!has(key) && !problems.containsKey(key)) {
      problem(key, sentence);
      missing.add(key);
    }
  }

  /** Notes what is wrong; the first sentence on an ask stands. */
  void problem(String key, String sentence) {
    problems.putIfAbsent(key, sentence);
  }

  /** The value, if there is one; else its sentence is noted on that ask. */
  <T> Optional<T> found(String key, Read<T> read) {
    read.problem().ifPresent(sentence -> problem(key, sentence));
    return read.found();
  }

  /** Whether anything is wrong or missing so far. */
  boolean wrong() {
    return !problems.isEmpty();
  }

  Map<String, String> problems() {
    return problems;
  }

  List<String> missing() {
    return missing;
  }
}
