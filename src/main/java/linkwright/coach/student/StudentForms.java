package linkwright.coach.student;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Offered;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.job.LessonFact;
import linkwright.lesson.StudentReport;
import linkwright.quantity.Count;
import linkwright.quantity.Nearest;
import linkwright.routine.PieceKind;
import linkwright.standing.Handbook;

/** What a teacher signs and sets, and what a student writes of a piece. */
final class StudentForms {
  private static final int MOST = 999;
  private static final Pattern MARK = Pattern.compile("(\\p{L}[. ]?){1,4}");
  private static final int MOST_NAMED = 4;

  private StudentForms() {}

  static Form sign(Model model, StudentReport report) {
    return Form.of(
        Form.Purpose.SIGN_STEP,
        "A teacher's mark: a mark, not a proof",
        "sign it",
        List.of(
            Field.of("mark", "your mark", "", "as you sign, three letters do")
                .helped("The teacher's. It stands beside the step in the report."),
            step(model, report),
            Field.of("piece", "piece", "", "link 4; empty for the step as such")
                .helped("The one piece that was looked at, if it was one."),
            Field.of("note", "note", "", "what you saw")
                .helped("It stands beside the mark, and is read there.")));
  }

  static Form study() {
    return Form.of(
        Form.Purpose.STUDY_PIECE,
        "A piece, looked at",
        "enter it",
        List.of(
            Field.of("piece", "piece", "", "link 4").helped("The piece that you look at."),
            Field.of("expected", "I expected", "", "what it was to be")
                .helped("Said before it is measured it teaches most."),
            Field.of("got", "I got", "", "what it is")
                .helped("What you see and measure, not whose fault it was."),
            Field.of("change", "I will change", "", "one thing, the next time")
                .helped("One thing. The report shows it before the next piece.")));
  }

  static Form practice(Model model, StudentReport report) {
    String pieces = report.practice().stream().findFirst().map(p -> "" + p.pieces()).orElse("8");
    return Form.of(
        Form.Purpose.SET_PRACTICE,
        "Practice",
        "set it",
        List.of(
            step(model, report),
            Field.of("pieces", "pieces", pieces, "how many, 8")
                .helped("So many pieces at that step, one after the other."),
            Field.of(
                    "days",
                    "in days",
                    "" + model.learning().roster().gapDays(),
                    "and again at that gap")
                .helped("Until when. What was practised is practised again after as many.")));
  }

  /** The steps that she met stand first, and one of them is offered; else none is. */
  private static Field step(Model model, StudentReport report) {
    List<String> met = new ArrayList<>();
    report.practice().forEach(each -> met.add(each.at().routine() + "/" + each.at().step()));
    report.made().forEach(each -> met.add(each.routine() + "/" + each.step()));
    report.steps().forEach(each -> met.add(each.routine() + "/" + each.step()));
    List<Offered> steps = TitledSteps.of(model.handbook(), JobWords.tradeWords(model), met);
    String first = met.isEmpty() ? "" : steps.get(0).id();
    return Field.choiceOf("step", "step", first, "its whole title", steps)
        .whole()
        .helped("The step of a routine. Those met before stand first.");
  }

  /** The form with the one step that has that very title, the open job's routine before others. */
  static Form meant(Model model, Form form) {
    String routine = model.job().map(job -> job.state().course().routine()).orElse("");
    return form.mapFields(
        field ->
            field.takesParts()
                ? field
                : TitledSteps.called(field, routine)
                    .map(step -> field.withText(step.id()))
                    .orElse(field));
  }

  static Map<String, String> troubles(Form form, Handbook handbook) {
    Map<String, String> troubles = new LinkedHashMap<>();
    switch (form.purpose()) {
      case SIGN_STEP -> {
        if (!MARK.matcher(form.text("mark").strip()).matches()) {
          troubles.put("mark", "Sign with your mark, one to four letters, such as EK.");
        }
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
    String typed = form.text("step");
    Optional<Field> field = TitledSteps.field(form).filter(any -> TitledSteps.id(form).isEmpty());
    field.ifPresent(
        any -> {
          List<String> titles = any.choices().stream().map(Offered::id).toList();
          troubles.put(
              "step",
              typed.isBlank()
                  ? "Say which step, by its title."
                  : any.offered().isEmpty()
                      ? "No routine has the step “"
                          + typed
                          + "”."
                          + Nearest.of(typed, titles)
                              .map(near -> " Did you mean “" + near + "”?")
                              .orElse("")
                      : severalFit(typed, any.offered()));
        });
  }

  /** A part of a title may be another step's too: which is meant is asked, never guessed. */
  private static String severalFit(String typed, List<Offered> near) {
    String named =
        near.stream()
            .sorted(Comparator.comparing(step -> !begins(step.id(), typed)))
            .limit(MOST_NAMED)
            .map(step -> "“" + step.id() + "”")
            .collect(Collectors.joining(", "));
    int more = near.size() - MOST_NAMED;
    return "“"
        + typed
        + "” alone names no one step. It may be "
        + named
        + (more > 0 ? " or one of " + more + " more" : "")
        + ". Write its whole title, and the routine in brackets where several have it.";
  }

  private static boolean begins(String title, String typed) {
    return title.toLowerCase(Locale.ROOT).startsWith(typed.toLowerCase(Locale.ROOT));
  }

  /** A piece is of a kind that the step's routine makes, or any if no step is said. */
  private static void piece(Form form, Handbook handbook, Map<String, String> troubles) {
    String piece = form.text("piece").strip();
    String routine = TitledSteps.id(form).split("/", 2)[0];
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
              form.text("mark").strip(),
              TitledSteps.id(form),
              form.text("piece"),
              form.text("note"));
      case STUDY_PIECE ->
          new LessonFact.PieceStudied(
              form.text("piece"), form.text("expected"), form.text("got"), form.text("change"));
      default ->
          new LessonFact.PracticeSet(
              TitledSteps.id(form), count(form, "pieces"), count(form, "days"));
    };
  }

  /** By whom it is entered: a mark is the teacher's, all else the student's. */
  static String by(Form form, String student) {
    return form.purpose() == Form.Purpose.SIGN_STEP ? form.text("mark").strip() : student;
  }
}
