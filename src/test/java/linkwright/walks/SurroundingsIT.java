package linkwright.walks;

import static java.nio.charset.StandardCharsets.UTF_8;
import static linkwright.walks.Workbench.LONG;
import static linkwright.walks.Workbench.press;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import linkwright.Main;
import linkwright.coach.keys.Key;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The real program in terminals of many kinds, resized, and ended by every way there is. */
class SurroundingsIT {
  private static void assertGivenBack(WalkedProgram walk) throws IOException {
    assertThat(walk.settingsAfter()).isEqualTo(walk.settingsBefore());
    assertThat(walk.modes()).as("only the cursor is on").containsExactly(25);
    assertThat(walk.unknownSequences()).isEmpty();
  }

  @Nested
  class Ending {
    @Test
    void byCtrlCInTheMiddleOfAFormGivesTheTerminalBack() throws IOException {
      try (WalkedProgram walk = new Workbench().openTheJob()) {
        press(walk, "p").waitFor("The plan", LONG);
        walk.press(Key.ctrl("c"));
        assertThat(walk.exitCode(LONG)).isZero();
        assertGivenBack(walk);
      }
    }

    @Test
    void bySignalsGivesTheTerminalAndTheBookBack() throws IOException {
      Workbench workbench = new Workbench();
      for (String signal : new String[] {"TERM", "HUP", "USR1", "ALRM"}) {
        try (WalkedProgram walk = workbench.openTheJob()) {
          assertThat(walk.screen()).as("nobody else holds the book").doesNotContain("look, not");
          walk.signal(signal);
          assertThat(walk.exitCode(LONG)).as(signal).isBetween(129, 143);
          assertGivenBack(walk);
        }
      }
    }

    /** Java answers QUIT by itself, with a page of its own on whatever is shown. */
    @Test
    void isNotAskedForByQuitAndNothingIsWrittenOverTheScreen() throws IOException {
      Path script = Path.of(System.getProperty("linkwright.jar")).resolveSibling("linkwright");
      Path home = new Workbench().home();
      Map<String, String> environment =
          Map.of("LINKWRIGHT_HOME", home.toString(), "JAVA_HOME", System.getProperty("java.home"));
      try (WalkedProgram walk = WalkedProgram.start(80, 24, environment, script.toString())) {
        walk.waitFor("the tray", LONG).waitUntilStill();
        String before = walk.screen();
        int written = walk.output().length;
        walk.signal("QUIT");
        if (Path.of("/proc/self").toFile().isDirectory()) {
          walk.signal("USR2");
        }
        press(walk, "enter").waitFor("places of the job", LONG);
        assertThat(before).contains("Lighthouse");
        assertThat(new String(walk.output(), written, walk.output().length - written, UTF_8))
            .doesNotContain("thread", "Thread");
        walk.press(Key.ctrl("c"));
        assertThat(walk.exitCode(LONG)).isZero();
        assertGivenBack(walk);
      }
    }
  }

  @Nested
  class ImpossibleSizes {
    @Test
    void areToldInASentence() throws IOException {
      Workbench workbench = new Workbench();
      String java = "'" + String.join("' '", WalkedProgram.java(Main.class)) + "'";
      String script = "stty cols 65535 rows 65535; exec " + java;
      Map<String, String> environment = Map.of("LINKWRIGHT_HOME", workbench.home().toString());
      try (WalkedProgram walk = WalkedProgram.start(80, 24, environment, "sh", "-c", script)) {
        walk.waitFor("Lighthouse", LONG).waitFor("65535 columns", LONG);
      }
    }
  }

  @Nested
  class Resizing {
    @Test
    void repaintsAtOnceAndWaitsWhenTooSmall() throws IOException {
      try (WalkedProgram walk = new Workbench().openTheJob()) {
        press(walk, "p").waitFor("The plan", LONG);
        walk.resize(140, 45).waitFor("▸ metal", LONG).waitFor("usual loss", LONG);
        walk.resize(30, 8).waitFor("too small", LONG).waitFor("30 x 8", LONG);
        walk.resize(60, 20).waitFor("▸ metal", LONG).waitWhile("too small", LONG);
        walk.resize(1, 1).resize(80, 24).waitFor("▸ metal", LONG);
      }
    }
  }

