package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import org.junit.jupiter.api.Test;

/** What lies over at the weighing in: links and rings are told alike. */
class WeighOverTest {
  private static Apprentice made(int links, int rings) {
    Apprentice bench = Apprentice.withAJob(Map.of()).window(100, 40);
    through(bench, PieceKind.LINK, links);
    through(bench, PieceKind.RING, rings);
    return bench.opens(List.of()).press("esc", "i");
  }

  private static void through(Apprentice bench, PieceKind kind, int count) {
    bench.enter(new Fact.WireCut(kind, count, 20, ""));
    List<Stage> stages = bench.model().job().orElseThrow().state().piles().of(kind).stages();
    for (Stage stage : stages.subList(1, stages.size())) {
      bench.enter(new Fact.PiecesThrough(Map.of(kind, count), stage, false, StepId.NONE));
    }
  }

  @Test
  void a_spare_is_over_and_not_in_the_chain() {
    assertThat(made(10, 11).shown().lines().map(String::strip))
        .anyMatch(line -> line.matches("links +9 +9, 1 over\\b.*"))
        .anyMatch(line -> line.matches("rings +10 +10, 1 over\\b.*"));
  }

  @Test
  void what_the_chain_takes_is_told_alone_where_nothing_is_over() {
    assertThat(made(9, 10).shown().lines().map(String::strip))
        .anyMatch(line -> line.matches("links +9 +9\\b.*"))
        .anyMatch(line -> line.matches("rings +10 +10\\b.*"))
        .noneMatch(line -> line.contains(" over"));
  }
}
