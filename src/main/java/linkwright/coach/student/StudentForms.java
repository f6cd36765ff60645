package linkwright.coach.student;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Offered;
import linkwright.coach.kernel.Model;
import linkwright.job.LessonFact;
import linkwright.lesson.StudentReport;
import linkwright.quantity.Count;
import linkwright.quantity.Nearest;
import linkwright.routine.PieceKind;
import linkwright.routine.Routine;
import linkwright.standing.Handbook;

/** What a teacher signs and sets, and what a student writes of a piece. */
final class StudentForms {
  private static final int MOST = 999;
  private static final int MOST_NAMED = 4;

  private StudentForms() {}

  static Form sign(Model model, StudentReport report) {
    return Form.of(
        Form.Purpose.SIGN_STEP,
        "A teacher's mark: a mark, not a proof",
        "sign it",
        List.of(
            Field.of("mark", "your mark", "", "as you sign, three letters do"),
            step(model, report),
            Field.of("piece", "piece", "", "link 4; empty for the step as such"),
            Field.of("note", "note", "", "what you saw")));
  }

  static Form study() {
    return Form.of(
        Form.Purpose.STUDY_PIECE,
        "A piece, looked at",
        "enter it",
        List.of(
            Field.of("piece", "piece", "", "link 4"),
            Field.of("expected", "I expected", "", "what it was to be"),
            Field.of("got", "I got", "", "what it is"),
            Field.of("change", "I will change", "", "one thing, the next time")));
  }

  static Form practice(Model model, StudentReport report) {
    String pieces = report.practice().stream().findFirst().map(p -> "" + p.pieces()).orElse("8");
    return Form.of(
        Form.Purpose.SET_PRACTICE,
        "Practice",
        "set it",
        List.of(
            step(model, report),
            Field.of("pieces", "pieces", pieces, "how many"),
            Field.of(
                "days",
                "in days",
                "" + model.learning().roster().gapDays(),
                "and again at that gap")));
  }

  /** The steps that she met stand first. */
  private static Field step(Model model, StudentReport report) {
    List<String> steps = new ArrayList<>();
    report.practice().forEach(each -> steps.add(each.at().routine() + "/" + each.at().step()));
    report.made().forEach(each -> steps.add(each.routine() + "/" + each.step()));
    report.steps().forEach(each -> steps.add(each.routine() + "/" + each.step()));
    for (Routine routine : model.handbook().routines()) {
      routine.steps().forEach(step -> steps.add(routine.id() + "/" + step.id()));
    }
    Map<String, String> titles = new LinkedHashMap<>();
    for (Routine routine : model.handbook().routines()) {
      routine.steps().forEach(step -> titles.put(routine.id() + "/" + step.id(), step.title()));
    }
    List<Offered> once =
        steps.stream()
            .distinct()
            .map(id -> new Offered(id, titles.getOrDefault(id, ""), List.of()))
            .toList();
    String hint = "its whole title; left and right go on";
    return Field.choiceOf("step", "step", once.get(0).id(), hint, once).whole();
  }

  /** The form with the one step that has that very title, the open job's routine before others. */
  static Form meant(Model model, Form form) {
    String routine = model.job().map(job -> job.state().course().routine()).orElse("");
    return form.mapFields(
        field ->
            field.takesParts()
                ? field
                : called(field, routine).map(step -> field.withText(step.id())).orElse(field));
  }

  private static Optional<Offered> called(Field field, String routine) {
    String typed = field.text().strip();
    List<Offered> all =
        field.choices().stream()
            .filter(
                step -> step.id().equalsIgnoreCase(typed) || step.says().equalsIgnoreCase(typed))
            .toList();
    List<Offered> here = all.stream().filter(step -> step.id().startsWith(routine + "/")).toList();
    List<Offered> fits = here.isEmpty() ? all : here;
    return fits.size() == 1 ? Optional.of(fits.get(0)) : Optional.empty();
  }

  static Map<String, String> troubles(Form form, Handbook handbook) {
    Map<String, String> troubles = new LinkedHashMap<>();
    switch (form.purpose()) {
      case SIGN_STEP -> {
        need(form, "mark", "Sign with your mark, such as EK.", troubles);
        if (!form.text("step").isBlank() || form.text("piece").isBlank()) {
          known(form, troubles);
        }
        piece(form, handbook, troubles);
      }
      case STUDY_PIECE -> {
        need(form, "piece", "Say which piece it is.", troubles);
        piece(form, handbook, troubles);
        need(form, "change", "Name one thing that you will do otherwise.", troubles);
      }
      default -> {
        known(form, troubles);
        count(form, "pieces", troubles);
        count(form, "days", troubles);
      }
    }
    return troubles;
  }

