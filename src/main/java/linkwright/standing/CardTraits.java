package linkwright.standing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.bench.OwnBench;
import linkwright.routine.Caution;
import linkwright.routine.Hazard;

/**
 * What is known of a job and of the bench that a caution may be tied to. What is not known excludes
 * nothing: rather a card too many than one too few.
 *
 * @param words trait → what it is here
 * @param solders names and grades of the solders at her bench; none if that is not known
 * @param wireMm the wire, mm; empty if it is not known
 */
public record CardTraits(Map<String, String> words, Set<String> solders, OptionalDouble wireMm) {
  private static final String SOLDER = "solder";
  private static final String FUEL = "fuel";
  private static final String PICKLE = "pickle";

  public CardTraits {
    words = Map.copyOf(words);
    solders = Set.copyOf(solders);
  }

  /** What a wish and her own bench say. */
  public static CardTraits of(Map<String, String> wish, Handbook handbook) {
    JobTraits job = JobTraits.of(wish, handbook.reference());
    Map<String, String> words = new LinkedHashMap<>(job.words());
    bench(words, handbook.own());
    Set<String> solders =
        handbook.own().solders().stream()
            .flatMap(each -> Stream.of(each.name(), each.grade()))
            .filter(word -> !word.isEmpty())
            .collect(Collectors.toSet());
    return new CardTraits(words, solders, job.wireMm());
  }

  private static void bench(Map<String, String> words, OwnBench own) {
    if (!own.flame().fuel().isEmpty()) {
      words.put(FUEL, own.flame().fuel());
      words.put("oxygen", own.flame().oxygen() ? "yes" : "no");
    }
    if (!own.pickle().kind().isEmpty()) {
      words.put(PICKLE, own.pickle().kind());
    }
  }

  /** Whether a caution is meant for this job and this bench. */
  public boolean meet(Caution card) {
    List<String> asked = card.when().words().getOrDefault(SOLDER, List.of());
    boolean solder =
        asked.isEmpty() || solders.isEmpty() || asked.stream().anyMatch(solders::contains);
    return solder && card.when().holds(words, wireMm);
  }

  /** Why it is shown here: what it hangs on, as that is now. Another reason is another card. */
  public String reason(Caution card) {
    StringBuilder reason = new StringBuilder();
    card.when().words().keySet().forEach(trait -> add(reason, trait));
    if (card.covers().contains(Hazard.BURNS_GAS)) {
      add(reason, FUEL);
    }
    if (card.covers().contains(Hazard.PICKLES)) {
      add(reason, PICKLE);
    }
    return reason.toString();
  }

  private void add(StringBuilder reason, String trait) {
    if (words.containsKey(trait)) {
      reason.append(trait).append(' ').append(words.get(trait)).append("; ");
    }
  }
}
