package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import linkwright.routine.Routine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchEditTest {
  private static final Collection<Routine> ROUTINES =
      Library.load(new Home(Path.of("no-such-folder"))).routines().values();

  private static final String BENCH =
      """
      format: 1
      # the north bench
      kerf: 0.3 mm   # blade 3/0
      formers: {small step: 2.4 mm, mandrel five: 5 mm}
      prices:
        currency: EUR
        # raised in spring
        hour: 38
      losses: {all: 6 %}
      """;

  @TempDir Path folder;

  @Test
  void a_value_is_changed_and_its_remark_stays() {
    assertThat(BenchEdit.set(BENCH, "kerf", "0.25 mm")).contains("kerf: 0.25 mm   # blade 3/0");
  }

  @Test
  void a_value_in_a_group_is_changed_and_comments_stay() {
    String changed = BenchEdit.set(BENCH, "prices.hour", "42");
    assertThat(changed).contains("  hour: 42\n", "# raised in spring", "# the north bench");
    assertThat(changed).doesNotContain("38");
  }

  @Test
  void a_new_value_goes_into_its_group() {
    String changed = BenchEdit.set(BENCH, "prices.metal-per-g.sterling", "1.1");
    assertThat(changed).contains("  metal-per-g:\n    sterling: 1.1\n");
    assertThat(BenchFile.of(ToldOfFile.file(changed)).bench().prices().metalPerG())
        .containsEntry("sterling", 1.1);
  }

  @Test
  void a_group_on_one_line_is_opened() {
    String changed = BenchEdit.set(BENCH, "formers.big step", "4 mm");
    assertThat(BenchFile.of(ToldOfFile.file(changed)).problems()).isEmpty();
    assertThat(BenchFile.of(ToldOfFile.file(changed)).bench().formersMm())
        .isEqualTo(Map.of("small step", 2.4, "mandrel five", 5.0, "big step", 4.0));
  }

  @Test
  void a_value_is_taken_out() {
    String changed = BenchEdit.set(BENCH, "kerf", "");
    assertThat(BenchFile.of(ToldOfFile.file(changed)).bench().kerfMm()).isEmpty();
  }

  @Test
  void a_first_value_begins_the_file_and_lists_are_lists() {
    String plate = BenchEdit.set("", "plate", "2.0 mm, 1.9 mm");
    assertThat(BenchFile.of(ToldOfFile.file(plate)).bench().plateMm()).containsExactly(2.0, 1.9);
  }

  @Test
  void what_would_be_wrong_is_told_and_not_written() throws Exception {
    Home home = new Home(folder);
    Path file = folder.resolve("bench.yaml");
    Files.writeString(file, BENCH);
    assertThat(
            BenchFile.change(home, Map.of("kerf", "thin"), Shipped.reference(), ROUTINES).isGood())
        .isFalse();
    assertThat(Files.readString(file)).isEqualTo(BENCH);
    assertThat(
            BenchFile.change(home, Map.of("kerf", "0.2 mm"), Shipped.reference(), ROUTINES)
                .isGood())
        .isTrue();
    assertThat(BenchFile.load(home).bench().kerfMm()).hasValue(0.2);
  }
}
