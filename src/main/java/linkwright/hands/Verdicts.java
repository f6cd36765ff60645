package linkwright.hands;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import linkwright.fit.Verdict;

/** Verdicts in words: what the next test piece should be. */
public final class Verdicts {
  private Verdicts() {}

  /** The word of a verdict: {@code longer}, {@code eye larger}, {@code right}. */
  public static String word(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** All words, in order. */
  public static List<String> words() {
    return Arrays.stream(Verdict.values()).map(Verdicts::word).toList();
  }

  /** The verdict of a word. */
  public static Optional<Verdict> read(String word) {
    String plain = word.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    return Arrays.stream(Verdict.values()).filter(one -> word(one).equals(plain)).findFirst();
  }

  /** The verdicts that words stand for; an unknown word, from a newer version, is passed over. */
  public static List<Verdict> of(List<String> words) {
    List<Verdict> verdicts = new ArrayList<>();
    words.forEach(word -> read(word).ifPresent(verdicts::add));
    return verdicts;
  }
}
