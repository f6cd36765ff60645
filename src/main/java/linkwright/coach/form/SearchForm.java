package linkwright.coach.form;

import java.util.List;

/** The one field by which a list is narrowed: letter by letter, the same at every place. */
public final class SearchForm {
  private SearchForm() {}

  /** The field with what it was narrowed by before. */
  public static Form of(String text) {
    return Form.of(
        Form.Purpose.SEARCH,
        "Narrow the list",
        "stay with these",
        List.of(
            Field.of("search", "narrow by", text, "any part of any word, in any order")
                .helped("The list below follows as you type.")));
  }

  /** What the list is to be narrowed by. */
  public static String text(Form form) {
    return form.fields().get(0).text();
  }
}
