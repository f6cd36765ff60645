package linkwright.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import linkwright.quantity.Read;

/** What was typed, by key, and what was found wrong with it. */
final class Typed {
  private final Map<String, String> texts;
  private final Map<String, String> troubles = new LinkedHashMap<>();

  Typed(Map<String, String> texts) {
    this.texts = texts;
  }

  Map<String, String> texts() {
    return texts;
  }

  String text(String key) {
    return texts.getOrDefault(key, "").strip();
  }

  /** Reads what stands there; empty if nothing does, or something wrong, which is noted. */
  <T> Optional<T> optional(String key, Function<String, Read<T>> reading) {
    String text = text(key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Read<T> read = reading.apply(text);
    read.problem().ifPresent(sentence -> troubles.putIfAbsent(key, sentence));
    return read.found();
  }

  /** As {@link #optional}, but a blank is noted too. */
  <T> Optional<T> needed(String key, Function<String, Read<T>> reading, String missing) {
    check(key, !text(key).isEmpty(), missing);
    return optional(key, reading);
  }

  void check(String key, boolean holds, String sentence) {
    if (!holds) {
      troubles.putIfAbsent(key, sentence);
    }
  }

  boolean wrong(String key) {
    return troubles.containsKey(key);
  }

  Map<String, String> troubles() {
    return troubles;
  }
}
