package linkwright.view.spelt;

import java.util.List;
import java.util.function.UnaryOperator;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Bars;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Page;
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

/**
 * A page in the signs of a place that has few: spelt before it is laid out, so that what takes more
 * columns there has them. What was typed stays as it is.
 */
public record Spelt(UnaryOperator<String> spelt) implements PartCases<Part> {
  /** The page with each text that is said in it spelt so. */
  public static Page of(Page page, UnaryOperator<String> spelt) {
    Spelt in = new Spelt(spelt);
    return new Page(
        page.job(),
        new Content(page.body().title(), in.of(page.body().parts())),
        page.turned(),
        page.turns(),
        page.waits(),
        page.hotWork(),
        page.chain(),
        in.said(page.still()),
        in.said(page.told()),
        page.trouble(),
        page.open(),
        page.away(),
        page.across());
  }

  private String said(String text) {
    return spelt.apply(text);
  }

  private List<Part> of(List<Part> parts) {
    return parts.stream().map(part -> part.answer(this)).toList();
  }

  private List<Prose> prose(List<Prose> below) {
    return below.stream().map(each -> new Prose(each.kind(), said(each.text()))).toList();
  }

  @Override
  public Part acts(Acts acts) {
    return new Acts(
        acts.choices().stream()
            .map(
                each ->
                    new Acts.Choice(each.act(), said(each.stands()), each.now(), each.groupEnds()))
            .toList());
  }

  @Override
  public Part bars(Bars bars) {
    return new Bars(
        bars.groups().stream()
            .map(
                group ->
                    new Bars.Group(
                        said(group.title()),
                        group.bars().stream()
                            .map(
                                bar ->
                                    new Bars.Bar(
                                        said(bar.amount()), bar.stretches(), said(bar.words())))
                            .toList()))
            .toList());
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
                        said(each.caption()),
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
    Form form = fields.form();
    return new Fields(
        form.mapFields(
            field ->
                field
                    .hinted(said(field.hint()))
                    .helped(said(field.help()))
                    .with(field.trouble().map(this::said))));
  }

  @Override
  public Part figure(Figure figure) {
    return new Figure(figure.number(), said(figure.word()), figure.emphasis());
  }

  @Override
  public Part pieces(Pieces pieces) {
    return pieces;
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

  /** A row's give or take is put between value and unit as it is laid out, and spelt there. */
  @Override
  public Part rows(Rows rows) {
    return new Rows(
        rows.rows().stream()
            .map(
                row ->
                    new Row(
                        said(row.label()),
                        said(row.value()),
                        said(row.unit()),
                        row.plusMinus(),
                        row.source(),
                        said(row.remark()),
                        row.emphasis()))
            .toList());
  }

  @Override
  public Part table(Table table) {
    return new Table(
        table.columns().stream()
            .map(column -> new Table.Column(said(column.name()), column.number()))
            .toList(),
        table.lines().stream()
            .map(
                line ->
                    new Table.Line(
                        line.cells().stream().map(this::said).toList(),
                        prose(line.below()),
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
