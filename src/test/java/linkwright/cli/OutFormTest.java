package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import linkwright.coach.form.Field;
import linkwright.exchange.forms.OutForm;
import org.junit.jupiter.api.Test;

/** What is written for other programs, and what is told of a field. */
class OutFormTest {
  @Test
  void a_table_of_no_rows_tells_its_columns_still() {
    List<Map<String, Object>> none = List.of();
    assertThat(OutForm.CSV.written("jobs", none, List.of("book", "name")))
        .isEqualTo("book,name\r\n");
    assertThat(OutForm.CSV.written("jobs", none)).isEmpty();
  }

  @Test
  void a_hint_is_an_example_only_where_it_gives_figures_and_ends_once() {
    assertThat(Field.of("name", "Name", "", "what you will look for it by").explained())
        .containsExactly("What you will look for it by.");
    assertThat(Field.of("time", "how long", "", "8 min or 45 s.").explained())
        .containsExactly("Example: 8 min or 45 s.");
  }
}
