package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import linkwright.coach.bench.BenchAnswers;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.HotWorkState;
import linkwright.routine.ChainEnds;
import linkwright.routine.Makes;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;
import linkwright.standing.StillToDo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The foot pedal sends Page Down and nothing else; it is enough to run the bench. */
class PedalTest {
  /** The longest of the routines took 391 presses and the demo with losses 249, 2026-11-26. */
  private static final int MOST_PRESSES = 500;

  @Test
  void the_pedal_alone_takes_the_demo_from_its_first_step_to_its_last() {
    Bencher bench = Bencher.withTheDemo().press("enter");

    pressToTheEnd(bench);

    assertEveryPieceIsFinished(bench);
    List<StepId> steps = bench.at().routine().steps().stream().map(Step::id).toList();
    assertThat(stepsOpened(bench)).containsSubsequence(steps);
    assertThat(stepsOpened(bench).indexOf(new StepId("join")))
        .as("nothing is joined while links are in the pickle")
        .isGreaterThan(stepsOpened(bench).lastIndexOf(new StepId("pickle-links")));
  }

  @Test
  void the_pedal_does_not_pass_over_the_fire_watch() {
    Bencher bench = Bencher.withTheDemo().press("enter");

    pressToTheEnd(bench);

    Instant shut =
        bench.entries().stream()
            .filter(
                entry ->
                    entry.fact() instanceof BenchFact.HotWorkSaid said
                        && said.state() == HotWorkState.SHUT)
            .map(Entry::at)
            .reduce((before, after) -> after)
            .orElseThrow();
    assertThat(bench.model().hotWork().open()).isFalse();
    assertThat(Duration.between(shut, bench.now())).isGreaterThan(Duration.ofMinutes(50));
    assertThat(bench.model().watch()).as("it ran out by its time").isEmpty();
  }

  @ParameterizedTest
  @MethodSource("chains")
  void the_pedal_alone_takes_every_shipped_chain_to_its_last_step(String id) {
    Bencher bench = Bencher.with(new Fact.JobOpened("A job", id), new Fact.PlanSet(wishFor(id)));
    bench.press("enter");

    pressToTheEnd(bench);

    assertEveryPieceIsFinished(bench);
  }

  @ParameterizedTest
  @ValueSource(longs = {20260302, 1, 2, 3, 4, 5, 6, 7})
  void with_some_joints_done_again_and_some_lost_the_pedal_still_ends_with_enough(long seed) {
    Random chance = new Random(seed);
    Bencher bench = Bencher.withTheDemo().press("enter");

    int presses = 0;
    while (!ended(bench) && presses++ < MOST_PRESSES) {
      if (canFail(bench) && chance.nextInt(6) == 0) {
        bench.press(chance.nextInt(3) == 0 ? "s" : "r", "1");
      }
      bench.press("page-down");
      waitIfAsked(bench);
    }

    assertThat(ended(bench)).as("seed %d, at %s", seed, bench.at().step().id()).isTrue();
    assertThat(bench.pile("link").sentBack()).as("seed %d", seed).isPositive();
    assertThat(bench.pile("link").scrapped() + bench.pile("ring").scrapped())
        .as("seed %d", seed)
        .isPositive();
    assertEveryPieceIsFinished(bench);
    assertThat(bench.pile("link").finished()).as("seed %d", seed).isEqualTo(wanted(bench, "link"));
    assertThat(bench.pile("ring").finished())
        .as("one ring more than links, spares left over, seed %d", seed)
        .isEqualTo(wanted(bench, "link") + 1);
  }

  private static boolean canFail(Bencher bench) {
    boolean open = bench.caution().isEmpty() && !BenchAnswers.away(bench.model());
    return open
        && List.of("check-links", "check-rings", "solder-links", "join")
            .contains(bench.at().step().id().word())
        && bench.at().available() > 0;
  }

  private static int wanted(Bencher bench, String piece) {
    return bench.job().standing().left().get(new PieceKind(piece)).wanted();
  }

  static List<String> chains() {
    return Bencher.SHELF.routines().stream()
        .filter(routine -> routine.makes() == Makes.CHAIN && !routine.patterns().isEmpty())
        .map(Routine::id)
        .toList();
  }

  private static Map<String, String> wishFor(String id) {
    Routine routine = Bencher.SHELF.routine(id).orElseThrow();
    Map<String, String> wish = new LinkedHashMap<>();
    wish.put("metal", "sterling");
    wish.put("wire", "0.9 mm");
    wish.put("link.pattern", routine.patterns().get(0));
    wish.put("link.blank", "38.1 mm");
    wish.put("finished-length", "20 cm");
    if (routine.ends() == ChainEnds.RINGS) {
      wish.put("ring.inside", "3 mm");
      wish.put("ring.oval-inside", "2.4 mm");
    }
    return wish;
  }

  private static void pressToTheEnd(Bencher bench) {
    List<StepId> way = new ArrayList<>();
    int presses = 0;
    while (!ended(bench) && presses++ < MOST_PRESSES) {
      bench.press("page-down");
      waitIfAsked(bench);
      way.add(bench.at().step().id());
    }
    assertThat(ended(bench))
        .as("after %d presses: %s", presses, way.subList(Math.max(0, way.size() - 9), way.size()))
        .isTrue();
  }

  /** Where nothing else is to be done, she waits till it rings. */
  private static void waitIfAsked(Bencher bench) {
    if (bench.notice().contains("no other work waits")) {
      bench.pass(Duration.ofMinutes(10));
    }
  }

  private static boolean ended(Bencher bench) {
    return bench.notice().startsWith("All done here");
  }

  private static List<StepId> stepsOpened(Bencher bench) {
    return bench.entered(Fact.StepOpened.class).stream().map(Fact.StepOpened::step).toList();
  }

  private static void assertEveryPieceIsFinished(Bencher bench) {
    Map<PieceKind, StillToDo> left = bench.job().standing().left();
    assertThat(left).as(bench.job().standing().counted().sentence()).isNotEmpty();
    left.forEach(
        (piece, todo) -> {
          if (!bench.pile(piece).stages().isEmpty()) {
            assertThat(todo.more()).as("%ss missing", piece).isZero();
          }
        });
  }
}
