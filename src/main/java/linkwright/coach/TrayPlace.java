package linkwright.coach;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.job.Fact;

/** The tray: the jobs at hand; one is opened, or a new one begun. */
final class TrayPlace implements Place {
  @Override
  public List<Act> acts(Model model) {
    return List.of(
        Act.CHOOSE, Act.UP, Act.DOWN, Act.NEW_JOB, Act.TO_RECKONER, Act.TO_CAUTIONS, Act.LEAVE);
  }

  @Override
  public Turn act(Model model, Act act) {
    Screen.Tray tray = (Screen.Tray) model.screen();
    return switch (act) {
      case UP -> Turn.to(model.with(at(model, tray.at() - 1)));
      case DOWN -> Turn.to(model.with(at(model, tray.at() + 1)));
      case CHOOSE ->
          model.tray().isEmpty()
              ? Turn.to(model.told("The tray is empty: n begins a new job."))
              : Turn.with(
                  model, new Effect.OpenJob(model.tray().get(at(model, tray.at()).at()).slug()));
      case NEW_JOB -> Turn.to(model.with(new Screen.Tray(tray.at(), Optional.of(form(model)))));
      case LEAVE -> Turn.with(model, new Effect.Leave());
      default -> Places.go(model, act);
    };
  }

  private static Screen.Tray at(Model model, int wanted) {
    int last = Math.max(0, model.tray().size() - 1);
    return new Screen.Tray(Math.max(0, Math.min(last, wanted)), Optional.empty());
  }

  private static Form form(Model model) {
    List<String> routines = model.handbook().routines().stream().map(r -> r.id()).toList();
    String first =
        routines.contains("scroll-and-ring")
            ? "scroll-and-ring"
            : routines.isEmpty() ? "" : routines.get(0);
    return Form.of(
        Form.Purpose.NEW_JOB,
        "A new job",
        "begin it",
        List.of(
            Field.of("name", "Name", "", "what you will look for it by"),
            told(model, Field.choice("routine", "Routine", first, "", routines))));
  }

  /** The routine's field says what the routine makes: its name alone tells a beginner little. */
  private static Field told(Model model, Field field) {
    String says =
        model
            .handbook()
            .routine(field.text().strip())
            .map(routine -> JobWords.fill(routine.title() + ". " + routine.says(), model))
            .orElse("left and right go through them");
    return new Field(
        field.id(),
        field.label(),
        field.text(),
        field.caret(),
        says,
        field.choices(),
        field.trouble());
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form shown =
        form.withTroubles(Map.of())
            .mapFields(field -> field.id().equals("routine") ? told(model, field) : field);
    return Turn.to(
        model.with(new Screen.Tray(((Screen.Tray) model.screen()).at(), Optional.of(shown))));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Map<String, String> troubles = new HashMap<>();
    if (form.text("name").isEmpty()) {
      troubles.put("name", "Give the job a name, such as “Anna's bracelet”.");
    }
    if (model.handbook().routine(form.text("routine")).isEmpty()) {
      troubles.put(
          "routine",
          "No routine is called “"
              + form.text("routine")
              + "”: left and right go through those there are.");
    }
    if (!troubles.isEmpty()) {
      Form told = form.withTroubles(troubles).atFirstTrouble();
      return Turn.to(
          model.with(new Screen.Tray(((Screen.Tray) model.screen()).at(), Optional.of(told))));
    }
    return Turn.with(
        model.with(at(model, ((Screen.Tray) model.screen()).at())),
        new Effect.BeginJob(
            form.text("name"),
            List.of(new Fact.JobOpened(form.text("name"), form.text("routine")))));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(at(model, ((Screen.Tray) model.screen()).at())));
  }

  @Override
  public Turn row(Model model, int row) {
    Model there = model.with(at(model, row));
    return row == ((Screen.Tray) model.screen()).at() ? act(there, Act.CHOOSE) : Turn.to(there);
  }
}
