package linkwright.coach;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.content.Content;
import linkwright.coach.content.Page;
import linkwright.coach.content.Retold;
import linkwright.coach.form.Form;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.routine.TradeWords;

/**
 * What a place says, in the trade words of the user's choice: sentences, labels, fields; what a
 * form asks for and complains of in her units too. What was typed stays as it is, and so does what
 * stands in quotation marks: names.
 */
public record InTradeWords(TradeWords words, UnitStyle units) {
  /** Names, and acts that are named in braces. */
  private static final Pattern QUOTED = Pattern.compile("“[^”]*”|\"[^\"]*\"|\\{[^}]*}");

  /** All that a place says. */
  public Content of(Content content) {
    return words == TradeWords.BRITISH && units == UnitStyle.METRIC
        ? content
        : new Retold(this::said, UnaryOperator.identity(), this::form).of(content);
  }

  /** What keys do. */
  List<Page.Open> of(List<Page.Open> open) {
    return open.stream()
        .map(each -> new Page.Open(each.act(), said(each.says()), each.always()))
        .toList();
  }

  /** What is read across the room. */
  Page.Across of(Page.Across across) {
    return new Page.Across(
        across.number(), across.word(), across.act(), said(across.says()), across.due());
  }

  /** A sentence in those words. */
  String said(String text) {
    if (words == TradeWords.BRITISH || text.isEmpty()) {
      return text;
    }
    StringBuilder said = new StringBuilder();
    Matcher quoted = QUOTED.matcher(text);
    int at = 0;
    while (quoted.find()) {
      said.append(words.show(text.substring(at, quoted.start()))).append(quoted.group());
      at = quoted.end();
    }
    return said.append(words.show(text.substring(at))).toString();
  }

  private Form form(Form form) {
    Form said =
        new Form(
            form.purpose(),
            said(form.title()),
            form.fields(),
            form.at(),
            form.keepWords(),
            form.unfolded(),
            form.explained(),
            form.about());
    return said.mapFields(
        field ->
            field
                .inWords(words)
                .inUnits(units)
                .with(field.trouble().map(this::said).map(told -> SaidIn.units(told, units))));
  }
}
