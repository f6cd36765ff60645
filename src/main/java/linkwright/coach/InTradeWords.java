package linkwright.coach;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Bars;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Part;
import linkwright.coach.content.PartCases;
import linkwright.coach.content.Pieces;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.content.WaitShown;
import linkwright.coach.form.Form;
import linkwright.quantity.SaidIn;
import linkwright.quantity.UnitStyle;
import linkwright.routine.TradeWords;

/**
 * What a place says, in the trade words of the user's choice: sentences, labels, fields; what a
 * form asks for and complains of in her units too. What was typed stays as it is, and so does what
 * stands in quotation marks: names.
 */
record InTradeWords(TradeWords words, UnitStyle units) implements PartCases<Part> {
  /** Names, and acts that are named in braces. */
  private static final Pattern QUOTED = Pattern.compile("“[^”]*”|\"[^\"]*\"|\\{[^}]*}");

  Content of(Content content) {
    return words == TradeWords.BRITISH && units == UnitStyle.METRIC
        ? content
        : new Content(said(content.title()), of(content.parts()));
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

  private List<Part> of(List<Part> parts) {
    return parts.stream().map(part -> part.answer(this)).toList();
  }

  @Override
  public Part beside(Beside beside) {
    return new Beside(of(beside.first()), of(beside.second()));
  }

  @Override
  public Part fields(Fields fields) {
    Form form = fields.form();
    Form said =
        new Form(
            form.purpose(),
            said(form.title()),
            form.fields(),
            form.at(),
            form.keepWords(),
            form.unfolded(),
            form.explained());
    return new Fields(
        said.mapFields(
            field ->
                field
                    .inWords(words)
                    .inUnits(units)
                    .with(field.trouble().map(this::said).map(told -> SaidIn.units(told, units)))));
  }

  @Override
  public Part prose(Prose prose) {
    return new Prose(prose.kind(), said(prose.text()));
  }

  @Override
  public Part question(Question question) {
    return new Question(
        said(question.asks()),
        question.answers().stream()
            .map(each -> new Question.Answer(each.key(), said(each.says()), said(each.means())))
            .toList());
  }

  @Override
  public Part rows(Rows rows) {
    return new Rows(
        rows.rows().stream()
            .map(
                row ->
                    new Row(
                        said(row.label()),
                        row.value(),
                        row.unit(),
                        row.plusMinus(),
                        row.source(),
                        said(row.remark()),
                        row.emphasis()))
            .toList());
  }

  /** Cells may hold names and notes; what stands below a line is said by the program. */
  @Override
  public Part table(Table table) {
    List<Table.Column> columns =
        table.columns().stream()
            .map(column -> new Table.Column(said(column.name()), column.number()))
            .toList();
    List<Table.Line> lines =
        table.lines().stream()
            .map(
                line ->
                    new Table.Line(
                        line.cells(),
                        line.below().stream()
                            .map(each -> new Prose(each.kind(), said(each.text())))
                            .toList(),
                        line.emphasis()))
            .toList();
    return new Table(columns, lines, table.chosen(), table.before(), table.all());
  }

  @Override
  public Part acts(Acts acts) {
    return acts;
  }

  @Override
  public Part bars(Bars bars) {
    return bars;
  }

  @Override
  public Part drawing(Drawing drawing) {
    return drawing;
  }

  @Override
  public Part figure(Figure figure) {
    return figure;
  }

  @Override
  public Part pieces(Pieces pieces) {
    return pieces;
  }

  @Override
  public Part waiting(WaitShown wait) {
    return wait;
  }
}
