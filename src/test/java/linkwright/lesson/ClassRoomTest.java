package linkwright.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.job.EntryId;
import org.junit.jupiter.api.Test;

/** What a class got wrong most. */
class ClassRoomTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 26);

  @Test
  void what_is_missed_again_and_again_in_one_lesson_counts_once() {
    List<Learner.QuestionPut> one = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      one.add(missed(i, "rope/1", "stubborn"));
    }
    one.add(missed(6, "rope/2", "stubborn"));
    List<Learner.QuestionPut> other = List.of(missed(0, "rope/1", "common"));
    List<ClassRoom.Missed> worst =
        ClassRoom.worst(
            List.of(seat("a", one), seat("b", other), seat("c", other), seat("d", other)));
    assertThat(worst).extracting(ClassRoom.Missed::item).containsExactly("common", "stubborn");
    assertThat(worst).extracting(ClassRoom.Missed::times).containsExactly(3, 2);
  }

  @Test
  void of_as_many_lessons_safety_comes_first_and_then_what_is_missed_oftener() {
    List<Learner.QuestionPut> one =
        List.of(
            missed(0, "rope/1", "rope/look/draw"),
            missed(1, "rope/1", "rope/next/draw"),
            missed(2, "rope/1", "rope/next/draw"),
            missed(3, "rope/1", "rope/danger/draw/cutting-wire"),
            missed(4, "rope/1", "card/pickle/own/0"));
    assertThat(ClassRoom.worst(List.of(seat("a", one))))
        .extracting(ClassRoom.Missed::item)
        .containsExactly(
            "card/pickle/own/0",
            "rope/danger/draw/cutting-wire",
            "rope/next/draw",
            "rope/look/draw");
  }

  private static Learner.QuestionPut missed(int at, String lesson, String item) {
    return new Learner.QuestionPut(
        new EntryId("bench", at),
        lesson,
        item,
        1,
        DAY,
        Optional.of(new Learner.AnswerGiven("", false)));
  }

  private static ClassRoom.Seat seat(String id, List<Learner.QuestionPut> askings) {
    Learner learner =
        new Learner(
            id,
            new Recall(Map.of(), Recall.GAP_DAYS),
            askings,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Map.of(),
            Optional.empty(),
            Optional.empty());
    return new ClassRoom.Seat(learner, Instant.EPOCH, "", Instant.EPOCH, "", "", "");
  }
}
