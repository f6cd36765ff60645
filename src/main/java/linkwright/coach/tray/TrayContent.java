package linkwright.coach.tray;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.TrayJob;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.drafting.Drafting;
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

  /** What waits of a new job: its name, else its plan file. */
  private static List<Part> waiting(Model model, TrayHeld held) {
    if (held.form().isPresent()) {
      return List.of();
    }
    List<Part> parts = new ArrayList<>();
    List<String> more = new ArrayList<>();
    for (Form.Purpose form : DraftWords.waiting(DraftWords.jobless(model))) {
      if (form != Form.Purpose.NEW_JOB) {
        more.addAll(DraftWords.each(form, Drafting.jobless(model, form)));
        continue;
      }
      Map<String, String> texts = Drafting.jobless(model, form);
      String name = texts.getOrDefault("name", "").strip();
      String draft = name.isEmpty() ? texts.getOrDefault("plan", "").strip() : name;
      parts.add(
          elsewhere(
              "typed, not begun: a new job"
                  + (draft.isEmpty() ? "" : ", “" + draft + "”")
                  + "; {do:new-job} goes on, {do:throw-away} throws it away"));
    }
    if (!more.isEmpty()) {
      parts.add(
          elsewhere(
              "typed, not entered: "
                  + String.join(", ", more)
                  + "; {do:throw-away} throws away, one by one"));
    }
    return parts;
  }

  private static Part elsewhere(String says) {
    return new Prose(Prose.Kind.ELSEWHERE, says);
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
      none.addAll(waiting(model, held));
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
    parts.addAll(waiting(model, held));
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
