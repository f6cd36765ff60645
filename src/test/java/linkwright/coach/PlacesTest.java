package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.form.Field;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.plan.PlanHeld;
import linkwright.coach.round.RoundHeld;
import linkwright.coach.testpieces.TestsHeld;
import linkwright.coach.trial.TrialHeld;
import linkwright.coach.weigh.WeighHeld;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.PriceList;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Stage;
import linkwright.standing.Closing;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The places around the bench: tray, way round, test pieces, trial length, weighing in. */
class PlacesTest {
  private static Bencher fill(Bencher bench, Map<String, String> texts) {
    for (Field field : bench.form().fields()) {
      if (texts.containsKey(field.id())) {
        bench.put(field.id(), texts.get(field.id()));
      }
    }
    return bench;
  }

  private static String trouble(Bencher bench, String id) {
    return bench.form().fields().stream()
        .filter(field -> field.id().equals(id))
        .flatMap(field -> field.trouble().stream())
        .findFirst()
        .orElse("");
  }

  @Nested
  class TheTray {
    private static final Instant THEN = Bencher.MORNING;

    private TrayJob job(String slug) {
      return new TrayJob(slug, slug, "", List.of(), THEN, false);
    }

    @Test
    void empty_says_how_to_begin() {
      Bencher bench = Bencher.atTheTray().press("enter");
      assertThat(bench.notice()).isEqualTo("The tray is empty: n begins a new job.");
    }

    @Test
    void opens_the_job_that_is_marked() {
      Bencher bench = Bencher.atTheTray();
      bench.take(
          new Message.TrayRead(
              List.of(job("one"), job("two"), job("three")),
              0,
              List.of(),
              Optional.empty(),
              Optional.empty()));
      bench.press("down", "down", "down", "up", "enter");
      assertThat(bench.performed(Effect.OpenBook.class))
          .containsExactly(new Effect.OpenBook("two"));
    }

    @Test
    void that_got_shorter_meanwhile_opens_the_last_one() {
      Bencher bench = Bencher.atTheTray();
      bench.take(
          new Message.TrayRead(
              List.of(job("one"), job("two"), job("three")),
              0,
              List.of(),
              Optional.empty(),
              Optional.empty()));
      bench.press("down", "down");
      bench.take(
          new Message.TrayRead(
              List.of(job("one")), 0, List.of(), Optional.empty(), Optional.empty()));
      bench.press("enter");
      assertThat(bench.performed(Effect.OpenBook.class))
          .containsExactly(new Effect.OpenBook("one"));
    }

    @Test
    void begins_a_job_with_its_name_and_routine_once_it_has_a_name() {
      Bencher bench = Bencher.atTheTray().press("n", "ctrl-k");
      assertThat(trouble(bench, "name")).startsWith("Give the job a name");
      bench.type("Anna's bracelet").press("ctrl-k");
      assertThat(bench.performed(Effect.BeginJob.class))
          .containsExactly(
              new Effect.BeginJob(
                  "Anna's bracelet",
                  List.of(new Fact.JobOpened("Anna's bracelet", "scroll-and-ring"))));
    }

    @Test
    void leaves_the_program() {
      assertThat(Bencher.atTheTray().press("q").performed(Effect.Leave.class)).hasSize(1);
    }
  }

  @Nested
  class TheWayRound {
    @Test
    void leads_to_each_place_and_back() {
      Bencher bench = Bencher.withTheDemo();
      Map<String, Class<? extends Held>> places =
          Map.of(
              "t", TestsHeld.class,
              "l", TrialHeld.class,
              "i", WeighHeld.class,
              "b", BenchHeld.class);
      places.forEach(
          (key, screen) -> {
            bench.press(key);
            assertThat(bench.model().held()).isInstanceOf(screen);
            bench.press("esc");
            assertThat(bench.model().held()).isInstanceOf(RoundHeld.class);
          });
    }

    @Test
    void puts_the_job_back_into_the_tray() {
      Bencher bench = Bencher.withTheDemo().press("a");
      assertThat(bench.model().job()).isEmpty();
      assertThat(bench.performed(Effect.ShutBook.class)).hasSize(1);
      assertThat(bench.performed(Effect.ReadTray.class)).hasSize(1);
    }

    @Test
    void a_job_without_a_plan_opens_at_its_plan() {
      Bencher bench = Bencher.with(new Fact.JobOpened("a", "scroll-and-ring"));
      assertThat(bench.model().held()).isInstanceOf(PlanHeld.class);
    }
  }

  @Nested
  class TestPieces {
    private final Bencher bench = Bencher.withTheDemo().press("t");

