package linkwright.view;

import linkwright.coach.form.Form;

/** A form; what does not fit beside its field stands below it. */
final class FieldsBlock implements Block {
  private static final int LEAST = 4;

  private final Form form;
  private final int width;

  FieldsBlock(Form form, int width) {
    this.form = form;
    this.width = width;
  }

  @Override
  public int wanted() {
    // The title, the line that keeps it, and a hint that is long.
    return form.fields().size() + 4 + (width < 40 ? 1 : 0);
  }

  @Override
  public int least() {
    return LEAST;
  }

  @Override
  public Yield yields() {
    return Yield.SCROLLS;
  }

  @Override
  public void draw(Canvas area, int turned) {
    FormView.draw(area, form);
  }
}
