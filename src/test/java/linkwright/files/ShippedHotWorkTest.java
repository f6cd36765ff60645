package linkwright.files;

import static linkwright.files.ShippedSteps.LIBRARY;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.routine.Hazard;
import linkwright.routine.Makes;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.RoutinePart;
import linkwright.routine.Stage;
import linkwright.routine.Step;
import org.junit.jupiter.api.Test;

/** What a teacher looks for in the order of flame, pickle and gas of the shipped routines. */
class ShippedHotWorkTest {
  private static final Pattern GAS_SHUT =
      Pattern.compile("(?i)gas shut at the bottle|bottle\\s+shut");

  /** A torch practice is in copper and wire is no ware: all else ends on somebody's skin. */
  private static final Set<String> NOT_WORN = Set.of("torch-practice", "wire-drawing");

  private static int last(Routine routine, Hazard hazard) {
    int last = -1;
    for (int i = 0; i < routine.steps().size(); i++) {
      last = routine.steps().get(i).does().contains(hazard) ? i : last;
    }
    return last;
  }

  private static boolean judges(Step step) {
    return step.stage().containsValue(Stage.CHECKED) || step.stage().containsValue(Stage.TESTED);
  }

  /** A card of what is not at hand is turned over unread, and the next one with it. */
  @Test
  void iron_binding_wire_is_spoken_of_only_where_something_is_tied_with_wire_that_may_be_iron() {
    Pattern tied = Pattern.compile("(?i)(binding|tying) wire");
    Predicate<Step> warned = step -> step.cautions().contains("binding-wire");
    assertThat(ShippedSteps.in(warned)).as("steps with the card").isNotEmpty();
    assertThat(
            ShippedSteps.in(
                warned.and(
                    step ->
                        !usesTyingWire(step)
                            && ShippedSteps.texts(step).noneMatch(tied.asPredicate()))))
        .isEmpty();
  }

  private static final Pattern PICKLED =
      Pattern.compile(
          "(?i)(^|[.,;:] |\\b(and|then) )pickled?\\b(?! is\\b)|\\b(fresh|into( warm| the)?|short)"
              + " pickle\\b|\\b[Ww]arm pickle (again|for|once)");

  /** Acid that soda water did not kill goes into flux, under the hammer, onto somebody's skin. */
  @Test
  void whoever_is_sent_to_the_pickle_is_sent_through_soda_water_too() {
    Predicate<String> forgets = text -> PICKLED.matcher(text).find() && !text.contains("soda");
    assertThat(forgets).accepts("Pickle, rinse, flux afresh.", "Iron out; fresh pickle, a brush.");
    assertThat(forgets).rejects("Pickle; water, soda water, water; flux afresh.");
    assertThat(
            ShippedSteps.in(
                step ->
                    Stream.concat(
                            Stream.of(step.doText()), step.wrong().stream().map(Remedy::remedy))
                        .anyMatch(forgets)))
        .isEmpty();
  }

  @Test
  void only_what_is_fused_or_closed_cold_takes_no_solder() {
    assertThat(LIBRARY.routines().values())
        .filteredOn(routine -> !routine.takesSolder())
        .extracting(Routine::id)
        .containsExactlyInAnyOrder(
            "byzantine", "loop-in-loop", "double-loop-in-loop", "wire-drawing");
  }

  /** A trial length is pickled before the run is, and its iron is in the bath by then. */
  @Test
  void what_is_tied_is_not_pickled_before_the_card_of_binding_wire_was_read() {
    for (Routine routine : LIBRARY.routines().values()) {
      boolean tied = false;
      boolean read = false;
      for (Step step : routine.steps()) {
        tied = tied || (step.part() != RoutinePart.PREPARE && usesTyingWire(step));
        read = read || step.cautions().contains("binding-wire");
        assertThat(read || !tied || !step.does().contains(Hazard.PICKLES))
            .as(routine.id() + " " + step.id())
            .isTrue();
      }
    }
  }

  private static boolean usesTyingWire(Step step) {
    return step.detail().tools().contains("tying wire");
  }

  /** Not an hour later at the last look: a joint that fails its check is soldered again first. */
  @Test
  void the_gas_is_shut_as_soon_as_no_joint_can_want_the_flame_again() {
    List<String> late = new ArrayList<>();
    for (Routine routine : LIBRARY.routines().values()) {
      int flame = last(routine, Hazard.BURNS_GAS);
      if (flame < 0) {
        continue;
      }
      routine.steps().stream()
          .skip(flame + 1L)
          .filter(step -> !step.does().contains(Hazard.PICKLES) && !judges(step))
          .filter(step -> step.detail().when().words().isEmpty())
          .findFirst()
          .filter(step -> !GAS_SHUT.matcher(step.doText()).find())
          .ifPresent(step -> late.add(routine.id() + ": " + step.id()));
    }
    assertThat(late).isEmpty();
  }

