package linkwright.coach.content;

import linkwright.coach.form.Form;

/**
 * A form that is being filled in.
 *
 * @param form the form
 */
public record Fields(Form form) implements Part {
  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.fields(this);
  }
}
