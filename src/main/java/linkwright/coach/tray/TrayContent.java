package linkwright.coach.tray;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.TrayJob;
import linkwright.text.Narrowing;

/** The jobs at hand: where each stands and what waits. */
final class TrayContent {
  private static final String TITLE = "the tray";

  private TrayContent() {}

  /** The jobs that hold what the list is narrowed by. */
  static List<TrayJob> shown(Model model, TrayHeld held) {
    List<TrayJob> jobs = model.tray().stream().filter(job -> held.all() || !job.away()).toList();
    return Narrowing.of(held.search(), jobs, TrayContent::names);
  }

  private static List<String> names(TrayJob job) {
    List<String> names = new ArrayList<>(List.of(job.name(), job.slug(), job.stands()));
    names.addAll(job.waits());
    return names;
  }

  /** What waits of a new job: its name, else its plan file; empty if nothing was typed. */
  static String draft(TrayHeld held) {
    String name = held.typed().getOrDefault("name", "").strip();
    return name.isEmpty() ? held.typed().getOrDefault("plan", "").strip() : name;
  }

  private static List<Part> waiting(TrayHeld held) {
    String draft = draft(held);
    return draft.isEmpty() || held.form().isPresent()
        ? List.of()
        : List.of(
            new Prose(
                Prose.Kind.ELSEWHERE,
                "typed, not begun: a new job, “"
                    + draft
                    + "”; {do:new-job} goes on, {do:throw-away} throws it away"));
  }

  static Content of(Model model, TrayHeld held) {
    boolean narrowing =
        held.form().filter(form -> form.purpose() == Form.Purpose.SEARCH).isPresent();
    if (held.form().isPresent() && !narrowing) {
      return Content.of(TITLE, new Fields(held.form().get()));
    }
    if (model.tray().isEmpty()) {
      List<Part> none = new ArrayList<>();
      none.add(Prose.says("No job is in the tray yet. {do:new-job} begins one."));
      none.addAll(waiting(held));
      return new Content(TITLE, none);
    }
    List<Table.Line> lines = shown(model, held).stream().map(job -> line(job, model)).toList();
    List<Part> parts = new ArrayList<>();
    held.form().ifPresent(form -> parts.add(new Fields(form)));
    parts.add(
        lines.isEmpty()
            ? Prose.says(
                held.search().isEmpty()
                    ? "Every job is put away: {do:show-all} shows them, {do:new-job} begins one."
                    : "No job is called that. {do:search} narrows the list by another word.")
            : new Table(List.of(Table.Column.words("")), lines, held.at()));
    parts.addAll(waiting(held));
    parts.add(
        Prose.aside("{do:to-my-bench} shows your bench, {do:to-hands} what your books taught."));
    return new Content(TITLE, parts);
  }

  private static Table.Line line(TrayJob job, Model model) {
    String waits = job.waits().isEmpty() ? "" : "waits: " + String.join(", ", job.waits());
    return new Table.Line(
        List.of(job.name()),
        List.of(
            Prose.aside(
                (job.away() ? "put away; " : "") + ClosedWords.stands(job, model.settings())),
            Prose.stop(waits)),
        Emphasis.PLAIN);
  }
}
