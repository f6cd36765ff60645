package linkwright.coach.kernel.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.StillToDoWords;
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

  /** The acts of a place, turning on among them where what it says has no room at once. */
  public static List<Act> with(List<Act> acts, Model model, Place place) {
    if (model.held().form().isPresent() || parts(model, AskedOnce.content(place, model)) <= 1) {
      return acts;
    }
    List<Act> more = new ArrayList<>(acts);
    more.add(Act.MORE);
    more.add(Act.LESS);
    return List.copyOf(more);
  }

  /** Parts of what the place says, of what is told at the foot and of what is still to do. */
  private static int parts(Model model, Content content) {
    return model
        .paging()
        .parts(
            content,
            model.notice().told(),
            StillToDoWords.of(model),
            model.width(),
            model.height(),
            model.job().isPresent());
  }
}
