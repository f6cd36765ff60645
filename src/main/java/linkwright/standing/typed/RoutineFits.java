package linkwright.standing.typed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.link.Pattern;
import linkwright.plan.ChainWish;
import linkwright.routine.ChainEnds;
import linkwright.routine.Routine;
import linkwright.standing.JobTraits;
import linkwright.standing.Standing;

/** Whether the routine that a chain is reckoned by is made for its links and its metal. */
public final class RoutineFits {
  private RoutineFits() {}

  /** What of it does not fit, and how the chain is reckoned then: sentences; none where it fits. */
  public static List<String> told(Standing standing) {
    Optional<ChainWish> wish = standing.counted().wish();
    Optional<Routine> routine = standing.walked();
    if (wish.isEmpty() || routine.isEmpty()) {
      return List.of();
    }
    List<String> told = new ArrayList<>();
    Routine by = routine.get();
    by.detail()
        .suits()
        .filter(suits -> !traits(wish.get()).meet(suits.when()))
        .ifPresent(suits -> told.add(suits.otherwise()));
    Optional<String> pattern = wish.get().link().pattern().map(Pattern::id);
    if (pattern.filter(id -> !made(by, id)).isPresent()) {
      told.add(
          "“%s” is made for %s links and not for %s."
              .formatted(by.title(), String.join(", ", by.patterns()), pattern.get()));
    }
    if (!told.isEmpty()) {
      told.add(
          (by.ends() == ChainEnds.LINKS
                  ? "Reckoned as plain links, each hung in the next; hours and loss are those of"
                  : "Hours and loss are those of")
              + " “%s”.".formatted(by.title()));
    }
    return List.of(told.stream().collect(Collectors.joining(" "))).stream()
        .filter(sentence -> !sentence.isEmpty())
        .toList();
  }

  /** Whether a routine is made for links of that pattern; for any where it names none. */
  public static boolean made(Routine routine, String pattern) {
    return routine.patterns().isEmpty() || routine.patterns().contains(pattern);
  }

  private static JobTraits traits(ChainWish wish) {
    return new JobTraits(
        Map.of("metal", wish.metal().id(), "family", wish.metal().family().word()),
        OptionalDouble.of(wish.wireMm()));
  }
}
