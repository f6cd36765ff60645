package linkwright.walks;

import static linkwright.walks.Workbench.LONG;
import static linkwright.walks.Workbench.press;
import static linkwright.walks.Workbench.tread;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import linkwright.coach.keys.Key;
import org.junit.jupiter.api.Test;

/** The demo's bench by the real program in a real pseudo-terminal, by one key to its last step. */
class WholeBenchByPedalIT {
  @Test
  void theBenchByThePedalAlone() throws IOException {
    Workbench workbench = Workbench.withAShortWatch();
    try (WalkedProgram walk = workbench.openTheJob()) {
      press(walk, "b").waitFor("step 1 of 28", LONG);
      tread(walk, "All done here");
      assertThat(walk.screen()).contains("step 28 of 28").doesNotContain("to redo");
      walk.press(Key.ctrl("c"));
      assertThat(walk.exitCode(LONG)).isZero();
    }
  }
}
