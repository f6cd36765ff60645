package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.KeyMap;
import linkwright.quantity.UnitStyle;
import linkwright.view.Scenes;
import org.junit.jupiter.api.Test;

/** Every field of every form says what it is, and takes a number without its unit. */
class FieldHelpTest {
  private static final Pattern AMOUNT = Pattern.compile("\\d (?:mm|cm|m|g|in|dwt|AWG)\\b");

  private static final List<Form> FORMS = forms();

  /** Every form that an act of a place opens at one of the scenes, or that a scene stands in. */
  private static List<Form> forms() {
    List<Form> forms = new ArrayList<>();
    Set<Act> tried = EnumSet.noneOf(Act.class);
    for (String name : Scenes.names()) {
      Bencher scene = Scenes.of(name, 80, 24);
      scene.model().held().form().ifPresent(forms::add);
      if (scene.model().held().form().isPresent()) {
        continue;
      }
      Model model = scene.model();
      List<Act> acts = new ArrayList<>(Places.of(model).acts(model));
      acts.addAll(EverywhereActs.ALL);
      for (Act act : acts) {
        if (tried.add(act)) {
          Coach.update(model, new Message.ActChosen(act))
              .model()
              .held()
              .form()
              .ifPresent(forms::add);
        }
      }
    }
    return forms;
  }

  @Test
  void each_says_what_it_is_and_what_it_changes() {
    Set<Form.Purpose> seen = EnumSet.noneOf(Form.Purpose.class);
    Set<String> silent = new TreeSet<>();
    for (Form form : FORMS) {
      seen.add(form.purpose());
      for (Field field : form.fields()) {
        if (field.help().isBlank()) {
          silent.add(form.purpose() + ": " + field.label());
        }
      }
    }
    assertThat(silent).isEmpty();
    assertThat(seen.size())
        .as("sorts of form, of " + Form.Purpose.values().length + ": " + seen)
        .isGreaterThan(25);
  }

  /** What stands in brackets beside a field has no brackets in it and says what is not typed. */
  @Test
  void no_hint_says_what_is_typed_or_has_brackets_of_its_own() {
    Set<String> doubled = new TreeSet<>();
    for (Form form : FORMS) {
      for (Field field : form.fields()) {
        String inside = field.beside().replaceAll("^\\(|\\)$", "");
        if (inside.contains("(") || (!inside.isEmpty() && inside.equals(field.text()))) {
          doubled.add(form.purpose() + ", " + field.label() + ": " + field.beside());
        }
      }
    }
    assertThat(doubled).isEmpty();
  }

  @Test
  void each_that_takes_an_amount_takes_it_without_its_unit() {
    Set<String> bare = new TreeSet<>();
    for (Form form : FORMS) {
      for (Field field : form.fields()) {
        boolean words = field.value().equals(field.text()) && field.choices().isEmpty();
        String two = field.withText("2").value();
        if (words && AMOUNT.matcher(field.hint()).find() && two.equals("2")) {
          bare.add(form.purpose() + ": " + field.label() + " (" + field.hint() + ")");
        }
      }
    }
    // What a customer brought is told in words, 4.2 g among them; a repeat is a sum of links.
    assertThat(bare).allMatch(each -> each.startsWith("CARD: ") || each.startsWith("PLAN: repeat"));
  }

  @Test
  void a_thickness_is_asked_for_by_its_gauge_where_gauges_are_used() {
    Settings inch = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);
    assertThat(Measure.inUnits("{wire:0.9}", UnitStyle.INCH)).isEqualTo("19 AWG");
    Bencher plan = Bencher.withTheDemo(inch).pass(Duration.ofSeconds(1)).press("p");
    plan.toField("wire").type("19");
    assertThat(plan.form().text("wire")).isEqualTo("19 AWG");
  }
}
