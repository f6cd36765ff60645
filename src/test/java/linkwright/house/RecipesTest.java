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

/**
 * A new screen touches, beside its own package, no more than the recipe in DEVELOPERS.md says: its
 * act, its id, the list of places, and the place from which it is come to. Held by places that are
 * named nowhere else: whatever lists all places or all acts once more names them too.
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
    Pattern named =
        Pattern.compile(
            "PlaceId\\.%1$s\\b|Act\\.%2$s\\b|case %1$s\\b|case %2$s\\b|^  (%1$s|%2$s)\\(|coach\\.%3$s\\."
                .formatted(place, act, room),
            Pattern.MULTILINE);
    Set<String> touched = new TreeSet<>();
    try (Stream<Path> all = Files.walk(TOP)) {
      for (Path file : all.filter(each -> each.toString().endsWith(".java")).toList()) {
        String name = TOP.relativize(file).toString().replace('\\', '/');
        boolean own = name.startsWith("coach/" + room + "/");
        // A command that tells the same is asked for by no screen, nor a word of the plain walk.
        boolean command = name.startsWith("cli/");
        if (!own && !command && named.matcher(Files.readString(file)).find()) {
          touched.add(name);
        }
      }
    }
    List<String> recipe =
        List.of("coach/keys/Act.java", "coach/kernel/PlaceId.java", "coach/Places.java", from);
    assertThat(touched).containsExactlyInAnyOrderElementsOf(recipe);
  }
}
