package linkwright.coach.kernel.turning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/** Turning on to what has no room at once: one way at every place. */
public final class Turning {
  /** What turns on and back. */
  public static final Set<Act> ACTS = Set.of(Act.MORE, Act.LESS);

  private Turning() {}

  /** What a key turns in a form, where letters are typed: on, back, or not at all. */
  public static int by(Key key) {
    return switch (key.kind()) {
      case PAGE_DOWN -> 1;
      case PAGE_UP -> -1;
      default -> 0;
    };
  }

  /** How often the reader turned on, after that act: on, or back as far as the beginning. */
  public static int to(int turned, Act act) {
    return act == Act.LESS ? Math.max(0, turned - 1) : turned + 1;
  }

  /**
   * The model before a key: what was told is taken away, but not by turning on, for it may be the
   * rest of it that is turned to.
   */
  public static Model quieted(Model model, Key key, Optional<Act> meant) {
    boolean turns =
        model.held().form().isPresent() ? by(key) != 0 : meant.filter(ACTS::contains).isPresent();
    return turns ? model : model.quiet();
  }

  /**
   * The acts of a place, turning on behind them where what it says has no room at once. Whether it
   * has is found out by whoever asks as far as there: of a key that an act before has it is not.
   */
  public static List<Act> with(List<Act> acts, Model model, Place place) {
    return model.held().form().isPresent()
        ? acts
        : with(acts, () -> AskedOnce.parts(place, model) > 1);
  }

  /** The same where a place knows by itself whether there is more; asked once at most. */
  public static List<Act> with(List<Act> acts, BooleanSupplier hasMore) {
    return new ActsAndTurning(acts, hasMore);
  }
}
