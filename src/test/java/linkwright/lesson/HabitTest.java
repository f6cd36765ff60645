package linkwright.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import org.junit.jupiter.api.Test;

/** That what comes in a routine is not known from having learned others. */
class HabitTest {
  private static final long SEED = 20261127;
  private static final int DRAWS = 6;

  /**
   * Who has learned all other routines, and answers as was right there, does no better than chance
   * at what comes: a first step that is nearly always the same would be known by habit.
   */
  @Test
  void what_came_in_other_routines_is_no_guide_to_what_comes_in_this_one() {
    Map<String, List<Asked>> next = new LinkedHashMap<>();
    Map<String, Map<String, Set<String>>> learned = new LinkedHashMap<>();
    for (Routine routine : QuestionBankTest.routines().toList()) {
      for (Item item : QuestionBankTest.bank(routine)) {
        for (long seed = SEED; seed < SEED + DRAWS && item.topic() == Topic.NEXT; seed++) {
          Asked asked = item.draw(seed * 31 + item.id().hashCode(), UnitStyle.METRIC);
          next.computeIfAbsent(routine.id(), any -> new ArrayList<>()).add(asked);
          learned
              .computeIfAbsent(shorn(routine, asked), any -> new LinkedHashMap<>())
              .computeIfAbsent(asked.rightAnswer(), any -> new HashSet<>())
              .add(routine.id());
        }
      }
    }
    Map<String, double[]> told = new LinkedHashMap<>();
    for (Routine routine : QuestionBankTest.routines().toList()) {
      for (Asked asked : next.getOrDefault(routine.id(), List.of())) {
        String kind = shorn(routine, asked);
        ToIntFunction<String> elsewhere =
            text ->
                (int)
                    learned.get(kind).getOrDefault(text, Set.of()).stream()
                        .filter(other -> !other.equals(routine.id()))
                        .count();
        int guess = QuestionBankTest.most(asked.answers(), elsewhere);
        if (elsewhere.applyAsInt(asked.answers().get(guess)) > 0) {
          double share = 1.0 / asked.answers().size();
          double[] sums = told.computeIfAbsent(kind, any -> new double[3]);
          sums[0] += guess == asked.right() ? 1 : 0;
          sums[1] += share;
          sums[2] += share * (1 - share);
        }
      }
    }
    assertThat(told).isNotEmpty();
    told.forEach(
        (kind, sums) ->
            assertThat(sums[0])
                .as("%s: %.0f right by chance, seed %d".formatted(kind, sums[1], SEED))
                .isLessThanOrEqualTo(sums[1] + 4 * Math.sqrt(sums[2])));
  }

  /** What it asks, whatever the routine and its steps are called. */
  private static String shorn(Routine routine, Asked asked) {
    return asked.asks().replace(routine.title(), "").replaceAll("“[^”]*”", "“”");
  }
}
