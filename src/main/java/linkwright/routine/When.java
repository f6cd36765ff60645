package linkwright.routine;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * For what jobs a step or a caution is meant. What is not known of a job excludes nothing: rather a
 * card too many than one too few.
 *
 * @param words trait of a job (one of {@link #TRAITS}) → the words of which it must be one
 * @param thickerThanMm wire must be thicker than this, mm
 * @param thinnerThanMm wire must be thinner than this, mm
 */
public record When(
    Map<String, List<String>> words, OptionalDouble thickerThanMm, OptionalDouble thinnerThanMm) {
  /** What may be asked of a job: ids of the data, or the words of its plan and of her bench. */
  public static final List<String> TRAITS =
      List.of(
          "metal", "family", "clasp", "spring", "solder", "section", "fuel", "oxygen", "pickle",
          "mark");

  /** For every job. */
  public static final When ALWAYS =
      new When(Map.of(), OptionalDouble.empty(), OptionalDouble.empty());

  public When {
    Map<String, List<String>> ordered = new LinkedHashMap<>();
    words.forEach((trait, any) -> ordered.put(trait, List.copyOf(any)));
    words = Collections.unmodifiableMap(ordered);
  }

  /**
   * Whether it is meant for a job.
   *
   * @param traits what is known of the job, by trait
   * @param wireMm its wire, mm, if that is known
   */
  public boolean holds(Map<String, String> traits, OptionalDouble wireMm) {
    boolean named =
        words.entrySet().stream()
            .allMatch(
                each ->
                    !traits.containsKey(each.getKey())
                        || each.getValue().contains(traits.get(each.getKey())));
    boolean thin =
        wireMm.isPresent()
            && thickerThanMm.isPresent()
            && wireMm.getAsDouble() <= thickerThanMm.getAsDouble();
    boolean thick =
        wireMm.isPresent()
            && thinnerThanMm.isPresent()
            && wireMm.getAsDouble() >= thinnerThanMm.getAsDouble();
    return named && !thin && !thick;
  }
}
