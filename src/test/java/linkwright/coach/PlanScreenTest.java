package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Message;
import linkwright.coach.keys.Key;
import linkwright.coach.plan.PlanHeld;
import linkwright.coach.round.RoundHeld;
import linkwright.job.Fact;
import linkwright.plan.Plan;
import org.junit.jupiter.api.Test;

class PlanScreenTest {
  private final Bencher bench = Bencher.withTheDemo().press("p");

  private Plan preview() {
    return ((PlanHeld) bench.model().held()).preview().counted().plan().orElseThrow();
  }

  private PlanScreenTest toField(String id) {
    while (!bench.form().fields().get(bench.form().at()).id().equals(id)) {
      bench.press("down");
    }
    return this;
  }

  private PlanScreenTest retype(String id, String text) {
    toField(id);
    bench.press(bench.form().text(id).length(), "backspace").type(text);
    return this;
  }

  private String trouble(String id) {
    return bench.form().fields().stream()
        .filter(field -> field.id().equals(id))
        .flatMap(field -> field.trouble().stream())
        .findFirst()
        .orElse("");
  }

  @Test
  void results_are_counted_anew_at_every_key() {
    int links = preview().links();
    retype("finished-length", "38 cm");
    assertThat(preview().links()).isGreaterThan(links);
    assertThat(bench.entered(Fact.PlanSet.class)).as("nothing is kept yet").hasSize(1);
  }

  @Test
  void trouble_stands_beside_its_field_and_goes_when_it_is_mended() {
    retype("wire", "-1 mm");
    assertThat(trouble("wire")).contains("-1 mm");
    retype("wire", "1,0 mm");
    assertThat(trouble("wire")).isEmpty();
    assertThat(preview().wish().wireMm()).isEqualTo(1.0);
  }

  @Test
  void a_field_nobody_came_to_yet_is_not_wrong() {
    Bencher empty = Bencher.with(new Fact.JobOpened("a", "scroll-and-ring"));
    empty.take(new Message.KeyPressed(Key.of(Key.Kind.DOWN)));
    empty.type("0.9 mm");
    assertThat(Troubles.in(empty.form())).isFalse();
  }

  @Test
  void what_does_not_hold_together_is_not_kept_and_the_caret_goes_there() {
    retype("finished-length", "8 apples");
    bench.press("up", "up", "ctrl-k");
    assertThat(bench.notice()).startsWith("Not kept yet: ");
    assertThat(bench.form().fields().get(bench.form().at()).id()).isEqualTo("finished-length");
    assertThat(bench.entered(Fact.PlanSet.class)).hasSize(1);
  }

  @Test
  void a_kept_plan_is_the_jobs_plan_with_what_was_typed() {
    retype("finished-length", "20 cm");
    bench.press("ctrl-k");
    assertThat(bench.state().course().wish()).containsEntry("finished-length", "20 cm");
    assertThat(bench.model().held()).isInstanceOf(RoundHeld.class);
    bench.press("p").press("ctrl-k");
    assertThat(bench.notice()).isEqualTo("The plan is as it was.");
    assertThat(bench.entered(Fact.PlanSet.class)).hasSize(2);
  }

  @Test
  void all_that_the_demos_plan_says_is_in_the_form() {
    Map<String, String> typed = new LinkedHashMap<>(bench.form().texts());
    typed.values().removeIf(String::isBlank);
    Map<String, String> wish = new LinkedHashMap<>(bench.state().course().wish());
    wish.remove("job");
    assertThat(typed).containsAllEntriesOf(wish);
  }

  @Test
  void what_was_typed_into_a_folded_field_is_shown_when_a_new_plan_is_opened_again() {
    Bencher fresh = Bencher.with(new Fact.JobOpened("a", "scroll-and-ring"));
    fresh.toField("temper").type("hard").toField("usual-loss").type("7 %").press("esc", "p");
    assertThat(shown(fresh)).contains("temper", "usual-loss").doesNotContain("kerf", "extender");
    assertThat(fresh.form().text("usual-loss")).isEqualTo("7 %");
  }

  @Test
  void what_was_typed_into_a_folded_field_of_a_test_piece_is_shown_when_it_is_opened_again() {
    bench.press("esc", "t", "n").toField("note").type("turned a little far").press("esc", "n");
    assertThat(bench.form().text("note")).isEqualTo("turned a little far");
    assertThat(shown(bench)).contains("note").doesNotContain("verdict2");
  }

  private static List<String> shown(Bencher bench) {
    Form form = bench.form();
    return form.lines().stream()
        .filter(line -> line < form.fields().size())
        .map(line -> form.fields().get(line).id())
        .toList();
  }
}
