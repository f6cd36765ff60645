package linkwright.coach;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import linkwright.job.Entry;
import linkwright.job.Fact;

/** What reaches the coach: keys, time, and what became of the effects it asked for. */
public sealed interface Message {
  /** A key was pressed. */
  record KeyPressed(Key key) implements Message {}

  /** Text was pasted; only a field takes it. */
  record Pasted(String text) implements Message {}

  /** A place of the screen was clicked. */
  record PointedAt(Spot spot) implements Message {}

  /** The clock went on. */
  record Ticked(Instant now) implements Message {}

  /** The room to draw in changed. */
  record Resized(int width, int height) implements Message {}

  /**
   * A job book was opened; device is this machine's name in it, lookOnly says that another program
   * writes it, doubtful are the lines that are kept and not used.
   */
  record JobOpened(
      String slug,
      String device,
      List<Entry> entries,
      boolean lookOnly,
      List<String> told,
      Map<String, Map<String, String>> drafts,
      List<DoubtfulLine> doubtful)
      implements Message {
    /** A book of which every line passed its check. */
    public JobOpened(
        String slug,
        String device,
        List<Entry> entries,
        boolean lookOnly,
        List<String> told,
        Map<String, Map<String, String>> drafts) {
      this(slug, device, entries, lookOnly, told, drafts, List.of());
    }
  }

  /** A job book could not be opened or begun. */
  record JobNotOpened(String why) implements Message {}

  /** Entries are on the disk. */
  record Kept(List<Entry> entries) implements Message {}

  /** Entries could not be written; nothing of them is in the book. */
  record NotKept(List<Fact> facts, String why) implements Message {}

  /** Something is wrong that the user should know of at once. */
  record Troubled(String sentence) implements Message {}

  /** The jobs at hand were read; unread says how many were left out, for it took too long. */
  record TrayRead(List<TrayJob> jobs, int unread) implements Message {
    /** All of them. */
    public TrayRead(List<TrayJob> jobs) {
      this(jobs, 0);
    }
  }

  /** The terminal is gone, or asked the program to leave. */
  record Ended() implements Message {}
}
