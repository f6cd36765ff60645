package linkwright.view;

import java.util.List;
import linkwright.coach.kernel.Model;
import linkwright.coach.plan.PlanHeld;
import linkwright.coach.plan.PlanSummary;

/** The plan while it is typed: the fields on the left, what they come to on the right. */
final class PlanView {
  private static final int RESULTS = 34;

  private PlanView() {}

  static void draw(Canvas body, Model model, PlanHeld plan) {
    int foot = 2;
    int high = Math.max(1, body.height() - foot);
    boolean beside = body.width() >= 72;
    int wide = beside ? body.width() - RESULTS - 2 : body.width();
    int formHigh = beside ? high : Math.max(4, high * 2 / 5);
    FormView.fields(body.area(0, 0, wide, formHigh), plan.open());
    List<PlanSummary.Line> lines = PlanSummary.of(plan.preview(), model);
    Canvas results =
        beside
            ? body.area(wide + 2, 0, RESULTS, high)
            : body.area(0, formHigh, body.width(), high - formHigh);
    PlanResults.draw(results, lines, beside ? 1 : 2, plan.part());
    FormView.told(body.area(0, high, body.width(), foot), plan.open(), wide);
  }
}
