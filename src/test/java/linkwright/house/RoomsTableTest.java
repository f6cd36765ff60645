package linkwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every package stands in the table of rooms in DEVELOPERS.md, but for the places of the coach. */
class RoomsTableTest {
  private static final Path TOP = Path.of("src", "main", "java", "linkwright");

  @Test
  void every_package_stands_in_the_table_of_rooms() throws IOException {
    String guide = Files.readString(Path.of("DEVELOPERS.md"));
    int from = guide.indexOf("| room | what is in it |");
    String table = guide.substring(from, guide.indexOf("\n\n", from));
    Set<String> named =
        table
            .lines()
            .map(row -> row.split("\\|", 3)[1])
            .flatMap(rooms -> Stream.of(rooms.split("[`, ]+", -1)))
            .collect(Collectors.toSet());
    List<String> packages;
    try (Stream<Path> all = Files.walk(TOP)) {
      packages =
          all.filter(Files::isDirectory)
              .filter(room -> Files.exists(room.resolve("package-info.java")))
              .filter(room -> !room.equals(TOP) && !isPlace(room))
              .map(room -> TOP.relativize(room).toString().replace('\\', '/').replace('/', '.'))
              .toList();
    }
    assertThat(packages)
        .hasSizeGreaterThan(40)
        .allSatisfy(room -> assertThat(named).contains(room));
  }

  private static boolean isPlace(Path room) {
    boolean below = room.getParent().equals(TOP.resolve("coach")) && !room.endsWith("kernel");
    try (Stream<Path> files = Files.list(room)) {
      return below && files.anyMatch(file -> file.getFileName().toString().endsWith("Place.java"));
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }
}