  private static void need(Form form, String id, String why, Map<String, String> troubles) {
    if (form.text(id).isBlank()) {
      troubles.put(id, why);
    }
  }

  /** A mark or practice for a step that no routine has would be found again nowhere. */
  private static void known(Form form, Map<String, String> troubles) {
    String step = form.text("step");
    List<String> steps =
        form.fields().stream()
            .filter(field -> field.id().equals("step"))
            .flatMap(field -> field.choices().stream())
            .map(Offered::id)
            .toList();
    List<Offered> near =
        form.fields().stream()
            .filter(field -> field.id().equals("step") && !step.isBlank())
            .flatMap(field -> field.offered().stream())
            .toList();
    if (!steps.contains(step) && !near.isEmpty()) {
      troubles.put("step", severalFit(step, near));
    } else if (!steps.contains(step)) {
      troubles.put(
          "step",
          "No routine has the step “"
              + step
              + "”."
              + Nearest.of(step, steps).map(id -> " Did you mean " + id + "?").orElse(""));
    }
  }

  /** A part of a title may be another step's too: which is meant is asked, never guessed. */
  private static String severalFit(String typed, List<Offered> near) {
    String named =
        near.stream()
            .sorted(Comparator.comparing(step -> !begins(step.says(), typed)))
            .limit(MOST_NAMED)
            .map(step -> "“" + step.says() + "” (" + step.id() + ")")
            .collect(Collectors.joining(", "));
    int more = near.size() - MOST_NAMED;
    return "“"
        + typed
        + "” alone names no one step. It may be "
        + named
        + (more > 0 ? " or one of " + more + " more" : "")
        + ". Write its whole title, or what stands in brackets.";
  }

  private static boolean begins(String title, String typed) {
    return title.toLowerCase(Locale.ROOT).startsWith(typed.toLowerCase(Locale.ROOT));
  }

  /** A piece is of a kind that the step's routine makes, or any if no step is said. */
  private static void piece(Form form, Handbook handbook, Map<String, String> troubles) {
    String piece = form.text("piece").strip();
    String routine =
        form.fields().stream().anyMatch(field -> field.id().equals("step"))
            ? form.text("step").split("/", 2)[0]
            : "";
    List<PieceKind> kinds =
        handbook.routines().stream()
            .filter(each -> routine.isEmpty() || each.id().equals(routine))
            .flatMap(each -> each.pieces().keySet().stream())
            .distinct()
            .toList();
    boolean known =
        kinds.stream()
            .anyMatch(
                kind ->
                    List.of(piece.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)).stream()
                        .anyMatch(word -> word.equals(kind.id()) || word.equals(kind.many())));
    if (!piece.isEmpty() && !known && !kinds.isEmpty()) {
      troubles.putIfAbsent(
          "piece",
          "“"
              + piece
              + "” names no piece"
              + (routine.isEmpty() ? "" : " of " + routine)
              + ". Write one of "
              + String.join(", ", PieceKind.words(kinds))
              + " and its number, such as "
              + kinds.get(0)
              + " 4.");
    }
  }

  private static void count(Form form, String id, Map<String, String> troubles) {
    if (count(form, id) < 1) {
      troubles.put(id, "A whole number from 1 to " + MOST + ".");
    }
  }

  private static int count(Form form, String id) {
    return Count.inDigits(form.text(id).strip(), 3).orElse(0);
  }

  static LessonFact fact(Form form) {
    return switch (form.purpose()) {
      case SIGN_STEP ->
          new LessonFact.Signed(
              form.text("mark").strip(), form.text("step"), form.text("piece"), form.text("note"));
      case STUDY_PIECE ->
          new LessonFact.PieceStudied(
              form.text("piece"), form.text("expected"), form.text("got"), form.text("change"));
      default ->
          new LessonFact.PracticeSet(form.text("step"), count(form, "pieces"), count(form, "days"));
    };
  }

  /** By whom it is entered: a mark is the teacher's, all else the student's. */
  static String by(Form form, String student) {
    return form.purpose() == Form.Purpose.SIGN_STEP ? form.text("mark").strip() : student;
  }
}
