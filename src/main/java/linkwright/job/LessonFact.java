package linkwright.job;

import java.util.Map;
import linkwright.routine.StepId;

/** What can be entered of learning: in a student's own book, or beside a job's steps. */
public sealed interface LessonFact extends Fact
    permits LessonFact.StudentBookOpened,
        LessonFact.QuestionAsked,
        LessonFact.QuestionAnswered,
        LessonFact.Signed,
        LessonFact.PieceStudied,
        LessonFact.PracticeSet,
        LessonFact.PiecesMade,
        LessonFact.MetalCounted {

  /** A student's book was begun; she is an id, her name is her teacher's to keep. */
  record StudentBookOpened(String student) implements LessonFact {}

  /** A question of a lesson was asked; the seed shuffles its answers and draws its numbers. */
  record QuestionAsked(String lesson, String item, long seed) implements LessonFact {}

  /** It was answered. */
  record QuestionAnswered(EntryId question, String given, boolean right) implements LessonFact {}

  /** A teacher signed a step, or a piece made at it: a mark, not a proof. */
  record Signed(String teacher, String step, String piece, String note) implements LessonFact {}

  /** A piece was studied: what was expected, what came of it, what will change. */
  record PieceStudied(String piece, String expected, String got, String change)
      implements LessonFact {}

  /** Practice was set: so many pieces of an exercise, so many days from now. */
  record PracticeSet(String exercise, int pieces, int days) implements LessonFact {}

  /**
   * What she made at a step of a job, brought over from the job's book up to that entry: pieces
   * that came through, those that went back by reason, those that were scrapped.
   */
  record PiecesMade(
      String job,
      String routine,
      StepId step,
      int through,
      Map<String, Integer> redo,
      int scrapped,
      EntryId upTo)
      implements LessonFact {
    public PiecesMade {
      redo = Fact.copy(redo);
    }
  }

  /** Metal of a job, g: what she was given, and what came back of it as chain and scrap. */
  record MetalCounted(String job, double outG, double backG) implements LessonFact {
    /** What is to be paid for, g: what did not come back. */
    public double toPayG() {
      return outG - backG;
    }
  }
}
