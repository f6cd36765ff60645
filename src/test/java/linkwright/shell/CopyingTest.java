package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.Coach;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Paging;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Key;
import linkwright.files.Home;
import linkwright.files.Library;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan and the one number of a place handed on for pasting. */
class CopyingTest {
  private static final Instant NOW = Instant.parse("2026-03-04T17:00:00Z");

  @TempDir Path folder;

  private final List<String> taken = new ArrayList<>();
  private boolean takes = true;
  private Performer performer;
  private Model model;

  @BeforeEach
  void begin() {
    Home home = Home.find(Optional.of(folder.toString()), Map.of(), folder);
    Library library = Library.load(home);
    performer =
        new Performer(
            home,
            "bench",
            InstantSource.fixed(NOW),
            () -> {},
            ReadingProgress.ENDLESS,
            text -> takes && taken.add(text));
    Model start = Coach.begin(Start.handbook(library), Settings.USUAL, Paging.WHOLE, NOW, 80, 24);
    model = performer.begin(start, Demo.facts(library), Optional.empty());
    press(Key.of(Key.Kind.ENTER));
  }

  private void press(Key key) {
    model = performer.take(model, new Message.KeyPressed(key));
  }

  @Test
  void the_plan_is_copied_whole_while_a_field_is_open() {
    press(Key.of("p"));
    press(Key.ctrl("y"));
    assertThat(taken).hasSize(1);
    assertThat(taken.get(0)).contains("Metal: sterling", "Links: 9");
    assertThat(model.notice().text()).startsWith("Copied: ");
    assertThat(model.held().form()).isPresent();
  }

  @Test
  void where_a_place_has_one_number_that_is_copied() {
    press(Key.of("b"));
    for (int i = 0; i < 40 && taken.stream().noneMatch(text -> text.matches("\\d+.*")); i++) {
      press(Key.of(" "));
      press(Key.ctrl("y"));
    }
    assertThat(taken)
        .anySatisfy(text -> assertThat(text).matches("\\d+(:\\d\\d| of \\d+)? [A-Za-z ]+"));
  }

  @Test
  void where_the_terminal_takes_none_it_is_told() {
    takes = false;
    press(Key.of("p"));
    press(Key.ctrl("y"));
    assertThat(model.notice().trouble()).isTrue();
    assertThat(model.notice().text()).contains("Nothing was copied");
  }
}
