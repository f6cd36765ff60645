package linkwright.coach.settings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.ScreenBar;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;

/** The user's choices, changed in the program and kept in her file. */
public final class SettingsPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new SettingsHeld(SettingsFields.form(model), model.held())));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.KEEP);
  }

  @Override
  public List<Act> acts(Model model) {
    return List.of(Act.KEEP);
  }

  @Override
  public Turn act(Model model, Act act) {
    return Turn.to(model);
  }

  private static SettingsHeld held(Model model) {
    return (SettingsHeld) model.held();
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form shown = textChanged ? form.withTroubles(Map.of()) : form;
    return Turn.to(model.with(new SettingsHeld(shown, held(model).from())));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Map<String, String> troubles = SettingsFields.troubles(form);
    if (!troubles.isEmpty()) {
      Form told = form.withTroubles(troubles).atFirstTrouble();
      return Turn.to(model.with(new SettingsHeld(told, held(model).from())));
    }
    Map<String, String> texts = new LinkedHashMap<>();
    String bars = model.settings().chosen().getOrDefault(ScreenBar.KEY, "");
    form.texts()
        .forEach(
            (key, text) -> {
              if (!text.isBlank()) {
                texts.put(key, text.strip());
              }
            });
    String measured =
        SettingsFields.inWindow(model)
            ? ScreenBar.with(bars, model.settings().screen(), form.text(ScreenBar.KEY))
            : bars;
    texts.remove(ScreenBar.KEY);
    if (!measured.isEmpty()) {
      texts.put(ScreenBar.KEY, measured);
    }
    return Turn.with(model, new Effect.KeepSettings(texts));
  }

  /** What was typed is left when it is on the disk, not before. */
  @Override
  public Turn settled(Model model) {
    return Turn.to(model.with(held(model).from()));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(held(model).from()));
  }

  @Override
  public Content content(Model model) {
    return Content.of(
        "settings",
        new Fields(held(model).open()),
        SettingsFields.inWindow(model)
            ? Prose.says(ScreenBar.drawn() + " the screen bar")
            : Prose.aside(
                "Links at life size are to be had in the program's own window, once a bar there was"
                    + " measured: linkwright --window. A terminal's dots are too coarse for it."),
        Prose.aside("Colours, letters, mouse and voice change when the program is started anew."));
  }
}
