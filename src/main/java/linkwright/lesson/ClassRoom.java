package linkwright.lesson;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A class at a glance, from the students' books in a folder.
 *
 * @param folder where the books are
 * @param students each with what her book tells
 * @param lastFlame when a flame was last said to be lit or out in any of the jobs there, and by
 *     which word; empty if nothing was said
 * @param problems what is wrong with books there, a sentence each
 */
public record ClassRoom(
    String folder, List<Seat> students, Optional<LastFlame> lastFlame, List<String> problems) {
  public ClassRoom {
    students = List.copyOf(students);
    problems = List.copyOf(problems);
  }

  /**
   * A student of the class.
   *
   * @param learner what her book tells
   * @param at when something was last entered in it
   * @param step where she was last, as routine and step; empty if nothing says
   * @param book where her book lies
   */
  public record Seat(Learner learner, Instant at, String step, String book) {}

  /** The last word on a flame, and whether it says that all is shut. */
  public record LastFlame(Instant at, String words, boolean shut) {}
}
