package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Sourced;
import linkwright.link.Bend;
import linkwright.link.Pattern;
import linkwright.link.PatternPart;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A kept plan holds its patterns as they were: a file changed since changes nothing. */
class KeptPlanTest {
  private static final Handbook NOW = JobBook.HANDBOOK;

  private static Map<String, String> wish() {
    return Wishes.common()
        .without(WishKeys.LINK_BLANK)
        .with(WishKeys.LINK_LENGTH, "15 mm")
        .with(WishKeys.LINK_REPEAT, "2 link + 1 small pattern=round ring=3 mm")
        .texts();
  }

  private static JobState kept(Map<String, String> wish) {
    JobBook book = JobBook.of("scroll-and-ring");
    book.enter(PlanDefaults.kept(wish, book.state(), NOW));
    return book.state();
  }

  private static Handbook with(String id, UnaryOperator<Pattern> change) {
    List<Pattern> patterns =
        NOW.patterns().stream()
            .map(each -> each.id().equals(id) ? change.apply(each) : each)
            .toList();
    return new Handbook(
        NOW.reference(),
        patterns,
        NOW.routines(),
        NOW.cautions(),
        NOW.hands(),
        NOW.told(),
        NOW.own(),
        NOW.drawer());
  }

  private static Pattern turned(Pattern pattern) {
    List<PatternPart> path =
        pattern.path().stream().map(part -> part instanceof Bend bend ? less(bend) : part).toList();
    return new Pattern(
        pattern.id(),
        pattern.says(),
        pattern.formersMm(),
        path,
        pattern.other(),
        pattern.closed(),
        pattern.joints(),
        pattern.usual());
  }

  private static PatternPart less(Bend bend) {
    return new Bend(
        bend.over(),
        bend.to(),
        0.95 * bend.turnDeg(),
        bend.side(),
        bend.eye(),
        bend.curl(),
        bend.overOnPurpose());
  }

  private static Plan plan(JobState state, Handbook handbook) {
    return Standing.of(state, handbook).counted().plan().orElseThrow();
  }

  /** All of the plan in words; a bent wire itself has none but its size. */
  private static String figures(JobState state, Handbook handbook) {
    Plan plan = plan(state, handbook);
    return plan.toString().replaceAll("Formed@[0-9a-f]+", "Formed")
        + plan.formed().map(formed -> formed.lengthMm() + " x " + formed.widthMm());
  }

  @Test
  void a_pattern_that_is_bent_otherwise_since_changes_no_figure_and_is_told() {
    JobState state = kept(wish());
    Handbook later = with("scroll", KeptPlanTest::turned);

    assertThat(figures(state, later)).isEqualTo(figures(state, NOW));
    assertThat(Standing.of(state, NOW).since()).isEmpty();
    assertThat(Standing.of(state, later).since()).containsOnlyKeys("scroll bends");
    // Typed today the same wish comes to another chain: the pattern has really changed.
    assertThat(Standing.ofWish(wish(), later).counted().plan().orElseThrow().linkBlankMm())
        .isNotEqualTo(plan(state, NOW).linkBlankMm());
  }

  @Test
  void so_does_the_pattern_of_another_link_of_the_chain() {
    JobState state = kept(wish());
    Handbook later = with("round", round -> round.withFormers(Map.of("ring", 4.0, "other", 2.0)));

    assertThat(figures(state, later)).isEqualTo(figures(state, NOW));
    assertThat(state.course().reckonedWith()).containsKeys("round bends", "round former ring");
  }

  private static Handbook withFormers(double... mm) {
    Map<String, Double> formers = new LinkedHashMap<>();
    for (double size : mm) {
      formers.put("pliers at " + size, size);
    }
    return HerFormersTest.bench(formers);
  }

  /** A former bought or sold since bends no kept link otherwise; it is told. */
  @Test
  void formers_of_the_bench_are_held() {
    Map<String, String> wish =
        Wishes.common().without(WishKeys.LINK_BLANK).with(WishKeys.LINK_LENGTH, "15 mm").texts();
    Handbook bench = withFormers(1, 1.4, 2.9, 3.3);
    JobBook book = JobBook.of("scroll-and-ring");
    book.enter(PlanDefaults.kept(wish, book.state(), bench));
    JobState state = book.state();

    for (Handbook later : List.of(withFormers(1, 1.4, 2.9, 3.3, 3.7), withFormers(2), NOW)) {
      assertThat(figures(state, later)).isEqualTo(figures(state, bench));
      assertThat(Standing.of(state, later).since()).containsOnlyKeys("your formers");
      assertThat(Standing.ofTyped(wish, state, later).counted().plan().orElseThrow().linkBlankMm())
          .isEqualTo(plan(state, bench).linkBlankMm());
    }
    // Kept with that bench today the same wish comes to another link: formers matter to it.
    assertThat(
            Standing.ofWish(wish, withFormers(1, 4)).counted().plan().orElseThrow().linkBlankMm())
        .isNotEqualTo(plan(state, bench).linkBlankMm());
  }

  @Test
  void every_shipped_pattern_can_be_held() {
    for (Pattern pattern : NOW.patterns()) {
      Map<String, String> wish = Map.of(WishKeys.LINK_PATTERN, pattern.id());
      assertThat(PlanDefaults.of(wish, Optional.empty(), NOW))
          .as(pattern.id())
          .containsKey(pattern.id() + " bends");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "turned",
        "turned/open",
        "mirrored/closed; bend/x/-/1/left/-",
        "\u0000/; run/"
      })
  void bends_that_no_one_can_read_leave_the_pattern_as_it_is(String line) {
    JobBook book = JobBook.of("scroll-and-ring");
    Map<String, Sourced> taken = PlanDefaults.of(wish(), Optional.empty(), NOW);
    taken.put("scroll bends", new Sourced(line, Sourced.Source.USUAL));
    book.enter(new Fact.PlanSet(wish(), taken));

    assertThat(plan(book.state(), NOW).linkBlankMm())
        .isEqualTo(Standing.ofWish(wish(), NOW).counted().plan().orElseThrow().linkBlankMm());
  }
}
