package linkwright.walks;

import static linkwright.walks.Workbench.LONG;
import static linkwright.walks.Workbench.go;
import static linkwright.walks.Workbench.hurry;
import static linkwright.walks.Workbench.press;
import static linkwright.walks.Workbench.unread;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The demo's job by the real program in a real pseudo-terminal, from the tray to its close. */
class WholeJobIT {
  @Test
  void fromTheTrayToTheClosedJob() throws IOException {
    Workbench workbench = Workbench.withAShortWatch();
    try (WalkedProgram walk = workbench.openTheJob()) {
      plan(walk);
      testPiece(walk);
      trialLength(walk);
      bench(walk);
      wire(walk);
      weighIn(walk);
      press(walk, "esc").waitFor("places of the job", LONG);
      press(walk, "a").waitFor("closed", LONG);
      press(walk, "q");
      assertThat(walk.exitCode(LONG)).isZero();
      assertThat(walk.settingsAfter()).isEqualTo(walk.settingsBefore());
      assertThat(walk.unknownSequences()).isEmpty();
    }
    Workbench.Said checked = workbench.command("", "check");
    assertThat(checked.code()).as(checked.text()).isZero();
  }

  private static void plan(WalkedProgram walk) throws IOException {
    press(walk, "p").waitFor("The plan", LONG);
    for (int i = 0; i < 12; i++) {
      press(walk, "down");
    }
    press(walk, "end")
        .waitFor("▸ wire on hand", LONG)
        .type(", 300 mm")
        .waitFor("150 mm, 300 mm", LONG);
    press(walk, "ctrl-k").waitFor("The plan is kept.", LONG);
  }

  private static void testPiece(WalkedProgram walk) throws IOException {
    press(walk, "t").waitFor("No test piece yet", LONG);
    press(walk, "n").waitFor("A test piece", LONG);
    walk.type("15.9 mm");
    press(walk, "down").type("6 mm");
    press(walk, "down").type("right");
    press(walk, "ctrl-k").waitFor("15.9 x 6 mm", LONG);
    press(walk, "s").waitFor("link 1 of the chain", LONG);
  }

  private static void trialLength(WalkedProgram walk) throws IOException {
    press(walk, "l").waitFor("No trial length yet", LONG);
    press(walk, "n").waitFor("hung and measured", LONG);
    walk.type("56 mm");
    press(walk, "ctrl-k").waitFor("56 mm  13", LONG);
    press(walk, "s").waitFor("counted anew from this trial", LONG);
  }

  private static void bench(WalkedProgram walk) throws IOException {
    go(walk, "b", "step 1 of 28");
    hurry(walk, "Cut the blanks\n");
    hurry(walk, "Solder the links\n").waitFor("one done", LONG);
    int through = through(walk);
    press(walk, "space").waitFor("through " + (through + 1), LONG);
    press(walk, "u").waitFor("through " + through, LONG);
    press(walk, "r").waitFor("what do you see?", LONG);
    walk.type("1").waitFor("remedy", LONG).waitFor("redo    1  (too cool)", LONG);
    press(walk, "x").waitFor("in hand 1, from redo", LONG);
    hurry(walk, "Join the links with rings\n");
    hurry(walk, "All done here");
  }

  /** How many came through so far: the links of the trial length are among them. */
  private static int through(WalkedProgram walk) {
    Matcher found = Pattern.compile("through +([0-9]+)").matcher(walk.screen());
    assertThat(found.find()).as(walk.screen()).isTrue();
    return Integer.parseInt(found.group(1));
  }

  private static void wire(WalkedProgram walk) throws IOException {
    go(walk, "w", "wire").waitFor("On hand", LONG);
    press(walk, "n", "down").type("200 mm");
    press(walk, "ctrl-k").waitFor("200 mm ", LONG).waitFor("░", LONG);
  }

  private static void weighIn(WalkedProgram walk) throws IOException {
    go(walk, "i", "weigh in");
    press(walk, "o").type("9 g");
    press(walk, "ctrl-k").waitFor("9 g", LONG);
    press(walk, "n").waitFor("what came of it", LONG).type("5.6 g");
    press(walk, "down").type("18.9 cm");
    press(walk, "ctrl-k").waitFor("5.6 g", LONG).waitFor("189 mm", LONG);
    press(walk, "c").waitFor("next time", LONG);
    // The wire that is left is asked about, and no press answers that nobody could read.
    press(walk, "ctrl-k").waitFor("close it all the same?", LONG);
    unread();
    press(walk, "ctrl-k").waitFor("Closed.", LONG);
  }
}
