package linkwright.coach.form;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import linkwright.quantity.UnitStyle;

/** What is asked where metal is weighed out for a job. */
public final class WeighOutForm {
  private WeighOutForm() {}

  private static final Pattern CAME_BACK =
      Pattern.compile(
          "\\b(returned|back|scraps?|offcuts?|filings?|lemel|sweeps?|sweepings)\\b",
          Pattern.CASE_INSENSITIVE);

  /** What is asked before it is kept: words that are said of metal which came back. */
  public static Map<String, String> questions(Form form) {
    return CAME_BACK.matcher(form.text("what")).find()
        ? Map.of(
            "what",
            "“"
                + form.text("what")
                + "” went out for this job? What came back is weighed in: wire returned, scrap,"
                + " filings, sweeps.")
        : Map.of();
  }

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
