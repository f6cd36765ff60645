package linkwright.coach.content;

import java.util.List;
import java.util.function.UnaryOperator;
import linkwright.coach.form.Form;

/**
 * What a place says, told otherwise part by part: in other words, other units or other signs.
 *
 * @param said what the program says: sentences, labels, headings
 * @param shown what may hold names and notes: values, cells, captions, how a job stands
 * @param asked what a form asks for; what was typed in it is nobody's to change
 */
public record Retold(
    UnaryOperator<String> said, UnaryOperator<String> shown, UnaryOperator<Form> asked)
    implements PartCases<Part> {
  /** All that a place says. */
  public Content of(Content content) {
    return new Content(said.apply(content.title()), of(content.parts()));
  }

  private List<Part> of(List<Part> parts) {
    return parts.stream().map(part -> part.answer(this)).toList();
  }

  private Prose of(Prose prose) {
    return new Prose(prose.kind(), said.apply(prose.text()));
  }

  @Override
  public Part acts(Acts acts) {
    return new Acts(
        acts.choices().stream()
            .map(
                each ->
                    new Acts.Choice(
                        each.act(), shown.apply(each.stands()), each.now(), each.groupEnds()))
            .toList());
  }

  @Override
  public Part bars(Bars bars) {
    return new Bars(
        bars.groups().stream()
            .map(
                group ->
                    new Bars.Group(
                        shown.apply(group.title()), group.bars().stream().map(this::bar).toList()))
            .toList());
  }

  private Bars.Bar bar(Bars.Bar bar) {
    return new Bars.Bar(shown.apply(bar.amount()), bar.stretches(), shown.apply(bar.words()));
  }

  @Override
  public Part beside(Beside beside) {
    return new Beside(of(beside.first()), of(beside.second()));
  }

  @Override
  public Part drawing(Drawing drawing) {
    return new Drawing(
        drawing.shapes().stream()
            .map(
                each ->
                    new Drawing.Outline(
                        shown.apply(each.caption()),
                        each.strokes(),
                        each.lengthMm(),
                        each.widthMm(),
                        each.emphasis()))
            .toList(),
        drawing.words(),
        drawing.spare(),
        drawing.bars());
  }

  @Override
  public Part fields(Fields fields) {
    return new Fields(asked.apply(fields.form()));
  }

  @Override
  public Part figure(Figure figure) {
    return new Figure(figure.number(), shown.apply(figure.word()), figure.emphasis());
  }

  @Override
  public Part pieces(Pieces pieces) {
    return pieces;
  }

  @Override
  public Part prose(Prose prose) {
    return of(prose);
  }

  @Override
  public Part question(Question question) {
    return new Question(
        said.apply(question.asks()),
        question.answers().stream()
            .map(
                each ->
                    new Question.Answer(
                        each.key(), said.apply(each.says()), said.apply(each.means())))
            .toList());
  }

  /** A row's give or take is put between value and unit as it is laid out. */
  @Override
  public Part rows(Rows rows) {
    return new Rows(
        rows.rows().stream()
            .map(
                row ->
                    new Row(
                        said.apply(row.label()),
                        shown.apply(row.value()),
                        shown.apply(row.unit()),
                        row.plusMinus(),
                        row.source(),
                        said.apply(row.remark()),
                        row.emphasis()))
            .toList());
  }

  @Override
  public Part table(Table table) {
    return new Table(
        table.columns().stream()
            .map(column -> new Table.Column(said.apply(column.name()), column.number()))
            .toList(),
        table.lines().stream()
            .map(
                line ->
                    new Table.Line(
                        line.cells().stream().map(shown).toList(),
                        line.below().stream().map(this::of).toList(),
                        line.emphasis()))
            .toList(),
        table.chosen(),
        table.before(),
        table.all());
  }

  @Override
  public Part waiting(WaitShown wait) {
    return wait;
  }
}
