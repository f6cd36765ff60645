package linkwright.coach.kernel.turning;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;

/** Turning on to what has no room at once: one way at every place. */
public final class Turning {
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

  /** The acts of a place, turning on among them where what it says has no room at once. */
  public static List<Act> with(List<Act> acts, Model model, Place place) {
    if (model.held().form().isPresent() || model.parts(AskedOnce.content(place, model)) <= 1) {
      return acts;
    }
    List<Act> more = new ArrayList<>(acts);
    more.add(Act.MORE);
    more.add(Act.LESS);
    return List.copyOf(more);
  }
}
