package linkwright.view;

import java.util.List;
import linkwright.coach.Model;
import linkwright.coach.PlanSummary;
import linkwright.coach.Screen;

/** The plan while it is typed: the fields on the left, what they come to on the right. */
final class PlanView {
  private static final int RESULTS = 34;
  private static final int LABEL = 13;

  private PlanView() {}

  static void draw(Canvas body, Model model, Screen.Plan plan) {
    int foot = 2;
    int high = Math.max(1, body.height() - foot);
    boolean beside = body.width() >= 72;
    int wide = beside ? body.width() - RESULTS - 2 : body.width();
    int formHigh = beside ? high : Math.max(4, high * 2 / 5);
    FormView.fields(body.area(0, 0, wide, formHigh), plan.open());
    List<PlanSummary.Line> lines = PlanSummary.of(plan.preview(), model);
    if (beside) {
      results(body.area(wide + 2, 0, RESULTS, high), lines, 1);
    } else {
      results(body.area(0, formHigh, body.width(), high - formHigh), lines, 2);
    }
    FormView.told(body.area(0, high, body.width(), foot), plan.open(), wide);
  }

  /** Figures in columns, then the sentences as far as they have room. */
  private static void results(Canvas area, List<PlanSummary.Line> lines, int columns) {
    List<PlanSummary.Line> figures =
        lines.stream().filter(line -> !line.label().isEmpty()).toList();
    int rows = (figures.size() + columns - 1) / columns;
    int wide = area.width() / columns;
    for (int i = 0; i < figures.size(); i++) {
      figure(area.area(i / rows * wide, i % rows, wide - columns + 1, 1), figures.get(i));
    }
    int row = rows;
    for (PlanSummary.Line line : lines) {
      if (line.label().isEmpty()) {
        int room = area.height() - row;
        Tone tone = line.trouble() ? Tone.WARNING : Tone.FAINT;
        if (room <= 0) {
          area.right(area.height() - 1, " " + area.glyphs().cutMark(), Tone.FAINT);
          return;
        }
        row += area.wrapped(0, row, area.width() - 2, room, line.value(), tone);
      }
    }
  }

  private static void figure(Canvas area, PlanSummary.Line line) {
    area.text(0, 0, LABEL - 1, line.label(), Tone.FAINT);
    area.text(
        LABEL,
        0,
        Math.max(0, area.width() - LABEL),
        line.value(),
        line.trouble() ? Tone.WARNING : line.main() ? Tone.STRONG : Tone.PLAIN);
  }
}
