package linkwright.coach.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.asking.AskedContent;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.LessonFact;
import linkwright.lesson.Asked;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.Lesson;
import linkwright.lesson.Roster;
import linkwright.routine.Routine;

/**
 * A lesson: a question stands in the student's book before it is shown, and an answer before it is
 * told. Nothing here is entered in a job.
 */
public final class LessonPlace implements Place {
  private static final String NAME = "name";

  @Override
  public boolean isDry() {
    return true;
  }

  /** Who learns is asked, where more than one could; the open job's routine is what is learned. */
  @Override
  public Turn enter(Model model) {
    String routine =
        model
            .job()
            .map(job -> job.state().course().routine())
            .filter(id -> model.handbook().routine(id).isPresent())
            .orElse("");
    LessonHeld list = LessonHeld.of("", routine).at(worker(model));
    return Turn.with(model.with(list), new Effect.OpenStudent("", ""));
  }

  /** The line of whoever works, so that no other's book is come to unasked; else the first. */
  private static int worker(Model model) {
    List<String> ids = model.learning().roster().ids();
    return model
        .job()
        .map(job -> ids.indexOf(job.person()))
        .map(line -> line < 0 ? ids.size() : line)
        .orElse(0);
  }

  /** A routine, and behind a space a student's id. */
  @Override
  public Turn enterAt(Model model, String id) {
    String[] both = id.split(" ", 2);
    String student = both.length > 1 ? both[1] : Roster.OWN;
    if (model.handbook().routine(both[0]).isEmpty()) {
      return Turn.to(model.trouble("There is no routine “" + both[0] + "”."));
    }
    return chosen(model, LessonHeld.of(student, both[0]));
  }

  /** Once a book is read or written: what comes next in it. */
  @Override
  public Turn settled(Model model) {
    LessonHeld held = (LessonHeld) model.held();
    boolean named = held.form().isPresent() && model.learning().student().isPresent();
    boolean nobody = held.student().isEmpty() && model.learning().roster().ids().isEmpty();
    if (named || nobody) {
      String id = named ? model.learning().student().orElseThrow().id() : Roster.OWN;
      return chosen(model, LessonHeld.of(id, held.routine()));
    }
    Optional<LessonNow> now = LessonNow.of(model, held);
    if (now.isEmpty() || held.told() || now.get().waits().isPresent()) {
      return Turn.to(model);
    }
    return now.get()
        .lesson()
        .next()
        .map(item -> ask(model, held, now.get().lesson(), item))
        .orElseGet(() -> Turn.to(model));
  }

  private static Turn chosen(Model model, LessonHeld held) {
    return Turn.with(
        Banks.ready(model, held.routine()).with(held), new Effect.OpenStudent(held.student(), ""));
  }

  private static Turn ask(Model model, LessonHeld held, Lesson lesson, Item item) {
    if (model.hotWork().lit().isPresent()) {
      return Turn.to(model.with(held.telling(false)));
    }
    long seed = model.now().toEpochMilli() * 31 + item.id().hashCode();
    return Turn.with(
        model.with(held.telling(false)),
        new Effect.KeepOfStudent(
            held.student(),
            held.student(),
            List.of(new LessonFact.QuestionAsked(lesson.id(), item.id(), seed))));
  }

  @Override
  public Content content(Model model) {
    LessonHeld held = (LessonHeld) model.held();
    return held.form()
        .map(form -> Content.of("lesson", new Fields(form)))
        .orElseGet(() -> list(model, held));
  }

  /** Where a student can be begun, what waits of a new one stands first. */
  private static Content list(Model model, LessonHeld held) {
    Content content = LessonContent.of(model, held);
    boolean asked = !held.student().isEmpty() && !held.routine().isEmpty();
    return asked
        ? content
        : new Content(
            content.title(),
            Stream.concat(
                    DraftWords.here(model, newStudent(), Act.NEW_STUDENT).stream(),
                    content.parts().stream())
                .toList());
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.CHOOSE,
        Act.UP,
        Act.DOWN,
        Act.NEXT_QUESTION,
        Act.MORE_QUESTIONS,
        Act.NEW_STUDENT,
        Act.TO_STUDENT,
        Act.TO_CLASS,
        Act.TO_TRAY,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    LessonHeld held = (LessonHeld) model.held();
    List<Act> acts = new ArrayList<>();
    Optional<LessonNow> now = LessonNow.of(model, held);
    if (held.student().isEmpty()) {
      acts.addAll(List.of(Act.CHOOSE, Act.UP, Act.DOWN, Act.NEW_STUDENT));
    } else if (held.routine().isEmpty()) {
      acts.addAll(List.of(Act.CHOOSE, Act.UP, Act.DOWN, Act.NEW_STUDENT));
    } else if (held.told()) {
      acts.add(Act.NEXT_QUESTION);
    } else if (now.isPresent()
        && now.get().waits().isEmpty()
        && !now.get().lesson().isEnough()
        && model.hotWork().lit().isEmpty()) {
      acts.add(Act.MORE_QUESTIONS);
    }
    acts.add(Act.TO_STUDENT);
    acts.add(Act.TO_CLASS);
    if (model.job().isEmpty()) {
      acts.add(Act.TO_TRAY);
    }
    return held.told() ? AskedContent.acts(acts, model, this) : Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    LessonHeld held = (LessonHeld) model.held();
    return switch (act) {
      case UP -> Turn.to(model.with(held.at(Math.max(0, held.at() - 1))));
      case DOWN -> Turn.to(model.with(held.at(Math.min(last(model, held), held.at() + 1))));
      case CHOOSE -> choose(model, held);
      case NEW_STUDENT -> Turn.to(model.with(held.with(newStudent())));
      case NEXT_QUESTION -> settled(model.with(held.telling(false)));
      case MORE_QUESTIONS -> more(model, held);
      case MORE, LESS -> Turn.to(model.with(held.turned(Turning.to(held.turned(), act))));
      case TO_STUDENT -> herBook(model, held);
      default -> Turn.goTo(model, act);
    };
  }

