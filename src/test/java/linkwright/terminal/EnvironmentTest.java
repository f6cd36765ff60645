package linkwright.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import linkwright.terminal.Displays.Kind;
import linkwright.view.Glyphs;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class EnvironmentTest {
  private static Environment with(String... pairs) {
    Map<String, String> variables = new java.util.HashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      variables.put(pairs[i], pairs[i + 1]);
    }
    return new Environment(variables, true, "Linux");
  }

  @Nested
  class Characters {
    @Test
    void areAllThereInAUtf8Locale() {
      assertThat(with("LANG", "en_GB.UTF-8").glyphs()).isEqualTo(Glyphs.FULL);
      assertThat(with("LANG", "de_DE.utf8").glyphs()).isEqualTo(Glyphs.FULL);
      assertThat(with("LANG", "C", "LC_CTYPE", "C.UTF-8").glyphs()).isEqualTo(Glyphs.FULL);
    }

    @Test
    void areAsciiElse() {
      assertThat(with().glyphs()).isEqualTo(Glyphs.ASCII);
      assertThat(with("LANG", "en_GB.UTF-8", "LC_ALL", "C").glyphs()).isEqualTo(Glyphs.ASCII);
      assertThat(with("LANG", "de_DE.ISO-8859-1").glyphs()).isEqualTo(Glyphs.ASCII);
      assertThat(with("LANG", "en_GB.UTF-8", "LC_ALL", "").glyphs()).isEqualTo(Glyphs.FULL);
    }

    @Test
    void areAsciiOnTheLinuxConsoleWhichHasNoBraille() {
      assertThat(with("LANG", "C.UTF-8", "TERM", "linux").glyphs()).isEqualTo(Glyphs.ASCII);
    }
  }

  @Nested
  class Colours {
    @Test
    void areAsManyAsTheTerminalTells() {
      assertThat(with("TERM", "xterm-256color", "COLORTERM", "truecolor").depth())
          .isEqualTo(ColourDepth.RGB);
      assertThat(with("TERM", "xterm-direct").depth()).isEqualTo(ColourDepth.RGB);
      assertThat(with("TERM", "tmux-256color").depth()).isEqualTo(ColourDepth.INDEXED);
      assertThat(with("TERM", "xterm").depth()).isEqualTo(ColourDepth.SIXTEEN);
      assertThat(with("TERM", "vt220").depth()).isEqualTo(ColourDepth.NONE);
      assertThat(with("TERM", "dumb").depth()).isEqualTo(ColourDepth.NONE);
      assertThat(with().depth()).isEqualTo(ColourDepth.NONE);
    }

    @Test
    void areNoneWhereTheUserWantsNone() {
      Environment environment =
          with("TERM", "xterm-256color", "COLORTERM", "truecolor", "NO_COLOR", "1");
      assertThat(environment.depth()).isEqualTo(ColourDepth.NONE);
      assertThat(environment.windowDepth()).isEqualTo(ColourDepth.NONE);
      assertThat(with("TERM", "xterm", "NO_COLOR", "").depth())
          .as("an empty variable asks for nothing")
          .isEqualTo(ColourDepth.SIXTEEN);
    }

    @Test
    void goByTheBackgroundWhereItIsTold() {
      assertThat(with("COLORFGBG", "15;0").look()).contains(Look.DARK);
      assertThat(with("COLORFGBG", "0;default;15").look()).contains(Look.LIGHT);
      assertThat(with().look()).isEmpty();
    }
  }

  @Nested
  class Choosing {
    private Kind kind(boolean terminal, String system, boolean window, String... pairs) {
      Environment environment = new Environment(with(pairs).variables(), terminal, system);
      return Displays.kind(environment, new DisplayWishes(window, Optional.empty(), 18, true));
    }

    @Test
    void aTerminalComesFirst() {
      assertThat(kind(true, "Linux", false, "DISPLAY", ":0")).isEqualTo(Kind.TERMINAL);
      assertThat(kind(true, "Mac OS X", false)).isEqualTo(Kind.TERMINAL);
    }

    @Test
    void aWindowOpensWithoutATerminalOrOnRequest() {
      assertThat(kind(false, "Linux", false, "DISPLAY", ":0")).isEqualTo(Kind.WINDOW);
      assertThat(kind(false, "Linux", false, "WAYLAND_DISPLAY", "wayland-0"))
          .isEqualTo(Kind.WINDOW);
      assertThat(kind(true, "Linux", true, "DISPLAY", ":0")).isEqualTo(Kind.WINDOW);
      assertThat(kind(true, "Windows 11", false)).isEqualTo(Kind.WINDOW);
      assertThat(kind(false, "Mac OS X", false)).isEqualTo(Kind.WINDOW);
    }

    @Test
    void aTerminalThatWritesLinesGetsLinesUnlessAWindowIsWishedFor() {
      assertThat(kind(true, "Linux", false, "TERM", "dumb")).isEqualTo(Kind.PLAIN);
      assertThat(kind(true, "Linux", false, "TERM", "dumb", "DISPLAY", ":0")).isEqualTo(Kind.PLAIN);
      assertThat(kind(true, "Linux", true, "TERM", "dumb", "DISPLAY", ":0")).isEqualTo(Kind.WINDOW);
      assertThat(kind(false, "Linux", false, "TERM", "dumb", "DISPLAY", ":0"))
          .as("no terminal at all")
          .isEqualTo(Kind.WINDOW);
    }

    @Test
    void withNeitherThereAreOnlyLines() {
      assertThat(kind(false, "Linux", false)).isEqualTo(Kind.PLAIN);
      assertThat(kind(false, "Linux", true)).isEqualTo(Kind.PLAIN);
    }

    @Test
    void aWindowThatCannotBeOpenedIsNoReasonToLeaveATerminal() {
      assertThat(kind(true, "Linux", true)).isEqualTo(Kind.TERMINAL);
    }
  }

  @Test
  void lines_are_as_wide_as_it_was_asked_for_and_a_pipe_takes_them_whole() {
    assertThat(LineWidth.of(new Environment(Map.of("COLUMNS", "60"), true, "Linux"))).isEqualTo(60);
    assertThat(LineWidth.of(new Environment(Map.of("COLUMNS", "60"), false, "Linux")))
        .isEqualTo(Integer.MAX_VALUE);
    assertThat(LineWidth.of(new Environment(Map.of("COLUMNS", "7"), true, "Linux")))
        .as("what no terminal has")
        .isBetween(20, 80);
  }
}
