package linkwright.coach.kernel.turning;

import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;

/**
 * What a place says of a model and what is open there, reckoned once: a key, the page that follows
 * and the question whether there is more of it ask for the same.
 */
public final class AskedOnce {
  private record LastContent(Model model, PlaceId place, Content content) {}

  private record LastActs(Model model, PlaceId place, List<Act> acts) {}

  // What was asked last. Both follow from the model alone, so that whoever asks at the same time
  // at worst reckons once more.
  private static volatile LastContent lastContent;
  private static volatile LastActs lastActs;

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
      last = new LastActs(model, model.held().place(), List.copyOf(place.acts(model)));
      lastActs = last;
    }
    return last.acts();
  }
}
