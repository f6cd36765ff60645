package linkwright.coach.settings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.form.Offered;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.ScreenBar;
import linkwright.quantity.Count;

/** A field for each choice that stands in the user's file. */
public final class SettingsFields {
  /**
   * One choice.
   *
   * @param key its key in the file
   * @param label what it is called
   * @param usual its value where the file says nothing
   * @param choices the values there are; empty where any text may do
   * @param help what it is and what it changes
   */
  public record Setting(String key, String label, String usual, List<String> choices, String help) {
    public Setting {
      choices = List.copyOf(choices);
    }
  }

  private static final List<String> ON_OFF = List.of("true", "false");

  /** How a flag of the file is told and typed. */
  private static final Map<String, String> SHOWN = Map.of("true", "yes", "false", "no");

  private static final String OFFERED = "left and right: the likely ones";

  /** Programs that say the sentence that is their last word; the last reads it where it is put. */
  private static final List<Offered> VOICES =
      List.of(
          Offered.of("espeak-ng"),
          new Offered("spd-say -w", "the speech dispatcher", List.of()),
          new Offered("say", "what macOS brings", List.of()),
          new Offered(
              "powershell -NoProfile -Command Add-Type -AssemblyName System.Speech;"
                  + " (New-Object System.Speech.Synthesis.SpeechSynthesizer)"
                  + ".Speak($env:LINKWRIGHT_SAYS) #",
              "what Windows brings",
              List.of()));

  /** All of them. */
  public static final List<Setting> ALL =
      List.of(
          new Setting(
              "units",
              "units",
              "metric",
              List.of("metric", "inch"),
              "How amounts are shown, and the unit of a number typed without one: mm and g, or"
                  + " inches, gauge numbers and pennyweights."),
          new Setting(
              "words",
              "trade words",
              "british",
              List.of("british", "american"),
              "Joint, pallion, former, or seam, chip, mandrel."),
          new Setting(
              "theme",
              "colours",
              "",
              List.of("", "dark", "light", "high-contrast", "plain"),
              "The colours of text. Empty: the terminal's own background decides."),
          new Setting(
              "device",
              "this machine",
              "",
              List.of(),
              "The name of this machine in the job books, so that entries from two can be told"
                  + " apart."),
          new Setting(
              "font-size",
              "letters, points",
              "18",
              List.of(),
              "The size of letters in the program's own window, 8 to 72."),
          new Setting(
              ScreenBar.KEY,
              "screen bar",
              "",
              List.of(),
              "How long the bar below is on this screen, by your calliper, from upright to upright."
                  + " From then on links are drawn at life size too, beside the large drawing."),
          new Setting(
              "flash", "flash when due", "true", ON_OFF, "Whether a timer that is due may flash."),
          new Setting(
              "mouse",
              "mouse",
              "true",
              ON_OFF,
              "Whether clicks are taken. Without, the terminal marks text as it always does."),
          new Setting(
              "say",
              "say aloud by",
              "",
              List.of(),
              "A command that says the sentence that is its last word; the likely ones are"
                  + " offered. Empty: nothing is said."),
          new Setting(
              "say-kinds",
              "what is heard",
              "",
              List.of(),
              "Of what is said any of cautions, waits, counts, steps, still-to-do, with commas;"
                  + " empty: all of them. With clicks each count clicks, with tones a wait that is"
                  + " due sounds, whether anything is said or not."));

  private static final int SMALLEST = 8;
  private static final int LARGEST = 72;

  private SettingsFields() {}

  static Form form(Model model) {
    List<Field> fields =
        ALL.stream()
            .filter(each -> !each.key().equals(ScreenBar.KEY) || inWindow(model))
            .map(each -> field(model, each, text(model, each)))
            .toList();
    return Form.of(Form.Purpose.SETTINGS, "Your choices", "keep them", fields);
  }

  static boolean inWindow(Model model) {
    return !model.settings().screen().isEmpty();
  }

  /** What stands in the field: of the bars, the one of this screen. */
  private static String text(Model model, Setting each) {
    String now = model.settings().chosen().getOrDefault(each.key(), each.usual());
    return each.key().equals(ScreenBar.KEY)
        ? ScreenBar.of(now, model.settings().screen()).orElse("")
        : shown(now, each);
  }

  private static String shown(String value, Setting each) {
    return each.choices().equals(ON_OFF) ? SHOWN.getOrDefault(value, value) : value;
  }

  private static Field field(Model model, Setting each, String text) {
    List<String> choices = each.choices().stream().map(any -> shown(any, each)).toList();
    Field field =
        each.key().equals("say")
            ? Field.choiceOf(each.key(), each.label(), text, OFFERED, VOICES).whole()
            : choices.isEmpty()
                ? Field.of(each.key(), each.label(), text, each.usual())
                : Field.choice(each.key(), each.label(), text, "", choices);
    Measure measure =
        switch (each.key()) {
          case "font-size" -> Measure.NUMBER;
          case ScreenBar.KEY -> Measure.LENGTH;
          default -> Measure.WORDS;
        };
    return field.takes(measure, model.settings().units()).helped(each.help());
  }

  static Map<String, String> troubles(Form form) {
    Map<String, String> troubles = new LinkedHashMap<>();
    for (Setting each : ALL) {
      String text = form.text(each.key());
      List<String> told =
          each.choices().stream()
              .filter(word -> !word.isEmpty())
              .map(word -> shown(word, each))
              .toList();
      boolean known = each.choices().contains(text) || told.contains(text);
      if (!told.isEmpty() && !known) {
        troubles.put(each.key(), "It is one of " + String.join(", ", told) + ".");
      }
    }
    String bar = form.text(ScreenBar.KEY);
    if (!bar.isBlank()) {
      ScreenBar.read(bar).problem().ifPresent(said -> troubles.put(ScreenBar.KEY, said));
    }
    String size = form.text("font-size");
    int points = Count.inDigits(size, 3).orElse(0);
    if (!size.isEmpty() && (points < SMALLEST || points > LARGEST)) {
      troubles.put("font-size", "A size of letters from 8 to 72, such as 18.");
    }
    return troubles;
  }
}
