package linkwright.reference;

import java.util.List;

/**
 * One state of what a picture shows.
 *
 * @param name the state, in a word or two; what stands below it
 * @param says what is seen and what it means, for whoever sees no drawing too
 * @param wrong whether something is wrong with it
 * @param drawn what is drawn, in words that do not say what it means; empty where no student is
 *     asked
 * @param which what this state and no other of the picture does or needs, after {@code which of
 *     these}; empty where no student is asked
 * @param strokes its lines, in steps of the drawing, x to the right and y upwards
 */
public record PicturePanel(
    String name,
    String says,
    boolean wrong,
    String drawn,
    String which,
    List<PictureStroke> strokes) {
  /** Copies the strokes. */
  public PicturePanel {
    strokes = List.copyOf(strokes);
  }
}
