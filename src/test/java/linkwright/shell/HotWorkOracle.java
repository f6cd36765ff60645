package linkwright.shell;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the presses add up to, reckoned from their list alone and the time as it really is. */
final class HotWorkOracle {
  static final Instant BEGIN = Instant.parse("2026-03-02T08:00:00Z");
  private static final Duration WATCH = Duration.ofMinutes(60);

  record Pressed(char what, Instant at) {}

  final List<Pressed> pressed = new ArrayList<>();

  void heard(char what, Instant at) {
    pressed.add(new Pressed(what, at));
  }

  boolean open() {
    boolean open = false;
    for (Pressed each : pressed) {
      open = each.what() == 'l' || (open && each.what() != 's');
    }
    return open;
  }

  /** Whether it was said for a reason that nobody need watch any more; heat again begins anew. */
  boolean ended() {
    int end = last('e', pressed.size());
    return end > last('s', pressed.size()) && end > last('h', pressed.size());
  }

  /** What is left of the watch; nothing while a flame is lit, none ever was, or it was ended. */
  Optional<Duration> left(Instant now) {
    return open() || ended() || last('s', pressed.size()) < 0
        ? Optional.empty()
        : Optional.of(left(from(), now)).filter(left -> !left.isZero());
  }

  /** What would be left from the statement on, were it not ended. */
  Duration atMost(Instant now) {
    return open() ? Duration.ZERO : left(shut(), now);
  }

  /** When every flame was said to be out last; long ago for never. */
  Instant shut() {
    int shut = last('s', pressed.size());
    return shut < 0 ? Instant.EPOCH : pressed.get(shut).at();
  }

  private static Duration left(Instant from, Instant now) {
    Duration left = Duration.between(now, from.plus(WATCH));
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** When a flame was lit last. */
  Instant lit() {
    int lit = last('l', pressed.size());
    return lit < 0 ? BEGIN : pressed.get(lit).at();
  }

  /** The last heat since a flame was lit, else when all were out. */
  Instant from() {
    int shut = last('s', pressed.size());
    int lit = last('l', shut);
    int heat = last('h', pressed.size());
    return shut < 0 ? BEGIN : pressed.get(heat > lit ? heat : shut).at();
  }

  private int last(char what, int before) {
    for (int i = before - 1; i >= 0; i--) {
      if (pressed.get(i).what() == what) {
        return i;
      }
    }
    return -1;
  }
}
