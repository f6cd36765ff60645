package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.quantity.Problem;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LibraryTest {
  @TempDir Path folder;

  private Library load() {
    return Library.load(new Home(folder));
  }

  private List<Problem> ownProblems(Library library) {
    return library.problems().stream()
        .filter(problem -> problem.file().startsWith(folder.toString()))
        .toList();
  }

  private void own(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  @Nested
  class WhatShips {
    @Test
    void isAllInTheBuild() throws IOException {
      for (DataKind kind : DataKind.values()) {
        Path source = Path.of(kind.folder());
        assertThat(ShippedData.files(kind.folder()))
            .extracting(DataFile::name)
            .containsExactlyElementsOf(
                Home.yamlIn(source, 3, new ArrayList<>()).stream()
                    .map(path -> path.toString().replace('\\', '/'))
                    .toList())
            .isNotEmpty();
      }
    }

    @Test
    void hasNoProblems() {
      assertThat(load().problems()).extracting(Problem::sentence).isEmpty();
    }

    @Test
    void holdsWhatTheOwnReaderOfTheTestsHolds() {
      assertThat(load().reference())
          .usingRecursiveComparison()
          .ignoringFields("pictures")
          .isEqualTo(Shipped.reference());
      assertThat(load().cautions().values()).containsExactlyElementsOf(Shipped.cautions());
    }

    @Test
    void holdsARoutineWithItsPatternsAndCautions() {
      Library library = load();
      assertThat(library.routines()).containsKey("scroll-and-ring");
      assertThat(library.patterns()).containsKey("hook-link");
      assertThat(library.cautions()).containsKeys("torch", "pickle", "ventilation");
    }
  }

  @Nested
  class TheUsersOwn {
    private static final String TORCH =
        """
        format: 1
        caution: torch
        title: The torch in this shed
        covers: [heats, burns-gas]
        short: Hose off the floor.
        can-happen: Burns.
        do: [Close the bottle.]
        source: common practice, no source
        defers: Local rules come first.
        """;

    @Test
    void takesThePlaceOfWhatShipsUnderThatName() throws IOException {
      own("safety/torch.yaml", TORCH);
      Library library = load();
      assertThat(ownProblems(library)).isEmpty();
      assertThat(library.cautions().get("torch").title()).isEqualTo("The torch in this shed");
    }

    @Test
    void leavesWhatShipsInPlaceIfItIsBroken() throws IOException {
      own("safety/torch.yaml", TORCH.replace("title:", "tittle:"));
      Library library = load();
      assertThat(ownProblems(library))
          .extracting(Problem::wrong)
          .containsExactly(
              "A caution has no \"title\".", "The key \"tittle\" is not known in a caution.");
      assertThat(library.cautions().get("torch").title()).isEqualTo("Torch and fuel gas");
    }

    @Test
    void isToldIfANameStandsInTwoFiles() throws IOException {
      own("safety/a.yaml", TORCH);
      own("safety/b.yaml", TORCH);
      assertThat(ownProblems(load()))
          .singleElement()
          .satisfies(
              problem -> {
                assertThat(problem.wrong()).isEqualTo("There is a second caution \"torch\".");
                assertThat(problem.expected())
                    .isEqualTo(
                        "Each name once; the first is in "
                            + folder.resolve("safety/a.yaml")
                            + ", line 2.");
              });
    }
  }

  @Test
  void theHomeIsAsAskedElseAsTheEnvironmentSaysElseInTheUsersFolder() {
    Path user = Path.of("u");
    Map<String, String> environment = Map.of("LINKWRIGHT_HOME", "e");
    assertThat(Home.find(Optional.of("a"), environment, user).folder()).isEqualTo(Path.of("a"));
    assertThat(Home.find(Optional.empty(), environment, user).folder()).isEqualTo(Path.of("e"));
    assertThat(Home.find(Optional.empty(), Map.of(), user).folder())
        .isEqualTo(Path.of("u", "linkwright"));
  }

  /** The time of this thread alone, once warm: other work on the machine is not the library's. */
  @Test
  void loadingIsQuick() {
    long took = Long.MAX_VALUE;
    for (int i = 0; i < 5; i++) {
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      load();
      took =
          Math.min(took, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start);
    }
    assertThat(took / 1_000_000).isLessThan(1000);
  }
}
