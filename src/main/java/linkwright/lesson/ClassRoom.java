package linkwright.lesson;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * A class at a glance, from the students' books in a folder.
 *
 * @param folder where the books are
 * @param students each with what her book tells
 * @param lastFlame when a flame was last said to be lit or out in any of the jobs there, and by
 *     which word; empty if nothing was said
 * @param problems what is wrong with books there, a sentence each
 * @param called item → the question, for those that were got wrong most
 * @param read when the books were read
 */
public record ClassRoom(
    String folder,
    List<Seat> students,
    Optional<LastFlame> lastFlame,
    List<String> problems,
    Map<String, String> called,
    Instant read) {
  private static final int WORST = 5;

  /** What was read so long ago is no look at the class any more. */
  private static final Duration LASTS = Duration.ofMinutes(1);

  public ClassRoom {
    students = List.copyOf(students);
    problems = List.copyOf(problems);
    called = Map.copyOf(called);
  }

  /** Whether the books are to be read anew, wherever the clock was set meanwhile. */
  public boolean isOld(Instant now) {
    return Duration.between(read, now).abs().compareTo(LASTS) >= 0;
  }

  /** The question of an item; itself where no routine here asks it. */
  public String calls(String id) {
    return called.getOrDefault(id, id);
  }

  /**
   * The questions that were got wrong most.
   *
   * @param times in how many lessons of the whole class; missed again in one it counts once
   * @param misses how often in all
   * @param lesson the lesson of one of those times
   */
  public record Missed(String item, int times, int misses, String lesson) {
    private static final Pattern SAFETY = Pattern.compile("(.*/danger|card)/.*");

    /** The same and once more, of another lesson or of one that is counted. */
    Missed and(boolean another) {
      return new Missed(item, times + (another ? 1 : 0), misses + 1, lesson);
    }

    /** Whether it is of what can hurt someone. */
    boolean isOfSafety() {
      return SAFETY.matcher(item).matches();
    }
  }

  /** A few of them, the worst first; of as bad ones those of safety, then the oftener missed. */
  public static List<Missed> worst(List<Seat> students) {
    Map<String, Missed> wrong = new TreeMap<>();
    for (Seat seat : students) {
      Set<List<String>> counted = new HashSet<>();
      for (Learner.QuestionPut put : seat.learner().askings()) {
        if (put.given().filter(given -> !given.right()).isPresent()) {
          boolean another = counted.add(List.of(put.lesson(), put.item()));
          wrong.put(
              put.item(),
              wrong
                  .getOrDefault(put.item(), new Missed(put.item(), 0, 0, put.lesson()))
                  .and(another));
        }
      }
    }
    return wrong.values().stream()
        .sorted(
            Comparator.comparingInt((Missed missed) -> -missed.times())
                .thenComparing(missed -> !missed.isOfSafety())
                .thenComparingInt(missed -> -missed.misses()))
        .limit(WORST)
        .toList();
  }

  /**
   * A student of the class.
   *
   * @param learner what her book tells
   * @param at when she was last heard of: something was entered by her
   * @param step where she was last, as routine and step; empty if nothing says
   * @param stepAt when that was said; when she was last heard of if nothing says
   * @param book where her book lies
   * @param folder the one below the class's that hers lies in, where several were brought together
   * @param own what she is called by the file beside her book; empty where that does not say
   */
  public record Seat(
      Learner learner,
      Instant at,
      String step,
      Instant stepAt,
      String book,
      String folder,
      String own) {
    /** The same with that told of her. */
    public Seat with(Learner other) {
      return new Seat(other, at, step, stepAt, book, folder, own);
    }
  }

  /** The same names, and of whoever has none there the one in the file beside her book. */
  public Roster named(Roster roster) {
    Roster all = roster;
    for (Seat seat : students) {
      if (!seat.own().isEmpty() && !all.names().containsKey(seat.learner().id())) {
        all = all.and(seat.learner().id(), seat.own());
      }
    }
    return all;
  }

  /** What a student is called; by her id alone she is told with the folder that her book is in. */
  public String who(Seat seat, Roster roster) {
    String id = seat.learner().id();
    String in = roster.names().containsKey(id) ? "" : seat.folder();
    return in.isEmpty() ? roster.name(id) : id + " (" + in + ")";
  }

  /** The last word on a flame, and whether it says that all is shut. */
  public record LastFlame(Instant at, String words, boolean shut) {}
}
