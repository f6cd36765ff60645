package linkwright.walks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The real program killed at random moments of a random workload, over a pseudo-terminal and line
 * by line: what it showed as kept is in the book, once, and the next start goes on from there.
 *
 * <p>{@code -Dlinkwright.kills=1000} kills more often, {@code -Dlinkwright.seed=N} otherwise; a
 * failure leaves a file in {@code target/kills} that names the command which replays it.
 */
class UntimelyKillsIT {
  private static final long SEED = Long.getLong("linkwright.seed", 20261126L);
  private static final int KILLS = Integer.getInteger("linkwright.kills", 50);
  private static final int FIRST = Integer.getInteger("linkwright.from", 0);
  private static final int REPLAYS = 20;
  private static final int PLANTED = 12;

  @Test
  void noKillLosesOrDoublesWhatWasShown() throws IOException {
    String replay = System.getProperty("linkwright.replay", "");
    if (!replay.isEmpty()) {
      replay(Path.of(replay));
      return;
    }
    Killing killing = new Killing();
    List<String> failures = new ArrayList<>();
    Map<KillPlan.Way, Integer> ways = new EnumMap<>(KillPlan.Way.class);
    int left = 0;
    for (int round = FIRST; round < FIRST + KILLS; round++) {
      KillPlan plan = KillPlan.of(SEED, round);
      KillEvidence evidence = killing.round(plan);
      ways.merge(plan.way(), 1, Integer::sum);
      left += plan.entries().size();
      List<String> wrong = evidence.wrong();
      if (!wrong.isEmpty()) {
        failures.add(wrong + " kept in " + evidence.keep(wrong));
      }
    }
    System.out.printf(
        "%d kills %s, seed %d: %d entries sent, %d waited for, the"
            + " slowest shown after %d ms; %d rounds wrong%n",
        KILLS, ways, SEED, left, killing.shownInTime(), killing.slowestMillis(), failures.size());
    assertThat(failures).isEmpty();
  }

  /** A harness that finds nothing has to be able to find something. */
  @ParameterizedTest
  @CsvSource({"late, Lost", "twice, Doubled"})
  void aPlantedFaultIsFound(String fault, String found) throws IOException {
    Killing killing = new Killing(home -> ShippedProgram.of(PlantedFault.class, fault));
    List<String> wrong = new ArrayList<>();
    for (int round = 0; round < PLANTED && wrong.isEmpty(); round++) {
      KillPlan plan = KillPlan.of(SEED, round);
      if (plan.way() != KillPlan.Way.COMMANDS && !plan.atStart()) {
        wrong.addAll(killing.round(plan).wrong());
      }
    }
    assertThat(wrong).as("of %d rounds, seed %d", PLANTED, SEED).isNotEmpty();
    assertThat(String.join("\n", wrong)).contains(found);
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
