package linkwright.coach.tray;

import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.TrayJob;

/** The jobs at hand: where each stands and what waits. */
final class TrayContent {
  private static final String TITLE = "the tray";

  private TrayContent() {}

  static Content of(Model model, TrayHeld held) {
    if (held.form().isPresent()) {
      return Content.of(TITLE, new Fields(held.form().get()));
    }
    if (model.tray().isEmpty()) {
      return Content.of(TITLE, Prose.says("No job is in the tray yet. {do:new-job} begins one."));
    }
    List<Table.Line> lines = model.tray().stream().map(job -> line(job, model)).toList();
    return Content.of(
        TITLE,
        new Table(List.of(Table.Column.words("")), lines, held.at()),
        Prose.aside("{do:to-my-bench} shows your bench, {do:to-hands} what your books taught."));
  }

  private static Table.Line line(TrayJob job, Model model) {
    String waits = job.waits().isEmpty() ? "" : "waits: " + String.join(", ", job.waits());
    return new Table.Line(
        List.of(job.name()),
        List.of(Prose.aside(ClosedWords.stands(job, model.settings())), Prose.stop(waits)),
        Emphasis.PLAIN);
  }
}
