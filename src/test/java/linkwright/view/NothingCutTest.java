package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Acts;
import linkwright.coach.content.Bars;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Drawing;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Figure;
import linkwright.coach.content.OtherPage;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.content.Table;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Message;
import linkwright.coach.keys.KeyMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reads every scene in every size, turning to the end, each line of a list chosen in turn, the
 * caret in each field in turn: each word of a sentence, a labelled value, a place, a bar, a
 * question, a line, a form and of what is still to do comes by, so that nothing is cut without a
 * way to it.
 */
class NothingCutTest {
  private static final List<int[]> SIZES =
      List.of(
          new int[] {40, 12},
          new int[] {60, 20},
          new int[] {80, 24},
          new int[] {140, 45},
          new int[] {200, 60});

  /** Seventy words that no page says. */
  private static final String MESSAGE =
      IntStream.range(100, 170).mapToObj(i -> "told" + i).collect(Collectors.joining(" "));

  /** Where signs are few, sizes that are common. */
  private static final List<int[]> FEW_SIGNS = List.of(new int[] {60, 20}, new int[] {80, 24});

  static List<String> scenes() {
    String only = System.getProperty("linkwright.scenes", "");
    return Scenes.names().stream()
        .filter(name -> only.isEmpty() || List.of(only.split(",", -1)).contains(name))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void what_is_said_comes_by(String scene) {
    Set<String> cut = new TreeSet<>();
    Bencher bencher = Scenes.of(scene, 80, 24);
    for (int[] size : SIZES) {
      bencher.take(new Message.Resized(size[0], size[1]));
      Page page = Pages.of(bencher.model());
      if (page.across().isPresent()) {
        continue;
      }
      List<String> said = said(page.body().parts(), size[0] >= 60);
      said.add(page.told());
      // "Still to do" is left off where there is little room.
      String still = page.told().isEmpty() ? page.still().replaceAll("^Still to do: ", "") : "";
      said.add(still);
      unparted(page, size, still, cut);
      missing(page, size, said, cut);
      String foot = text(page, size[0], size[1]).lines().skip(size[1] - 2L).findFirst().orElse("");
      if (foot.contains(Glyphs.FULL.cutMark())) {
        cut.add(size[0] + "x" + size[1] + ", at the foot: " + foot);
      }
      for (Part part : Beside.flat(page.body().parts()).toList()) {
        if (part instanceof Table table && table.chosen() >= 0) {
          lines(page, size, table, cut);
        } else if (part instanceof Fields fields) {
          fields(page, size, fields, cut);
        }
      }
    }
    for (int[] size : FEW_SIGNS) {
      bencher.take(new Message.Resized(size[0], size[1]));
      Page page = Pages.of(bencher.model());
      if (page.across().isEmpty()) {
        inFewSigns(page, size, cut);
      }
    }
    assertThat(cut).as(scene).isEmpty();
  }

  /** In ASCII, where a sign may be a word: what is said comes by, spelt. */
  private static void inFewSigns(Page page, int[] size, Set<String> cut) {
    List<String> said = said(page.body().parts(), true);
    Set<String> lost = new LinkedHashSet<>();
    KeyMap keys = KeyMap.USUAL.away(page.away());
    for (String text : said) {
      words(Ascii.of(ActMention.fill(text, keys::spokenOf))).forEach(lost::add);
    }
    for (int part = 0; part < 40 && !lost.isEmpty(); part++) {
      Page at = OtherPage.turned(page, part);
      Grid drawn =
          Screens.draw(at, size[0], size[1], Glyphs.ASCII, KeyMap.USUAL, OptionalDouble.empty());
      words(Ascii.of(drawn).text()).forEach(lost::remove);
    }
    if (!lost.isEmpty()) {
      cut.add("ASCII " + size[0] + "x" + size[1] + ": " + lost);
    }
  }

  /** Whatever is told, at whatever place: all of it comes by, on a card too. */
  @ParameterizedTest
  @MethodSource("scenes")
  void a_long_message_comes_by(String scene) {
    Set<String> cut = new TreeSet<>();
    Bencher bencher = Scenes.of(scene, 80, 24);
    for (int[] size : SIZES) {
      bencher.take(new Message.Resized(size[0], size[1]));
      Page page = Pages.of(bencher.model());
      if (page.across().isEmpty()) {
        missing(OtherPage.telling(page, MESSAGE), size, List.of(MESSAGE), cut);
      }
    }
    assertThat(cut).as(scene).isEmpty();
  }

  /** By the key that stands beside it, which takes nothing of it away. */
  @Test
  void the_rest_of_a_message_is_turned_to() {
    Bencher bencher = Scenes.of("bench-caution", 80, 24);
    bencher.take(new Message.Resized(40, 12));
    bencher.press("u");
    String told = Pages.of(bencher.model()).told();
    assertThat(told.length()).as(told).isGreaterThan(40);
    Set<String> left = new LinkedHashSet<>(words(told).toList());
    for (int turned = 0; turned < 6; turned++) {
      words(text(Pages.of(bencher.model()), 40, 12)).forEach(left::remove);
      bencher.press("v");
    }
    assertThat(left).isEmpty();
  }

  /** Of what is still to do each kind of piece comes by whole: no number without its words. */
  private static void unparted(Page page, int[] size, String still, Set<String> cut) {
    int parts =
        Screens.parts(
            page.body(), page.told(), page.still(), size[0], size[1], page.chain().isPresent());
    StringBuilder shown = new StringBuilder();
    for (int part = 0; part < 2 * parts + 8; part++) {
      shown.append(text(OtherPage.turned(page, part), size[0], size[1])).append('\n');
    }
    for (String kind : still.split("; ", -1)) {
      if (kind.length() <= size[0] - 12 && shown.indexOf(kind) < 0) {
        cut.add(size[0] + "x" + size[1] + ": " + kind);
      }
    }
  }

  private static String text(Page page, int width, int height) {
    return Screens.draw(page, width, height, Glyphs.FULL, KeyMap.USUAL, OptionalDouble.empty())
        .text();
  }

  /** Each line of a list, when it is the chosen one. */
  private static void lines(Page page, int[] size, Table table, Set<String> cut) {
    for (int i = 0; i < table.lines().size(); i++) {
      Table.Line line = table.lines().get(i);
      List<String> said = new ArrayList<>(line.cells());
      line.below().forEach(below -> said.add(below.text()));
      said.removeIf(cell -> cell.strip().equals("-"));
      Table at =
          new Table(
              table.columns(), table.lines(), table.before() + i, table.before(), table.all());
      missing(with(page, table, at), size, said, cut);
    }
  }

  /** Each field of a form, when the caret is in it, with its example or trouble, and explained. */
  private static void fields(Page page, int[] size, Fields fields, Set<String> cut) {
    Form form = fields.form();
    for (int line : form.lines()) {
      Form at = form.withAt(line);
      List<String> said = new ArrayList<>(List.of(form.title()));
      boolean field = line < form.fields().size();
      said.add(
          field
              ? at.fields().get(line).label()
              : line == form.foldLine() ? form.foldWords() : form.keepWords());
      if (field) {
        Field with = at.fields().get(line);
        missing(with(page, fields, new Fields(explained(at))), size, with.explained(), cut);
        said.add(with.trouble().orElse(at.explained() ? with.hint() : with.beside()));
      }
      missing(with(page, fields, new Fields(at)), size, said, cut);
    }
  }

  private static Form explained(Form form) {
    return new Form(
        form.purpose(),
        form.title(),
        form.fields(),
        form.at(),
        form.keepWords(),
        form.unfolded(),
        true,
        form.about());
  }

  /** Adds the words that do not come by, however often one turns on. */
  private static void missing(Page page, int[] size, List<String> said, Set<String> cut) {
    Set<String> lost = new LinkedHashSet<>();
    said.forEach(
        text ->
            words(ActMention.fill(text, KeyMap.USUAL.away(page.away())::spokenOf))
                .forEach(lost::add));
    turnThrough(page, size[0], size[1], lost);
    if (!lost.isEmpty()) {
      cut.add(size[0] + "x" + size[1] + ": " + lost);
    }
  }

  /** Strikes off what comes by, turning on as long as anything has not. */
  private static void turnThrough(Page page, int width, int height, Set<String> lost) {
    int parts =
        Screens.parts(
            page.body(), page.told(), page.still(), width, height, page.chain().isPresent());
    // What is told at the foot takes rows, and so may make more parts: a turn too many does no
    // harm.
    for (int part = 0; part < 2 * parts + 8 && !lost.isEmpty(); part++) {
      Page at = OtherPage.turned(page, part);
      words(text(at, width, height)).forEach(lost::remove);
    }
  }

  /** The page with one of its parts as another. */
  private static Page with(Page page, Part before, Part after) {
    return OtherPage.saying(
        page, new Content(page.body().title(), with(page.body().parts(), before, after)));
  }

  private static List<Part> with(List<Part> parts, Part before, Part after) {
    List<Part> others = new ArrayList<>();
    for (Part part : parts) {
      others.add(
          part == before
              ? after
              : part instanceof Beside beside
                  ? new Beside(
                      with(beside.first(), before, after), with(beside.second(), before, after))
                  : part);
    }
    return others;
  }

  private static Stream<String> words(String text) {
    // A line of a list without room for columns has a comma after each cell.
    return Arrays.stream(text.split("[\\s\\u2800-\\u28ff]+"))
        .map(word -> word.replaceAll("[,;]$", ""))
        .filter(word -> !word.isBlank());
  }

  /** All that is said; what a drawing says below its shapes where it has its room. */
  private static List<String> said(List<Part> parts, boolean drawn) {
    List<String> said = new ArrayList<>();
    for (Part part : Beside.flat(parts).toList()) {
      if (part instanceof Prose prose) {
        // What is spare has a key that shows it by itself.
        said.add(prose.kind() == Prose.Kind.SPARE ? "" : prose.text());
      } else if (part instanceof Rows rows) {
        for (Row row : rows.rows()) {
          said.add(row.label() + " " + row.amount() + " " + row.remark());
        }
      } else if (part instanceof Acts acts) {
        acts.choices().forEach(each -> said.add(each.act().words() + " " + each.stands()));
      } else if (part instanceof Bars bars) {
        for (Bars.Group group : bars.groups()) {
          said.add(group.title());
          group.bars().forEach(bar -> said.add(bar.amount() + " " + bar.words()));
        }
      } else if (part instanceof Figure figure) {
        said.add(figure.word());
      } else if (part instanceof Drawing drawing && !drawing.spare() && drawn) {
        drawing.shapes().forEach(shape -> said.add(shape.caption()));
      } else if (part instanceof Question question) {
        said.add(question.asks());
        question.answers().forEach(each -> said.add(each.says() + " " + each.means()));
      }
    }
    return said;
  }
}
