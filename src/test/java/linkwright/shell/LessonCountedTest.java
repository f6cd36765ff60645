package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.asking.Banks;
import linkwright.lesson.Learner;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Test;

/** Which question of a lesson it is, on the screen and aloud. */
class LessonCountedTest extends StudentBench {
  @Test
  void what_was_asked_here_before_is_told_as_asked_again() {
    lead(PlaceId.LESSON, "scroll-and-ring " + mara);
    Map<String, Boolean> rightLast = new HashMap<>();
    Set<String> ruledOut = new HashSet<>();
    AtomicBoolean filled = new AtomicBoolean();
    for (int i = 0; i < 60 && question().isPresent(); i++) {
      Learner.QuestionPut put = learner().open().orElseThrow();
      Optional<Boolean> before = Optional.ofNullable(rightLast.get(put.item()));
      assertThat(parts().toString().contains("asked again"))
          .as(put.item())
          .isEqualTo(before.isPresent());
      assertThat(ruledOut)
          .as("told that it comes back on its day alone")
          .doesNotContain(put.item());
      filled.compareAndSet(false, before.orElse(false));
      boolean right = before.isPresent() || rightLast.size() < 9;
      rightLast.put(put.item(), right);
      press(right ? rightKey(put) : "0");
      if (right && !parts().toString().contains("in this lesson perhaps")) {
        ruledOut.add(put.item());
      }
      for (int j = 0; j < 9 && question().isEmpty() && !isOver(); j++) {
        press("space");
      }
    }
    assertThat(filled).as("one that was right parted a miss from its return").isTrue();
  }

  private boolean isOver() {
    return parts().toString().contains("The lesson is over");
  }

  private String rightKey(Learner.QuestionPut put) {
    int right =
        Banks.of(model, "scroll-and-ring").stream()
            .filter(item -> item.id().equals(put.item()))
            .findFirst()
            .orElseThrow()
            .draw(put.seed(), UnitStyle.METRIC)
            .right();
    return Integer.toString(right + 1);
  }

  @Test
  void a_question_is_heard_where_the_lesson_begins_and_after_each_verdict() {
    lead(PlaceId.LESSON, "scroll-and-ring " + mara);
    Page first = Pages.of(model);
    heard(Utterances.asked(first));
    press("0");
    Page told = Pages.of(model);
    assertThat(Utterances.between(first, told)).anyMatch(each -> each.text().contains("Not so"));
    for (int i = 0; i < 9 && question().isEmpty(); i++) {
      told = Pages.of(model);
      press("space");
    }
    heard(Utterances.between(told, Pages.of(model)));
    heard(Utterances.asked(Pages.of(model)));
  }

  private void heard(List<Utterance> said) {
    assertThat(said)
        .extracting(Utterance::text)
        .anySatisfy(
            text ->
                assertThat(text)
                    .contains(question().orElseThrow().asks())
                    .contains("1: ", "2: ", "3: ", "4: ", "0: I do not know."));
  }
}
