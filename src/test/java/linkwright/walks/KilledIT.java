package linkwright.walks;

import static linkwright.walks.Workbench.LONG;
import static linkwright.walks.Workbench.go;
import static linkwright.walks.Workbench.hurry;
import static linkwright.walks.Workbench.press;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Killed so that it can do nothing about it, and opened again. */
class KilledIT {
  private static final Pattern THROUGH = Pattern.compile("through (\\d+)");
  private static final Pattern LEFT = Pattern.compile("kettle (\\d):(\\d\\d)");

  @Test
  void losesNothingThatWasShownAsDone() throws IOException {
    Workbench workbench = Workbench.withShortWaits();
    int cut;
    int leftBefore;
    try (WalkedProgram walk = workbench.openTheJob()) {
      press(walk, "b").waitFor("step 1 of 28", LONG);
      hurry(walk, "Cut the blanks\n").waitFor("one cut", LONG).waitUntilStill();
      walk.type("7").waitFor("how many 7", LONG);
      press(walk, "page-down").waitUntil("seven cut", KilledIT::isSevenMore, LONG);
      Workbench.unread();
      // On a slow machine the press that led here may have been sent once more, and counted.
      cut = through(walk) - 7;
      press(walk, "page-down").waitFor("through " + (cut + 8), LONG);
      go(walk, "m", "timers");
      press(walk, "n").waitFor("what for", LONG).type("kettle");
      press(walk, "down").type("9 min");
      press(walk, "ctrl-k").waitFor("kettle 8:", LONG);
      go(walk, "p", "plan");
      press(walk, "down", "end").type("x").waitFor("1.0 mmx", LONG);
      leftBefore = secondsLeft(walk);
      walk.kill9();
      assertThat(walk.exitCode(LONG)).isEqualTo(137);
    }
    try (WalkedProgram walk = workbench.start().waitFor("every flame out, gas shut?", LONG)) {
      Workbench.unread();
      press(walk, "space").waitFor("the tray", LONG);
      press(walk, "enter").waitFor("places of the job", LONG).waitFor("kettle", LONG);
      assertThat(secondsLeft(walk)).as("the timer went on").isBetween(1, leftBefore);
      press(walk, "p").waitFor("1.0 mmx", LONG);
      go(walk, "b", "step 13 of 28").waitFor("through " + (cut + 8), LONG);
      press(walk, "page-down").waitFor("through " + (cut + 9), LONG);
      press(walk, "u").waitFor("through " + (cut + 8), LONG);
    }
    assertThat(workbench.command("", "check").code()).isZero();
  }

  private static boolean isSevenMore(String screen) {
    return screen.contains("through 7") || screen.contains("through 8");
  }

  private static int through(WalkedProgram walk) {
    Matcher found = THROUGH.matcher(walk.screen());
    return found.find() ? Integer.parseInt(found.group(1)) : 0;
  }

  private static int secondsLeft(WalkedProgram walk) {
    Matcher found = LEFT.matcher(walk.screen());
    assertThat(found.find()).as(walk.screen()).isTrue();
    return 60 * Integer.parseInt(found.group(1)) + Integer.parseInt(found.group(2));
  }
}
