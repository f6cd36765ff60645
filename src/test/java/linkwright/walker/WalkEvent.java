package linkwright.walker;

import java.util.List;

/**
 * One thing that happens to the coach, as one line of text that can be read back.
 *
 * @param kind key, act, word (a line of the plain walk), paste, row, field, pass (milliseconds),
 *     set (seconds by which the clock is set), size (columns x rows), restart
 * @param what of that kind
 */
record WalkEvent(String kind, String what) {
  static WalkEvent of(String kind, Object what) {
    return new WalkEvent(kind, String.valueOf(what));
  }

  /** Reads what {@link #toString} wrote. */
  static WalkEvent read(String line) {
    String[] parts = line.split(" ", 2);
    return new WalkEvent(parts[0], parts.length > 1 ? parts[1] : "");
  }

  static List<WalkEvent> readAll(List<String> lines) {
    return lines.stream().filter(line -> !line.isBlank()).map(WalkEvent::read).toList();
  }

  long number() {
    return Long.parseLong(what);
  }

  @Override
  public String toString() {
    return what.isEmpty() ? kind : kind + " " + what;
  }
}
