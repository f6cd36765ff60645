package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.form.Field;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.KeyMap;
import linkwright.quantity.UnitStyle;
import linkwright.view.Glyphs;
import linkwright.view.Scenes;
import linkwright.view.Shown;
import org.junit.jupiter.api.Test;

/**
 * What was typed is told as it was typed, in whatever words the rest is said. No text of the
 * program has the word that is typed here, so that its American like comes of nothing else.
 */
class TypedAsTypedTest {
  private static final String TYPED = "a litre of it";
  private static final String TOLD_AS = "liter";

  @Test
  void no_form_tells_it_back_in_other_words() {
    List<String> told = new ArrayList<>();
    for (String name : Scenes.names()) {
      if (name.startsWith("tray") || name.startsWith("names") || name.equals("find")) {
        continue;
      }
      Bencher bencher = Scenes.inInches(name, 140, 60);
      if (bencher.model().held().form().isEmpty()) {
        continue;
      }
      for (Field field : bencher.model().held().form().get().fields()) {
        if (field.choices().isEmpty()) {
          bencher.put(field.id(), TYPED);
          look(name + ", " + field.id(), bencher, told);
        }
      }
      look(name + ", kept", bencher.press("ctrl-k"), told);
      look(name + ", left", bencher.press("esc"), told);
    }
    assertThat(told).isEmpty();
  }

  @Test
  void no_place_does_once_it_is_entered() {
    List<String> told = new ArrayList<>();
    Bencher bencher = american();
    look("a note", bencher.press("k", "n").type(TYPED).press("ctrl-k"), told);
    look("a strike", bencher.press("x").type(TYPED).press("ctrl-k"), told);
    look("the entry struck", bencher.press("down"), told);
    look("undone", bencher.press("u"), told);
    look(
        "a timer",
        american().press("m", "n").type(TYPED).press("down").type("8 min").press("ctrl-k"),
        told);
    look("who works", american().press("b", "@").type(TYPED).press("ctrl-k"), told);
    look("a card", american().press("d", "n").put("customer", TYPED).press("ctrl-k"), told);
    assertThat(told).isEmpty();
  }

  private static Bencher american() {
    return Bencher.withTheDemo(new Settings(UnitStyle.INCH, false, KeyMap.USUAL));
  }

  private static void look(String when, Bencher bencher, List<String> told) {
    String shown = Shown.draw(bencher.model(), Glyphs.FULL).text();
    shown
        .lines()
        .filter(line -> line.contains(TOLD_AS))
        .forEach(line -> told.add(when + ": " + line.strip()));
  }
}
