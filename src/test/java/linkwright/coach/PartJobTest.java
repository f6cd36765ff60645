package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.plan.PlanContent;
import linkwright.coach.round.RoundHeld;
import linkwright.coach.tray.TrayWords;
import linkwright.job.ClockMoves;
import linkwright.job.Fact;
import linkwright.job.Sourced;
import linkwright.plain.PlainLines;
import linkwright.plan.PartPlan;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Makes;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.StepId;
import linkwright.standing.CountedPlan;
import linkwright.standing.Standing;
import linkwright.view.Glyphs;
import linkwright.view.Shown;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Jobs that make no chain: a clasp, rings for stock, a mended link, wire. */
class PartJobTest {
  private static final int MOST_PRESSES = 300;

  static List<String> parts() {
    return Bencher.SHELF.routines().stream()
        .filter(routine -> routine.makes() != Makes.CHAIN)
        .map(Routine::id)
        .toList();
  }

  private static Bencher job(String routine) {
    return Bencher.with(new Fact.JobOpened("A job", routine));
  }

  private static Bencher planned(String routine, Map<String, String> wish) {
    return Bencher.with(new Fact.JobOpened("A job", routine), new Fact.PlanSet(wish));
  }

  private static List<String> asked(Bencher bench) {
    return bench.model().held().form().orElseThrow().fields().stream().map(Field::id).toList();
  }

  private static StillLeft left(Bencher bench, String piece) {
    var left = bench.job().standing().left().get(new PieceKind(piece));
    return new StillLeft(left.wanted(), left.more());
  }

  private record StillLeft(int wanted, int more) {}

  @ParameterizedTest
  @MethodSource("parts")
  void the_pedal_alone_takes_one_of_them_to_its_last_step_without_a_plan(String routine) {
    Bencher bench = job(routine).press("esc");
    bench.take(new Message.KeyPressed(Key.of("b")));
    int presses = 0;

    while (!bench.notice().startsWith("All done here") && presses++ < MOST_PRESSES) {
      bench.press("page-down");
      if (bench.notice().contains("no other work waits")) {
        bench.pass(Duration.ofMinutes(10));
      }
    }

    assertThat(bench.notice()).startsWith("All done here");
    bench
        .job()
        .standing()
        .left()
        .forEach((piece, todo) -> assertThat(todo.good()).as(piece.id()).isPositive());
  }

  @ParameterizedTest
  @MethodSource("parts")
  void it_is_weighed_in_and_closed(String routine) {
    Bencher bench = job(routine).press("esc");
    bench.take(new Message.KeyPressed(Key.of("i")));

    bench.press("n").type("2.1 g").press("ctrl-k");
    bench.press("c").press("ctrl-k").press("ctrl-k");

    assertThat(bench.job().state().accounts().weighedIn().chainG())
        .isEqualTo(OptionalDouble.of(2.1));
    assertThat(bench.job().state().course().closed()).isTrue();
    assertThat(
            TrayWords.standing("a", bench.job().entries(), Bencher.SHELF)
                .at(Bencher.MORNING, ClockMoves.NONE)
                .stands())
        .isEqualTo("closed");
  }

  @Nested
  class ThePlan {
    @Test
    void asks_a_hook_for_nothing_that_only_chains_have() {
      assertThat(asked(job("clasp-hook-and-eye")))
          .contains(WishKeys.METAL, WishKeys.WIRE, PartPlan.PIECES, WishKeys.LINK_BLANK)
          .doesNotContain(WishKeys.FINISHED, WishKeys.CLASP_LENGTH, WishKeys.RING_INSIDE);
    }

    @Test
    void begins_with_the_usual_wire_and_blank_of_its_pattern() {
      Form form = job("clasp-hook-and-eye").model().held().form().orElseThrow();

      assertThat(form.text(WishKeys.WIRE)).isEqualTo("1.2 mm");
      assertThat(form.text(WishKeys.LINK_BLANK)).isEqualTo("36 mm");
    }

    @Test
    void asks_rings_for_their_inside() {
      assertThat(asked(job("jump-rings"))).contains(WishKeys.RING_INSIDE);
    }

    @Test
    void tells_how_many_blanks_are_cut_for_them() {
      Bencher bench =
          planned("jump-rings", Map.of(PartPlan.PIECES, "1", WishKeys.USUAL_LOSS, "95 %"));
      int toCut = bench.job().standing().left().get(PieceKind.RING).toCutOrAsMany();
      assertThat(toCut).isGreaterThan(1);
      assertThat(
              String.join(
                  "\n",
                  new PlainLines(Act::words)
                      .of(PlanContent.comesTo(bench.job().standing(), bench.model()))))
          .contains(toCut + " rings for 1");
    }