  /** On the list of students that of the line looked at, in a lesson that of whoever learns. */
  private static Turn herBook(Model model, LessonHeld held) {
    String id = held.student().isEmpty() ? student(model, held) : held.student();
    Learner hers =
        Learner.of(id, List.of(), model.settings().zone(), model.learning().roster().gapDays());
    return Turn.goTo(model.with(model.learning().with(hers)), PlaceId.STUDENT);
  }

  private static String student(Model model, LessonHeld held) {
    List<String> ids = model.learning().roster().ids();
    return held.at() < ids.size() ? ids.get(held.at()) : Roster.OWN;
  }

  private static int last(Model model, LessonHeld held) {
    return held.student().isEmpty()
        ? model.learning().roster().ids().size()
        : model.handbook().routines().size() - 1;
  }

  /** The students by name, then oneself; or the routines. */
  private static Turn choose(Model model, LessonHeld held) {
    if (held.student().isEmpty()) {
      return chosen(model, LessonHeld.of(student(model, held), held.routine()));
    }
    List<Routine> routines = model.handbook().routines();
    return chosen(model, LessonHeld.of(held.student(), routines.get(held.at()).id()));
  }

  private static Turn more(Model model, LessonHeld held) {
    LessonNow now = LessonNow.of(model, held).orElseThrow();
    Lesson next = now.learner().nextLesson(held.routine(), now.bank(), model.today());
    return next.next()
        .map(item -> ask(model, held, next, item))
        .orElseGet(
            () ->
                Turn.to(
                    model.told("Nothing is due today, and nothing is new: come back at its day.")));
  }

  /** The number of an answer; nought for whoever does not know. */
  @Override
  public Turn typed(Model model, Key key) {
    LessonHeld held = (LessonHeld) model.held();
    Optional<LessonNow> now = LessonNow.of(model, held);
    Optional<Learner.QuestionPut> waits =
        held.told() || model.hotWork().lit().isPresent()
            ? Optional.empty()
            : now.flatMap(LessonNow::waits);
    if (waits.isEmpty()) {
      return Turn.to(model);
    }
    Asked asked = now.orElseThrow().asked(waits.get(), model).orElseThrow();
    for (int i = 0; i < asked.answers().size(); i++) {
      if (key.is(Integer.toString(i + 1))) {
        return answer(model, held, waits.get(), asked.answers().get(i), i == asked.right());
      }
    }
    return key.is(AskedContent.NOT_KNOWN)
        ? answer(model, held, waits.get(), "", false)
        : AskedContent.noAnswer(model, key);
  }

  private static Turn answer(
      Model model, LessonHeld held, Learner.QuestionPut asking, String given, boolean right) {
    return Turn.with(
        model.with(held.telling(true)),
        new Effect.KeepOfStudent(
            held.student(),
            held.student(),
            List.of(new LessonFact.QuestionAnswered(asking.entry(), given, right))));
  }

  private static Form newStudent() {
    return Form.of(
        Form.Purpose.NEW_STUDENT,
        "A new student",
        "begin the book",
        List.of(
            Field.of(NAME, "name", "", "as you call her; it stays in your own file")
                .helped("The book is found by it here; nothing that leaves here says it.")));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form shown = textChanged ? form.withTroubles(Map.of()) : form;
    return Turn.to(model.with(((LessonHeld) model.held()).with(shown)));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    LessonHeld held = (LessonHeld) model.held();
    String name = form.text(NAME).strip();
    if (name.isEmpty()) {
      Form told = form.withTroubles(Map.of(NAME, "Say what you call her.")).atFirstTrouble();
      return Turn.to(model.with(held.with(told)));
    }
    return Turn.with(model.with(held.with(form)), new Effect.OpenStudent("", name));
  }

  @Override
  public Turn formLeft(Model model) {
    LessonHeld held = (LessonHeld) model.held();
    return Turn.to(model.with(held.at(held.at())));
  }

  @Override
  public boolean undoes(Model model) {
    return false;
  }

  @Override
  public Turn row(Model model, int row) {
    LessonHeld held = (LessonHeld) model.held();
    boolean lists = held.student().isEmpty() || held.routine().isEmpty();
    if (!lists) {
      return typed(model, Key.of(Integer.toString(row + 1)));
    }
    Model there = model.with(held.at(Math.max(0, Math.min(last(model, held), row))));
    return row == held.at() ? act(there, Act.CHOOSE) : Turn.to(there);
  }
}
