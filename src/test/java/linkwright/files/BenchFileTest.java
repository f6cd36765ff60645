package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnSolder;
import linkwright.books.BookChecks;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchFileTest {
  private static final String BENCH =
      """
      format: 1
      bench: The bench by the north window
      persons: [Anna, Ben]
      units: metric
      formers: {small step: 2.4 mm, mandrel five: 5 mm}
      plate: [2.0 mm, 1.9 mm, 1.8 mm]
      kerf: 0.3 mm
      flame: {torch: hand torch, fuel: propane, oxygen: no}
      pickle: {kind: citric, wait: 12 min, mixed: 2026-11-20}
      solders:
        - solder: silver-hard
          grade: hard
          alloy: silver
          fineness-permille: 750
          solidus-c: 740
          liquidus-c: 765
          strip: {width: 1.5 mm, thickness: 0.3 mm}
        - {solder: paste, grade: easy}
      prices:
        currency: EUR
        metal-per-g: {sterling: 1.1, fine-silver: 1.2}
        hour: 38
        overhead: 15 %
      losses: {all: 6 %}
      redos: {soldered: 10 %}
      fire-watch: 90 min
      waits: {pickle-links-wait: 12 min}
      """;

  @TempDir Path folder;

  private static List<String> told(String text) {
    return ToldOfFile.shown(BenchFile.of(ToldOfFile.file(text)).problems());
  }

  @Test
  void all_that_she_said_is_read_with_its_units() {
    assertThat(told(BENCH)).isEmpty();
    OwnBench bench = BenchFile.of(ToldOfFile.file(BENCH)).bench();
    assertThat(bench.persons()).containsExactly("Anna", "Ben");
    assertThat(bench.units()).contains(UnitStyle.METRIC);
    assertThat(bench.formersMm()).isEqualTo(Map.of("small step", 2.4, "mandrel five", 5.0));
    assertThat(bench.plateMm()).containsExactly(2.0, 1.9, 1.8);
    assertThat(bench.kerfMm()).hasValue(0.3);
    assertThat(bench.flame()).isEqualTo(new Flame("hand torch", "propane", false));
    assertThat(bench.pickle().usualSeconds()).hasValue(720);
    assertThat(bench.pickle().mixed()).contains(LocalDate.of(2026, 11, 20));
    assertThat(bench.solders().get(0))
        .isEqualTo(
            new OwnSolder(
                "silver-hard",
                "hard",
                "silver",
                OptionalInt.of(750),
                OptionalDouble.of(740),
                OptionalDouble.of(765),
                OptionalDouble.of(1.5),
                OptionalDouble.of(0.3)));
    assertThat(bench.prices().metalPerG()).containsEntry("sterling", 1.1);
    assertThat(bench.prices().others()).containsEntry("hour", 38.0).containsEntry("overhead", 0.15);
    assertThat(bench.losses()).containsEntry("all", 0.06);
    assertThat(bench.fireWatchSeconds()).isEqualTo(OptionalLong.of(5400));
    assertThat(bench.waitSeconds()).containsEntry("pickle-links-wait", 720L);
  }

  @Test
  void what_is_wrong_is_told_with_its_place_and_the_rest_holds() {
    String broken =
        BENCH
            .replace("kerf: 0.3 mm", "kerf: 0.3")
            .replace("fire-watch", "firewatch")
            .replace("mixed: 2026-11-20", "mixed: Friday")
            .replace("  currency: EUR\n", "");
    assertThat(told(broken))
        .anyMatch(problem -> problem.startsWith("7:7: \"kerf\""))
        .anyMatch(problem -> problem.contains("Did you mean fire-watch?"))
        .anyMatch(problem -> problem.contains("is no day"))
        .anyMatch(problem -> problem.contains("Write currency: EUR"))
        .hasSize(4);
    OwnBench bench = BenchFile.of(ToldOfFile.file(broken)).bench();
    assertThat(bench.kerfMm()).isEmpty();
    assertThat(bench.plateMm()).hasSize(3);
    assertThat(bench.prices().others()).as("no money without its currency").isEmpty();
  }

  @Test
  void a_broken_file_stops_nothing_and_check_tells_it() throws IOException {
    Files.writeString(folder.resolve("bench.yaml"), "format: 1\nplate: [2 mm\n");
    assertThat(BenchFile.load(new Home(folder)).bench()).isEqualTo(OwnBench.NONE);
    assertThat(Checking.check(new Home(folder), List.of(), BookChecks::of, Map.of()))
        .anyMatch(problem -> problem.file().endsWith("bench.yaml"));
    assertThat(
            Checking.check(
                new Home(folder), List.of(folder.resolve("bench.yaml")), BookChecks::of, Map.of()))
        .isNotEmpty();
  }
}
