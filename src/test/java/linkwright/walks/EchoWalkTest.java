package linkwright.walks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import linkwright.coach.keys.Key;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class EchoWalkTest {
  private static WalkedProgram start(Map<String, String> environment) throws IOException {
    return WalkedProgram.start(80, 24, environment, WalkedProgram.java(EchoProgram.class))
        .waitFor("end of the 0", 20);
  }

  private static void assertGivenBack(WalkedProgram walk) throws IOException {
    assertThat(walk.settingsAfter()).isEqualTo(walk.settingsBefore());
    assertThat(walk.modes()).as("only the cursor is on").containsExactly(25);
    assertThat(walk.unknownSequences()).isEmpty();
  }

  @Nested
  class Starting {
    @Test
    void showsItselfInTheOtherScreenAndLeavesItAsItWas() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        assertThat(walk.modes()).contains(1049, 2004, 1000, 1006).doesNotContain(25);
        assertThat(walk.screen()).contains("echo 80 x 24", "0.9 × 14 mm ⣿⣀ 銀 – copper");
        walk.type("e");
        assertThat(walk.exitCode(10)).isZero();
        assertThat(walk.screen()).contains("bye").doesNotContain("echo");
        assertGivenBack(walk);
      }
    }

    @Test
    void withoutUtf8WritesOnlyAscii() throws IOException {
      try (WalkedProgram walk = start(Map.of("LANG", "C"))) {
        assertThat(walk.screen()).contains("0.9 x 14 mm ?? ?? - copper");
        for (byte b : walk.output()) {
          assertThat(b).isNotNegative();
        }
      }
    }

    @Test
    void withoutColoursAsksForNone() throws IOException {
      for (Map<String, String> wish :
          java.util.List.of(
              Map.of("NO_COLOR", "1", "COLORTERM", "truecolor"), Map.of("TERM", "vt100"))) {
        try (WalkedProgram walk = start(wish)) {
          assertThat(walk.styles()).allMatch(style -> style.matches("0|1|4|7|22|24|27|39|49|"));
        }
      }
    }

    @Test
    void asksForAsManyColoursAsThereAre() throws IOException {
      try (WalkedProgram walk = start(Map.of("COLORTERM", "truecolor", "COLORFGBG", "15;0"))) {
        assertThat(walk.styles()).contains("38;2;224;147;95");
      }
      try (WalkedProgram walk = start(Map.of("TERM", "tmux-256color", "COLORFGBG", "15;0"))) {
        assertThat(walk.styles()).contains("38;5;173");
      }
    }

    @Test
    void onATerminalThatCanOnlyWriteLinesWritesLines() throws IOException {
      try (WalkedProgram walk =
          WalkedProgram.start(
              80, 24, Map.of("TERM", "dumb"), WalkedProgram.java(EchoProgram.class))) {
        assertThat(walk.exitCode(20)).isZero();
        assertThat(walk.output()).asString().isEqualTo("plain\r\n");
      }
    }

    @Test
    void withoutATerminalOrADisplayFallsBackToLines() throws IOException {
      String[] java = WalkedProgram.java(EchoProgram.class);
      String quoted = "'" + String.join("' '", java) + "' < /dev/null > plain.txt; cat plain.txt";
      try (WalkedProgram walk =
          WalkedProgram.start(80, 24, Map.of(), "sh", "-c", "cd \"$HOME\"; " + quoted)) {
        walk.waitFor("plain", 20);
        assertThat(walk.exitCode(10)).isZero();
      }
    }
  }

  @Nested
  class Keys {
    @Test
    void areToldAsTheyArePressed() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("qé ").press(Key.of(Key.Kind.PAGE_DOWN)).press(Key.of(Key.Kind.ESCAPE));
        walk.press(Key.ctrl("s")).press(Key.ctrl("z")).press(Key.of(Key.Kind.ENTER));
        walk.waitFor("<q> <é> < > <page_down> <escape> ctrl-<s> ctrl-<z> <enter>", 5);
      }
    }

    @Test
    void inPiecesAreStillOneKey() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("\u001b").type("[").type("6").type("~").type("q").waitFor("<page_down> <q>", 5);
        walk.waitFor("end of the 2", 5);
      }
    }

    @Test
    void thatNobodyKnowsLeaveNothing() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type(
            "\u001b[I\u001b[O\u001b[11~\u001b[[A\u001bOP\u001b[57414u\u001b]11;rgb:0/0/0\u0007");
        walk.type("\u001b[7~").type("\u001bOM").type("q");
        walk.waitFor("<home> <enter> <q>", 5).waitFor("end of the 3", 5);
      }
    }

    @Test
    void pastedComeAsOneText() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("\u001b[200~eex 412 mm\u001b[201~").waitFor("pasted(eex 412 mm)", 5);
      }
    }

    @Test
    void pastedStayTextWhenTheLineStalls() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("\u001b[200~412 ").waitFor("pasted(412 )", 5).type("eex");
        walk.waitFor("pasted(eex)", 5).type("mm\u001b[201~").waitFor("pasted(mm)", 5);
        walk.type("q").waitFor("<q>", 5);
      }
    }

    @Test
    void pastedStayTextBehindAMarkOfTheirEndThatIsPasted() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("\u001b[200~412\u001b[201~eex\u001b[201~");
        walk.waitFor("pasted(412) pasted(eex)", 5).waitFor("end of the 2", 5);
      }
    }

    @Test
    void clicksAreTold() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.click(7, 3).waitFor("clicked(7,3)", 5).waitFor("end of the 1", 5);
      }
    }

    @Test
    void ringTheBellOnce() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("b").waitFor("<b>", 5).type("q").waitFor("<q>", 5);
        assertThat(walk.bells()).isEqualTo(1);
      }
    }
  }

  @Nested
  class Resizing {
    @Test
    void isToldWithoutAKeyAndPaintedWhole() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.resize(140, 45).waitFor("echo 140 x 45", 5).waitFor("resized(140,45)", 5);
        walk.resize(60, 20).waitFor("echo 60 x 20", 5).waitFor("end of the 2", 5);
        assertThat(walk.screen()).contains("0.9 × 14 mm ⣿⣀ 銀 – copper", "alarm");
      }
    }
  }

  @Nested
  class ImpossibleSizes {
    @Test
    void areToldInASentenceAndNotDrawn() throws IOException {
      String java = "'" + String.join("' '", WalkedProgram.java(EchoProgram.class)) + "'";
      String script = "stty cols 65535 rows 65535; exec " + java;
      try (WalkedProgram walk = WalkedProgram.start(80, 24, Map.of(), "sh", "-c", script)) {
        walk.waitFor("echo 80 x 24", 20);
        assertThat(walk.screen()).contains("65535 columns and 65535 rows");
      }
    }

    @Test
    void areNotTakenOverLater() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.claimSize(65535, 65535).type("q").waitFor("<q>", 20);
        assertThat(walk.screen()).contains("echo 80 x 24");
        walk.resize(100, 30).waitFor("echo 100 x 30", 20);
      }
    }
  }

  @Nested
  class Painting {
    @Test
    void writesOnlyWhatChanged() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        int before = walk.output().length;
        walk.type("q").waitFor("end of the 1", 5);
        String more =
            new String(
                walk.output(), before, walk.output().length - before, StandardCharsets.UTF_8);
        assertThat(more).contains("<q>").doesNotContain("copper").doesNotContain("\u0000");
      }
    }
  }

  @Nested
  class Ending {
    @Test
    void byCtrlCGivesTheTerminalBack() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.press(Key.ctrl("c"));
        assertThat(walk.exitCode(10)).isZero();
        assertGivenBack(walk);
      }
    }

    @Test
    void byASignalGivesTheTerminalBack() throws IOException {
      for (String signal : new String[] {"TERM", "HUP", "INT", "USR1", "ALRM", "VTALRM", "XCPU"}) {
        try (WalkedProgram walk = start(Map.of())) {
          walk.signal(signal);
          assertThat(walk.exitCode(10)).as(signal).isBetween(129, 192);
          assertGivenBack(walk);
        }
      }
    }

    /** Nobody in a Java program can listen to QUIT: Java itself answers, with a page of threads. */
    @Test
    void isNotByQuitAndCtrlLPutsThePictureRight() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.signal("QUIT").waitFor("Heap", 20).waitUntilStill();
        assertThat(walk.screen()).as("written over").doesNotContain("copper");
        walk.press(Key.ctrl("l")).waitFor("end of the 1", 5).waitFor("copper", 5);
        assertThat(walk.screen()).contains("echo 80 x 24").doesNotContain("Heap");
        walk.type("e");
        assertThat(walk.exitCode(10)).isZero();
        assertGivenBack(walk);
      }
    }

    @Test
    void isNotForAPipeThatBroke() throws IOException {
      // It may be another's: the terminal itself is known to be lost when it can't be written to.
      try (WalkedProgram walk = start(Map.of())) {
        walk.signal("PIPE").type("q").waitFor("<q>", 5).type("e");
        assertThat(walk.exitCode(10)).isZero();
        assertGivenBack(walk);
      }
    }

    @Test
    void byAnErrorGivesTheTerminalBackAndThenTellsIt() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("x");
        assertThat(walk.exitCode(10)).isEqualTo(1);
        assertThat(walk.screen()).contains("IllegalStateException: told to fail");
        assertGivenBack(walk);
      }
    }

    @Test
    void byAnExitThatForgotGivesTheTerminalBack() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("X");
        assertThat(walk.exitCode(10)).isEqualTo(7);
        assertGivenBack(walk);
      }
    }

    @Test
    void happensWhenTheTerminalIsTakenAway() throws Exception {
      try (WalkedProgram walk = start(Map.of())) {
        ProcessHandle program = walk.program();
        walk.takeTerminalAway();
        program.onExit().get(10, TimeUnit.SECONDS);
        assertThat(program.isAlive()).isFalse();
      }
    }

    @Test
    void byForceIsSeenToLeaveTheTerminalAsItWas() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.kill9();
        assertThat(walk.exitCode(10)).isEqualTo(137);
        assertThat(walk.settingsAfter())
            .as("nobody can restore then: shows that the comparison can fail")
            .isNotEqualTo(walk.settingsBefore());
      }
    }
  }

  @Nested
  class Stopping {
    @Test
    void andGoingOnTakesTheTerminalOverAgain() throws IOException {
      try (WalkedProgram walk = start(Map.of())) {
        walk.type("q").waitFor("<q>", 5).signal("STOP").signal("CONT");
        walk.waitFor("resized(80,24)", 5).type("w").waitFor("<w>", 5);
        assertThat(walk.screen()).contains("copper");
      }
    }
  }
}
