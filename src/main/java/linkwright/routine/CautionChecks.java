package linkwright.routine;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** All that must hold in a caution, as a list that can be read from top to bottom. */
public final class CautionChecks {
  /** ISO 7010 codes: warning, mandatory, prohibition, emergency, fire; then three digits. */
  private static final Pattern SIGN = Pattern.compile("[WMPEF]\\d{3}");

  /** The right one and three beside it. */
  private static final int FEWEST_ANSWERS = 4;

  private static final List<Function<Caution, Stream<Finding>>> ALL =
      List.of(
          caution ->
              absent(
                  caution.source(),
                  "source",
                  "The caution \"%s\" does not say where its advice comes from.",
                  "Give a source, or write \"common practice, no source\".",
                  caution),
          caution ->
              absent(
                  caution.defers(),
                  "defers",
                  "The caution \"%s\" does not put local rules first.",
                  "Write under defers that local rules, the maker's sheet and licensed practice"
                      + " come first.",
                  caution),
          caution ->
              absent(
                  caution.shortLine(),
                  "short",
                  "The caution \"%s\" has no short line.",
                  "Write under short the one line to be shown after the first time.",
                  caution),
          caution ->
              absent(
                  caution.canHappen(),
                  "can-happen",
                  "The caution \"%s\" does not say what can happen.",
                  "Say under can-happen what it guards against.",
                  caution),
          caution ->
              absent(
                  String.join("", caution.doList()),
                  "do",
                  "The caution \"%s\" does not say what to do.",
                  "Write it as a list under do.",
                  caution),
          CautionChecks::signs,
          CautionChecks::questions);

  private CautionChecks() {}

  /** Everything that a caution lacks, all at once; empty if it is sound. */
  public static List<Finding> check(Caution caution) {
    return ALL.stream().flatMap(check -> check.apply(caution)).toList();
  }

  private static Stream<Finding> absent(
      String text, String key, String wrong, String expected, Caution caution) {
    return text.isBlank()
        ? Stream.of(Finding.ofFile(key, wrong.formatted(caution.id()), expected))
        : Stream.empty();
  }

  private static Stream<Finding> questions(Caution caution) {
    return caution.questions().stream()
        .filter(asked -> Set.copyOf(asked.answers()).size() < FEWEST_ANSWERS)
        .map(
            asked ->
                Finding.ofFile(
                    "questions",
                    "The question \"%s\" leaves no choice.".formatted(asked.asks()),
                    "Give the right answer first, then three wrong ones or more, each another."));
  }

  private static Stream<Finding> signs(Caution caution) {
    return caution.wear().stream()
        .filter(gear -> !SIGN.matcher(gear.sign()).matches())
        .map(
            gear ->
                Finding.ofFile(
                    "wear",
                    "The caution \"%s\" has the sign \"%s\", which is no ISO 7010 code."
                        .formatted(caution.id(), gear.sign()),
                    "A code is one of W, M, P, E, F and three digits, such as M004."));
  }
}
