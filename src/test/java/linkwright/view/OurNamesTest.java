package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.coach.Bencher;
import org.junit.jupiter.api.Test;

/** No screen shows a name that only the program's insides and files have, nor a moment as they. */
class OurNamesTest {
  private static final Pattern OURS =
      Pattern.compile(
          "\\dT\\d\\d:\\d|\\((UTC|Z|GMT|[A-Z]{3,4}|Etc/\\w+)\\)|\\b[a-z]+_[a-z]+|\\b[a-z]+[A-Z][a-z]+\\b|\\bto-[a-z]+\\b");

  @Test
  void no_screen_shows_one() {
    List<String> found = new ArrayList<>();
    List<String> ids = ids().toList();
    for (String name : Scenes.names()) {
      String shown = Shown.draw(Scenes.of(name, 140, 60).model(), Glyphs.FULL).text();
      Matcher ours = OURS.matcher(shown);
      while (ours.find()) {
        found.add(name + ": " + ours.group());
      }
      ids.stream().filter(shown::contains).forEach(id -> found.add(name + ": " + id));
    }
    assertThat(found).isEmpty();
  }

  /** Ids of steps and cautions, of more words than one. */
  private static Stream<String> ids() {
    return Stream.concat(
            Bencher.LIBRARY.routines().values().stream()
                .flatMap(routine -> routine.steps().stream())
                .map(step -> step.id().word()),
            Bencher.LIBRARY.cautions().keySet().stream())
        .filter(id -> id.contains("-"))
        .distinct();
  }
}
