package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lesson heard and not seen. */
class SpokenLessonTest {
  @TempDir private Path folder;

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

  /** By a speech program: the question, its answers in their order, then what came of it. */
  @Test
  void question_answers_and_outcome_are_said_by_the_program_that_speaks() throws Exception {
    Path said = folder.resolve("said");
    Path script = folder.resolve("say");
    Files.writeString(script, "#!/bin/sh\necho \"$1\" >> " + said + "\n");
    Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwx------"));
    Bencher bench = Bencher.atTheTray();
    try (Voice voice = Voice.of(script.toString(), "")) {
      Page before = Pages.of(bench.model());
      bench.take(new Message.Led(PlaceId.LESSON, "torch-practice own"));
      for (int i = 0; i < 4; i++) {
        Page asks = Pages.of(bench.model());
        Question question =
            asks.body().parts().stream()
                .filter(Question.class::isInstance)
                .map(Question.class::cast)
                .findFirst()
                .orElseThrow();
        say(voice, before, asks);
        String heard = line(said, 2 * i);
        int at = heard.indexOf(question.asks());
        assertThat(at).as(heard).isNotNegative();
        for (Question.Answer answer : question.answers()) {
          int next = heard.indexOf(answer.key() + ": " + answer.says());
          assertThat(next).as(answer.key() + " in " + heard).isGreaterThan(at);
          at = next;
        }
        bench.press("1");
        before = Pages.of(bench.model());
        say(voice, asks, before);
        assertThat(line(said, 2 * i + 1)).containsPattern("^(Right|Not so)\\. It is: ");
        for (int turned = 0; turned < 9 && !asks(bench); turned++) {
          bench.press("space");
        }
      }
    }
  }

  private static void say(Voice voice, Page before, Page now) {
    voice.say(Utterances.left(before, now), Utterances.between(before, now));
  }

  private static boolean asks(Bencher bench) {
    return Pages.of(bench.model()).body().parts().stream().anyMatch(Question.class::isInstance);
  }

  /** What was said as the so-manieth, from nought; empty where ten seconds bring nothing. */
  private static String line(Path said, int number) throws IOException, InterruptedException {
    for (int i = 0; i < 200; i++) {
      if (Files.exists(said) && Files.readAllLines(said).size() > number) {
        return Files.readAllLines(said).get(number);
      }
      Thread.sleep(50);
    }
    return "";
  }
}