    private Fact.TestPieceTried last() {
      List<Fact.TestPieceTried> all = bench.entered(Fact.TestPieceTried.class);
      return all.get(all.size() - 1);
    }

    @Test
    void one_that_came_out_small_asks_for_a_longer_and_wider_next_one() {
      fill(bench.press("n"), Map.of("length", "13 mm", "width", "4.6 mm")).press("ctrl-k");
      assertThat(last().verdicts()).containsExactly("longer", "wider");
      assertThat(last().lengthMm()).hasValue(13);
      assertThat(last().wireMm()).isEqualTo(1.0);
    }

    @Test
    void one_without_measures_counts_by_its_verdict() {
      fill(bench.press("n"), Map.of("verdict", "shorter")).press("ctrl-k");
      assertThat(last().verdicts()).containsExactly("shorter");
      assertThat(last().lengthMm()).isEmpty();
    }

    @Test
    void the_next_blank_is_proposed_and_learns_from_the_piece_before() {
      bench.press("n");
      String first = bench.form().text("blank");
      fill(bench, Map.of("length", "13 mm", "width", "5 mm")).press("ctrl-k", "n");
      assertThat(bench.form().text("blank")).isNotEqualTo(first).endsWith("mm");
    }

    @ParameterizedTest
    @CsvSource({
      "blank, -3 mm, -3 mm",
      "length, 14 apples, apples",
      "verdict, prettier, is no direction",
    })
    void what_cannot_be_read_is_told_beside_its_field_and_nothing_is_logged(
        String id, String typed, String says) {
      fill(bench.press("n"), Map.of(id, typed)).press("ctrl-k");
      assertThat(trouble(bench, id)).contains(says);
      assertThat(bench.entered(Fact.TestPieceTried.class)).isEmpty();
    }

    @Test
    void one_that_is_right_becomes_the_sample_and_link_1() {
      bench.press("s");
      assertThat(bench.notice()).startsWith("No test piece is logged yet");
      fill(bench.press("n"), Map.of("verdict", "right")).press("ctrl-k", "s");
      assertThat(bench.entered(Fact.SampleChosen.class))
          .extracting(Fact.SampleChosen::firstLink)
          .containsExactly(true);
      assertThat(bench.pile("link").alive()).isEqualTo(1);
    }

    @Test
    void one_that_is_not_right_can_be_the_sample_but_is_no_link() {
      fill(bench.press("n"), Map.of("verdict", "longer")).press("ctrl-k", "s");
      assertThat(bench.pile("link").alive()).isZero();
    }

    @Test
    void an_undone_piece_teaches_nothing_and_can_be_no_sample() {
      fill(bench.press("n"), Map.of("verdict", "right")).press("ctrl-k", "u");
      assertThat(bench.state().trials().pieces()).isEmpty();
      bench.press("s");
      assertThat(bench.entered(Fact.SampleChosen.class)).isEmpty();
    }
  }

  @Nested
  class TrialLengths {
    private final Bencher bench = Bencher.withTheDemo().press("l");

    @Test
    void the_chain_is_counted_anew_from_the_one_that_is_followed() {
      int planned = bench.job().standing().counted().plan().orElseThrow().links();
      fill(bench.press("n"), Map.of("hung", "48 mm")).press("ctrl-k");
      assertThat(bench.job().standing().counted().plan().orElseThrow().links()).isEqualTo(planned);
      bench.press("s");
      assertThat(bench.entered(Fact.TrialChosen.class)).hasSize(1);
      assertThat(bench.job().standing().counted().plan().orElseThrow().links())
          .isGreaterThan(planned);
      bench.press("u");
      assertThat(bench.state().trials().chosen()).as("undo does not reach it").isPresent();
      bench.press("esc", "k", "x").type("hung crooked").press("ctrl-k");
      assertThat(bench.job().standing().counted().plan().orElseThrow().links()).isEqualTo(planned);
    }

    @ParameterizedTest
    @CsvSource({
      "links, 0, 1 or more",
      "links, three, number of links",
      "rings, -1, number of rings",
      "hung, '', as it hangs",
      "ring, '', inside diameter",
      "oval, wide, wide",
    })
    void what_cannot_be_is_told_beside_its_field(String id, String typed, String says) {
      fill(bench.press("n"), Map.of("hung", "52 mm"));
      fill(bench, Map.of(id, typed)).press("ctrl-k");
      assertThat(trouble(bench, id)).contains(says);
      assertThat(bench.entered(Fact.TrialMeasured.class)).isEmpty();
    }
  }

