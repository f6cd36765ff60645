package linkwright.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.Bencher;
import linkwright.coach.kernel.Message;
import linkwright.job.EntryId;
import linkwright.job.LessonFact;
import linkwright.lesson.ClassRoom;
import linkwright.routine.StepId;

/** Scenes of a student, her lesson, her book and her class. */
final class LearningScenes {
  private static final String MARA = "s-k7m2p";

  private LearningScenes() {}

  static Bencher mara(Bencher bencher) {
    return bencher.teaching(MARA, "Mara");
  }

  static Bencher lessonOver(Bencher bencher) {
    bencher.press("esc", "s");
    for (int i = 0; i < 200 && !bencher.shows("The lesson is over"); i++) {
      bencher.press("1", "space");
    }
    return bencher;
  }

  static Bencher herBook(Bencher bencher) {
    mara(bencher)
        .enterOfStudent(
            MARA,
            MARA,
            List.of(
                new LessonFact.QuestionAsked(
                    "scroll-and-ring/2026-03-01/1", "scroll-and-ring/next/lay-out/order", 1),
                new LessonFact.QuestionAnswered(new EntryId("bench", 1), "", false),
                new LessonFact.PiecesMade(
                    "lighthouse-keeper-s-bracelet-demo",
                    "scroll-and-ring",
                    new StepId("check-links"),
                    5,
                    Map.of("gap", 4),
                    0,
                    new EntryId("bench", 40)),
                new LessonFact.MetalCounted("lighthouse-keeper-s-bracelet-demo", 12.5, 9)));
    return bencher.press("esc", "s", "up", "enter").press("t");
  }

  static Bencher classRoom(Bencher bencher) {
    herBook(bencher);
    bencher.press("c");
    bencher.take(
        new Message.ClassRead(
            bencher.model().learning().roster(),
            new ClassRoom(
                "/media/class",
                List.of(
                    new ClassRoom.Seat(
                        bencher.model().learning().student().orElseThrow(),
                        Bencher.MORNING,
                        "scroll-and-ring/check-links",
                        Bencher.MORNING,
                        "/media/class/bench-2/students/s-k7m2p.yaml",
                        "bench-2",
                        "")),
                Optional.of(
                    new ClassRoom.LastFlame(Bencher.MORNING, "every flame out, gas shut", true)),
                List.of(),
                Map.of(
                    "scroll-and-ring/next/lay-out/order",
                    "Scroll links joined by rings: in which order are these done?"),
                Bencher.MORNING)));
    return bencher;
  }
}
