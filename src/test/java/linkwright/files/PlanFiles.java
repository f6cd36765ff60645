package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import linkwright.exchange.PlanFileText;
import linkwright.plan.Wishes;

/** Plan files as they are written, read again. */
public final class PlanFiles {
  private PlanFiles() {}

  /** What a plan file says that was written of these texts; it must have nothing wrong. */
  public static Map<String, String> readBack(Map<String, String> texts) {
    byte[] written = PlanFileText.of(Optional.empty(), texts).getBytes(StandardCharsets.UTF_8);
    PlanFile read = PlanFile.of(new DataFile("again.yaml", written), Wishes.LIBRARY);
    assertThat(read.problems()).isEmpty();
    return read.texts();
  }
}