  @Nested
  class TwoPrograms {
    @Test
    void theSecondLooksOnlyAndTheFirstGoesOn() throws IOException {
      Workbench workbench = new Workbench();
      try (WalkedProgram first = workbench.openTheJob();
          WalkedProgram second = workbench.openTheJob()) {
        second.waitFor("Another Linkwright is writing", LONG);
        press(second, "k").waitFor("· book", LONG);
        press(second, "n").type("not from here");
        press(second, "ctrl-k").waitFor("Not written, and not counted", LONG);
        press(first, "k").waitFor("· book", LONG);
        press(first, "n").type("from here");
        press(first, "ctrl-k").waitFor("note: from here", LONG);
      }
    }
  }

  @Nested
  class Looks {
    @Test
    void withoutUtf8OnlyAsciiIsWritten() throws IOException {
      try (WalkedProgram walk = new Workbench().start(Map.of("LANG", "C"))) {
        walk.waitFor("> Lighthouse", LONG);
        press(walk, "enter").waitFor("places of the job", LONG);
        press(walk, "t").waitFor("test pieces", LONG);
        for (byte b : walk.output()) {
          assertThat(b).isNotNegative();
        }
      }
    }

    @Test
    void withoutColourNoneIsAskedFor() throws IOException {
      for (Map<String, String> wish :
          java.util.List.of(Map.of("NO_COLOR", "1"), Map.of("TERM", "vt100"))) {
        try (WalkedProgram walk = new Workbench().start(wish)) {
          walk.waitFor("Lighthouse", LONG);
          assertThat(walk.styles()).allMatch(style -> style.matches("0|1|2|4|7|22|24|27|39|49|"));
        }
      }
    }

    @Test
    void eachThemeHasColoursOfItsOwn() throws IOException {
      Set<Set<String>> seen = new HashSet<>();
      String[] themes = {"dark", "light", "high-contrast", "plain"};
      for (String theme : themes) {
        try (WalkedProgram walk =
            new Workbench()
                .start(Map.of("COLORTERM", "truecolor", "COLORFGBG", "15;0"), "--theme", theme)) {
          walk.waitFor("Lighthouse", LONG);
          seen.add(walk.styles());
        }
      }
      assertThat(seen).hasSize(themes.length);
    }
  }

  @Nested
  class TerminalsThatWriteLines {
    @Test
    void areWalkedLineByLine() throws IOException {
      try (WalkedProgram walk = new Workbench().start(Map.of("TERM", "dumb"))) {
        walk.waitFor("An empty line: bench.", LONG).type("quit\n");
        assertThat(walk.exitCode(LONG)).isZero();
        assertThat(walk.output()).asString().doesNotContain("\u001b");
      }
    }

    @Test
    void openTheJobThatWasNamed() throws IOException {
      Workbench workbench = new Workbench();
      workbench.command("quit\n", "walk", "--plain", "--new", "Window chain");
      workbench.command("quit\n", "walk", "--plain", "--new", "Door chain");
      try (WalkedProgram walk = workbench.start(Map.of("TERM", "dumb"), "walk", "window-chain")) {
        walk.waitForWritten("The plan.", LONG).type("esc\n");
        walk.waitForWritten("Job: Window chain", LONG).type("quit\n");
        assertThat(walk.exitCode(LONG)).isZero();
        assertThat(walk.output()).asString().doesNotContain("\u001b");
      }
    }
  }

  @Nested
  class Pipes {
    @Test
    void theFirstCommandTellsPlanAndStep() throws IOException {
      Workbench.Said said = new Workbench().command("");
      assertThat(said.code()).isZero();
      assertThat(said.text()).contains("Lighthouse", "links").doesNotContain("\u001b");
    }

    @Test
    void theCoachWalksLineByLineAndKeepsWhatWasEntered() throws IOException {
      Workbench workbench = new Workbench();
      String typed = "note from a pipe\n" + "\n".repeat(6) + "where\nquit\n";
      Workbench.Said said = workbench.command(typed, "walk", "--plain");
      assertThat(said.code()).as(said.text()).isZero();
      assertThat(said.text())
          .contains("step 1: Make the bench ready", "seen")
          .doesNotContain("\u001b");
      Workbench.Said again = workbench.command("book 20\nquit\n", "walk", "--plain");
      assertThat(again.text()).contains("from a pipe");
    }

    @Test
    void anEndOfInputIsALeaving() throws IOException {
      Workbench.Said said = new Workbench().command("", "walk", "--plain");
      assertThat(said.code()).as(said.text()).isZero();
    }
  }
}
