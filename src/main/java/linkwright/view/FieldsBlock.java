package linkwright.view;

import java.util.function.Function;
import linkwright.coach.content.ActMention;
import linkwright.coach.form.Form;
import linkwright.coach.keys.Act;

/** A form; what does not fit beside its field stands below it. */
final class FieldsBlock implements Block {
  private static final int LEAST = 4;

  private final Form form;
  private final int width;
  private final int wanted;
  private final String key;
  private final boolean told;

  /**
   * Such a form.
   *
   * @param key the key that turns on what has no room below it
   * @param told whether it says itself which page is shown and how to turn on
   */
  FieldsBlock(Form form, int width, Function<Act, String> keyOf, String key, boolean told) {
    this.form =
        form.mapFields(
            field -> field.with(field.trouble().map(trouble -> ActMention.fill(trouble, keyOf))));
    this.width = width;
    wanted = FormView.wanted(this.form, width);
    this.key = key;
    this.told = told;
  }

  @Override
  public int wanted() {
    return wanted;
  }

  @Override
  public int parts(int rows) {
    return FormView.parts(form, width, rows, told);
  }

  @Override
  public boolean typed() {
    return true;
  }

  @Override
  public int least() {
    return LEAST;
  }

  @Override
  public GivesWay yields() {
    return GivesWay.SCROLLS;
  }

  @Override
  public void draw(Canvas area, int turned) {
    FormView.draw(area, form, turned, told ? key : "");
  }
}
