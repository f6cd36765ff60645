package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.bench.BenchAsk;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.job.JobCard;
import linkwright.plain.PlainLines;
import linkwright.plan.WishKeys;
import linkwright.routine.PieceKind;
import linkwright.standing.reach.WireWanted;
import org.junit.jupiter.api.Test;

/** What was agreed for a job, where it is shown, and putting jobs away. */
class JobCardTest {
  private static Apprentice besideAnother(double lacksMm, String metal) {
    TrayJob other =
        new TrayJob(
            "other",
            "Berta's chain",
            "",
            List.of(),
            Apprentice.BEGIN,
            false,
            Optional.empty(),
            Optional.of(new WireWanted(metal, 1.0, lacksMm)),
            false);
    return Apprentice.withAJob(Map.of(WishKeys.STOCK, "20 mm"))
        .take(
            new Message.TrayRead(List.of(other), 0, List.of(), Optional.empty(), Optional.empty()));
  }

  private static String told(Apprentice bench) {
    return String.join("\n", new PlainLines(Act::words).of(Pages.of(bench.model()).body()));
  }

  /** Whose the other job is stands nowhere in this one. */
  @Test
  void another_job_that_lacks_the_same_wire_is_told_at_plan_card_and_wire() {
    for (String place : List.of("p", "d", "w")) {
      assertThat(told(besideAnother(1200, "sterling").press(place)))
          .as(place)
          .contains("Another open job lacks 1.2 m of the same wire")
          .doesNotContain("Berta");
      assertThat(told(besideAnother(1200, "copper").press(place)))
          .doesNotContain("Another open job");
    }
  }

  private static List<String> steps(Bencher bench) {
    return bench.at().routine().steps().stream().map(each -> each.id().word()).toList();
  }

  @Test
  void that_says_nothing_of_a_mark_has_it_asked_before_anything_is_heated_for_one() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("mark").seeCautions();
    assertThat(bench.model().held()).isInstanceOf(BenchHeld.class);
    assertThat(((BenchHeld) bench.model().held()).ask()).isInstanceOf(BenchAsk.Passing.class);
    bench.press("space").seeCautions();
    assertThat(bench.at().step().id().word()).isEqualTo("finish");
    assertThat(bench.entered(BenchFact.StepSkipped.class)).last().asString().contains("no mark");
    assertThat(bench.entered(Fact.TimerStarted.class)).isEmpty();
    bench.goTo("mark").press("1");
    assertThat(((BenchHeld) bench.model().held()).ask()).isEqualTo(new BenchAsk.Nothing());
    bench.press("space");
    assertThat(bench.model().hotWork().lit()).as("it is made: the torch first").isPresent();
    assertThat(((BenchHeld) bench.model().held()).ask()).isEqualTo(new BenchAsk.Nothing());
  }

  @Test
  void whose_job_has_no_mark_is_not_led_to_the_step_that_strikes_it() {
    Bencher bench = Bencher.withTheDemo().press("enter").goTo("mark");
    int at = bench.at().number();
    bench.press("1", "esc", "d", "n");
    for (int field = 0; field < JobCard.KEYS.size() - 1; field++) {
      bench.press("down");
    }
    bench.type("None").press("ctrl-k").press("b").seeCautions();

    assertThat(steps(bench)).doesNotContain("mark").contains("finish");
    assertThat(bench.at().number()).as("where it goes on").isBetween(at - 1, at);
    assertThat(steps(bench.restart())).doesNotContain("mark");
    assertThat(steps(Bencher.withTheDemo().press("enter").goTo("mark")))
        .as("of what nothing was said nothing is left out")
        .contains("mark");
  }

  private static Apprentice written() {
    return Apprentice.withAJob(Map.of())
        .press("d", "n")
        .type("the ferryman's sister")
        .press("down")
        .type("14.3.2026")
        .press("down")
        .type("180 EUR")
        .press("down")
        .type("60")
        .press("down")
        .type("old ring, 750, 4.2 g")
        .press("ctrl-k");
  }

  @Test
  void what_is_written_is_an_entry_and_shown_where_the_job_is_shown() {
    Apprentice bench = written();
    assertThat(bench.model().job().orElseThrow().state().card().said())
        .containsEntry(JobCard.CUSTOMER, "the ferryman's sister")
        .containsEntry(JobCard.PROMISED, "14.3.2026")
        .doesNotContainKey(JobCard.MARK);
    assertThat(bench.shown())
        .contains("the ferryman's sister", "14.3.2026  in 10 days", "120.00 EUR");
    bench.press("esc");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.ROUND);
    assertThat(bench.shown()).contains("for the ferryman's sister, promised 2026-03-14");
    bench.press("i");
    assertThat(bench.shown()).contains("EUR to be paid");
  }

  @Test
  void undo_takes_the_card_back_at_its_place_and_z_brings_it_again() {
    Apprentice bench = written().press("u");
    assertThat(bench.model().job().orElseThrow().state().card().said()).isEmpty();
    bench.press("z");
    assertThat(bench.model().job().orElseThrow().state().card().said()).isNotEmpty();
  }

  @Test
  void a_day_or_money_that_cannot_be_read_is_told_beside_it_and_nothing_is_lost() {
    Apprentice bench =
        Apprentice.withAJob(Map.of())
            .press("d", "n", "down")
            .type("soon")
            .press("down")
            .type("a lot")
            .press("ctrl-k");
    assertThat(Troubles.in(bench.model().held().form().orElseThrow())).isTrue();
    assertThat(bench.model().held().form().orElseThrow().text(JobCard.QUOTE)).isEqualTo("a lot");
    assertThat(bench.model().job().orElseThrow().state().card().said()).isEmpty();
  }

  @Test
  void the_lots_that_the_job_took_from_stand_on_it() {
    Apprentice bench =
        Apprentice.withManyEntries(
            List.of(
                new BenchFact.CardSet(Map.of(JobCard.CUSTOMER, "Ida")),
                new Fact.WireAdded(PieceKind.LINK, 1.0, 900, "soft", "", "silver March")));
    bench.press("d");
    assertThat(bench.shown()).contains("silver March");
  }

  @Test
  void a_job_is_put_away_by_one_key_hidden_and_brought_back() {
    Apprentice bench = Apprentice.withAJob(Map.of()).press("a");
    TrayJob demo = job("demo", false);
    bench.take(
        new Message.TrayRead(
            List.of(demo, job("gate-chain", false)),
            0,
            List.of(),
            Optional.empty(),
            Optional.empty()));
    bench.press("x");
    assertThat(bench.asked())
        .contains(new Effect.KeepElsewhere("demo", List.of(new BenchFact.JobPutAway(true))));
    Apprentice after = Apprentice.withAJob(Map.of()).press("a");
    after.take(
        new Message.TrayRead(
            List.of(job("demo", true), job("gate-chain", false)),
            0,
            List.of(),
            Optional.empty(),
            Optional.empty()));
    assertThat(after.shown()).doesNotContain("The demo").contains("gate-chain chain");
    after.press("a");
    assertThat(after.shown()).contains("demo chain", "put away");
    after.press("x");
    assertThat(after.asked())
        .contains(new Effect.KeepElsewhere("demo", List.of(new BenchFact.JobPutAway(false))));
  }

  private static TrayJob job(String slug, boolean away) {
    return new TrayJob(
        slug,
        slug + " chain",
        "closed",
        List.of(),
        Apprentice.BEGIN,
        true,
        Optional.empty(),
        Optional.empty(),
        away);
  }
}
