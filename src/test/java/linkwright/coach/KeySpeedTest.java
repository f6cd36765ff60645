package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.job.Fact;
import linkwright.routine.PieceKind;
import linkwright.routine.Stage;
import linkwright.routine.StepId;
import linkwright.shell.Demo;
import linkwright.view.Glyphs;
import linkwright.view.Grid;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;

/** How long a key takes inside the program, from the key to the grid; the disk is not in it. */
class KeySpeedTest {
  private static final int ENTRIES = 10_000;
  private static final int KEYS = 300;
  private static final double MOST_MILLIS = 10;

  /**
   * Three keys of a round can meet Java's own compiling and collecting, and then it tells 14 ms of
   * what takes 4 ms; what the program takes stands in every round.
   */
  private static final int ROUNDS = 5;

  /** Other work on the machine can stop any process for long, so the thread's own time counts. */
  private static final int OWN = 0;

  private static final int WALL = 1;

  @Test
  void with_ten_thousand_entries_in_the_book_a_key_takes_less_than_ten_milliseconds() {
    Bencher bench = Bencher.with(Settings.USUAL, false, longBook());
    bench.take(new Message.Resized(140, 45));
    bench.press("enter").goTo("solder-links");

    run(bench, 2 * KEYS);
    double least = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      double[][] millis = run(bench, KEYS);
      Arrays.sort(millis[OWN]);
      Arrays.sort(millis[WALL]);
      double p99 = millis[OWN][KEYS * 99 / 100];
      least = Math.min(least, p99);
      System.out.printf(
          "a key with %d entries: p50 %.2f ms, p99 %.2f ms of the processor;"
              + " by the clock p50 %.2f ms, p99 %.2f ms%n",
          ENTRIES,
          millis[OWN][KEYS / 2],
          p99,
          millis[WALL][KEYS / 2],
          millis[WALL][KEYS * 99 / 100]);
    }

    assertThat(bench.entries()).hasSizeGreaterThan(ENTRIES + 2 * KEYS);
    assertThat(least).isLessThan(MOST_MILLIS);
  }

  /** For each key, the time this thread worked and the time that passed, in ms. */
  private static double[][] run(Bencher bench, int keys) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    double[][] millis = new double[2][keys];
    for (int i = 0; i < keys; i++) {
      int before = bench.entries().size();
      long own = threads.getCurrentThreadCpuTime();
      long wall = System.nanoTime();
      bench.press("space");
      Grid grid = Shown.draw(bench.model(), Glyphs.FULL);
      millis[WALL][i] = (System.nanoTime() - wall) / 1e6;
      millis[OWN][i] = (threads.getCurrentThreadCpuTime() - own) / 1e6;
      assertThat(grid.height()).isEqualTo(45);
      assertThat(bench.entries()).as(bench.notice()).hasSizeGreaterThan(before);
    }
    return millis;
  }

  /** The demo, with far more cut, tried and done again than its chain takes. */
  private static List<Fact> longBook() {
    List<Fact> book = new ArrayList<>(Demo.facts(Bencher.LIBRARY));
    book.add(new Fact.SittingStarted(""));
    while (book.size() < ENTRIES - 4) {
      book.add(new Fact.WireCut(PieceKind.LINK, 2, 40.2));
      book.add(through("annealed", false));
      book.add(through("formed", false));
      book.add(
          new Fact.PiecesSentBack(
              PieceKind.LINK, 1, Stage.SOLDERED, new Stage("formed"), false, "gap"));
      book.add(through("formed", true));
    }
    book.add(new Fact.WireCut(PieceKind.LINK, 3000, 40.2));
    book.add(
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 3000), Stage.ANNEALED, false, new StepId("anneal-blanks")));
    book.add(
        new Fact.PiecesThrough(
            Map.of(PieceKind.LINK, 3000), new Stage("formed"), false, new StepId("form-links")));
    return book;
  }

  private static Fact through(String stage, boolean redo) {
    return new Fact.PiecesThrough(
        Map.of(PieceKind.LINK, 1), new Stage(stage), redo, new StepId("some-step"));
  }
}
