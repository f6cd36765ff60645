package linkwright.walks;

import static linkwright.walks.Workbench.LONG;
import static linkwright.walks.Workbench.go;
import static linkwright.walks.Workbench.press;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * What the program takes while nobody touches it. It looks on for 20 s each time, so it runs only
 * when asked for, with {@code -Dtest=IdleBenchmark -Dlinkwright.benchmark=true}.
 */
@Tag("benchmark")
@EnabledIfSystemProperty(named = "linkwright.benchmark", matches = "true")
class IdleBenchmark {
  private static final Duration LOOK_ON = Duration.ofSeconds(20);

  /** One second's repaint: the clock's few figures. */
  private static final int MOST_BYTES_A_SECOND = 400;

  @Test
  void withThreeTimersRunningLessThanOnePercentOfTheProcessor() throws IOException {
    try (WalkedProgram walk = new Workbench().openTheJob()) {
      go(walk, "m", "timers");
      for (String name : new String[] {"pickle", "kettle", "glue"}) {
        press(walk, "n").waitFor("what for", LONG).type(name);
        press(walk, "down").type("50 min");
        press(walk, "ctrl-k").waitFor(name + "   ", LONG);
      }
      press(walk, "esc").waitFor("places of the job", LONG);
      Taken taken = lookOn(walk);
      System.out.printf("three timers: %s%n", taken);
      assertThat(taken.share()).isLessThan(0.01);
      assertThat(taken.bytes()).isLessThan(MOST_BYTES_A_SECOND * LOOK_ON.toSeconds());
    }
  }

  @Test
  void withoutATimerNothingIsWritten() throws IOException {
    try (WalkedProgram walk = new Workbench().openTheJob()) {
      Taken taken = lookOn(walk);
      System.out.printf("no timer: %s%n", taken);
      assertThat(taken.bytes()).isZero();
      assertThat(taken.share()).isLessThan(0.01);
    }
  }

  private record Taken(double share, long bytes) {
    @Override
    public String toString() {
      return "%.2f %% of one processor, %d bytes written in %d s"
          .formatted(100 * share, bytes, LOOK_ON.toSeconds());
    }
  }

  private static Taken lookOn(WalkedProgram walk) throws IOException {
    ProcessHandle program = walk.program();
    // What the start left to do, such as compiling, is over a moment later.
    LockSupport.parkNanos(Duration.ofSeconds(3).toNanos());
    Duration before = program.info().totalCpuDuration().orElseThrow();
    int written = walk.output().length;
    long from = System.nanoTime();
    LockSupport.parkNanos(LOOK_ON.toNanos());
    double seconds = (System.nanoTime() - from) / 1e9;
    Duration after = program.info().totalCpuDuration().orElseThrow();
    return new Taken(after.minus(before).toNanos() / 1e9 / seconds, walk.output().length - written);
  }
}
