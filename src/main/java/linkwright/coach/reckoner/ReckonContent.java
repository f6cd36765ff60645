package linkwright.coach.reckoner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.LinkShape;
import linkwright.quantity.UnitStyle;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Reckoning;
import linkwright.routine.TradeWords;

/** The sums to choose from, or one sum's form with what it comes to beside it. */
final class ReckonContent {
  private static final String TITLE = "reckoner";

  private ReckonContent() {}

  static Content of(ReckonerHeld held, Model model) {
    UnitStyle units = model.settings().units();
    return held.form()
        .map(
            form ->
                Content.of(
                    TITLE,
                    new Beside(
                        List.of(new Fields(form)),
                        held.result()
                            .map(
                                result ->
                                    comesTo(
                                        result,
                                        held.last(),
                                        form,
                                        units,
                                        JobWords.tradeWords(model)))
                            .orElse(List.of()))))
        .orElseGet(() -> sums(held.at(), JobWords.tradeWords(model)));
  }

  private static Content sums(int at, TradeWords words) {
    List<Table.Line> lines =
        Reckoner.sums().stream()
            .map(sum -> Table.Line.of(words.show(sum.id()), words.show(sum.title())))
            .toList();
    List<Table.Column> columns = List.of(Table.Column.words(""), Table.Column.words(""));
    String says = Reckoner.sums().get(at).says();
    return Content.of(TITLE, new Table(columns, lines, at), Prose.says(words.show(says)));
  }

  /** While it cannot be reckoned: what is wrong, and what it came to last, told as such. */
  private static List<Part> comesTo(
      Reckoning result, Optional<Reckoning> last, Form form, UnitStyle units, TradeWords words) {
    List<Part> parts = new ArrayList<>(comesTo(result, form, units, words));
    if (!result.good() && last.isPresent()) {
      parts.add(new Prose(Prose.Kind.MAIN, "As it was before, not as it is typed now:"));
      parts.addAll(comesTo(last.get(), form, units, words));
    }
    return parts;
  }

  private static List<Part> comesTo(
      Reckoning result, Form form, UnitStyle units, TradeWords words) {
    List<Part> parts = new ArrayList<>();
    for (String sentence : result.lines()) {
      Prose.Kind kind = parts.isEmpty() ? Prose.Kind.MAIN : Prose.Kind.SAYS;
      parts.add(new Prose(kind, sentence));
    }
    result.warnings().forEach(each -> parts.add(Prose.stop(each)));
    result.problems().forEach((key, each) -> parts.add(problem(key, each, form)));
    result
        .drawing()
        .ifPresent(
            link -> {
              String size = units.length(link.lengthMm()) + " x " + units.length(link.widthMm());
              parts.add(
                  result
                      .bends()
                      .filter(bends -> !bends.steps().isEmpty())
                      .map(bends -> LinkShape.of(bends, link.wireMm(), units, words))
                      .orElseGet(
                          () ->
                              new Drawing(
                                  List.of(LinkShape.of(link, size, Emphasis.NOW)),
                                  List.of(),
                                  units)));
            });
    return parts;
  }

  /** What is wrong is told as that; what is only still to be given is not. */
  private static Prose problem(String key, String sentence, Form form) {
    boolean toGive = !key.isEmpty() && form.text(key).isEmpty();
    return toGive ? Prose.aside(sentence) : Prose.stop(sentence);
  }
}