  /** The bench is cleared and the metal chosen before there is a flame, not when all is done. */
  @Test
  void fire_watch_and_the_metal_on_the_skin_are_spoken_of_before_the_first_flame() {
    int flames = 0;
    int worn = 0;
    for (Routine routine : LIBRARY.routines().values()) {
      int flame = last(routine, Hazard.BURNS_GAS);
      List<String> seen = new ArrayList<>();
      for (Step step : routine.steps()) {
        seen.addAll(step.cautions());
        if (step.does().contains(Hazard.BURNS_GAS)) {
          break;
        }
      }
      if (flame >= 0) {
        flames++;
        assertThat(seen).as(routine.id()).contains("fire-watch");
      }
      if (routine.makes() != Makes.STOCK && !NOT_WORN.contains(routine.id())) {
        worn++;
        assertThat(seen).as(routine.id()).contains("metal-on-skin");
      }
    }
    assertThat(flames).as("routines that burn gas").isPositive();
    assertThat(worn).as("routines of what is worn").isPositive();
  }

  /** It cracks when it is moved red, and the fused chains are for it by name. */
  @Test
  void germanium_silver_is_spoken_of_at_the_first_flame_and_wherever_it_is_fused() {
    int steps = 0;
    for (Routine routine : LIBRARY.routines().values()) {
      boolean first = true;
      for (Step step : routine.steps()) {
        boolean fuses = step.stage().containsValue(Stage.FUSED);
        if (step.does().contains(Hazard.BURNS_GAS) && (first || fuses)) {
          // Ten joints in copper: no other metal comes there.
          if (!routine.id().equals("torch-practice")) {
            steps++;
            assertThat(step.cautions())
                .as(routine.id() + " " + step.id())
                .contains("germanium-silver");
          }
          first = false;
        }
      }
    }
    assertThat(steps).as("steps that were read").isPositive();
  }

  /** Who has rod skips the ingot, and then lights the torch at the next step. */
  @Test
  void a_flame_that_may_be_skipped_leaves_no_first_flame_without_its_cards() {
    for (Routine routine : LIBRARY.routines().values()) {
      boolean skippable = false;
      for (Step step : routine.steps()) {
        if (skippable && step.does().contains(Hazard.BURNS_GAS)) {
          assertThat(step.does()).as(routine.id() + " " + step.id()).contains(Hazard.LIGHTS);
          assertThat(step.cautions())
              .as(routine.id() + " " + step.id())
              .contains("torch-lighting", "torch-fuels", "oxygen", "soldering-surface");
          break;
        }
        skippable = skippable || step.title().contains("skip");
      }
    }
    assertThat(LIBRARY.routines().get("wire-drawing").steps())
        .anyMatch(step -> step.title().contains("skip"));
  }

  /** Acid and steam: nothing hot goes in, and what comes out goes through soda water. */
  @Test
  void every_pickle_is_met_cold_and_left_through_water_soda_and_water() {
    Pattern cold = Pattern.compile("\\bcold\\b|\\bcool\\b|\\{quench\\}|let the red fade");
    Pattern through = Pattern.compile("(?s)rins.*?(soda|neutralise).*?(rins|dry)");
    List<String> unsaid = new ArrayList<>();
    for (Routine routine : LIBRARY.routines().values()) {
      for (Step step : routine.steps()) {
        if (step.does().contains(Hazard.PICKLES)) {
          String text = step.doText().toLowerCase(Locale.ROOT);
          if (!through.matcher(text).find()) {
            unsaid.add(routine.id() + " " + step.id() + ": water, soda water, water");
          }
          if (!cold.matcher(text).find()) {
            unsaid.add(routine.id() + " " + step.id() + ": cold");
          }
        }
      }
    }
    assertThat(unsaid).isEmpty();
  }

  /** What is filed or sawn throws dust, whatever else the step does. */
  @Test
  void filing_is_declared_where_a_sentence_begins_with_it() {
    Pattern files = Pattern.compile("(^|[.;:,] )(Then )?[Ff]ile\\b");
    assertThat(
            ShippedSteps.in(
                step ->
                    files.matcher(step.doText()).find()
                        && !step.does().contains(Hazard.DUST)
                        && !step.does().contains(Hazard.FILES)))
        .isEmpty();
  }

  /** A bath and a drum have their clock; a mark is for what is precious. */
  @Test
  void what_waits_has_its_clock_and_a_mark_its_metals() {
    assertThat(
            ShippedSteps.in(
                step ->
                    step.does().contains(Hazard.PICKLES)
                        && step.waits().stream().noneMatch(one -> one.name().contains("ickle"))))
        .isEmpty();
    assertThat(
            ShippedSteps.in(step -> step.does().contains(Hazard.TUMBLES) && step.waits().isEmpty()))
        .isEmpty();
    assertThat(ShippedSteps.in(step -> step.id().word().equals("mark"))).hasSizeGreaterThan(10);
    assertThat(
            ShippedSteps.in(
                step ->
                    step.id().word().equals("mark")
                        && !step.detail().when().words().containsKey("family")))
        .isEmpty();
  }

  /** Steam has no way out of it but the solder: it is left to cool. */
  @Test
  void closed_hollow_work_is_not_quenched() {
    Pattern hollow = Pattern.compile("(?i)\\bits hole open\\b|\\bthe cap alone\\b");
    assertThat(ShippedSteps.in(step -> hollow.matcher(step.doText()).find())).hasSize(2);
    assertThat(
            ShippedSteps.in(
                step ->
                    hollow.matcher(step.doText()).find()
                        && (step.doText().contains("{quench}")
                            || step.does().contains(Hazard.QUENCHES))))
        .isEmpty();
    assertThat(LIBRARY.cautions().get("hot-metal").doNot())
        .anyMatch(never -> never.contains("closed hollow work"));
  }
}
