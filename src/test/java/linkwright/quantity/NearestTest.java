package linkwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> WORDS =
      List.of("sterling", "fine-silver", "copper", "brass-70");

  @Test
  void aLetterLeftOutPutInChangedOrSwappedIsForgiven() {
    assertThat(Nearest.of("sterlng", WORDS)).contains("sterling");
    assertThat(Nearest.of("sterlling", WORDS)).contains("sterling");
    assertThat(Nearest.of("stirling", WORDS)).contains("sterling");
    assertThat(Nearest.of("coppre", WORDS)).contains("copper");
  }

  @Test
  void capitalsSpacesAndUnderlinesDoNotCount() {
    assertThat(Nearest.of("Fine Silver", WORDS)).contains("fine-silver");
    assertThat(Nearest.of("BRASS_70", WORDS)).contains("brass-70");
  }

  @Test
  void whatIsFarFromAllIsNearToNone() {
    assertThat(Nearest.of("platinum", WORDS)).isEmpty();
    assertThat(Nearest.of("", WORDS)).isEmpty();
    assertThat(Nearest.of("x", List.of("m"))).isEmpty();
    assertThat(Nearest.of("sterling", List.of())).isEmpty();
  }

  @Test
  void onATieTheLongerCommonBeginningWinsThenTheOrder() {
    assertThat(Nearest.of("mn", List.of("in", "mm", "m"))).contains("mm");
    assertThat(Nearest.of("ac", List.of("ab", "ad"))).contains("ab");
  }
}
