package linkwright.coach.kernel.turning;

import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.drawn.StillToDoWords;
import linkwright.coach.keys.Act;

/**
 * What a place says of a model and what is open there, reckoned once: a key, the page that follows
 * and the question whether there is more of it ask for the same.
 */
public final class AskedOnce {
  private record LastContent(Model model, PlaceId place, Content content) {}

  private record LastActs(Model model, PlaceId place, List<Act> acts) {}

  private record LastParts(Model model, int parts) {}

  // What was asked last. All follow from the model alone, so that whoever asks at the same time
  // at worst reckons once more.
  private static volatile LastContent lastContent;
  private static volatile LastActs lastActs;
  // Of two: a key is read with what is told at the foot and without.
  private static volatile List<LastParts> lastParts = List.of();

  private AskedOnce() {}

  /** The very model: to compare all that two hold would cost more than to ask again. */
  @SuppressWarnings("ReferenceEquality")
  private static boolean same(Model one, Model other) {
    return one == other;
  }

  /** What a place has to say of a model that stands there. */
  public static Content content(Place place, Model model) {
    LastContent last = lastContent;
    if (last == null || !same(last.model(), model) || last.place() != model.held().place()) {
      last = new LastContent(model, model.held().place(), place.content(model));
      lastContent = last;
    }
    return last.content();
  }

  /** What is open at a place in a model that stands there. */
  public static List<Act> acts(Place place, Model model) {
    LastActs last = lastActs;
    if (last == null || !same(last.model(), model) || last.place() != model.held().place()) {
      last = new LastActs(model, model.held().place(), place.acts(model));
      lastActs = last;
    }
    return last.acts();
  }

  /**
   * Parts of what a place says, of what is told at the foot and of what is still to do, in the
   * window that there is. Keys in a flood that change nothing of it ask for it once a second.
   */
  static int parts(Place place, Model model) {
    for (LastParts last : lastParts) {
      if (saysTheSame(last.model(), model)) {
        return last.parts();
      }
    }
    int parts =
        model
            .paging()
            .parts(
                content(place, model),
                model.notice().told(),
                StillToDoWords.of(model),
                model.width(),
                model.height(),
                model.job().isPresent());
    LastParts asked = new LastParts(model, parts);
    lastParts = lastParts.isEmpty() ? List.of(asked) : List.of(asked, lastParts.get(0));
    return parts;
  }

  /** Whether two differ by nothing but what was pressed and the part of a second. */
  @SuppressWarnings("ReferenceEquality")
  private static boolean saysTheSame(Model one, Model other) {
    return one.held().equals(other.held())
        && one.notice().equals(other.notice())
        && one.now().getEpochSecond() == other.now().getEpochSecond()
        && one.steady().getEpochSecond() == other.steady().getEpochSecond()
        && one.width() == other.width()
        && one.height() == other.height()
        && one.job().orElse(null) == other.job().orElse(null)
        && one.handbook() == other.handbook()
        && one.settings() == other.settings()
        && one.paging() == other.paging()
        && one.tray() == other.tray()
        && one.writing() == other.writing()
        && one.bench() == other.bench()
        && one.learning() == other.learning();
  }
}
