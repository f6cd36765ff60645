package linkwright.coach.failed;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.job.FailedPieces;
import linkwright.routine.Remedy;

/** A line for each stage and reason; below them the cure of the chosen one. */
final class FailedContent {
  private static final String TITLE = "what failed";

  private FailedContent() {}

  static Content of(Model model, FailedHeld held, List<FailedPieces> failed) {
    if (failed.isEmpty()) {
      return Content.of(
          TITLE,
          Prose.says(
              "Nothing has failed: redo and scrap are counted at the bench, {do:to-bench}."));
    }
    List<Table.Column> columns =
        List.of(
            Table.Column.words("pieces"),
            Table.Column.words("failed at"),
            Table.Column.words("reason"),
            Table.Column.numbers("redo"),
            Table.Column.numbers("scrap"),
            Table.Column.words("last"));
    List<Table.Line> lines = failed.stream().map(each -> line(model, each)).toList();
    FailedPieces chosen = failed.get(Math.min(held.at(), failed.size() - 1));
    List<Part> parts = new ArrayList<>(List.of(new Table(columns, lines, held.at())));
    List<Remedy> cures = cures(model, chosen);
    for (Remedy cure : cures) {
      parts.add(Prose.says(JobWords.fill(cure.sees() + ": " + cure.means(), model)));
      parts.add(new Prose(Prose.Kind.REMEDY, JobWords.fill(cure.remedy(), model)));
    }
    if (cures.isEmpty()) {
      parts.add(Prose.says("The routine names no cure for this."));
    }
    return new Content(TITLE, parts);
  }

  private static List<Remedy> cures(Model model, FailedPieces failed) {
    return model.job().flatMap(job -> job.standing().walked()).map(failed::cures).orElse(List.of());
  }

  private static Table.Line line(Model model, FailedPieces failed) {
    return Table.Line.of(
        failed.piece().many() + (failed.size().isEmpty() ? "" : " " + failed.size()),
        failed.stage().id(),
        failed.reason(),
        "" + failed.redo(),
        "" + failed.scrap(),
        HotWorkWords.at(model, failed.last()));
  }
}
