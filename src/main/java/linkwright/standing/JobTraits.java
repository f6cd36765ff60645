package linkwright.standing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.job.JobCard;
import linkwright.job.JobState;
import linkwright.plan.WishKeys;
import linkwright.quantity.Length;
import linkwright.reference.Clasp;
import linkwright.reference.Metal;
import linkwright.reference.Reference;
import linkwright.routine.Routine;
import linkwright.routine.When;
import linkwright.wire.WireSection;

/**
 * What is known of a job that a step or a caution may be tied to. What is not known excludes
 * nothing.
 *
 * @param words trait, one of {@link When#TRAITS} → its word
 * @param wireMm its wire, mm, if that is known
 */
public record JobTraits(Map<String, String> words, OptionalDouble wireMm) {
  public JobTraits {
    words = Map.copyOf(words);
  }

  /**
   * What a wish says of it.
   *
   * @param wish keys of the wish with what was typed for each
   * @param reference where metals and clasps are looked up
   */
  public static JobTraits of(Map<String, String> wish, Reference reference) {
    Map<String, String> words = new LinkedHashMap<>();
    String metal = wish.getOrDefault(WishKeys.METAL, "").strip();
    if (!metal.isEmpty()) {
      reference.metal(metal).found().ifPresent(known -> metal(words, known));
    }
    String clasp = wish.getOrDefault(WishKeys.CLASP_LENGTH, "").strip();
    if (!clasp.isEmpty() && !Length.read(clasp).isGood()) {
      reference.clasp(clasp).found().ifPresent(known -> clasp(words, known));
    }
    String wire = wish.getOrDefault(WishKeys.WIRE, "").strip();
    Optional<WireSection> read = wire.isEmpty() ? Optional.empty() : WireSection.read(wire).found();
    read.ifPresent(known -> words.put("section", known.section().word()));
    return new JobTraits(words, read.stream().mapToDouble(WireSection::thicknessMm).findFirst());
  }

  /** What a job says of itself: its wish, and on its card whether it is to have a mark. */
  static JobTraits of(JobState state, Reference reference) {
    JobTraits wished = of(state.course().wish(), reference);
    if (state.card().of(JobCard.MARK).isBlank()) {
      return wished;
    }
    Map<String, String> words = new LinkedHashMap<>(wished.words());
    words.put("mark", state.card().wantsMark() ? "wanted" : "none");
    return new JobTraits(words, wished.wireMm());
  }

  private static void metal(Map<String, String> words, Metal metal) {
    words.put("metal", metal.id());
    words.put("family", metal.family().word());
  }

  /** A clasp of her own is no shipped name: whether a spring is in it says enough. */
  private static void clasp(Map<String, String> words, Clasp clasp) {
    words.put("clasp", clasp.id());
    words.put("spring", clasp.springInside() ? "yes" : "no");
  }

  /** Whether something with that condition is meant for this job. */
  public boolean meet(When when) {
    return when.holds(words, wireMm);
  }

  /** The routine as it is walked here: a step that is not meant for this job is left out. */
  public Routine walked(Routine routine) {
    return routine.with(step -> meet(step.detail().when()));
  }
}
