package linkwright.coach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Settings;
import org.junit.jupiter.api.Test;

/** Choices are left when they are on the disk, not before. */
class SettingsTest {
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
