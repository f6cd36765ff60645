package linkwright.coach.form;

import java.util.List;
import linkwright.quantity.UnitStyle;

/** What is asked where metal is weighed out for a job. */
public final class WeighOutForm {
  private WeighOutForm() {}

  /** The form, nothing typed yet. */
  public static Form of(UnitStyle units) {
    return Form.of(
        Form.Purpose.WEIGH_OUT,
        "Metal weighed out for this job",
        "weigh out",
        List.of(
            Field.of("mass", "mass", "", "what you took, {g:14.5}", Measure.MASS, units)
                .helped("What the scale said. What comes back is weighed against it."),
            Field.of("what", "what", "wire", "wire, solder, sheet")
                .helped("What it was. The book tells it beside the mass.")));
  }
}
