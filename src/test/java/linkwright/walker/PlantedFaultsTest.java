package linkwright.walker;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import linkwright.coach.Bencher;
import linkwright.routine.Routine;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The walker finds a fault that is laid into the program, the moment it shows. */
class PlantedFaultsTest {
  /** With the seed that has an occasion now; the others follow if the program changes. */
  private static final int WALKS = 40;

  private static final int WALK = 250;

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NONE")
  void a_planted_fault_is_found(Plant plant) throws IOException {
    Routine routine = Bencher.SHELF.routine(plant.routine()).orElseThrow();
    Optional<RandomWalk.Failure> found = Optional.empty();
    for (int seed = plant.seed; seed < plant.seed + WALKS && found.isEmpty(); seed++) {
      Path home = Files.createDirectory(folder.resolve(plant.name() + seed));
      found = RandomWalk.byChance(routine, seed, WALK, home, plant);
    }
    assertThat(found).as("found in %d walks of %d keys", WALKS, WALK).isPresent();
    assertThat(String.join("\n", found.get().wrong())).contains(plant.told);
  }
}
