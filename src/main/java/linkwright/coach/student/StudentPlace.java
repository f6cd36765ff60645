package linkwright.coach.student;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.lesson.Learner;
import linkwright.lesson.Roster;
import linkwright.lesson.StudentReport;
import linkwright.routine.Routine;

/** A student's report; here a teacher signs and sets practice, and a piece is studied. */
public final class StudentPlace implements Place {
  @Override
  public boolean isDry() {
    return true;
  }

  /** Of the student at hand, else of oneself; what she made since is brought over first. */
  @Override
  public Turn enter(Model model) {
    return enterAt(model, model.learning().student().map(Learner::id).orElse(Roster.OWN));
  }

  /** Whether the class led to the book that is shown. */
  public static boolean isOfClass(Model model) {
    return model.held() instanceof StudentHeld held && held.ofClass();
  }

  @Override
  public Turn enterAt(Model model, String id) {
    if (id.isEmpty()) {
      return enter(model);
    }
    Model plain = model.with(StudentHeld.of(model));
    boolean another = model.learning().student().filter(her -> her.id().equals(id)).isEmpty();
    // What was told of one book says nothing of another.
    return Turn.with(another ? plain.quiet() : plain, new Effect.BringOver(id));
  }

  @Override
  public Content content(Model model) {
    StudentHeld held = (StudentHeld) model.held();
    if (held.form().isPresent()) {
      return Content.of(title(model), new Fields(held.form().get()));
    }
    return model
        .learning()
        .student()
        .map(learner -> new Content(title(model), parts(model, learner)))
        .orElseGet(() -> Content.of("lesson book", Prose.says("No lesson book is at hand.")));
  }

  private static List<Part> parts(Model model, Learner learner) {
    StudentReport report = report(model, learner);
    List<Part> parts = new ArrayList<>();
    parts.addAll(waits(model, StudentForms.sign(model, report), Act.SIGN_STEP));
    parts.addAll(waits(model, StudentForms.study(), Act.STUDY_PIECE));
    parts.addAll(waits(model, StudentForms.practice(model, report), Act.SET_PRACTICE));
    parts.addAll(
        StudentContent.of(
            report,
            learner,
            model.handbook(),
            model.settings().units(),
            JobWords.tradeWords(model)));
    return parts;
  }

  private static List<Part> waits(Model model, Form form, Act opens) {
    return DraftWords.here(model, hers(model, form), opens);
  }

  private static String title(Model model) {
    String name = model.learning().name();
    return name.equals("you") ? "your book" : "the book of " + name;
  }

  private static StudentReport report(Model model, Learner learner) {
    return StudentContent.report(
        learner, model.handbook(), routine -> Banks.of(model, routine.id()), model.today());
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.SIGN_STEP,
        Act.STUDY_PIECE,
        Act.SET_PRACTICE,
        Act.TO_LESSON,
        Act.TO_CLASS,
        Act.TO_TRAY,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>();
    if (model.learning().student().isPresent()) {
      acts.addAll(List.of(Act.SIGN_STEP, Act.STUDY_PIECE, Act.SET_PRACTICE));
    }
    acts.addAll(List.of(Act.TO_LESSON, Act.TO_CLASS));
    if (model.job().isEmpty()) {
      acts.add(Act.TO_TRAY);
    }
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    StudentHeld held = (StudentHeld) model.held();
    Optional<StudentReport> report =
        model.learning().student().map(learner -> report(model, learner));
    return switch (act) {
      case SIGN_STEP -> open(model, StudentForms.sign(model, report.orElseThrow()));
      case STUDY_PIECE -> open(model, StudentForms.study());
      case SET_PRACTICE -> open(model, StudentForms.practice(model, report.orElseThrow()));
      case MORE, LESS -> Turn.to(model.with(held.turned(Turning.to(held.turned(), act))));
      case UNDO -> BookUndo.last(model, title(model));
      case BRING_BACK -> BookUndo.bringBack(model, title(model));
      default -> Turn.goTo(model, act);
    };
  }

  /** What is typed of one student is not brought into another's book. */
  private static Turn open(Model model, Form form) {
    return Turn.to(model.with(StudentHeld.of(model).with(hers(model, form))));
  }

  private static Form hers(Model model, Form form) {
    return form.about(model.learning().student().map(Learner::id).orElse(""));
  }

  /** What can be asked of the routines that she met is made once. */
  @Override
  public Turn settled(Model model) {
    Model ready = model;
    for (Routine routine :
        model
            .learning()
            .student()
            .map(learner -> StudentContent.met(learner, model.handbook()))
            .orElse(List.of())) {
      ready = Banks.ready(ready, routine.id());
    }
    return Turn.to(ready);
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    return open(model, textChanged ? form.withTroubles(Map.of()) : form);
  }

  @Override
  public Turn confirmed(Model model, Form typed) {
    Form form = StudentForms.meant(model, typed);
    Map<String, String> troubles = StudentForms.troubles(form, model.handbook());
    if (!troubles.isEmpty()) {
      return open(model, form.withTroubles(troubles).atFirstTrouble());
    }
    String id = model.learning().student().orElseThrow().id();
    return Turn.with(
        model.with(StudentHeld.of(model)).told("It stands in " + title(model) + "."),
        new Effect.KeepOfStudent(id, StudentForms.by(form, id), List.of(StudentForms.fact(form))));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(StudentHeld.of(model)));
  }

  @Override
  public boolean undoes(Model model) {
    return false;
  }
}
