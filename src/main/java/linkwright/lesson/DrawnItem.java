package linkwright.lesson;

import java.util.List;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Picture;
import linkwright.reference.PicturePanel;

/**
 * Which of the states that a picture shows is meant. Every state of it is asked for once, so that
 * none of them is the likelier one; whoever sees no drawing is told what is drawn.
 *
 * @param picture the picture
 * @param right the state that is asked for
 */
record DrawnItem(Picture picture, PicturePanel right) implements Item {
  @Override
  public String id() {
    return "drawn/" + picture.id() + "/" + right.name().replace(' ', '-');
  }

  @Override
  public Topic topic() {
    return Topic.DRAWN;
  }

  @Override
  public Asked draw(long seed, UnitStyle units) {
    List<PicturePanel> shown = new Chance(seed).shuffled(picture.panels());
    return new Asked(
        picture.title() + ": which of these " + right.which() + "?",
        shown.stream().map(PicturePanel::drawn).toList(),
        shown.indexOf(right),
        right.says(),
        List.of(new Picture(picture.id(), picture.title(), picture.says(), shown)));
  }

  /** All that can be asked of a picture; nothing of one that does not say what is drawn. */
  static List<DrawnItem> of(Picture picture) {
    boolean told =
        picture.panels().stream()
            .noneMatch(panel -> panel.drawn().isEmpty() || panel.which().isEmpty());
    return told && picture.panels().size() > 1
        ? picture.panels().stream().map(panel -> new DrawnItem(picture, panel)).toList()
        : List.of();
  }
}
