package linkwright.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linkwright.coach.Apprentice;
import linkwright.reckon.Reckoner;
import org.junit.jupiter.api.Test;

class ReckonViewTest {

  @Test
  void theResultIsToBeSeenAtEverySize() {
    for (int[] size : new int[][] {{40, 16}, {60, 20}, {72, 20}, {80, 24}, {100, 30}, {140, 45}}) {
      Apprentice apprentice = Apprentice.atTheTray().press("r", "enter").window(size[0], size[1]);
      apprentice.type("sterling").press("enter").type("1 mm").press("enter").type("1 m");

      assertThat(apprentice.shown().replaceAll("\\s+", " "))
          .as(size[0] + " x " + size[1])
          .contains("8.14 g");
    }
  }

  @Test
  void everySumCanBeOpenedInTheSmallestWindow() {
    Apprentice apprentice =
        Apprentice.withAJob(Map.of()).window(Screens.LEAST_WIDTH, Screens.LEAST_HEIGHT).press("r");
    Reckoner.sums()
        .forEach(
            sum -> {
              assertThat(apprentice.shown()).contains(sum.id());
              assertThat(apprentice.press("enter").shown()).contains(sum.title().split(" ", -1));
              apprentice.press("esc", "down");
            });
  }
}
