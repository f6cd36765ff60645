package linkwright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import linkwright.quantity.UnitStyle;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Bends on the straight blank, held against arcs reckoned by hand: length is radius × angle. */
class BendStepsTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private static BendSteps steps(Pattern pattern, double wireMm, double blankMm, Bending hand) {
    return BendSteps.of(Forming.form(pattern, wireMm, blankMm, Map.of(), hand).orThrow(), Map.of());
  }

  @Test
  void each_bend_lies_on_the_blank_where_its_arc_lies_along_the_wire() {
    BendSteps scroll = steps(PatternFiles.named("scroll"), 0.9, 38.1, Bending.TRUE);
    // Tips 275° over 1 mm, bows 285° over 3.5 mm, 10° over 1 mm, in wire of 0.9 mm.
    double tip = Math.toRadians(275) * (1 + 0.9) / 2;
    double bow = tip + Math.toRadians(285) * (3.5 + 0.9) / 2;
    double stem = bow + Math.toRadians(10) * (1 + 0.9) / 2;
    assertThat(scroll.steps()).hasSize(3);
    assertThat(scroll.steps().get(0).fromMm()).isZero();
    assertThat(scroll.steps().get(0).toEndMm()).isCloseTo(tip, EXACT);
    assertThat(scroll.steps().get(1).fromMm()).isCloseTo(tip, EXACT);
    assertThat(scroll.steps().get(1).toEndMm()).isCloseTo(bow, EXACT);
    assertThat(scroll.steps().get(2).toEndMm()).isCloseTo(stem, EXACT);
    assertThat(scroll.steps()).allMatch(step -> step.ends() == BendStep.BlankEnds.BOTH);
    assertThat(scroll.steps())
        .extracting(BendStep::side)
        .containsExactly(Side.RIGHT, Side.LEFT, Side.RIGHT);
    assertThat(scroll.marksMm(false))
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
        .containsExactly(tip, bow, stem);
  }

  @Test
  void the_last_shape_is_the_link_and_no_shape_is_longer_than_the_blank() {
    for (String name : List.of("scroll", "hook-link", "figure-of-eight", "s-hook", "oval")) {
      Formed link = Shapes.form(PatternFiles.named(name), 1.0, 45);
      List<BendStep> steps = BendSteps.of(link, Map.of()).steps();
      for (BendStep step : steps) {
        double walked = 0;
        for (int i = 1; i < step.line().size(); i++) {
          walked += step.line().get(i - 1).distanceMm(step.line().get(i));
        }
        // Chords of 0.3 mm on the tightest arc are shorter than the wire by a hundredth.
        assertThat(walked).as("%s %s", name, step.number()).isCloseTo(45, within(0.45));
      }
      List<Point> last = steps.get(steps.size() - 1).line();
      List<Point> whole = link.centreLine().points(0.3);
      assertThat(last).hasSameSizeAs(whole);
      assertThat(last.get(0).distanceMm(last.get(last.size() - 1)))
          .as(name)
          .isCloseTo(whole.get(0).distanceMm(whole.get(whole.size() - 1)), within(1e-6));
    }
  }

  @Test
  void half_a_circle_in_the_middle_of_nothing_bent_stands_where_geometry_says() {
    Pattern s = Shapes.half(2.0, OtherHalf.TURNED, Bends.eye("eye", 180, Side.LEFT), Run.rest());
    BendStep only = steps(s, 1.0, 3 * Math.PI + 8, Bending.TRUE).steps().get(0);
    // Half circles of radius 1.5 at both ends of a stem of 8 mm: the tips lie 3 mm off the stem.
    assertThat(only.line().get(0).yMm()).isCloseTo(3, within(1e-9));
    assertThat(only.line().get(0).xMm()).isCloseTo(-4, within(1e-9));
    assertThat(only.bent()).hasSize(2);
    assertThat(only.bent().get(0).get(0).distanceMm(only.line().get(0))).isCloseTo(0, EXACT);
  }

  @Test
  void what_springs_back_is_bent_further_round_on_its_former() {
    Pattern s = Shapes.half(5.0, OtherHalf.TURNED, Bends.eye("eye", 180, Side.LEFT), Run.rest());
    BendStep soft = steps(s, 1.0, 40, Bending.TRUE).steps().get(0);
    assertThat(soft.overDeg()).isCloseTo(180, EXACT);
    BendStep springy = steps(s, 1.0, 40, Bending.springing(0.004)).steps().get(0);
    // The arc's length stays: angle on the former × 3 mm is 180° × the radius once sprung back.
    double radius = (springy.toEndMm() - springy.fromMm()) / Math.PI;
    assertThat(springy.overDeg()).isCloseTo(180 * radius / 3, EXACT).isGreaterThan(182);
    assertThat(springy.says(UnitStyle.METRIC)).contains("on the former, for it springs back");
  }

  @Test
  void a_link_with_unlike_ends_is_bent_from_both_each_measured_from_its_own() {
    BendSteps hook = steps(PatternFiles.named("hook"), 1.2, 36, Bending.TRUE);
    assertThat(hook.steps())
        .extracting(BendStep::ends)
        .containsExactly(
            BendStep.BlankEnds.FIRST,
            BendStep.BlankEnds.FIRST,
            BendStep.BlankEnds.OTHER,
            BendStep.BlankEnds.OTHER);
    double tip = Math.toRadians(60) * (1.2 + 1.2) / 2;
    BendStep curl = hook.steps().get(2);
    assertThat(curl.former()).isEqualTo("tip");
    assertThat(curl.fromMm()).isCloseTo(0, within(1e-9));
    assertThat(curl.toEndMm()).isCloseTo(tip, within(1e-9));
    assertThat(hook.steps().get(3).fromMm()).isCloseTo(tip, within(1e-9));
    // Walked from the other end a turn to the right is one to the left.
    assertThat(curl.side()).isEqualTo(Side.LEFT);
  }

  /**
   * Both ends have bends: each end its marks, and a place told once has one figure in inches too.
   */
  @Test
  void unlike_ends_are_marked_each_from_its_own_and_by_the_figures_of_their_bends() {
    for (UnitStyle units : UnitStyle.values()) {
      // 16 AWG over a blank of 1.5 in.
      BendSteps hook =
          steps(PatternFiles.named("hook").withFormersFor(1.29), 1.29, 38.1, Bending.TRUE);
      String marks = hook.saysMarks(units).orElseThrow();
      assertThat(marks).contains(" from the first end; ").endsWith(" from the other end.");
      for (BendStep step : hook.steps()) {
        assertThat(marks).contains(units.length(step.toEndMm()));
      }
    }
  }

  @Test
  void a_ring_is_wound_and_has_no_bends() {
    assertThat(steps(PatternFiles.named("round"), 1.0, 5 * Math.PI, Bending.TRUE).steps())
        .isEmpty();
  }

  @Test
  void the_words_say_where_over_what_which_way_and_how_far() {
    BendSteps scroll = steps(PatternFiles.named("scroll"), 0.9, 38.1, Bending.TRUE);
    assertThat(scroll.says(UnitStyle.METRIC))
        .containsExactly(
            "Mark the blank at 4.56 mm, 15.5 mm, 15.7 mm from each end.",
            "Bend 1: from each end roll the tip, from 0 mm to 4.56 mm, over tip (1 mm), to the"
                + " right, 275° round.",
            "Bend 2: from each end, from 4.56 mm to 15.5 mm, over bow (3.5 mm), to the left, 285°"
                + " round.",
            "Bend 3: from each end, from 15.5 mm to 15.7 mm, over tip (1 mm), to the right, 10°"
                + " round.");
    assertThat(scroll.says(UnitStyle.INCH).get(0)).endsWith("in from each end.");
  }
}
