package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Fields;
import linkwright.coach.content.OtherPage;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.KeyMap;
import linkwright.quantity.UnitStyle;
import linkwright.routine.BritishWords;
import linkwright.routine.TradeWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Who reads American words reads no British one, on any screen: places, forms, the help of each
 * field, all keys, what is found, routines and cautions.
 */
class AmericanWordsTest {
  static List<String> scenes() {
    return Scenes.names();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void no_screen_says_a_british_word(String scene) {
    Bencher bencher = Scenes.inInches(scene, 140, 45);
    Set<String> british = new TreeSet<>();
    turned(bencher, british);
    for (Part part : Beside.flat(Pages.of(bencher.model()).body().parts()).toList()) {
      if (part instanceof Fields fields) {
        told(fields.form(), british);
      }
    }
    if (bencher.model().held().form().isEmpty()) {
      turned(bencher.press("?"), british);
    }
    assertThat(british).as(scene).isEmpty();
  }

  /** All pages of what stands there. */
  private static void turned(Bencher bencher, Set<String> british) {
    Page page = Pages.of(bencher.model());
    for (int part = 0; part < 12; part++) {
      Grid drawn =
          Screens.draw(
              OtherPage.turned(page, part),
              140,
              45,
              Glyphs.FULL,
              KeyMap.USUAL,
              OptionalDouble.empty());
      find(drawn.text(), british);
    }
  }

  private static void told(Form form, Set<String> british) {
    form.fields()
        .forEach(
            field -> {
              find(field.label() + ". " + field.hint() + ". " + field.help(), british);
              field.choices().forEach(choice -> find(choice.says(), british));
            });
    find(form.title() + ". " + form.keepWords() + ". " + form.foldWords(), british);
  }

  private static void find(String text, Set<String> british) {
    british.addAll(BritishWords.in(text));
  }

  /** Whatever stands in the files that ship, as it is shown. */
  @Test
  void no_routine_caution_or_word_of_the_trade_keeps_a_british_word() throws IOException {
    Set<String> british = new TreeSet<>();
    List<Path> files = new ArrayList<>();
    for (String folder : List.of("routines", "safety")) {
      try (Stream<Path> each = Files.list(Path.of(folder))) {
        each.filter(file -> file.toString().endsWith(".yaml")).forEach(files::add);
      }
    }
    for (Path file : files) {
      StringBuilder text = new StringBuilder();
      Files.readString(file)
          .lines()
          .filter(line -> !line.strip().startsWith("#") && !line.strip().startsWith("source"))
          .forEach(line -> text.append(line).append('\n'));
      find(TradeWords.AMERICAN.show(text.toString().replaceAll("\\{[^}]*}", "")), british);
    }
    assertThat(british).isEmpty();
  }

  /** Whoever looks for anything finds it by her own word. */
  @Test
  void what_is_found_is_called_by_the_american_word() {
    Settings american = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);
    Bencher bencher = Bencher.withTheDemo(american).press("f");
    Set<String> british = new TreeSet<>();
    for (int page = 0; page < 60; page++) {
      find(Shown.draw(bencher.model(), Glyphs.FULL).text(), british);
      bencher.press(3, "page-down");
    }
    assertThat(british).isEmpty();
  }

  /** What a teacher signs, sets and looks at, whatever is offered there and typed into it. */
  @ParameterizedTest
  @ValueSource(strings = {"g", "p", "x"})
  void no_form_of_a_students_book_offers_a_british_word(String key) {
    Settings american = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);
    Bencher bencher = Bencher.atTheTray(american).teaching("ada", "Ada").press("s", "t", key);
    Form form =
        Pages.of(bencher.model()).body().parts().stream()
            .flatMap(part -> part instanceof Fields fields ? Stream.of(fields.form()) : Stream.of())
            .findFirst()
            .orElseThrow();
    Set<String> british = new TreeSet<>();
    told(form, british);
    form.fields().forEach(field -> find(field.text(), british));
    form.fields().forEach(field -> field.choices().forEach(each -> find(each.id(), british)));
    bencher.take(new Message.FieldChosen(1));
    for (int step = 0; step < 80; step++) {
      find(Shown.draw(bencher.press("right").model(), Glyphs.FULL).text(), british);
    }
    bencher.type(" ?").press("ctrl-k");
    find(Shown.draw(bencher.model(), Glyphs.FULL).text(), british);
    assertThat(british).isEmpty();
  }

  /** Every reason for redo and scrap, at each step of the chain. */
  @Test
  void no_reason_for_a_redo_is_british() {
    Settings american = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);
    Bencher bencher = Bencher.withTheDemo(american).press("b");
    Set<String> british = new TreeSet<>();
    int asked = 0;
    for (int step = 0; step < 40; step++) {
      for (String key : List.of("r", "s")) {
        turned(bencher.press(key), british);
        asked += Shown.draw(bencher.model(), Glyphs.FULL).text().contains(" 1 ") ? 1 : 0;
        bencher.press("1");
        turned(bencher, british);
        bencher.press("esc", "b");
      }
      bencher.press("space", "n");
    }
    assertThat(asked).as("reasons were asked for").isGreaterThan(5);
    assertThat(british).isEmpty();
  }
}
