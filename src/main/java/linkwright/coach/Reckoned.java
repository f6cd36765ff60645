package linkwright.coach;

import java.util.LinkedHashMap;
import java.util.Map;
import linkwright.job.JobState;
import linkwright.job.StillToDo;

/**
 * What follows from a job's state.
 *
 * @param left kind of piece → what is still to do
 * @param eachMm kind of piece → wire that one takes, kerf included, mm
 */
public record Reckoned(Map<String, StillToDo> left, Map<String, Double> eachMm) {
  static Reckoned of(JobState state, Shelf shelf) {
    return new Reckoned(new LinkedHashMap<>(), Map.of());
  }

  Reckoned after(JobState before, JobState now, Shelf shelf) {
    return of(now, shelf);
  }

  /** The job's own sizes by the placeholders of routine texts. */
  public Map<String, String> words(linkwright.quantity.UnitStyle units) {
    return Map.of();
  }

  String shortAfter(String piece, int count) {
    return "";
  }
}
