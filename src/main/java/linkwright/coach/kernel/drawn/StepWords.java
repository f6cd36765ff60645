package linkwright.coach.kernel.drawn;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.reference.TradeTerm;
import linkwright.routine.Step;
import linkwright.routine.TradeWords;

/** The words of the trade that stand in a step's texts, and what each means. */
public final class StepWords {
  private StepWords() {}

  /**
   * Those of the open step, in the glossary's order; none without one, and none while a student has
   * still to say which it is.
   */
  public static List<TradeTerm> ofOpen(Model model) {
    return AtBench.of(model)
        .filter(at -> !model.learning().hides(at.step().id()))
        .map(at -> of(at.step(), model))
        .orElse(List.of());
  }

  /** Those of a step, in the glossary's order. */
  public static List<TradeTerm> of(Step step, Model model) {
    String texts = texts(step);
    return model.handbook().reference().glossary().stream()
        .filter(term -> standsIn(term, texts))
        .toList();
  }

  /** Each word of a step with what it means. */
  public static List<Part> told(Step step, Model model) {
    TradeWords words = JobWords.tradeWords(model);
    return of(step, model).stream()
        .flatMap(term -> Stream.concat(Stream.of(head(term, words)), said(term, words).stream()))
        .toList();
  }

  private static Part head(TradeTerm term, TradeWords words) {
    return new Prose(Prose.Kind.HEAD, name(term, words));
  }

  /** What it is called by a reader of those trade words. */
  public static String name(TradeTerm term, TradeWords words) {
    return words == TradeWords.BRITISH ? term.word() : term.american();
  }

  /** What it means, and what it is called across the ocean where that is another word. */
  public static List<Part> said(TradeTerm term, TradeWords words) {
    boolean british = words == TradeWords.BRITISH;
    Optional<String> other =
        term.american().equals(term.word())
            ? Optional.empty()
            : Optional.of(
                british
                    ? "In American words: " + term.american() + "."
                    : "In British words: " + term.word() + ".");
    return Stream.concat(
            Stream.of(Prose.says(words.show(term.says()))), other.stream().map(Prose::aside))
        .map(Part.class::cast)
        .toList();
  }

  private static String texts(Step step) {
    return Stream.concat(
            Stream.of(
                step.title(),
                step.doText(),
                step.lookFor(),
                step.why(),
                step.mind(),
                step.measure()),
            step.wrong().stream()
                .flatMap(remedy -> Stream.of(remedy.sees(), remedy.means(), remedy.remedy())))
        .collect(Collectors.joining(" "))
        .toLowerCase(Locale.ROOT);
  }

  private static boolean standsIn(TradeTerm term, String texts) {
    return Stream.concat(Stream.of(term.word()), term.seenAs().stream())
        .map(form -> form.toLowerCase(Locale.ROOT))
        .filter(texts::contains)
        .anyMatch(
            form ->
                Pattern.compile("\\b" + Pattern.quote(form) + "(s|es|d|ed)?\\b")
                    .matcher(texts)
                    .find());
  }
}
