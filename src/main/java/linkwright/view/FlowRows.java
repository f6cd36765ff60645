package linkwright.view;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.content.WaitShown;
import linkwright.coach.keys.KeyMap;
import linkwright.text.Text;

/** Texts, labelled values, questions and waits broken into rows of a width. */
final class FlowRows {
  /** Longer lines are lost on the way back to the left. */
  static final int MOST_WIDE = 80;

  private static final int MOST_LABEL = 17;

  /**
   * A row.
   *
   * @param label the word in the margin; empty where a text goes on
   * @param indent where its text begins
   * @param text the text
   * @param tone how it is to be read
   * @param kind what it is a row of
   */
  record FlowRow(String label, int indent, String text, Tone tone, Prose.Kind kind) {
    /** Whether it stands beside the rest of a caution where two columns have room. */
    boolean beside() {
      return switch (kind) {
        case IF_SO, WEAR, SIGNS, SOURCE -> true;
        default -> false;
      };
    }
  }

  private final List<FlowRow> rows = new ArrayList<>();
  private final int width;
  private final int margin;
  private final KeyMap keys;
  private final Glyphs glyphs;

  private FlowRows(int width, int margin, KeyMap keys, Glyphs glyphs) {
    this.width = Math.max(2, width);
    this.margin = margin;
    this.keys = keys;
    this.glyphs = glyphs;
  }

  static List<FlowRow> of(List<Part> parts, int width, KeyMap keys, Glyphs glyphs) {
    int label = 0;
    for (Part part : parts) {
      if (part instanceof Prose prose && !prose.text().isBlank()) {
        label = Math.max(label, prose.kind().label().length());
      }
    }
    FlowRows flow = new FlowRows(width, label == 0 ? 0 : label + 1, keys, glyphs);
    for (Part part : parts) {
      flow.add(part);
    }
    return List.copyOf(flow.rows);
  }

  private void add(Part part) {
    if (part instanceof Prose prose) {
      prose(prose);
    } else if (part instanceof Rows values) {
      values(values);
    } else if (part instanceof Question question) {
      question(question);
    } else if (part instanceof WaitShown wait) {
      wait(wait);
    } else if (part instanceof Table table) {
      table(table);
    } else {
      throw new IllegalArgumentException("No text is made of " + part);
    }
  }

  private void prose(Prose prose) {
    if (prose.text().isBlank()) {
      return;
    }
    boolean labelled = !prose.kind().label().isEmpty();
    text(
        prose.kind().label(),
        labelled ? margin : 0,
        (prose.kind() == Prose.Kind.STOP ? "! " : "") + prose.text(),
        Tones.of(prose.kind().emphasis()),
        prose.kind());
  }

  private void text(String label, int indent, String text, Tone tone, Prose.Kind kind) {
    String word = label;
    int room = Math.max(2, Math.min(MOST_WIDE, width) - indent);
    for (String line : Text.wrap(glyphs.spelt(ActMention.fill(text, keys::spokenOf)), room)) {
      rows.add(new FlowRow(word, indent, line, tone, kind));
      word = "";
    }
  }

  private void values(Rows values) {
    int label = 0;
    for (Row row : values.rows()) {
      label = Math.max(label, Text.width(row.label()) + 1);
    }
    int indent = Math.min(Math.min(MOST_LABEL, label), width / 2);
    for (Row row : values.rows()) {
      String from = row.source().isEmpty() ? "" : "  " + row.source();
      String remark = row.remark().isEmpty() ? "" : "  " + row.remark();
      int begins = row.label().isEmpty() ? 0 : indent;
      text(
          row.label(),
          begins,
          row.amount() + from + remark,
          Tones.of(row.emphasis()),
          Prose.Kind.SAYS);
    }
  }

  private void question(Question question) {
    text("", 0, question.asks(), Tone.ACCENT, Prose.Kind.SAYS);
    for (Question.Answer answer : question.answers()) {
      text(answer.key(), answer.key().length() + 2, answer.says(), Tone.STRONG, Prose.Kind.SAYS);
      if (!answer.means().isBlank()) {
        text("", answer.key().length() + 2, answer.means(), Tone.FAINT, Prose.Kind.SAYS);
      }
    }
  }

  /** A table in which nothing is chosen is turned over with the text around it. */
  private void table(Table table) {
    TableRows lines = new TableRows(table, 0, width, keys::spokenOf);
    if (!lines.head().isEmpty()) {
      rows.add(row(lines.head(), Tone.FAINT));
    }
    for (int i = 0; i < table.lines().size(); i++) {
      Tone tone = Tones.of(table.lines().get(i).emphasis());
      lines.of(i).forEach(line -> rows.add(row(line, tone)));
    }
  }

  private static FlowRow row(List<TableRows.RowText> runs, Tone tone) {
    String text = "";
    for (TableRows.RowText run : runs) {
      text = Text.pad(text, run.x()) + run.text();
    }
    return new FlowRow("", 0, text, runs.get(0).own().orElse(tone), Prose.Kind.SAYS);
  }

  private void wait(WaitShown wait) {
    String whose = wait.job().isEmpty() ? "" : " (" + wait.job() + ")";
    String stands = wait.due() ? "is due" : wait.left();
    String ends = wait.ends().isEmpty() ? "" : ": " + wait.ends();
    text(
        "",
        0,
        wait.name() + whose + " " + stands + ends,
        wait.due() ? Tone.ALARM : Tone.ACCENT,
        Prose.Kind.SAYS);
  }
}
