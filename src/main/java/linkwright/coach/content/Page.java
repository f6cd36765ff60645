package linkwright.coach.content;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import linkwright.coach.keys.Act;

/**
 * A whole moment of the coach: what the place says, and what is said everywhere.
 *
 * @param job the job's name; the program's where none is open
 * @param body what the place says
 * @param turned how often its reader turned on to what had no room; goes round
 * @param turns the act that turns on
 * @param waits all that wait at this bench, the one that ends first at the top
 * @param hotWork that a flame may be lit at the bench, and since when; empty if none is
 * @param chain the chain as it has come so far
 * @param still what is still to do, in one line; empty for nothing
 * @param told a sentence that the next act takes away; empty for none
 * @param trouble whether that sentence tells of something wrong
 * @param open the acts that are open here, with what each would do now
 * @param away what can be done at the places of the job and not here
 * @param across what is shown in place of everything, to be read across the room
 */
public record Page(
    String job,
    Content body,
    int turned,
    Act turns,
    List<WaitShown> waits,
    String hotWork,
    Optional<Pieces> chain,
    String still,
    String told,
    boolean trouble,
    List<Open> open,
    Set<Act> away,
    Optional<Across> across) {
  /**
   * One number, one word, one key.
   *
   * @param number the number or the time left
   * @param word what it counts
   * @param act what its key would do
   * @param says that in a word or two
   * @param due whether a wait is due
   */
  public record Across(String number, String word, Act act, String says, boolean due) {}

  public Page {
    waits = List.copyOf(waits);
    open = List.copyOf(open);
    away = Set.copyOf(away);
  }

  /**
   * What is told everywhere: the fire watch while it runs, and the other wait that ends first,
   * whichever job's it is; of two that end at once the open job's own comes first in the list.
   */
  public List<WaitShown> nextWaits() {
    return Stream.concat(
            waits.stream().filter(WaitShown::watch).limit(1),
            waits.stream().filter(wait -> !wait.watch()).limit(1))
        .toList();
  }

  /**
   * An act that is open.
   *
   * @param act the act; empty for a key that a form keeps for itself
   * @param says what it would do now; with its key, where a form keeps it for itself
   * @param always whether it is told however little room there is
   */
  public record Open(Optional<Act> act, String says, boolean always) {
    /** One that gives way where there is little room. */
    public Open(Optional<Act> act, String says) {
      this(act, says, false);
    }

    /** One that is told however little room there is. */
    public static Open always(Optional<Act> act, String says) {
      return new Open(act, says, true);
    }
  }
}
