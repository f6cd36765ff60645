package linkwright.coach.cautions;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.safety.CardContent;

/** The cautions: a line each with what it has to do with the job, or the chosen one whole. */
final class CautionsContent {
  private static final String TITLE = "cautions";

  private CautionsContent() {}

  static Content of(Model model, CautionsHeld held) {
    List<CautionWords.Line> lines = CautionWords.narrowed(model, held.search());
    if (lines.isEmpty() && held.form().isPresent()) {
      return Content.of(
          TITLE, new Fields(held.form().get()), Prose.says("No caution is called that."));
    }
    if (lines.isEmpty()) {
      return Content.of(TITLE, Prose.stop("No caution is among the files at hand."));
    }
    int at = Math.min(held.at(), lines.size() - 1);
    CautionWords.Line chosen = lines.get(at);
    if (held.open()) {
      String before = "card " + (at + 1) + " of " + lines.size() + "  " + chosen.stands();
      return new Content(TITLE, CardContent.of(model, chosen.card(), before));
    }
    List<Table.Column> columns = List.of(Table.Column.words(""), Table.Column.words(""));
    List<Table.Line> rows = lines.stream().map(line -> line(line, model)).toList();
    String shortLine = JobWords.fill(chosen.card().shortLine(), model);
    List<Part> parts = new ArrayList<>();
    held.form().ifPresent(form -> parts.add(new Fields(form)));
    parts.add(new Table(columns, rows, at));
    parts.add(Prose.stop(shortLine));
    return new Content(TITLE, parts);
  }

  private static Table.Line line(CautionWords.Line line, Model model) {
    String stands = (line.now() && line.seen() ? "now, " : "") + line.stands();
    return Table.Line.of(JobWords.fill(line.card().title(), model), stands)
        .with(line.now() ? Emphasis.NOW : Emphasis.PLAIN);
  }
}
