package linkwright.coach.kernel;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import linkwright.job.ClockMoves;
import linkwright.job.EntryId;
import linkwright.routine.StepId;

/**
 * What is kept in mind of the bench between two presses; no book tells it.
 *
 * @param asked whether what was found open when the program began was asked about
 * @param toward the book to whose wait she is on the way; empty if she is not
 * @param back where she worked before a wait called her away; empty if none did
 * @param refused the entry of which undo said last that it does not reach it
 * @param meanwhile what another window's book said of flames, until it was seen or told
 * @param moves by how much the computer's clock was set forward before the program began
 * @param typed form → field → what was typed there that is no job's and not entered; empty where
 *     none of it is kept
 */
public record InMind(
    boolean asked,
    Optional<String> toward,
    Optional<Errand> back,
    Optional<EntryId> refused,
    Optional<Meanwhile> meanwhile,
    ClockMoves moves,
    Optional<Map<String, Map<String, String>>> typed) {
  static final InMind NOTHING =
      new InMind(
          false,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          ClockMoves.NONE,
          Optional.of(Map.of()));

  /**
   * Another window's book said of flames what the screen did not show.
   *
   * @param at when it was read, by the steady clock
   * @param sentence what it says
   */
  public record Meanwhile(Instant at, String sentence) {}

  /**
   * A step of a job's book.
   *
   * @param slug the book's name
   * @param step the step
   */
  public record At(String slug, StepId step) {}

  /**
   * On the way to a wait that is over.
   *
   * @param from where she worked
   * @param to where it is answered
   */
  public record Errand(At from, At to) {}

  InMind asked(boolean now) {
    return new InMind(now, toward, back, refused, meanwhile, moves, typed);
  }

  InMind toward(Optional<String> slug) {
    return new InMind(asked, slug, back, refused, meanwhile, moves, typed);
  }

  InMind back(Optional<Errand> errand) {
    return new InMind(asked, toward, errand, refused, meanwhile, moves, typed);
  }

  InMind refused(Optional<EntryId> entry) {
    return new InMind(asked, toward, back, entry, meanwhile, moves, typed);
  }

  InMind meanwhile(Optional<Meanwhile> said) {
    return new InMind(asked, toward, back, refused, said, moves, typed);
  }

  InMind moves(ClockMoves known) {
    return new InMind(asked, toward, back, refused, meanwhile, known, typed);
  }

  InMind typed(Optional<Map<String, Map<String, String>>> texts) {
    return new InMind(asked, toward, back, refused, meanwhile, moves, texts.map(Map::copyOf));
  }
}
