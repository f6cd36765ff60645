package linkwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading something that a person wrote: the value, or a sentence that says what is
 * wrong and what would be right.
 *
 * @param <T> what was to be read
 */
public sealed interface Read<T> {
  /** It could be read. */
  record Good<T>(T value) implements Read<T> {}

  /** It could not; the sentence is meant for the person who wrote it. */
  record Bad<T>(String sentence) implements Read<T> {}

  /** A value that could be read. */
  static <T> Read<T> good(T value) {
    return new Good<>(value);
  }

  /** A sentence in place of a value. */
  static <T> Read<T> bad(String sentence) {
    return new Bad<>(sentence);
  }

  /** All the values, or all the sentences one after the other: everything is told at once, once. */
  static <T> Read<List<T>> all(List<Read<T>> parts) {
    List<T> values = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (Read<T> part : parts) {
      if (part instanceof Good<T> good) {
        values.add(good.value());
      } else if (part instanceof Bad<T> bad && !sentences.contains(bad.sentence())) {
        sentences.add(bad.sentence());
      }
    }
    return sentences.isEmpty() ? good(List.copyOf(values)) : bad(String.join(" ", sentences));
  }

  /** The same reading with its value changed; a bad one stays as it is. */
  default <U> Read<U> map(Function<? super T, ? extends U> change) {
    if (this instanceof Good<T> good) {
      return new Good<>(change.apply(good.value()));
    }
    return new Bad<>(((Bad<T>) this).sentence());
  }

  /** Goes on to a second reading; a bad one stays as it is. */
  default <U> Read<U> flatMap(Function<? super T, Read<U>> next) {
    if (this instanceof Good<T> good) {
      return next.apply(good.value());
    }
    return new Bad<>(((Bad<T>) this).sentence());
  }

  /** Whether there is a value. */
  default boolean isGood() {
    return this instanceof Good<T>;
  }

  /** The value; for places where a bad reading would be the programmer's fault. */
  default T orThrow() {
    if (this instanceof Good<T> good) {
      return good.value();
    }
    throw new IllegalArgumentException(((Bad<T>) this).sentence());
  }

  /** The value, or another in its place. */
  default T orElse(T other) {
    return this instanceof Good<T> good ? good.value() : other;
  }

  /** The value, if there is one. */
  default Optional<T> found() {
    return this instanceof Good<T> good ? Optional.of(good.value()) : Optional.empty();
  }

  /** The sentence, if it could not be read. */
  default Optional<String> problem() {
    return this instanceof Bad<T> bad ? Optional.of(bad.sentence()) : Optional.empty();
  }
}
