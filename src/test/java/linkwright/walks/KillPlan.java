package linkwright.walks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;

/**
 * One round of the kill harness, drawn from its seed: what is entered, how it is sent, and when the
 * program dies.
 *
 * @param seed the harness's seed
 * @param round the round's number; seed and round together draw the same plan again
 * @param way over a pseudo-terminal, line by line, or a command an entry
 * @param entries what is entered, one after the other
 * @param waits before which of them what went before is waited for
 * @param dieAfter how many of them are sent before the program dies
 * @param nanos how long after the last of them it dies
 */
record KillPlan(
    long seed,
    int round,
    Way way,
    List<Doing> entries,
    List<Boolean> waits,
    int dieAfter,
    long nanos) {
  /**
   * Something entered, told from all others of its round. By commands a note is a lot that came
   * into the drawer, and a count the bench's kerf in hundredths of a millimetre.
   *
   * @param count so many pieces; 0 for a note
   * @param note the note's text; blank for a count
   */
  record Doing(int count, String note) {
    boolean isNote() {
      return count == 0;
    }
  }

  /** How it is entered. */
  enum Way {
    SCREEN,
    LINES,
    COMMANDS
  }

  private static final int MOST = 12;
  private static final int MOST_COMMANDS = 3;

  /** An entry takes a few thousandths of a second; a start takes about one. */
  private static final double LONGEST_NANOS = 3e7;

  private static final double START_NANOS = 1.2e9;

  KillPlan {
    entries = List.copyOf(entries);
    waits = List.copyOf(waits);
  }

  /** Draws a round. One in ten dies at a moment of its start, with everything sent already. */
  static KillPlan of(long seed, int round) {
    Random chance = new Random(new SplittableRandom(seed * 1_000_003L + round).nextLong());
    Way way = way(chance.nextInt(10));
    boolean commands = way == Way.COMMANDS;
    int many = 1 + chance.nextInt(commands ? MOST_COMMANDS : MOST);
    List<Doing> entries = new ArrayList<>();
    List<Boolean> waits = new ArrayList<>();
    for (int i = 1; i <= many; i++) {
      boolean note = chance.nextInt(3) == 0;
      entries.add(note ? new Doing(0, "w-" + round + "-" + i) : new Doing(i, ""));
      waits.add(chance.nextInt(3) > 0);
    }
    boolean atStart = !commands && chance.nextInt(10) == 0;
    double longest = atStart || commands ? START_NANOS : LONGEST_NANOS;
    long nanos = (long) (chance.nextDouble() * longest);
    return new KillPlan(seed, round, way, entries, waits, atStart ? 0 : many, nanos);
  }

  private static Way way(int ofTen) {
    return ofTen < 4 ? Way.SCREEN : ofTen < 8 ? Way.LINES : Way.COMMANDS;
  }

  boolean screen() {
    return way == Way.SCREEN;
  }

  /** Whether it dies while it starts. */
  boolean atStart() {
    return dieAfter == 0;
  }
}
