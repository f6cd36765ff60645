package linkwright.walks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The real program killed at random moments of a random workload, over a pseudo-terminal and line
 * by line: what it showed as kept is in the book, once, and the next start goes on from there.
 *
 * <p>{@code -Dlinkwright.kills=1000} kills more often, {@code -Dlinkwright.seed=N} otherwise; a
 * failure leaves a file in {@code target/kills} that names the command which replays it.
 */
class KillsIT {
  private static final long SEED = Long.getLong("linkwright.seed", 20261126L);
  private static final int KILLS = Integer.getInteger("linkwright.kills", 50);
  private static final int FIRST = Integer.getInteger("linkwright.from", 0);
  private static final int REPLAYS = 20;

  @Test
  void noKillLosesOrDoublesWhatWasShown() throws IOException {
    String replay = System.getProperty("linkwright.replay", "");
    if (!replay.isEmpty()) {
      replay(Path.of(replay));
      return;
    }
    Killing killing = new Killing();
    List<String> failures = new ArrayList<>();
    int screens = 0;
    int left = 0;
    for (int round = FIRST; round < FIRST + KILLS; round++) {
      KillPlan plan = KillPlan.of(SEED, round);
      KillEvidence evidence = killing.round(plan);
      screens += plan.screen() ? 1 : 0;
      left += plan.entries().size();
      List<String> wrong = evidence.wrong();
      if (!wrong.isEmpty()) {
        failures.add(wrong + " kept in " + evidence.keep(wrong));
      }
    }
    System.out.printf(
        "%d kills (%d on a screen, %d line by line), seed %d: %d entries sent, %d waited for, the"
            + " slowest shown after %d ms; %d rounds wrong%n",
        KILLS,
        screens,
        KILLS - screens,
        SEED,
        left,
        killing.shownInTime(),
        killing.slowestMillis(),
        failures.size());
    assertThat(failures).isEmpty();
  }

  /** What was kept is judged again, then its round is run again, for a kill never falls alike. */
  private static void replay(Path file) throws IOException {
    KillEvidence kept = KillEvidence.kept(file);
    Killing killing = new Killing();
    List<String> wrong = new ArrayList<>(kept.wrong());
    for (int i = 0; i < REPLAYS; i++) {
      wrong.addAll(killing.round(kept.plan()).wrong());
    }
    assertThat(wrong).as(Files.readString(file)).isEmpty();
  }
}
