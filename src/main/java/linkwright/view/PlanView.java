package linkwright.view;

import java.util.List;
import linkwright.coach.Field;
import linkwright.coach.Form;
import linkwright.coach.Model;
import linkwright.coach.PlanSummary;
import linkwright.coach.Screen;

/** The plan while it is typed: the fields on the left, what they come to on the right. */
final class PlanView {
  private static final int RESULTS = 34;

  private PlanView() {}

  static void draw(Canvas body, Model model, Screen.Plan plan) {
    int foot = 2;
    int high = Math.max(1, body.height() - foot);
    boolean beside = body.width() >= 72;
    int wide = beside ? body.width() - RESULTS - 2 : body.width();
    int formHigh = beside ? high : Math.max(4, high / 2);
    FormView.draw(body.area(0, 0, wide, formHigh), plan.open());
    Canvas results =
        beside
            ? body.area(wide + 2, 0, RESULTS, high)
            : body.area(0, formHigh, body.width(), high - formHigh);
    results(results, model, plan);
    told(body.area(0, high, body.width(), foot), plan.open());
  }

  private static void results(Canvas area, Model model, Screen.Plan plan) {
    List<PlanSummary.Line> lines = PlanSummary.of(plan.preview(), model);
    int row = 0;
    for (PlanSummary.Line line : lines) {
      if (row >= area.height()) {
        area.right(area.height() - 1, area.glyphs().cutMark(), Tone.FAINT);
        return;
      }
      if (line.label().isEmpty()) {
        row +=
            area.wrapped(
                0,
                row,
                area.width(),
                area.height() - row,
                line.value(),
                line.trouble() ? Tone.WARNING : Tone.FAINT);
      } else {
        area.text(0, row, 15, line.label(), Tone.FAINT);
        area.text(
            15,
            row,
            Math.max(0, area.width() - 15),
            line.value(),
            line.trouble() ? Tone.WARNING : line.main() ? Tone.STRONG : Tone.PLAIN);
        row++;
      }
    }
  }

  /** The sentence for the field with the caret, whole: beside the field it may have been cut. */
  private static void told(Canvas area, Form form) {
    if (form.at() >= form.fields().size()) {
      return;
    }
    Field field = form.fields().get(form.at());
    String text = field.trouble().map(trouble -> "! " + trouble).orElse(field.hint());
    area.wrapped(
        0, 0, area.width(), 2, text, field.trouble().isPresent() ? Tone.WARNING : Tone.FAINT);
  }
}
