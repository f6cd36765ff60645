package linkwright.coach.lookup;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.StepWords;
import linkwright.reference.TradeTerm;
import linkwright.routine.TradeWords;

/** The words of the trade explained: those of the open step first. */
final class GlossaryContent {
  private GlossaryContent() {}

  static List<LookUpItem> of(Model model) {
    List<TradeTerm> terms = new ArrayList<>(StepWords.ofOpen(model));
    model.handbook().reference().glossary().stream()
        .filter(term -> !terms.contains(term))
        .forEach(terms::add);
    TradeWords words = JobWords.tradeWords(model);
    return terms.stream().map(term -> entry(term, words)).toList();
  }

  /** The ids of the words that stand in the open step. */
  static List<String> ofStep(Model model) {
    return StepWords.ofOpen(model).stream().map(TradeTerm::word).toList();
  }

  private static LookUpItem entry(TradeTerm term, TradeWords words) {
    List<String> names = new ArrayList<>(term.seenAs());
    names.addAll(List.of(term.word(), term.american()));
    return new LookUpItem(
        "word", term.word(), StepWords.name(term, words), names, StepWords.said(term, words));
  }
}
