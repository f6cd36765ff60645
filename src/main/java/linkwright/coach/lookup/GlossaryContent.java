package linkwright.coach.lookup;

import java.util.ArrayList;
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
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.reference.TradeTerm;
import linkwright.routine.Step;
import linkwright.routine.TradeWords;

/** The words of the trade explained: those of the open step first. */
final class GlossaryContent {
  private GlossaryContent() {}

  static List<LookUpItem> of(Model model) {
    String texts = AtBench.of(model).map(at -> texts(at.step())).orElse("");
    List<TradeTerm> here = new ArrayList<>();
    List<TradeTerm> others = new ArrayList<>();
    for (TradeTerm term : model.handbook().reference().glossary()) {
      (standsIn(term, texts) ? here : others).add(term);
    }
    TradeWords words = JobWords.tradeWords(model);
    return Stream.concat(here.stream(), others.stream()).map(term -> entry(term, words)).toList();
  }

  /** The ids of the words that stand in the open step. */
  static List<String> ofStep(Model model) {
    return of(model).stream().limit(here(model)).map(LookUpItem::id).toList();
  }

  /** How many of the words stand in the open step. */
  static int here(Model model) {
    String texts = AtBench.of(model).map(at -> texts(at.step())).orElse("");
    return (int)
        model.handbook().reference().glossary().stream()
            .filter(term -> standsIn(term, texts))
            .count();
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

  private static LookUpItem entry(TradeTerm term, TradeWords words) {
    boolean differ = !term.american().equals(term.word());
    boolean british = words == TradeWords.BRITISH;
    String title = british ? term.word() : term.american();
    Optional<String> other =
        differ
            ? Optional.of(
                british
                    ? "In American words: " + term.american() + "."
                    : "In British words: " + term.word() + ".")
            : Optional.empty();
    List<String> names = new ArrayList<>(term.seenAs());
    names.addAll(List.of(term.word(), term.american()));
    return new LookUpItem(
        "word",
        term.word(),
        title,
        names,
        Stream.concat(
                Stream.of(Prose.says(words.show(term.says()))), other.stream().map(Prose::aside))
            .map(Part.class::cast)
            .toList());
  }
}
