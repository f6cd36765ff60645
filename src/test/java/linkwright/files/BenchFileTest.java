package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnSolder;
import linkwright.books.CheckedLate;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchFileTest {
  private static final Collection<Routine> ROUTINES =
      Library.load(new Home(Path.of("no-such-folder"))).routines().values();

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

  @Test
  void solders_that_are_no_list_are_told_the_shape_that_would_be_read() {
    assertThat(told("format: 1\nsolders: hard\n").get(0))
        .contains("such as [{solder: my hard, grade: hard, alloy: sterling}]")
        .doesNotContain("[soft, hard]");
    assertThat(told("format: 1\nsolders: [{solder: my hard, grade: hard, alloy: sterling}]\n"))
        .isEmpty();
  }

  private static List<String> told(String text) {
    return ToldOfFile.shown(BenchFile.of(ToldOfFile.file(text)).problems());
  }

  @Test
  void metals_of_prices_are_known_by_every_name_that_a_plan_knows() {
    for (String name : List.of("14k", "gold-585", "gold 585", "gold-14k-yellow", "14ct")) {
      BenchFile bench = priced("{" + name + ": 48}");
      assertThat(bench.problems()).as(name).isEmpty();
      assertThat(bench.bench().prices().metalPerG()).isEqualTo(Map.of("gold-14k-yellow", 48.0));
    }
  }

  @Test
  void a_price_of_what_is_no_metal_is_told_with_its_place_and_left_out() {
    BenchFile bench = priced("\n    sterling: 1.1\n    gold-558: 50\n    925: 1.3");
    assertThat(ToldOfFile.shown(bench.problems()))
        .hasSize(2)
        .anyMatch(told -> told.startsWith("6:5:") && told.contains("Did you mean gold 585?"))
        .anyMatch(told -> told.startsWith("7:5:") && told.contains("“925” and “sterling” are one"));
    assertThat(bench.bench().prices().metalPerG()).isEqualTo(Map.of("sterling", 1.1));
  }

  @Test
  void a_price_is_changed_under_the_name_that_it_has_in_the_file() throws IOException {
    Path file = folder.resolve("bench.yaml");
    Files.writeString(file, "format: 1\nprices: {currency: EUR, metal-per-g: {14k: 48}}\n");
    Home home = new Home(folder);
    assertThat(change(home, "prices.metal-per-g.gold-14k-yellow", "50")).isEmpty();
    assertThat(file).content().contains("14k: 50").doesNotContain("yellow");
    assertThat(change(home, "prices.metal-per-g.sterlin", "1").orElse(""))
        .contains("Did you mean sterling?");
    assertThat(file).content().doesNotContain("sterlin");
  }

  @Test
  void a_typed_price_goes_by_the_currency_that_stands_in_the_file() throws IOException {
    Home home = new Home(folder);
    assertThat(wrong(home, "prices.hour", "50").orElse(""))
        .isEqualTo(
            "The price list has no \"currency\"."
                + " Write currency: EUR; without it a price is a bare number.");
    assertThat(wrong(home, "prices.our", "50").orElse("")).contains("Did you mean hour?");
    Files.writeString(
        folder.resolve("bench.yaml"), "format: 1\nprices: {currency: USD, hour: 40}\n");
    assertThat(wrong(home, "prices.hour", "50")).isEmpty();
    assertThat(wrong(home, "prices.metal-per-g.gold-585", "61")).isEmpty();
    assertThat(wrong(home, "prices.metal-per-g.sterlin", "1").orElse(""))
        .contains("Did you mean sterling?");
    assertThat(wrong(home, "prices.our", "50").orElse("")).contains("Did you mean hour?");
  }

  @Test
  void a_list_is_read_with_or_without_its_brackets() {
    for (String typed : List.of("[Wren, \"Sal\"]", "Wren, Sal")) {
      String text = BenchEdit.set("", "persons", typed);
      OwnBench bench = BenchFile.of(ToldOfFile.file(text)).bench();
      assertThat(bench.persons()).as(typed).containsExactly("Wren", "Sal");
    }
    String plate = BenchEdit.set("", "plate", "[1.2 mm, 1.1 mm]");
    assertThat(BenchFile.of(ToldOfFile.file(plate)).bench().plateMm()).containsExactly(1.2, 1.1);
  }

  @Test
  void a_number_that_a_comma_parted_in_a_list_is_told_and_taken_for_none() {
    BenchFile read = BenchFile.of(ToldOfFile.file("format: 1\nplate: [1 mm, 0,9 mm, 0.8 mm]\n"));
    assertThat(read.bench().plateMm()).containsExactly(1.0, 0.8);
    assertThat(ToldOfFile.shown(read.problems()))
        .singleElement()
        .asString()
        .startsWith("2:15:")
        .contains("“0,9 mm”")
        .contains("0.9 mm");
    BenchFile close = BenchFile.of(ToldOfFile.file("format: 1\nplate: [1 mm,0.9 mm]\n"));
    assertThat(close.bench().plateMm()).containsExactly(1.0, 0.9);
  }

  @Test
  void stages_and_waits_that_no_routine_has_are_told_with_the_near_one_and_left_out() {
    String text =
        """
        format: 1
        losses: {soldred: 4 %, checked: 2 %}
        redos: {al: 3 %, soldered: 1 %}
        waits: {pikle: 3 min, "PICKLE-LINKS-WAIT": 12 min}
        """;
    BenchFile bench = BenchFile.of(ToldOfFile.file(text)).known(Shipped.reference(), ROUTINES);
    assertThat(ToldOfFile.shown(bench.problems()))
        .hasSize(3)
        .anyMatch(told -> told.startsWith("2:10:") && told.contains("mean “soldered”?"))
        .anyMatch(told -> told.startsWith("3:9:") && told.contains("mean “all”?"))
        .anyMatch(told -> told.startsWith("4:9:") && told.contains("has a wait “pikle”"));
    assertThat(bench.bench().losses()).isEqualTo(Map.of("checked", 0.02));
    assertThat(bench.bench().redos()).isEqualTo(Map.of("soldered", 0.01));
    assertThat(bench.bench().waitSeconds()).containsOnlyKeys("PICKLE-LINKS-WAIT");
    assertThat(wrong(new Home(folder), "losses.soldred", "4 %").orElse(""))
        .contains("Did you mean “soldered”?");
  }

  private static Optional<String> wrong(Home home, String key, String value) {
    return BenchFile.wrong(home, Map.of(key, value), Shipped.reference(), ROUTINES);
  }

  private static Optional<String> change(Home home, String key, String value) {
    return BenchFile.change(home, Map.of(key, value), Shipped.reference(), ROUTINES).problem();
  }

  private static BenchFile priced(String metals) {
    String text = "format: 1\nprices:\n  currency: EUR\n  metal-per-g: " + metals + "\n";
    return BenchFile.of(ToldOfFile.file(text)).known(Shipped.reference(), ROUTINES);
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
    assertThat(Checking.check(new Home(folder), List.of(), CheckedLate.BOOKS, Map.of()))
        .anyMatch(problem -> problem.file().endsWith("bench.yaml"));
    assertThat(
            Checking.check(
                new Home(folder),
                List.of(folder.resolve("bench.yaml")),
                CheckedLate.BOOKS,
                Map.of()))
        .isNotEmpty();
  }
}