  @Nested
  class WeighingIn {
    private final Bencher bench = Bencher.withTheDemo().press("i");

    @Test
    void what_was_weighed_is_kept_and_stands_there_when_it_is_mended() {
      fill(bench.press("n"), Map.of("chain", "6,4 g", "filings", "0.2 g")).press("ctrl-k");
      assertThat(bench.state().accounts().weighedIn().chainG()).hasValue(6.4);
      assertThat(bench.state().accounts().weighedIn().sweepsG()).isEmpty();
      bench.press("n");
      assertThat(bench.form().text("chain")).startsWith("6.4");
      fill(bench, Map.of("chain", "6.6 g")).press("ctrl-k");
      assertThat(bench.state().accounts().weighedIn().chainG()).hasValue(6.6);
    }

    @Test
    void without_the_chains_weight_it_asks_for_it() {
      bench.press("n", "ctrl-k");
      assertThat(trouble(bench, "chain")).contains("such as");
      fill(bench, Map.of("chain", "8 mm")).press("ctrl-k");
      assertThat(trouble(bench, "chain")).contains("not a unit of weight");
      assertThat(bench.entered(Fact.WeighedIn.class)).isEmpty();
    }

    @Test
    void prices_are_the_users_own_and_read_back_as_typed() {
      fill(
              bench.press("p"),
              Map.of(
                  "currency",
                  "€",
                  PriceList.HOUR,
                  "28",
                  PriceList.MARGIN,
                  "40 %",
                  PriceList.TAX,
                  "0.2"))
          .press("ctrl-k");
      assertThat(bench.state().accounts().prices())
          .containsEntry(PriceList.HOUR, 28.0)
          .containsEntry(PriceList.MARGIN, 0.4)
          .containsEntry(PriceList.TAX, 0.2);
      bench.press("p");
      assertThat(bench.form().text(PriceList.MARGIN)).isEqualTo("40 %");
      assertThat(bench.form().text(PriceList.HOUR)).isEqualTo("28");
    }

    @Test
    void the_price_stands_still_while_it_is_read_and_typed() {
      Map<String, String> typed = Map.of(PriceList.HOUR, "60", "currency", "EUR");
      fill(bench.press("p"), typed).press("ctrl-k");
      double price = price();
      for (int i = 0; i < 6; i++) {
        bench.pass(Duration.ofMinutes(4)).press("down", "up", "v", "?", "esc");
        assertThat(price()).as("after %d minutes of reading", 4 * i).isEqualTo(price);
      }
      for (int i = 0; i < 3; i++) {
        bench.pass(Duration.ofMinutes(9)).press("p");
        fill(bench, typed).press("ctrl-k");
        assertThat(price()).as("typed %d times", i + 2).isEqualTo(price);
      }
    }

    private double price() {
      return Closing.of(
              bench.state(), bench.job().standing().counted().plan().orElseThrow(), routine())
          .first()
          .total();
    }

    private Optional<Routine> routine() {
      return Bencher.SHELF.routine(bench.state().course().routine());
    }

    @Test
    void a_closed_job_can_be_opened_again_and_nothing_closes_it_twice() {
      bench.press("c", "ctrl-k", "ctrl-k");
      assertThat(bench.state().course().closed()).isTrue();
      bench.press("c");
      assertThat(bench.model().held().form()).isEmpty();
      bench.press("g");
      assertThat(bench.state().course().closed()).isFalse();
      assertThat(bench.entered(Fact.JobClosed.class)).hasSize(1);
    }

    @Test
    void what_the_job_taught_is_proposed_for_the_next_one() {
      Bencher done = Bencher.withTheDemo();
      done.take(
          new Message.Kept(
              List.of(
                  new linkwright.job.Entry(
                      50,
                      done.now(),
                      "bench",
                      new Fact.TestPieceTried(
                          1,
                          41.5,
                          Map.of(),
                          OptionalDouble.empty(),
                          OptionalDouble.empty(),
                          OptionalDouble.empty(),
                          List.of("right"),
                          "")),
                  new linkwright.job.Entry(
                      51,
                      done.now(),
                      "bench",
                      new Fact.SampleChosen(new EntryId("bench", 50), true)),
                  new linkwright.job.Entry(
                      52,
                      done.now(),
                      "bench",
                      new Fact.PiecesSentBack(
                          PieceKind.LINK, 1, Stage.JOINED, Stage.SOLDERED, false, "gap")))));
      done.press("i", "c");
      assertThat(done.form().text("next"))
          .contains("Begin with a blank of 41.5 mm")
          .contains("1 link was redone")
          .doesNotContain("1 links");
    }
  }
}
