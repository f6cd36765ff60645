package linkwright.coach.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.asking.AskedContent;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.lesson.Asked;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.Lesson;

/** A question with its answers, what was right and why, and how the lesson went. */
final class LessonContent {
  private LessonContent() {}

  static Content of(Model model, LessonHeld held) {
    if (held.student().isEmpty()) {
      return students(model, held);
    }
    if (held.routine().isEmpty()) {
      return routines(model, held);
    }
    Optional<LessonNow> now = LessonNow.of(model, held);
    if (now.isEmpty()) {
      return Content.of(
          title(model, held),
          Prose.stop("The lesson book could not be read. {do:round} leads out."));
    }
    if (held.told()) {
      return new Content(title(model, held), told(model, now.get()));
    }
    if (model.hotWork().lit().isPresent()) {
      return Content.of(
          title(model, held),
          Prose.stop(
              "A flame is lit: nothing is asked. Once it is out, {do:to-hot-work} says so, and the"
                  + " lesson goes on."));
    }
    return now.get()
        .waits()
        .flatMap(asking -> now.get().asked(asking, model))
        .map(
            asked ->
                new Content(
                    title(model, held),
                    AskedContent.question(model, asWhich(model, now.get()), asked)))
        .orElseGet(() -> new Content(title(model, held), over(model, now.get())));
  }

  private static String title(Model model, LessonHeld held) {
    return "lesson: "
        + model
            .handbook()
            .routine(held.routine())
            .map(routine -> JobWords.fill(routine.title(), model))
            .orElse(held.routine());
  }

  private static Content students(Model model, LessonHeld held) {
    List<Table.Line> lines = new ArrayList<>();
    model
        .learning()
        .roster()
        .ids()
        .forEach(id -> lines.add(Table.Line.of(model.learning().roster().name(id))));
    lines.add(Table.Line.of("you, without a name"));
    return Content.of(
        "lesson",
        Prose.says("Who learns?"),
        new Table(List.of(Table.Column.words("")), lines, held.at()));
  }

  private static Content routines(Model model, LessonHeld held) {
    List<Table.Line> lines =
        model.handbook().routines().stream()
            .map(routine -> Table.Line.of(routine.id(), JobWords.fill(routine.title(), model)))
            .toList();
    return Content.of(
        "lesson",
        Prose.says("What is to be learned?"),
        new Table(
            List.of(Table.Column.words("routine"), Table.Column.words("makes")), lines, held.at()));
  }

  private static String asWhich(Model model, LessonNow now) {
    Lesson lesson = now.lesson();
    String item = now.waits().map(Learner.QuestionPut::item).orElse("");
    boolean taken = lesson.asked().stream().anyMatch(given -> given.item().equals(item));
    boolean due = !taken && !now.learner().learnt().answers(item).isEmpty();
    int number = Math.min(Lesson.LENGTH, lesson.taken() + (taken ? 0 : 1));
    return model.learning().name()
        + ", question "
        + number
        + " of "
        + Lesson.LENGTH
        + (taken ? ", asked again" : due ? ", from an earlier day" : "");
  }

  private static List<Part> told(Model model, LessonNow now) {
    Optional<Learner.QuestionPut> last = now.learner().answeredLast();
    Optional<Asked> asked = last.flatMap(asking -> now.asked(asking, model));
    if (asked.isEmpty()) {
      return over(model, now);
    }
    Item item = now.item(last.get().item()).orElseThrow();
    Learner.AnswerGiven given = last.get().given().orElseThrow();
    List<Part> parts =
        new ArrayList<>(
            AskedContent.told(
                model, now.learner(), item, asked.get(), given, now.lesson().back(item)));
    if (now.lesson().misses() == Lesson.ENOUGH && !given.right()) {
      parts.add(
          Prose.says(
              Lesson.ENOUGH
                  + " misses: nothing new of this is asked today. What was missed comes back, and"
                  + " then the lesson is over until tomorrow."));
    }
    return parts;
  }

  private static List<Part> over(Model model, LessonNow now) {
    Lesson lesson = now.lesson();
    List<Part> parts = new ArrayList<>();
    long missed =
        lesson.asked().stream()
            .filter(given -> !given.right())
            .map(Lesson.LessonAnswer::item)
            .distinct()
            .count();
    List<Item> open = lesson.open();
    parts.add(new Prose(Prose.Kind.HEAD, "The lesson is over"));
    parts.add(
        Prose.says(
            model.learning().name()
                + ": "
                + lesson.taken()
                + " asked, "
                + (missed == 0
                    ? "none missed."
                    : missed + " missed, " + (missed - open.size()) + " of them right since.")));
    if (!open.isEmpty()) {
      parts.add(
          new Prose(
              Prose.Kind.MAIN,
              (open.size() == 1 ? "1 stays open and is" : open.size() + " stay open and are")
                  + " asked first on the next day:"));
      open.forEach(item -> parts.add(Prose.says(asked(now, model, item))));
      parts.add(Prose.says("To read it up: {do:to-rehearsal} shows the routine whole, dry."));
    }
    long known =
        now.bank().stream().filter(item -> now.learner().learnt().known(item.id())).count();
    long met =
        now.bank().stream()
            .filter(item -> !now.learner().learnt().answers(item.id()).isEmpty())
            .count();
    parts.add(
        Prose.says(
            known
                + " known, "
                + (met - known)
                + " under way, "
                + (now.bank().size() - met)
                + " not asked yet."));
    lesson
        .nextDue()
        .ifPresent(
            day -> parts.add(new Prose(Prose.Kind.MAIN, "The next are due on " + day + ".")));
    parts.add(
        Prose.aside(
            lesson.isEnough()
                ? "That is enough of it for today: the next questions come tomorrow."
                : "{do:more-questions} asks twelve more that are new or due today."));
    return parts;
  }

  /** An item as it was asked here last. */
  private static String asked(LessonNow now, Model model, Item item) {
    return now.learner().askings().stream()
        .filter(asking -> asking.lesson().equals(now.lesson().id()))
        .filter(asking -> asking.item().equals(item.id()))
        .reduce((before, last) -> last)
        .flatMap(asking -> now.asked(asking, model))
        .map(asked -> JobWords.fill(asked.asks(), model))
        .orElse(item.id());
  }
}
