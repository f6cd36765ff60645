package linkwright.coach.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.exchange.Exported;
import linkwright.exchange.PlanFileText;
import linkwright.exchange.forms.OutForm;
import linkwright.quantity.Read;

/** What can be written out, the form that asks for it, and the text that it comes to. */
final class OutForms {
  /** The folder of hers for files of other programs. */
  static final String FOLDER = "exchange";

  /** The folder in which a new job looks for a plan. */
  private static final String PLANS = "plans";

  static final String JOB = "this job";
  static final String DRAWER = "the drawer";
  private static final String PLAN = "its plan";
  private static final String HANDS = "the hands";
  private static final String ALL = "all";
  static final String WHAT = "what";
  static final String FILE = "file";
  private static final String TABLE = "table";
  private static final String AS = "as";

  private OutForms() {}

  /** What can be written here: hands are told whole only where no job narrows them. */
  private static List<String> subjects(Model model) {
    return model.job().isPresent() ? List.of(JOB, PLAN, DRAWER) : List.of(DRAWER, HANDS);
  }

  private static List<String> tables(String what) {
    List<String> tables = new ArrayList<>(List.of(ALL));
    tables.addAll(
        switch (what) {
          case JOB -> Exported.OF_JOB;
          case DRAWER -> Exported.OF_DRAWER;
          case HANDS -> Exported.OF_HANDS;
          default -> List.<String>of();
        });
    return tables;
  }

  private static final String A_TABLE = "Which of its tables; csv holds one only.";

  static Form form(Model model) {
    List<String> subjects = subjects(model);
    return Form.of(
        Form.Purpose.WRITE_OUT,
        "A file for other programs",
        "write it",
        List.of(
            Field.choice(WHAT, WHAT, subjects.get(0), "left and right: what there is", subjects)
                .helped("What goes into the file; nothing of another job goes with it."),
            Field.choice(TABLE, TABLE, ALL, "one table, or all of them", tables(subjects.get(0)))
                .helped(A_TABLE),
            Field.choice(AS, AS, "yaml", "csv holds one table", List.of("yaml", "json", "csv"))
                .helped("How it is written: csv for a spreadsheet, yaml and json for scripts."),
            Field.of(FILE, FILE, "", "a name, its ending is added; a whole path; empty: named so")
                .helped(
                    "A bare name lies in the folder “exchange” of your Linkwright folder, a plan in"
                        + " “plans”, where a new job finds it, and gets its ending: .yaml, .json or"
                        + " .csv. A path is taken as it stands. What lies there already is asked"
                        + " about.")));
  }

  /** The same form with the tables that the chosen thing has. */
  static Form fitted(Form form) {
    List<String> tables = tables(form.text(WHAT));
    return form.mapFields(
        field ->
            field.id().equals(TABLE)
                ? Field.choice(
                        TABLE,
                        TABLE,
                        tables.contains(field.text()) ? field.text() : ALL,
                        field.hint(),
                        tables)
                    .helped(A_TABLE)
                    .with(field.trouble())
                : field);
  }

  private static boolean isPlan(Form form) {
    return form.text(WHAT).equals(PLAN);
  }

  static String folder(Form form) {
    return isPlan(form) ? PLANS : FOLDER;
  }

  /** The file's name, with its ending; what it holds gives it one where none is typed. */
  static String file(Model model, Form form) {
    String ending = "." + (isPlan(form) ? "yaml" : form.text(AS));
    String typed = form.text(FILE);
    if (!typed.isEmpty()) {
      // A path is where she says; a bare name lies in a folder in which its ending tells it.
      return typed.contains(".") || typed.contains("/") ? typed : typed + ending;
    }
    String slug = model.job().map(job -> job.slug()).orElse("");
    String of =
        switch (form.text(WHAT)) {
          case DRAWER -> "drawer";
          case HANDS -> "hands";
          default -> slug;
        };
    String table = form.text(TABLE);
    return of + (table.equals(ALL) || isPlan(form) ? "" : "-" + table) + ending;
  }

  /** What is to stand in the file, or why there is nothing. */
  static Read<String> text(Model model, Form form) {
    if (isPlan(form)) {
      return model
          .job()
          .map(job -> job.state().course())
          .filter(course -> !course.wish().isEmpty())
          .map(course -> Read.good(PlanFileText.of(Optional.of(course.routine()), course.wish())))
          .orElseGet(() -> Read.bad("This job has no plan yet."));
    }
    String table = form.text(TABLE);
    return OutForm.named(form.text(AS))
        .flatMap(as -> exported(model, form).text(table.equals(ALL) ? "" : table, as));
  }

  private static Exported exported(Model model, Form form) {
    return switch (form.text(WHAT)) {
      case DRAWER -> Exported.ofDrawer(model.handbook());
      case HANDS -> Exported.ofHands(model.handbook());
      default ->
          Exported.ofJob(
              model.job().orElseThrow().entries(),
              model.job().orElseThrow().state(),
              model.handbook());
    };
  }

  /** The field that a problem with the text is told beside. */
  static String culprit(Form form) {
    return isPlan(form) ? WHAT : TABLE;
  }
}
