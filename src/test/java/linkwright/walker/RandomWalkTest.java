package linkwright.walker;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import linkwright.coach.Bencher;
import linkwright.routine.Routine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Keys of all kinds over all places and routines with the clock moving: never a wait ended but by
 * its time, its look or a reason; never a count that does not add up; never a caution due that was
 * passed; never an undo beyond its reach; never a line of the screen over another.
 *
 * <p>{@code -Dlinkwright.keys=N} presses so many, {@code -Dlinkwright.seed=N} begins with that
 * seed; {@code -Dlinkwright.replay=FILE -Dlinkwright.routine=ID} does once more what a failure
 * printed.
 */
class RandomWalkTest {
  /** A job is walked so long, then the next routine's turn comes. */
  private static final int WALK = 250;

  private static final int KEYS = Integer.getInteger("linkwright.keys", 10_000);
  private static final long SEED = Long.getLong("linkwright.seed", 1L);

  @TempDir private Path folder;

  @Test
  void nothing_happens_that_must_never_happen() throws IOException {
    Optional<String> replay = Optional.ofNullable(System.getProperty("linkwright.replay"));
    if (replay.isPresent()) {
      String id = System.getProperty("linkwright.routine", "scroll-and-ring");
      Routine routine = Bencher.SHELF.routine(id).orElseThrow();
      List<WalkEvent> events = WalkEvent.readAll(Files.readAllLines(Path.of(replay.get())));
      assertThat(RandomWalk.again(routine, events, folder)).isEmpty();
      return;
    }
    List<Optional<String>> wrong =
        IntStream.range(0, (KEYS + WALK - 1) / WALK).parallel().mapToObj(this::walked).toList();
    assertThat(wrong.stream().flatMap(Optional::stream).findFirst()).isEmpty();
  }

  /** One job walked: walks know nothing of one another, so several go on at once. */
  private Optional<String> walked(int walk) {
    List<Routine> routines = Bencher.SHELF.routines();
    Routine routine = routines.get(walk % routines.size());
    try {
      Path home = Files.createDirectory(folder.resolve("home-" + walk));
      Optional<RandomWalk.Failure> failure =
          RandomWalk.byChance(routine, SEED + walk, Math.min(WALK, KEYS), home, Plant.NONE);
      delete(home);
      return failure.map(
          each -> "seed %d, walk %d of %d keys: %s".formatted(SEED + walk, walk, WALK, each));
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  private static void delete(Path home) throws IOException {
    try (Stream<Path> all = Files.walk(home)) {
      for (Path each : all.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.delete(each);
      }
    }
  }
}
