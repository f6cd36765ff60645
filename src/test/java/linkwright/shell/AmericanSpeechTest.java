package linkwright.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import linkwright.coach.Bencher;
import linkwright.coach.Pages;
import linkwright.coach.content.Page;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.KeyMap;
import linkwright.quantity.UnitStyle;
import linkwright.routine.BritishWords;
import linkwright.view.Scenes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who listens in American words hears no British one. */
class AmericanSpeechTest {
  private static final Settings AMERICAN = new Settings(UnitStyle.INCH, false, KeyMap.USUAL);

  static List<String> scenes() {
    return Scenes.names();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void no_screen_is_said_in_british_words(String scene) {
    Page tray = Pages.of(Bencher.atTheTray(AMERICAN).model());
    Set<String> british = new TreeSet<>();
    said(tray, Pages.of(Scenes.inInches(scene, 80, 24).model()), british);
    assertThat(british).as(scene).isEmpty();
  }

  @Test
  void no_step_card_or_wait_on_the_way_through_a_job_is() {
    Bencher bench = Bencher.withTheDemo(AMERICAN).press("b");
    Set<String> british = new TreeSet<>();
    Page before = Pages.of(bench.model());
    for (int i = 0; i < 160; i++) {
      bench.press(i % 3 == 0 ? "n" : "space");
      Page now = Pages.of(bench.model());
      said(before, now, british);
      bench.take(new Message.Resized(80, 24));
      before = now;
    }
    assertThat(british).isEmpty();
  }

  private static void said(Page before, Page now, Set<String> british) {
    Utterances.between(before, now).forEach(each -> british.addAll(BritishWords.in(each.text())));
    Utterances.asked(now).forEach(each -> british.addAll(BritishWords.in(each.text())));
    now.waits().forEach(wait -> british.addAll(BritishWords.in(Utterances.isDue(wait))));
  }
}
