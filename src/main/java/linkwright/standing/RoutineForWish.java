package linkwright.standing;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.plan.WishKeys;
import linkwright.plan.WishReading;
import linkwright.routine.ChainEnds;
import linkwright.routine.Makes;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;

/** The routine that is taken for a wish that names none. */
final class RoutineForWish {
  private RoutineForWish() {}

  /**
   * Where none is made for a pattern, then where several are for nothing but round links: with
   * rings between the links, and without.
   */
  private static final List<String> USUAL_ROUTINES =
      List.of("scroll-and-ring", "figure-of-eight", "round-cable", "loop-in-loop");

  /**
   * The routine that makes chain of the wish's pattern, in repeats of as many links, and, of
   * several, of the fewest others; where there is none, the usual one of those whose links are
   * joined as wished. None that does not suit the metal; of those whose links are folded or turned
   * into each other only the usual one, for plain links hang in each other.
   */
  static Optional<Routine> of(Map<String, String> texts, Handbook handbook) {
    String pattern = texts.getOrDefault(WishKeys.LINK_PATTERN, "").strip();
    boolean rings = !texts.getOrDefault(WishKeys.RING_INSIDE, "").isBlank();
    List<Routine> joined =
        handbook.routines().stream()
            .filter(known -> known.makes() == Makes.CHAIN)
            .filter(known -> known.ends() != (rings ? ChainEnds.LINKS : ChainEnds.RINGS))
            .filter(known -> suits(known, texts, handbook))
            .toList();
    return joined.stream()
        .filter(known -> known.patterns().contains(pattern))
        .filter(known -> repeats(known, texts, handbook))
        .filter(known -> !folds(known) || USUAL_ROUTINES.contains(known.id()))
        .min(
            Comparator.<Routine>comparingInt(known -> known.patterns().size())
                .thenComparing(known -> !USUAL_ROUTINES.contains(known.id())))
        .or(() -> usual(joined));
  }

  private static boolean folds(Routine routine) {
    return routine.detail().linkAdds().isPresent();
  }

  private static boolean suits(Routine routine, Map<String, String> texts, Handbook handbook) {
    return routine
        .detail()
        .suits()
        .filter(suits -> !JobTraits.of(texts, handbook.reference()).meet(suits.when()))
        .isEmpty();
  }

  private static Optional<Routine> usual(List<Routine> joined) {
    return joined.stream()
        .filter(known -> USUAL_ROUTINES.contains(known.id()))
        .min(Comparator.comparingInt(known -> USUAL_ROUTINES.indexOf(known.id())));
  }

  private static boolean repeats(Routine routine, Map<String, String> texts, Handbook handbook) {
    return Optional.ofNullable(routine.detail().kinds().get(PieceKind.LINK))
        .map(
            links ->
                WishReading.of(texts, handbook.reference(), handbook.patterns())
                    .wish()
                    .filter(wish -> wish.repeat().links() == links.perRepeat())
                    .isPresent())
        .orElse(true);
  }
}