    @Test
    void wants_as_many_of_each_kind_as_it_says() {
      Bencher bench = planned("clasp-hook-and-eye", Map.of(PartPlan.PIECES, "3"));

      assertThat(left(bench, "hook")).isEqualTo(new StillLeft(3, 3));
      assertThat(left(bench, "eye")).isEqualTo(new StillLeft(3, 3));
    }

    /** Half a day's work is not begun twice because one in eight is lost. */
    @Test
    void begins_no_spare_where_what_fails_is_made_anew_but_cuts_spare_rings() {
      Bencher box = planned("clasp-box", Map.of(WishKeys.METAL, "sterling"));
      for (String piece : List.of("box", "tongue")) {
        assertThat(box.job().standing().left().get(new PieceKind(piece)).toCut()).hasValue(1);
      }
      Bencher rings = planned("jump-rings", Map.of(PartPlan.PIECES, "60"));
      assertThat(rings.job().standing().left().get(PieceKind.RING).spares()).isPositive();
    }

    @Test
    void is_told_in_words_for_so_many() {
      Bencher rings = planned("jump-rings", Map.of(PartPlan.PIECES, "50")).press("esc");
      assertThat(Pages.of(rings.model()).body().toString()).contains("50 rings");
    }

    @Test
    void fills_the_texts_with_its_sizes() {
      Bencher bench =
          planned(
              "jump-rings",
              Map.of(
                  WishKeys.METAL,
                  "sterling",
                  WishKeys.WIRE,
                  "0.8 mm",
                  WishKeys.RING_INSIDE,
                  "3 mm"));

      assertThat(JobWords.fill("{ring wire} wire, {ring inside} inside", bench.model()))
          .isEqualTo("0.8 mm wire, 3 mm inside");
    }

    @Test
    void gives_annealing_heat_in_both_degrees_to_those_who_work_in_inches() {
      Settings inches = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);
      List<Fact> facts =
          List.of(
              new Fact.JobOpened("A job", "wire-drawing"),
              new Fact.PlanSet(Map.of(WishKeys.METAL, "sterling")));

      Bencher bench = Bencher.with(inches, false, facts);

      assertThat(JobWords.fill("Heat: {anneals}.", bench.model()))
          .isEqualTo("Heat: 1110 to 1200 °F (600 to 650 °C).");
    }

    @Test
    void tells_a_number_of_pieces_that_is_none() {
      Bencher bench = job("jump-rings");
      Form form = bench.model().held().form().orElseThrow();
      int field = asked(bench).indexOf(PartPlan.PIECES);
      assertThat(form.at()).isZero();

      bench.press(field, "down").press("backspace").type("none").press("ctrl-k");

      assertThat(bench.notice())
          .isEqualTo(
              "Not kept yet: “none” is no number of pieces: write how many you want, such as 1 or"
                  + " 60.");
    }

