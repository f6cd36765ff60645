package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Part;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.PictureContent;

/** A drawing of the open step in place of its texts; the step stays open and counts as before. */
final class DrawnContent {
  private DrawnContent() {}

  /** The drawing that is shown; empty while the texts are. */
  static Optional<List<Part>> of(Model model, BenchHeld held, AtBench at) {
    List<List<Part>> pages = PictureContent.pages(at.step(), model);
    if (held.drawn() < 1 || held.drawn() > pages.size()) {
      return Optional.empty();
    }
    List<Part> parts = new ArrayList<>();
    String step = JobWords.fill(at.step().title(), model);
    List<Row> rows = new ArrayList<>();
    if (at.counts()) {
      String count = at.through() + " of " + StepContent.wanted(model, at);
      rows.add(Row.of("", step + ": " + count + " " + at.piece().many() + " " + at.stage()));
    } else {
      rows.add(Row.of("", step));
    }
    parts.add(new Rows(rows));
    BenchContent.next(model).ifPresent(parts::add);
    parts.addAll(pages.get(held.drawn() - 1));
    return Optional.of(parts);
  }

  /** What the key for drawings does next. */
  static String next(Model model, BenchHeld held) {
    int pages =
        AtBench.of(model).map(at -> PictureContent.pages(at.step(), model).size()).orElse(0);
    return held.drawn() < pages ? "the next drawing" : "back to the texts";
  }
}
