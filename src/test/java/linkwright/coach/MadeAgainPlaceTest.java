package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.TrayJob;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import org.junit.jupiter.api.Test;

class MadeAgainPlaceTest {
  private static Apprentice closedJob() {
    return Apprentice.withAJob(Map.of())
        .enter(new Fact.JobClosed("Longer tails."))
        .opens(List.of());
  }

  @Test
  void one_key_on_a_closed_job_and_one_to_begin_it() {
    Apprentice bench = closedJob().press("j");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.MADE_AGAIN);
    assertThat(bench.shown()).contains("ring in sterling", "to take");
    bench.press("ctrl-k");
    Effect.BeginJob begun =
        bench.asked().stream()
            .filter(Effect.BeginJob.class::isInstance)
            .map(Effect.BeginJob.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(begun.facts().get(0))
        .isEqualTo(
            // The earlier job by the moment it was begun: its book's name may be a customer's.
            new Fact.JobOpened(
                "scroll and ring in sterling", "scroll-and-ring", "2026-03-04T17:00:00Z"));
    assertThat(begun.facts().get(1))
        .isInstanceOfSatisfying(
            Fact.PlanSet.class,
            plan -> assertThat(plan.wish()).containsEntry(WishKeys.LINK_BLANK, "42 mm"));
  }

  @Test
  void the_name_proposed_holds_nothing_of_the_earlier_one() {
    String proposed = closedJob().press("j").model().held().form().orElseThrow().text(WishKeys.JOB);
    assertThat(proposed).doesNotContain("Gate");
  }

  @Test
  void the_name_proposed_goes_with_the_metal_and_a_name_of_hers_stays() {
    String[] metal = {"j", "down", "down", "ctrl-u"};
    Apprentice bench = closedJob().press(metal).type("fine-silver").press("down");
    assertThat(bench.model().held().form().orElseThrow().text(WishKeys.JOB))
        .isEqualTo("scroll and ring in fine-silver");
    Apprentice named = closedJob().press("j").type("Gate II").press("down", "down", "ctrl-u");
    named.type("fine-silver").press("down");
    assertThat(named.model().held().form().orElseThrow().text(WishKeys.JOB)).isEqualTo("Gate II");
  }

  @Test
  void what_was_typed_is_kept_until_the_new_book_is_on_the_disk() {
    Effect dropped = new Effect.DropDraft("gate-chain", "make-again");
    Apprentice bench = closedJob().press("j").type("Gate II").press("ctrl-k");
    bench.take(new Message.JobNotOpened("The disk is full."));
    assertThat(bench.asked()).doesNotContain(dropped);
    assertThat(bench.model().held().form().orElseThrow().text(WishKeys.JOB)).isEqualTo("Gate II");

    bench.press("ctrl-k");
    bench.take(new Message.JobOpened("again-ii", "bench", List.of(), false, List.of(), Map.of()));
    assertThat(bench.asked()).contains(dropped);
  }

  @Test
  void a_job_that_is_open_still_is_not_made_again() {
    Apprentice bench = Apprentice.withAJob(Map.of()).press("j");
    assertThat(bench.model().held().place()).isNotEqualTo(PlaceId.MADE_AGAIN);
  }

  @Test
  void in_the_tray_the_same_key_opens_it_and_leads_there() {
    Apprentice bench = closedJob().press("a");
    TrayJob closed =
        new TrayJob("gate-chain", "Gate chain", "closed", List.of(), Apprentice.BEGIN, true);
    bench
        .take(
            new Message.TrayRead(List.of(closed), 0, List.of(), Optional.empty(), Optional.empty()))
        .press("j");
    assertThat(bench.asked()).contains(new Effect.OpenBook("gate-chain"));
    bench.opens(List.of());
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.MADE_AGAIN);
  }

  /** The job was begun in 9 k gold, the first that has the word. */
  @Test
  void a_metal_that_may_be_several_is_asked_about_and_nothing_begins() {
    Apprentice bench = closedJob().press("j", "down", "down").type("gold").press("ctrl-k");
    assertThat(bench.asked()).noneMatch(Effect.BeginJob.class::isInstance);
    assertThat(bench.shown()).contains("Which “gold”?");
  }

  @Test
  void a_wire_that_cannot_be_read_is_told_beside_it_and_nothing_begins() {
    Apprentice bench = closedJob().press("j", "down", "down", "down").type("x").press("ctrl-k");
    assertThat(bench.asked()).noneMatch(Effect.BeginJob.class::isInstance);
    assertThat(Troubles.in(bench.model().held().form().orElseThrow())).isTrue();
  }
}