    @Test
    void is_not_asked_for_again_once_the_work_has_begun() {
      Bencher bench =
          Bencher.with(
              new Fact.JobOpened("A job", "clasp-toggle"),
              new Fact.StepOpened(new StepId("cut-ring")));

      assertThat(bench.model().held()).isInstanceOf(RoundHeld.class);
    }
  }

  @Nested
  class AChainsPlan {
    @Test
    void begins_with_the_routines_pattern_and_its_usual_loss_is_taken_not_typed() {
      Bencher bench = job("round-cable");
      Form form = bench.model().held().form().orElseThrow();

      assertThat(form.text(WishKeys.LINK_PATTERN)).isEqualTo("round");
      assertThat(form.text(WishKeys.USUAL_LOSS)).isEmpty();
      Map<String, String> wish = new java.util.HashMap<>(wish("3 mm"));
      wish.remove(WishKeys.LINK_BLANK);
      wish.put(WishKeys.LINK_LENGTH, "6 mm");
      Standing job = Standing.ofTyped(wish, bench.job().state(), bench.model().handbook());
      assertThat(job.taken().get(WishKeys.USUAL_LOSS))
          .isEqualTo(new Sourced("4 %", Sourced.Source.USUAL));
      Standing file = Standing.ofWish(wish, bench.model().handbook());
      assertThat(file.taken()).isEqualTo(job.taken());
      assertThat(file.counted().plan().map(Plan::blanksToCut))
          .isPresent()
          .isEqualTo(job.counted().plan().map(Plan::blanksToCut));
    }

    @Test
    void has_rings_where_the_routine_joins_links_with_rings() {
      Bencher bench = job("round-cable");
      CountedPlan counted =
          CountedPlan.ofTyped(wish(""), bench.job().state(), bench.model().handbook());

      assertThat(counted.holds()).isFalse();
      assertThat(counted.troubles())
          .containsEntry(
              WishKeys.RING_INSIDE,
              "Give the inside of the rings, such as 3 mm: rings join the links of this chain.");
    }

    @Test
    void has_none_where_links_join_each_other() {
      Bencher bench = job("figure-of-eight");
      CountedPlan counted =
          CountedPlan.ofTyped(wish("3 mm"), bench.job().state(), bench.model().handbook());

      assertThat(asked(bench)).doesNotContain(WishKeys.RING_INSIDE, WishKeys.RING_OVAL);
      assertThat(counted.troubles())
          .containsEntry(
              WishKeys.RING_INSIDE,
              "Leave the ring empty: the links of this chain join each other.");
    }

    private static Map<String, String> wish(String ring) {
      return Map.of(
          WishKeys.METAL, "sterling",
          WishKeys.WIRE, "1 mm",
          WishKeys.LINK_PATTERN, "round",
          WishKeys.LINK_BLANK, "15.7 mm",
          WishKeys.RING_INSIDE, ring,
          WishKeys.FINISHED, "19 cm");
    }
  }

  @Nested
  class ATrialLengthOfLinksThatJoinEachOther {
    @Test
    void is_logged_without_rings() {
      Map<String, String> wish =
          Map.of(
              WishKeys.METAL, "sterling",
              WishKeys.WIRE, "1 mm",
              WishKeys.LINK_PATTERN, "figure-of-eight",
              WishKeys.LINK_BLANK, "27.4 mm",
              WishKeys.FINISHED, "45 cm");
      Bencher bench = planned("figure-of-eight", wish);
      bench.take(new Message.KeyPressed(Key.of("l")));

      bench.press("n");
      assertThat(asked(bench)).containsExactly("links", "hung", "clasp", "note");
      bench.type("31 mm").press("ctrl-k");

      assertThat(bench.entered(Fact.TrialMeasured.class))
          .singleElement()
          .satisfies(
              trial -> {
                assertThat(trial.links()).isEqualTo(3);
                assertThat(trial.rings()).isZero();
              });
    }
  }

  @Nested
  class WhereNothingIsCut {
    @Test
    void the_ingot_is_passed_over_once_its_cautions_are_seen() {
      Bencher bench = job("wire-drawing").press("esc").goTo("plan-draw").press("space");
      assertThat(AtBench.of(bench.model()).orElseThrow().step().id())
          .isEqualTo(new StepId("pour-ingot"));

      int seen = bench.entered(Fact.CautionSeen.class).size();
      bench.press("n");
      assertThat(bench.at().step().id()).isEqualTo(new StepId("pour-ingot"));
      bench.seeCautions().press("n", "n");

      assertThat(bench.entered(Fact.CautionSeen.class)).hasSizeGreaterThan(seen);
      assertThat(bench.seeCautions().at().step().id()).isEqualTo(new StepId("clean-ingot"));
      assertThat(bench.entered(Fact.StepDone.class))
          .extracting(Fact.StepDone::step)
          .doesNotContain(new StepId("pour-ingot"));
    }

    @Test
    void a_rod_is_begun() {
      Bencher bench = job("wire-drawing").press("esc").goTo("anneal-rod");
      assertThat(Shown.draw(bench.model(), Glyphs.FULL).row(23)).startsWith(" space torch lit");

      bench.press("space");

      assertThat(Shown.draw(bench.model(), Glyphs.FULL).row(23)).startsWith(" space one begun");
      assertThat(Pages.of(bench.model()).still()).contains("1 wire, 1 to begin");
    }
  }

  @Nested
  class WhereBlanksAreCut {
    @Test
    void one_that_was_cut_badly_is_scrapped_at_once() {
      Bencher bench = job("jump-rings").press("esc").goTo("cut-rings").press("space");

      bench.press("s", "1");

      assertThat(bench.pile("ring").scrapped()).isEqualTo(1);
      assertThat(bench.pile("ring").alive()).isZero();
    }

    @Test
    void none_can_be_scrapped_before_one_is_cut() {
      Bencher bench = job("jump-rings").press("esc").goTo("cut-rings");

      bench.press("s");

      assertThat(bench.entered(Fact.PiecesScrapped.class)).isEmpty();
    }
  }
}
