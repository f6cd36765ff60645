package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import org.junit.jupiter.api.Test;

/** A lesson heard and not seen. */
class SpokenLessonTest {
  /** Whoever sees nothing has to hear that she was wrong, and what is right, before the card. */
  @Test
  void a_caution_that_was_missed_is_heard_after_its_verdict() {
    Bencher bench = Bencher.atTheTray();
    bench.take(new Message.Led(PlaceId.LESSON, "jump-rings own"));
    for (int asked = 0; asked < 40; asked++) {
      Page before = Pages.of(bench.model());
      bench.press("0");
      List<Utterance> heard = Utterances.between(before, Pages.of(bench.model()));
      assertThat(heard).isNotEmpty();
      assertThat(heard.get(0).text()).startsWith("Not so. It is: ");
      if (heard.get(0).kind() == Utterance.Kind.CAUTION) {
        assertThat(heard.get(0).text()).contains("Caution. ");
        return;
      }
      bench.press("space", "space", "space");
    }
    throw new AssertionError("no caution was asked");
  }

  /** Whoever sees nothing hears each question of a lesson with every answer and its number. */
  @Test
  void a_question_is_heard_with_all_its_answers_by_their_numbers() {
    Bencher bench = Bencher.atTheTray();
    Page before = Pages.of(bench.model());
    bench.take(new Message.Led(PlaceId.LESSON, "torch-practice own"));
    int asked = 0;
    for (int i = 0; i < 40 && asked < 12; i++) {
      Page now = Pages.of(bench.model());
      Optional<Question> question =
          now.body().parts().stream()
              .filter(Question.class::isInstance)
              .map(Question.class::cast)
              .findFirst();
      if (question.isPresent()) {
        asked++;
        String heard = Utterances.between(before, now).get(0).text();
        assertThat(heard).contains(question.get().asks());
        question
            .get()
            .answers()
            .forEach(answer -> assertThat(heard).contains(answer.key() + ": " + answer.says()));
      }
      before = now;
      bench.press(question.isPresent() ? "1" : "space");
    }
    assertThat(asked).isEqualTo(12);
  }
}
