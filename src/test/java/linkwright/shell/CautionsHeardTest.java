package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.content.Prose;
import org.junit.jupiter.api.Test;

/** What is heard of cautions. */
class CautionsHeardTest {
  /**
   * Whoever works with her ears has what to beware of, what to do if it went wrong, what to wear.
   */
  @Test
  void a_card_is_heard_whole() {
    Bencher bench = Bencher.withTheDemo();
    Page before = Pages.of(bench.model());
    bench.press("esc", "b");
    for (int i = 0; i < 40; i++) {
      bench.press(i % 2 == 0 ? "space" : "n");
      Page card = Pages.of(bench.model());
      List<Prose> parts =
          card.body().parts().stream()
              .filter(Prose.class::isInstance)
              .map(Prose.class::cast)
              .toList();
      if (parts.stream().anyMatch(each -> each.kind() == Prose.Kind.WEAR)) {
        String heard = Utterances.between(before, card).get(0).text();
        assertThat(heard).startsWith("Caution. ").contains(" Beware: ", " If so: ", " Wear: ");
        parts.stream()
            .filter(each -> each.kind() != Prose.Kind.SOURCE)
            .map(each -> each.text().strip().replaceAll(" {2,}", ", "))
            .forEach(each -> assertThat(heard).contains(each));
        return;
      }
    }
    throw new AssertionError("no card was shown");
  }

  @Test
  void what_a_step_warns_of_is_heard_with_it() {
    Bencher bench = Bencher.withTheDemo();
    bench.goTo("lay-out");
    Page before = Pages.of(bench.model());
    bench.goTo("solder-links");
    Page step = Pages.of(bench.model());
    List<String> warnings =
        step.body().parts().stream()
            .filter(Prose.class::isInstance)
            .map(Prose.class::cast)
            .filter(each -> each.kind() == Prose.Kind.CAUTION || each.kind() == Prose.Kind.MIND)
            .map(Prose::text)
            .toList();
    assertThat(warnings).isNotEmpty();
    assertThat(Utterances.between(before, step))
        .filteredOn(each -> each.kind() == Utterance.Kind.CAUTION)
        .singleElement()
        .satisfies(each -> assertThat(each.text()).contains(warnings));
  }
}
