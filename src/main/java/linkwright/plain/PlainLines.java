package linkwright.plain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Bars;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Emphasis;
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
import linkwright.coach.form.Field;
import linkwright.coach.keys.Act;

/** Content as lines of text: each line says all that it means, without columns, colour or place. */
public final class PlainLines implements PartCases<List<String>> {
  private static final Pattern BEGUN_BY_AN_ACT = Pattern.compile("(?<=[.!?] )(?=\\{do:)");

  private final Function<Act, String> nameOf;

  /**
   * A layout in lines.
   *
   * @param nameOf how a sentence that mentions an act names it, such as {@code type wire}
   */
  public PlainLines(Function<Act, String> nameOf) {
    this.nameOf = nameOf;
  }

  /** All that a place says, its title first. */
  public List<String> of(Content content) {
    List<String> lines = new ArrayList<>();
    if (!content.title().isEmpty()) {
      lines.add(sentence(capital(content.title())));
    }
    lines.addAll(of(content.parts()));
    return lines;
  }

  /** The parts without a title. */
  public List<String> of(List<Part> parts) {
    List<String> lines = new ArrayList<>();
    parts.forEach(part -> lines.addAll(part.answer(this)));
    return lines;
  }

  /** A sentence with the acts it mentions named. */
  public String filled(String text) {
    return BEGUN_BY_AN_ACT
        .splitAsStream(text)
        .map(part -> part.startsWith("{do:") ? capital(named(part)) : named(part))
        .collect(Collectors.joining());
  }

  private String named(String text) {
    return ActMention.fill(text, nameOf);
  }

  @Override
  public List<String> acts(Acts acts) {
    return acts.choices().stream()
        .map(
            choice ->
                sentence(
                    capital(choice.act().words())
                        + (choice.now() ? ", where the work is" : "")
                        + (choice.stands().isBlank() ? "" : ": " + choice.stands())))
        .toList();
  }

  @Override
  public List<String> bars(Bars bars) {
    List<String> lines = new ArrayList<>();
    for (Bars.Group group : bars.groups()) {
      lines.add(sentence(capital(group.title())));
      group.bars().forEach(bar -> lines.add(sentence(bar.amount() + ": " + bar.words())));
    }
    return lines;
  }

  @Override
  public List<String> beside(Beside beside) {
    List<String> lines = new ArrayList<>(of(beside.first()));
    lines.addAll(of(beside.second()));
    return lines;
  }

  @Override
  public List<String> drawing(Drawing drawing) {
    if (!drawing.words().isEmpty()) {
      return drawing.words().stream().map(PlainLines::capital).map(PlainLines::sentence).toList();
    }
    return drawing.shapes().stream()
        .filter(shape -> !shape.caption().isBlank())
        .map(shape -> sentence("Drawn: " + shape.caption()))
        .toList();
  }

  @Override
  public List<String> fields(Fields fields) {
    List<String> lines = new ArrayList<>(List.of(sentence(capital(fields.form().title()))));
    for (Field field : fields.form().fields()) {
      lines.add(capital(field.label()) + ": " + (field.text().isBlank() ? "empty" : field.now()));
    }
    return lines;
  }

  @Override
  public List<String> figure(Figure figure) {
    String word = capital(filled(figure.word()));
    String number = figure.number().replace("/", " of ");
    return List.of(sentence(word + (word.endsWith(".") ? " " : ": ") + number));
  }

  @Override
  public List<String> pieces(Pieces pieces) {
    List<String> lines = new ArrayList<>();
    byStage(pieces).stream()
        .filter(portion -> portion.count() > 0)
        .forEach(
            portion ->
                lines.add(
                    sentence(
                        capital(pieces.kind())
                            + ": "
                            + portion.count()
                            + " "
                            + portion.stage()
                            + (portion.redo() ? ", to be redone" : ""))));
    return lines;
  }

  /** A stage is told once, wherever its pieces stand in the chain; the furthest first. */
  private static List<Pieces.Portion> byStage(Pieces pieces) {
    Map<Pieces.Portion, Integer> counts = new LinkedHashMap<>();
    pieces
        .portions()
        .forEach(
            each ->
                counts.merge(
                    new Pieces.Portion(each.stage(), 0, each.reached(), each.redo()),
                    each.count(),
                    Integer::sum));
    return counts.entrySet().stream()
        .map(
            each ->
                new Pieces.Portion(
                    each.getKey().stage(),
                    each.getValue(),
                    each.getKey().reached(),
                    each.getKey().redo()))
        .sorted(Comparator.comparingInt(Pieces.Portion::reached).reversed())
        .toList();
  }

  @Override
  public List<String> prose(Prose prose) {
    if (prose.text().isBlank()) {
      return List.of();
    }
    String label = prose.kind().label();
    String text = filled(prose.text());
    return List.of(
        label.isEmpty() ? sentence(capital(text)) : capital(label) + ": " + sentence(text));
  }

  @Override
  public List<String> question(Question question) {
    List<String> lines = new ArrayList<>(List.of(filled(question.asks())));
    for (Question.Answer answer : question.answers()) {
      String means = answer.means().isBlank() ? "" : " " + sentence(filled(answer.means()));
      lines.add(answer.key() + ": " + sentence(answer.says()) + means);
    }
    return lines;
  }

  @Override
  public List<String> rows(Rows rows) {
    return rows.rows().stream().map(this::row).toList();
  }

  private String row(Row row) {
    String from = row.source().isEmpty() ? "" : ", " + row.source();
    String remark = row.remark().isEmpty() ? "" : ", " + filled(row.remark());
    String label = row.label().isEmpty() ? "" : row.label() + ": ";
    return sentence(capital(label + row.amount() + from + remark));
  }

  @Override
  public List<String> table(Table table) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < table.lines().size(); i++) {
      Table.Line line = table.lines().get(i);
      List<String> cells = new ArrayList<>();
      for (int c = 0; c < line.cells().size(); c++) {
        String cell = line.cells().get(c).strip();
        String name = c < table.columns().size() ? table.columns().get(c).name() : "";
        if (!cell.isEmpty() && !cell.equals("-")) {
          cells.add(name.isEmpty() ? cell : name + " " + cell);
        }
      }
      String chosen = table.before() + i == table.chosen() && table.all() > 1 ? "Chosen: " : "";
      String trouble = line.emphasis() == Emphasis.TROUBLE ? "Mind: " : "";
      // A label whose only value is a dash would be heard as if it meant something.
      String none = cells.size() == 1 && line.cells().contains("-") ? ": nothing entered" : "";
      lines.add(sentence(capital(chosen + trouble + String.join(", ", cells) + none)));
      line.below().forEach(below -> lines.addAll(prose(below)));
    }
    return lines;
  }

  @Override
  public List<String> waiting(WaitShown wait) {
    String whose = wait.job().isEmpty() ? "" : " (" + wait.job() + ")";
    String ends = wait.ends().isEmpty() ? "" : ": " + filled(wait.ends());
    return List.of(
        sentence(
            "Timer: "
                + wait.name()
                + whose
                + (wait.due() ? " is due" : ", " + wait.left())
                + ends));
  }

  /** A text with a stop behind it, where it has none yet. */
  public static String sentence(String text) {
    // What a screen keeps apart by room is kept apart by a sign.
    String whole = text.strip().replaceAll(" {2,}", ": ");
    return whole.isEmpty() || ".:!?”".indexOf(whole.charAt(whole.length() - 1)) >= 0
        ? whole
        : whole + ".";
  }

  private static String capital(String word) {
    return word.isEmpty()
        ? word
        : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }
}
