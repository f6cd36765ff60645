package linkwright.coach.lesson;

import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.asking.Banks;
import linkwright.lesson.Asked;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.Lesson;

/**
 * How a lesson stands, as the student's book and the day tell it.
 *
 * @param learner the student
 * @param bank what can be asked
 * @param lesson the lesson of today
 */
record LessonNow(Learner learner, List<Item> bank, Lesson lesson) {
  /** The lesson that is held; empty until student, routine and book are there. */
  static Optional<LessonNow> of(Model model, LessonHeld held) {
    return model
        .learning()
        .student()
        .filter(learner -> learner.id().equals(held.student()))
        .filter(learner -> !Banks.of(model, held.routine()).isEmpty())
        .map(
            learner -> {
              List<Item> bank = Banks.of(model, held.routine());
              return new LessonNow(
                  learner, bank, learner.lesson(held.routine(), bank, model.today()));
            });
  }

  /** The question that waits for an answer in this lesson. */
  Optional<Learner.QuestionPut> waits() {
    return learner
        .open()
        .filter(asking -> asking.lesson().equals(lesson.id()))
        .filter(asking -> item(asking.item()).isPresent());
  }

  /** The item of that id, if the routine still has it. */
  Optional<Item> item(String id) {
    return bank.stream().filter(item -> item.id().equals(id)).findFirst();
  }

  /** A question as its seed puts it. */
  Optional<Asked> asked(Learner.QuestionPut asking, Model model) {
    return item(asking.item()).map(item -> item.draw(asking.seed(), model.settings().units()));
  }
}
