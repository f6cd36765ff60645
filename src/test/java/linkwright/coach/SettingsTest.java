package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import linkwright.files.UserSettings;
import org.junit.jupiter.api.Test;

/** Choices are left when they are on the disk, not before. */
class SettingsTest {
  @Test
  void a_flag_is_yes_or_no_and_stands_in_the_file_as_it_always_did() {
    Bencher bench = Bencher.withTheDemo().press(",");
    bench.toField("flash");
    assertThat(bench.form().text("flash")).isEqualTo("yes");
    bench.type("no").press("ctrl-k");
    Map<String, String> kept = bench.performed(Effect.KeepSettings.class).get(0).texts();
    assertThat(UserSettings.ofTexts(kept).orThrow().texts()).containsEntry("flash", "false");
    assertThat(bench.form().fields()).allSatisfy(field -> assertThat(field.trouble()).isEmpty());
  }

  @Test
  void the_likely_voices_are_offered_and_any_other_may_be_typed() {
    Bencher bench = Bencher.withTheDemo().press(",");
    bench.toField("say").press("right", "right");
    assertThat(bench.form().text("say")).isEqualTo("spd-say -w");
    bench.type("my-voice --slow").press("ctrl-k");
    assertThat(bench.performed(Effect.KeepSettings.class).get(0).texts())
        .containsEntry("say", "my-voice --slow");
  }

  @Test
  void what_could_not_be_written_stays_typed() {
    Bencher bench = Bencher.withTheDemo().press(",").press("ctrl-k");
    assertThat(bench.model().held().place()).isEqualTo(PlaceId.SETTINGS);
    bench.take(new Message.SettingsKept(Settings.USUAL, Optional.of("The disk is full.")));
    assertThat(bench.model().held().form()).isPresent();
    assertThat(bench.model().notice().text()).isEqualTo("The disk is full.");
    bench.take(new Message.SettingsKept(Settings.USUAL, Optional.empty()));
    assertThat(bench.model().held().place()).isNotEqualTo(PlaceId.SETTINGS);
    assertThat(bench.model().notice().text()).isEqualTo("The settings are kept.");
  }
}
