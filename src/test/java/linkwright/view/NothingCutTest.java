package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Message;
import linkwright.coach.keys.KeyMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reads every scene in every size, turning to the end: each word of a sentence and of a labelled
 * value comes by somewhere, so that nothing is cut without a way to the rest.
 */
class NothingCutTest {
  private static final List<int[]> SIZES =
      List.of(
          new int[] {40, 12},
          new int[] {60, 20},
          new int[] {80, 24},
          new int[] {140, 45},
          new int[] {200, 60});

  static List<String> scenes() {
    return Scenes.names();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void what_is_said_comes_by(String scene) {
    Set<String> cut = new TreeSet<>();
    Bencher bencher = Scenes.of(scene, 80, 24);
    for (int[] size : SIZES) {
      int width = size[0];
      int height = size[1];
      bencher.take(new Message.Resized(width, height));
      Page page = Pages.of(bencher.model());
      if (page.across().isPresent()) {
        continue;
      }
      List<String> said = said(page.body().parts());
      said.add(page.told());
      Set<String> lost = new LinkedHashSet<>();
      said.forEach(
          text ->
              words(ActMention.fill(text, KeyMap.USUAL.away(page.away())::spokenOf))
                  .forEach(lost::add));
      turnThrough(page, width, height, lost);
      if (!lost.isEmpty()) {
        cut.add(width + "x" + height + ": " + lost);
      }
    }
    assertThat(cut).isEmpty();
  }

  /** Strikes off what comes by, turning on as long as anything has not. */
  private static void turnThrough(Page page, int width, int height, Set<String> lost) {
    int parts = Screens.parts(page.body(), width, height, page.chain().isPresent());
    // What is told at the foot takes rows, and so may make more parts: a turn too many does no
    // harm.
    for (int part = 0; part < 2 * parts + 8 && !lost.isEmpty(); part++) {
      Page at = turned(page, part);
      words(
              Screens.draw(at, width, height, Glyphs.FULL, KeyMap.USUAL, OptionalDouble.empty())
                  .text())
          .forEach(lost::remove);
    }
  }

  private static Page turned(Page page, int part) {
    return new Page(
        page.job(),
        page.body(),
        part,
        page.turns(),
        page.nextWait(),
        page.hotWork(),
        page.chain(),
        page.still(),
        page.told(),
        page.trouble(),
        page.open(),
        page.away(),
        page.across());
  }

  private static Stream<String> words(String text) {
    return Arrays.stream(text.split("[\\s\\u2800-\\u28ff]+")).filter(word -> !word.isBlank());
  }

  private static List<String> said(List<Part> parts) {
    List<String> said = new ArrayList<>();
    for (Part part : parts) {
      if (part instanceof Prose prose) {
        // What is spare has a key that shows it by itself.
        said.add(prose.kind() == Prose.Kind.SPARE ? "" : prose.text());
      } else if (part instanceof Rows rows) {
        for (Row row : rows.rows()) {
          said.add(row.label() + " " + row.amount() + " " + row.remark());
        }
      } else if (part instanceof Beside beside) {
        said.addAll(said(beside.first()));
        said.addAll(said(beside.second()));
      }
    }
    return said;
  }
}
