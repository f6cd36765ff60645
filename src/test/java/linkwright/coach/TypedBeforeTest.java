package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.hands.Hands;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.standing.Handbook;
import org.junit.jupiter.api.Test;

/** What is typed for a second job is offered to be kept where it was typed. */
class TypedBeforeTest {
  private static Apprentice afterAJobWithKerf(String kerf) {
    Apprentice bench = Apprentice.withAJob(Map.of()).window(100, 40);
    List<Entry> earlier =
        List.of(
            new Entry(1, Apprentice.BEGIN, "bench", new Fact.JobOpened("Gate", "scroll-and-ring")),
            new Entry(
                2,
                Apprentice.BEGIN,
                "bench",
                new Fact.PlanSet(Wishes.common().with(WishKeys.KERF, kerf).texts())));
    Handbook shelf = bench.model().handbook();
    JobState state = JobState.replay(earlier, shelf.stages());
    Hands hands = Hands.of(List.of(shelf.taught("gate", earlier, state)), Set.of());
    return bench.take(
        new Message.TrayRead(List.of(), 0, List.of(), Optional.of(hands), Optional.empty()));
  }

  @Test
  void the_same_kerf_in_another_job_is_offered_and_kept_by_one_key() {
    Apprentice bench = afterAJobWithKerf("0.3 mm");
    assertThat(bench.shown()).contains("Typed for another job too: kerf 0.3 mm");
    bench.press("+");
    assertThat(bench.asked()).contains(new Effect.ChangeBench(Map.of("kerf", "0.3 mm")));
  }

  @Test
  void another_kerf_is_not() {
    assertThat(afterAJobWithKerf("0.5 mm").shown()).doesNotContain("Typed for another job");
  }
}
