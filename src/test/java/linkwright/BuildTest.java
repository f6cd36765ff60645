package linkwright;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BuildTest {
  @Test
  void theClassPathHoldsTheProgram() {
    assertThat(BuildTest.class.getResource("Main.class")).isNotNull();
  }
}
