package linkwright.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import linkwright.bench.Flame;
import linkwright.bench.OwnBench;
import linkwright.bench.OwnPrices;
import linkwright.bench.Pickle;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Sourced;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.plan.Wishes;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import org.junit.jupiter.api.Test;

/** Formers of her bench are taken where they make the link, and told by her names for them. */
class HerFormersTest {
  private static final Map<String, String> WISH =
      Wishes.common()
          .without(WishKeys.LINK_BLANK)
          .with(WishKeys.LINK_LENGTH, "16 mm")
          .with(WishKeys.LINK_WIDTH, "5.4 mm")
          .texts();

  static Handbook bench(Map<String, Double> formers) {
    return bench(formers, OwnPrices.NONE);
  }

  private static Handbook bench(Map<String, Double> formers, OwnPrices prices) {
    return JobBook.HANDBOOK.with(
        new OwnBench(
            "",
            List.of(),
            Optional.empty(),
            formers,
            List.of(),
            OptionalDouble.empty(),
            Flame.NOT_SAID,
            Pickle.NOT_SAID,
            List.of(),
            prices,
            Map.of(),
            Map.of(),
            OptionalLong.empty(),
            Map.of(),
            List.of()));
  }

  private static Map<String, Double> thick() {
    Map<String, Double> formers = new LinkedHashMap<>();
    formers.put("small step", 2.4);
    formers.put("nail", 2.9);
    formers.put("fat step", 4.1);
    formers.put("pretty knob", 12.0);
    return formers;
  }

  @Test
  void formers_that_cannot_make_the_link_are_not_taken_and_the_plan_says_so() {
    Standing standing = Standing.ofWish(WISH, bench(thick()));
    Plan plan = standing.counted().plan().orElseThrow();
    assertThat(plan.link().proposal().orElseThrow().shortfall(UnitStyle.METRIC)).isEmpty();
    assertThat(plan.link().formersMm().values()).doesNotContain(2.4);
    assertThat(standing.counted().remarks(UnitStyle.METRIC).get(0))
        .startsWith("Of the formers of your bench none makes it: tip ");
  }

  @Test
  void formers_that_make_it_are_taken_and_stand_by_her_names() {
    Map<String, Double> formers = thick();
    formers.put("thin, bent step", 1.0);
    formers.put("stout 2", 3.5);
    Standing standing = Standing.ofWish(WISH, bench(formers));
    assertThat(standing.counted().remarks(UnitStyle.METRIC))
        .noneMatch(each -> each.contains("your bench"));
    Map<String, Double> used = standing.counted().plan().orElseThrow().link().formersMm();
    assertThat(used).containsEntry("tip", 1.0);
    assertThat(standing.taken())
        .containsEntry(
            "scroll former tip", new Sourced("thin bent step 1 mm", Sourced.Source.BENCH));
    assertThat(standing.taken().get("scroll former bow").from()).isEqualTo(Sourced.Source.BENCH);
  }

  @Test
  void a_former_of_which_it_is_not_said_which_it_is_is_told_as_it_would_be_typed() {
    Map<String, String> typed = new LinkedHashMap<>(WISH);
    typed.put(WishKeys.LINK_FORMERS, "fat step");
    assertThat(Standing.ofWish(typed, bench(thick())).counted().troubles().get("link.formers"))
        .isEqualTo(
            "“fat step” does not say which former it is: write “tip=fat step”, by its name at your"
                + " bench, or tip=2.5 mm.");
  }

  @Test
  void her_name_for_a_former_stands_for_its_size_where_she_types_one_and_is_kept_as_that() {
    Map<String, String> typed = new LinkedHashMap<>(WISH);
    typed.put(WishKeys.LINK_FORMERS, "tip=1 mm, bow=Fat step");
    JobBook book = JobBook.of("scroll-and-ring");
    Standing standing = Standing.ofTyped(typed, book.state(), bench(thick()));
    assertThat(standing.counted().plan().orElseThrow().link().formersMm())
        .containsEntry("bow", 4.1);
    book.enter(PlanDefaults.kept(typed, book.state(), bench(thick())));
    assertThat(book.state().course().wish())
        .containsEntry(WishKeys.LINK_FORMERS, "tip=1 mm, bow=4.1 mm");
    assertThat(Standing.of(book.state(), JobBook.HANDBOOK).counted().plan()).isPresent();
  }

  @Test
  void her_name_for_a_former_stands_for_its_size_in_the_links_of_a_repeat_too() {
    Map<String, String> typed =
        Wishes.figaro()
            .with(WishKeys.LINK_REPEAT, "1 long + 2 round ring=Fat step blank=16 mm inside=4 mm")
            .texts();
    JobBook book = JobBook.of("figaro");
    Standing standing = Standing.ofTyped(typed, book.state(), bench(thick()));
    assertThat(standing.counted().troubles()).isEmpty();
    Plan plan = standing.counted().plan().orElseThrow();
    assertThat(plan.sizes().get(1).link().formersMm()).containsEntry("ring", 4.1);
    book.enter(PlanDefaults.kept(typed, book.state(), bench(thick())));
    assertThat(book.state().course().wish().get(WishKeys.LINK_REPEAT))
        .isEqualTo("1 long + 2 round ring=4.1 mm blank=16 mm inside=4 mm");
  }

  @Test
  void prices_of_her_bench_that_were_taken_stand_with_what_was_not_typed() {
    Handbook priced =
        bench(
            Map.of(),
            new OwnPrices("EUR", Map.of("sterling", 1.1), Map.of("hour", 28.0, "margin", 0.4)));
    JobBook book = JobBook.scroll(WISH);
    assertThat(Standing.of(book.state(), priced).taken())
        .containsEntry("prices.metal-per-g", new Sourced("1.1 EUR", Sourced.Source.BENCH))
        .containsEntry("prices.hour", new Sourced("28 EUR", Sourced.Source.BENCH))
        .containsEntry("prices.margin", new Sourced("40 %", Sourced.Source.BENCH));
    Standing before = Standing.of(book.state(), priced);
    JobState state = book.state();
    book.enter(new Fact.PricesSet(Map.of("hour", 30.0), "EUR"));
    assertThat(before.after(state, book.state(), priced).taken().keySet())
        .as("those that were entered for the job are no taken ones")
        .noneMatch(key -> key.startsWith("prices."));
  }

  @Test
  void a_name_that_is_none_of_hers_stays_refused() {
    Map<String, String> typed = new LinkedHashMap<>(WISH);
    typed.put(WishKeys.LINK_FORMERS, "tip=1 mm, bow=thin air");
    JobBook book = JobBook.of("scroll-and-ring");
    assertThat(Standing.ofTyped(typed, book.state(), bench(thick())).counted().troubles())
        .containsOnlyKeys(WishKeys.LINK_FORMERS);
  }

  @Test
  void the_figure_of_the_pattern_is_told_where_it_was_used() {
    Standing standing = Standing.ofWish(WISH, bench(thick()));
    double tip = standing.counted().plan().orElseThrow().link().formersMm().get("tip");
    assertThat(standing.taken().get("scroll former tip").value())
        .isEqualTo(Decimals.upTo(tip, 3) + " mm");
    assertThat(standing.taken().get("scroll former tip").from()).isEqualTo(Sourced.Source.USUAL);
  }
}
