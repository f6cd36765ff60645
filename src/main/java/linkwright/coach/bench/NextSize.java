package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.job.Entry;
import linkwright.job.Fact;

/** Says that links of another size are counted from here on: the last of this one is counted. */
final class NextSize {
  private NextSize() {}

  /** The model with that said, where those entries make the bench go on to another size. */
  static Model told(Model model, AtBench at, List<Fact> facts) {
    if (at.size().isEmpty()) {
      return model;
    }
    OpenJob job = model.job().orElseThrow();
    List<Entry> entries = new ArrayList<>();
    for (Fact fact : facts) {
      int number = job.entries().size() + entries.size() + 1;
      entries.add(new Entry(number, model.now(), job.device(), fact));
    }
    OpenJob then = job.after(entries, model.handbook(), model.settings());
    String next = AtBench.of(at.routine(), then, at.step()).size();
    return next.isEmpty() || next.equals(at.size())
        ? model
        : model.told(
            "That was the last "
                + at.size()
                + ": now "
                + next
                + " is counted. {do:other-size} counts another size.");
  }
}
