package linkwright.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.bench.OwnSolder;
import linkwright.bench.Pickle;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Solder;
import linkwright.standing.JobBook;
import org.junit.jupiter.api.Test;

/** Every sum takes from her bench what was not typed, and says so. */
class OwnAnswersTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final OwnBench HERS =
      new OwnBench(
          "",
          List.of(),
          Optional.empty(),
          Map.of("small step", 2.4),
          List.of(1.2, 1.1, 1.0, 0.9),
          OptionalDouble.of(0.25),
          Flame.NOT_SAID,
          Pickle.NOT_SAID,
          List.of(solder("mine", 1, 0.3), solder("paste", 0, 0)),
          OwnPrices.NONE,
          Map.of("all", 0.04),
          Map.of(),
          OptionalLong.empty(),
          Map.of(),
          List.of());

  private static OwnSolder solder(String name, double wide, double thick) {
    return new OwnSolder(
        name,
        "easy",
        "",
        OptionalInt.empty(),
        NONE,
        NONE,
        wide > 0 ? OptionalDouble.of(wide) : NONE,
        thick > 0 ? OptionalDouble.of(thick) : NONE);
  }

  private static Map<String, String> of(String id, Map<String, String> typed) {
    Sum sum =
        Reckoner.sums().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    return OwnAnswers.of(sum, HERS, typed, JobBook.HANDBOOK.patterns(), UnitStyle.METRIC);
  }

  @Test
  void a_solder_of_hers_is_looked_up_by_her_name_with_the_range_of_its_sheet() {
    OwnSolder hard =
        new OwnSolder(
            "my hard",
            "hard",
            "sterling",
            OptionalInt.empty(),
            OptionalDouble.of(741),
            OptionalDouble.of(774),
            NONE,
            NONE);
    Solder found =
        OwnSolders.in(JobBook.HANDBOOK.reference(), List.of(hard)).solder("my hard").orThrow();
    assertThat(found.solidusC()).isEqualTo(741);
    assertThat(found.densityGCm3())
        .isEqualTo(JobBook.HANDBOOK.reference().solder("hard-silver").orThrow().densityGCm3());
  }

  @Test
  void her_plate_kerf_strip_loss_and_formers_stand_where_nothing_was_typed() {
    assertThat(of("draw", Map.of())).isEqualTo(Map.of("holes", "1.2 mm,1.1 mm,1 mm,0.9 mm"));
    assertThat(of("ring", Map.of())).isEqualTo(Map.of("kerf", "0.25 mm"));
    assertThat(of("cut", Map.of("kerf", "0 mm"))).isEmpty();
    assertThat(of("spare", Map.of())).isEqualTo(Map.of("usual-loss", "4 %"));
    assertThat(of("solder", Map.of())).isEqualTo(Map.of("strip", "1 mm x 0.3 mm"));
    assertThat(of("solder", Map.of("solder", "paste"))).isEmpty();
    assertThat(of("blank", Map.of("pattern", "scroll")).get("owned"))
        .contains("bow=2.4 mm")
        .contains("tip=2.4 mm");
  }

  @Test
  void every_key_of_hers_is_asked_by_some_sum() {
    assertThat(Reckoner.sums())
        .flatExtracting(Sum::asks)
        .extracting(Ask::key)
        .containsAll(OwnAnswers.KEYS);
  }

  @Test
  void what_came_from_her_bench_is_told_with_the_result() {
    Sum sum =
        Reckoner.sums().stream().filter(each -> each.id().equals("ring")).findFirst().orElseThrow();
    Map<String, String> typed =
        Map.of("wire", "0.9 mm", "inside", "3 mm", "metal", "sterling", "kerf", "0.25 mm");
    ReckoningBasis given =
        new ReckoningBasis(
            JobBook.HANDBOOK.reference(),
            JobBook.HANDBOOK.patterns(),
            List.of(),
            List.of(),
            UnitStyle.METRIC);
    Reckoning told = Reckoner.reckon("ring", typed, given).from(sum, Map.of("kerf", "0.25 mm"));
    assertThat(told.lines()).contains("From your bench: kerf 0.25 mm.");
    assertThat(told.values()).containsEntry("from_your_bench", Map.of("kerf", "0.25 mm"));
  }
}
