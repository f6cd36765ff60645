package linkwright.coach;

import linkwright.coach.form.Form;

/** What is told beside the fields of a form. */
final class Troubles {
  private Troubles() {}

  static boolean in(Form form) {
    return form.fields().stream().anyMatch(field -> field.trouble().isPresent());
  }
}
