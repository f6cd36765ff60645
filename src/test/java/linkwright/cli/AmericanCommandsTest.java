package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import linkwright.routine.BritishWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What commands tell who reads American words. */
class AmericanCommandsTest {
  private static final String DEMO = "src/main/resources/linkwright/demo.yaml";

  @TempDir private Path folder;

  @Test
  void no_command_that_answers_says_a_british_word() {
    Commandline line = new Commandline(folder);
    line.file("home/settings.yaml", "format: 1\nunits: inch\nwords: american\n");
    String plan = DEMO;
    List<String> walked =
        List.of("esc", "help", "piles", "plan", "esc", "tests", "trial", "wire", "weigh", "esc");
    List<String> more =
        List.of(
            "book",
            "cautions",
            "timers",
            "reckoner former",
            "esc",
            "words joint",
            "help joint",
            "places",
            "bench",
            "",
            "",
            "",
            "why",
            "cards",
            "joints",
            "esc",
            "settings",
            "esc",
            "quit");
    Set<String> british = new TreeSet<>();
    line.typing(
        java.util.stream.Stream.concat(walked.stream(), more.stream()).toList(),
        "walk",
        "--plain",
        "--new",
        "Anna",
        "--plan",
        plan);
    told("walk", line, british);
    List<List<String>> commands =
        List.of(
            List.of("plan", plan),
            List.of("plan", plan, "--or", "metal=copper"),
            List.of("plan", plan, "--from", "hours=6"),
            List.of("plan", "anna"),
            List.of("bench"),
            List.of("drawer"),
            List.of("hands"),
            List.of("jobs"),
            List.of("metals"),
            List.of("solders"),
            List.of("patterns"),
            List.of("clasps"),
            List.of("routines"),
            List.of("reckon", "former", "--length", "0.6 in", "--wire", "18 AWG"),
            List.of("reckon", "solder", "--pieces", "20", "--wire", "18 AWG"),
            List.of("rehearse", "scroll-and-ring", "--plain"),
            List.of("lesson", "scroll-and-ring", "--plain"));
    for (List<String> command : commands) {
      line.typing(List.of("next", "quit"), command.toArray(String[]::new));
      told(String.join(" ", command), line, british);
    }
    assertThat(british).isEmpty();
  }

  private static void told(String command, Commandline line, Set<String> british) {
    BritishWords.in(line.out() + line.err()).forEach(word -> british.add(command + ": " + word));
  }

  /** A number stood without the unit that it is taken in, an amount of the file in millimetres. */
  @Test
  void a_field_says_what_stands_in_it_with_its_unit_and_in_hers() {
    List<String> typed =
        List.of(
            "plan", "kerf: 0.3", "finished length: 19 cm", "finished length", "?", "esc", "quit");
    Commandline line = new Commandline(folder);
    String[] walk = {"walk", "--plain", "--new", "Anna", "--plan", DEMO};
    line.typing(List.of("plan", "thickness: 1.2", "thickness", "esc", "quit"), walk);
    assertThat(line.out()).contains("Now: 1.2 mm.");
    line.file("home/settings.yaml", "format: 1\nunits: inch\n");
    line.typing(typed, walk);
    assertThat(line.out())
        .contains("Now: 7.5 in (typed as 19 cm).", "Thickness: 0.039 in (typed as 1.0 mm)");
  }
}
