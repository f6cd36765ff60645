package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.job.Fact;
import linkwright.routine.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A wait that is over calls her away from her work, and the work has her back. */
class CalledAwayTest {
  private final Bencher bench = Bencher.withTheDemo().press("enter");

  /** Four links in the pickle, the others on the soldering block. */
  private Bencher solderingOn() {
    bench.toSolder(8).type("4").press("space");
    bench.goTo("pickle-links").press("space", "space").seeCautions();
    assertThat(step()).isEqualTo("solder-links");
    return bench.pass(Duration.ofMinutes(9));
  }

  private String step() {
    return bench.at().step().id().word();
  }

  @Test
  void once_the_wait_is_answered_the_common_key_leads_back() {
    solderingOn().press("space");
    assertThat(step()).isEqualTo("pickle-links");
    bench.press("space");
    assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isEqualTo(4);
    assertThat(step()).as("what came out is seen first").isEqualTo("pickle-links");
    bench.press("space");
    assertThat(step()).isEqualTo("solder-links");
    assertThat(bench.notice()).contains("where you worked");
    bench.press("space");
    assertThat(bench.pile("link").atOrPast(Stage.SOLDERED)).isEqualTo(5);
  }

  @Test
  void whoever_goes_elsewhere_by_herself_is_led_back_nowhere() {
    solderingOn().press("space", "space", "n").seeCautions().press("b").seeCautions();
    assertThat(step()).isEqualTo("pickle-links");
    bench.press("space");
    assertThat(bench.notice()).doesNotContain("where you worked");
  }

  @Test
  void a_step_that_is_done_with_its_wait_leads_back_too() {
    bench.goTo("pickle-wire").press("space");
    bench.goTo("cut-blanks").type("3").press("space").pass(Duration.ofMinutes(9));
    bench.press("space");
    assertThat(step()).isEqualTo("pickle-wire");
    bench.press("space").seeCautions();
    assertThat(step()).isEqualTo("cut-blanks");
    assertThat(bench.model().timers().running()).isEmpty();
  }

  @Test
  void a_number_that_was_typed_when_it_rang_is_told_not_dropped() {
    solderingOn().type("3").press("space");
    assertThat(step()).isEqualTo("pickle-links");
    assertThat(bench.notice()).contains("The 3 that was typed is not counted.");
    assertThat(bench.pile("link").atOrPast(Stage.SOLDERED)).isEqualTo(4);
  }

  @Test
  void nor_one_that_was_typed_while_a_wait_runs() {
    bench.goTo("pickle-wire").press("space").type("7").press("space");
    assertThat(bench.notice()).endsWith("The 7 that was typed is not counted.");
    bench.pass(Duration.ofMinutes(1)).type("2").press("n");
    assertThat(bench.notice()).contains("The 2 that was typed is not counted.");
  }

  @Test
  void what_was_typed_before_the_torch_is_lit_stays_for_the_count() {
    bench.toSolder(6).press("!", "space").type("4").press("space");
    assertThat(bench.entered(Fact.PiecesThrough.class))
        .noneMatch(through -> through.stage().equals(Stage.SOLDERED));
    assertThat(Pages.of(bench.model()).open().get(0).act()).contains(Act.THROUGH);
    bench.press("space");
    assertThat(bench.pile("link").atOrPast(Stage.SOLDERED)).isEqualTo(4);
  }

  @Test
  void a_number_is_refused_where_all_go_together_and_nothing_moves() {
    bench.toSolder(6).type("6").press("space").goTo("pickle-links");
    bench.type("4").press("space");
    assertThat(bench.notice()).startsWith("All 6 here go together: 4 by themselves");
    assertThat(bench.model().timers().next()).as("not in the pickle").isEmpty();
    bench.press("esc", "space").pass(Duration.ofMinutes(4)).press("d").type("4").press("space");
    assertThat(bench.notice()).startsWith("All 6 here go together: 4 by themselves");
    assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).isZero();
    bench.press("esc").type("6").press("space");
    assertThat(bench.pile("link").waitingFor(Stage.CHECKED)).as("that is all").isEqualTo(6);
    assertThat(bench.notice()).doesNotContain("not counted");
  }

  @Test
  void esc_takes_a_number_away_and_says_so_before_it_leaves_the_bench() {
    bench.toSolder(6).type("4").press("esc");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.BENCH);
    assertThat(bench.notice()).isEqualTo("The 4 that was typed is not counted.");
    bench.press("space");
    assertThat(bench.pile("link").atOrPast(Stage.SOLDERED)).as("one").isEqualTo(1);
    bench.press("esc");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.ROUND);
  }

  @Test
  void a_number_that_is_asked_about_is_left_by_esc_and_told() {
    bench.goTo("cut-blanks").type("300").press("space");
    assertThat(bench.notice()).startsWith("300? ");
    bench.press("esc");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.BENCH);
    assertThat(bench.notice()).isEqualTo("The 300 that was typed is not counted.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"?", "f", "e", ",", "=", "o", "t", "n", "b", "y", "right", "!", "q"})
  void no_key_drops_a_number_in_silence(String key) {
    bench.toSolder(6).press("space").type("4").press(key);
    if (bench.model().held().place() != PlaceId.BENCH) {
      String told = bench.notice() + bench.performed(Effect.Leave.class);
      bench.press("esc");
      boolean stands = bench.model().held() instanceof BenchHeld held && held.digits().equals("4");
      assertThat(stands || told.contains("The 4 that was typed")).as(key + ": " + told).isTrue();
    } else {
      boolean stands = ((BenchHeld) bench.model().held()).digits().equals("4");
      String told = bench.notice() + bench.performed(Effect.Leave.class);
      assertThat(stands || told.contains("The 4 that was typed")).as(key + ": " + told).isTrue();
    }
  }

  @Test
  void a_number_typed_at_a_look_is_told_too() {
    bench.toSolder(6).press("right").type("4");
    assertThat(bench.notice()).startsWith("Only a look: 4 is not counted.");
    assertThat(bench.press("space").notice()).isEmpty();
    assertThat(((BenchHeld) bench.model().held()).digits()).isEmpty();
  }

  @Test
  void who_takes_over_beside_a_lit_flame_is_told_of_that_first() {
    Bencher lit = Bencher.withTheDemo().press("enter").goTo("anneal-wire").press("space");
    assertThat(lit.model().hotWork().lit()).isPresent();
    lit.press("esc", "@").type("Ada").press("ctrl-k");
    assertThat(lit.notice()).startsWith("A flame is lit: look together, ").contains("“Ada”");
  }
}
