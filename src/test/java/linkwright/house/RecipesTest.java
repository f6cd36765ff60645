package linkwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is added touches no more files than the recipes in DEVELOPERS.md say. Held by screens,
 * facts, sums and settings that are named nowhere else: whatever lists all of them once more names
 * these too.
 */
class RecipesTest {
  private static final Path TOP = Path.of("src", "main", "java", "linkwright");

  @ParameterizedTest
  @CsvSource({
    "WHAT_IF, TO_WHAT_IF, whatif, coach/round/RoundPlace.java",
    "OWN_BENCH, TO_OWN_BENCH, ownbench, coach/tray/TrayPlace.java",
    "NEAREST, TO_NEAREST, nearest, coach/round/RoundLines.java",
    "FAILED, TO_FAILED, failed, coach/piles/PilesPlace.java"
  })
  void a_screen_touches_four_files_beside_its_package(
      String place, String act, String room, String from) throws IOException {
    Set<String> touched =
        naming(
            "PlaceId\\.%1$s\\b|Act\\.%2$s\\b|case %1$s\\b|case %2$s\\b|^  (%1$s|%2$s)\\(|coach\\.%3$s\\."
                .formatted(place, act, room));
    // A command that tells the same is asked for by no screen, nor a word of the plain walk.
    touched.removeIf(name -> name.startsWith("coach/" + room + "/") || name.startsWith("cli/"));
    List<String> recipe =
        List.of("coach/keys/Act.java", "coach/kernel/PlaceId.java", "coach/Places.java", from);
    assertThat(touched).containsExactlyInAnyOrderElementsOf(recipe);
  }

  /** The place that enters it is among them. */
  @ParameterizedTest
  @CsvSource({
    "PilePlaced, coach/piles/PilesPlace.java, job/Piles.java, PieceEntryKinds, PieceCodecs",
    "WatchEnded, coach/timers/TimersPlace.java, job/FlameLog.java, SittingEntryKinds,"
        + " SittingCodecs",
    "HoursCorrected, coach/weigh/HoursForm.java, job/TimeSheet.java, JobEntryKinds, SittingCodecs"
  })
  void a_kind_of_fact_touches_five_files(
      String fact, String place, String adding, String words, String codecs) throws IOException {
    assertThat(naming("\\b" + fact + "\\b"))
        .containsExactlyInAnyOrder(
            "job/BenchFact.java",
            adding,
            "books/facts/" + codecs + ".java",
            "coach/kernel/" + words + ".java",
            place);
  }

  /** Flashing changes the picture, clicks the loop, letters the window. */
  @ParameterizedTest
  @CsvSource({
    "flash, coach/Pages.java",
    "say-kinds, shell/BenchLoop.java",
    "theme, cli/Starting.java",
    "mouse, cli/Starting.java"
  })
  void a_setting_touches_three_files(String key, String heeded) throws IOException {
    assertThat(naming("\"" + key + "\"|user\\(\\)\\." + key + "\\(\\)"))
        .containsExactlyInAnyOrder(
            "files/UserSettings.java", "coach/settings/SettingsFields.java", heeded);
  }

  @ParameterizedTest
  @ValueSource(strings = {"PlanishSum", "BallSum", "IngotSum", "AlloySum"})
  void a_sum_touches_two_files(String sum) throws IOException {
    assertThat(naming("\\b" + sum + "\\b"))
        .containsExactlyInAnyOrder("reckon/" + sum + ".java", "reckon/Reckoner.java");
  }

  /** The files of the program in which something is named. */
  private static Set<String> naming(String pattern) throws IOException {
    Pattern named = Pattern.compile(pattern, Pattern.MULTILINE);
    Set<String> files = new TreeSet<>();
    try (Stream<Path> all = Files.walk(TOP)) {
      for (Path file : all.filter(each -> each.toString().endsWith(".java")).toList()) {
        if (named.matcher(Files.readString(file)).find()) {
          files.add(TOP.relativize(file).toString().replace('\\', '/'));
        }
      }
    }
    return files;
  }
}
