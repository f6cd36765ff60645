package linkwright.view;

import java.util.OptionalDouble;
import linkwright.coach.Pages;
import linkwright.coach.kernel.Model;

/** What the screen shows of a model, for tests. */
public final class Shown {
  private Shown() {}

  /** The picture for the model's own room and keys. */
  public static Grid draw(Model model, Glyphs glyphs) {
    return Screens.draw(
        Pages.of(model),
        model.width(),
        model.height(),
        glyphs,
        model.settings().keys(),
        OptionalDouble.empty());
  }
}
