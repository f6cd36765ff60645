package linkwright.reference;

import java.util.List;

/**
 * A line drawing of what a hand has to see: a joint, a flame, how ends meet. It ships as data in
 * {@code shared/drawings} and is drawn beside the steps that name it.
 *
 * @param id its name
 * @param title what it shows, in a few words
 * @param says how it is to be read
 * @param panels the same thing as it should be and as it should not, side by side
 */
public record Picture(String id, String title, String says, List<PicturePanel> panels) {
  /** Copies the panels. */
  public Picture {
    panels = List.copyOf(panels);
  }
}
