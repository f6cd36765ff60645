package linkwright.coach.kernel.drawn;

import java.util.HashMap;
import java.util.Map;
import linkwright.coach.kernel.Model;
import linkwright.quantity.UnitStyle;
import linkwright.routine.TradeWords;
import linkwright.routine.Wording;

/** A routine's texts as this job and this user read them. */
public final class JobWords {
  private JobWords() {}

  /** A text of a step or caution with the job's own sizes in it. */
  public static String fill(String text, Model model) {
    UnitStyle units = model.settings().units();
    Map<String, String> values = new HashMap<>();
    model.job().ifPresent(job -> values.putAll(PlanWords.of(job.standing(), units)));
    return Wording.fill(text, values, units, tradeWords(model));
  }

  /** Trade words of the user's choice. */
  public static TradeWords tradeWords(Model model) {
    return model.settings().british() ? TradeWords.BRITISH : TradeWords.AMERICAN;
  }
}
