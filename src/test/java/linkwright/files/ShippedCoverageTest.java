package linkwright.files;

import static linkwright.files.ShippedSteps.LIBRARY;
import static linkwright.files.ShippedSteps.in;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.routine.Caution;
import linkwright.routine.Finding;
import linkwright.routine.Hazard;
import linkwright.routine.Routine;
import linkwright.routine.RoutineChecks;
import linkwright.routine.RoutineDetail;
import linkwright.routine.RoutinePart;
import linkwright.routine.Step;
import linkwright.routine.StepDetail;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The coverage check of the build: no shipped step that can hurt someone lacks its caution. */
class ShippedCoverageTest {
  @Nested
  class Cautions {
    @Test
    void coverWhateverAStepDoes() {
      assertThat(
              in(
                  step -> {
                    Set<Hazard> covered = EnumSet.noneOf(Hazard.class);
                    step.cautions()
                        .forEach(id -> covered.addAll(LIBRARY.cautions().get(id).covers()));
                    return !covered.containsAll(step.does());
                  }))
          .isEmpty();
    }

    @Test
    void sayWhereTheyComeFromAndWhoComesFirst() {
      assertThat(LIBRARY.cautions().values())
          .extracting(Caution::source)
          .noneMatch(String::isBlank);
      assertThat(LIBRARY.cautions().values())
          .extracting(Caution::defers)
          .allMatch(text -> text.toLowerCase(Locale.ROOT).contains("local rules"));
    }

    @Test
    void areMissedWhenAnyStepLosesThem() {
      for (Routine routine : LIBRARY.routines().values()) {
        for (Step step : routine.steps()) {
          List<Step> bare =
              routine.steps().stream().map(each -> each.equals(step) ? bare(each) : each).toList();
          assertThat(
                  RoutineChecks.check(
                          with(routine, bare),
                          LIBRARY.cautions().values(),
                          formers(),
                          LIBRARY.reference())
                      .stream()
                      .filter(finding -> finding.key().equals("cautions"))
                      .map(Finding::step))
              .as("%s: %s without its cautions", routine.id(), step.id())
              .hasSize(step.does().size())
              .allMatch(step.id()::equals);
        }
      }
    }

    /** Who lights a torch has seen how; who heats first in a routine has it lit. */
    @Test
    void standBeforeTheFirstFlameOfEachRoutine() {
      for (Routine routine : LIBRARY.routines().values()) {
        routine.steps().stream()
            .filter(step -> step.does().contains(Hazard.BURNS_GAS))
            .findFirst()
            .ifPresent(
                first -> {
                  assertThat(first.does()).as(routine.id()).contains(Hazard.LIGHTS);
                  assertThat(first.cautions()).as(routine.id()).contains("torch-lighting");
                });
      }
    }

    /** Fume, block, fuel, oxygen and who is near are known before the first flame, not after it. */
    @Test
    void aboutTheTorchPlaceComeBeforeTheFirstFlame() {
      int flames = 0;
      for (Routine routine : LIBRARY.routines().values()) {
        List<String> seen = new ArrayList<>();
        for (Step step : routine.steps()) {
          seen.addAll(step.cautions());
          if (step.does().contains(Hazard.BURNS_GAS)) {
            flames++;
            assertThat(seen)
                .as(routine.id())
                .contains("soldering-surface", "ventilation", "oxygen", "lone-work", "torch-fuels");
            break;
          }
        }
      }
      assertThat(flames).as("routines that burn gas").isPositive();
    }

    /** Oil on the work, the hands and the rag meets the torch next: it is said where it is used. */
    @Test
    void aboutOxygenStandWhereverOilIsUsed() {
      Pattern oil = Pattern.compile("(?i)\\b(oil|beeswax)\\b");
      assertThat(
              in(
                  step ->
                      oil.matcher(step.doText()).find()
                          && !step.does().isEmpty()
                          && !step.cautions().contains("oxygen")))
          .isEmpty();
    }

    /** What a joint lies on is known at each step that solders, not only at the first. */
    @Test
    void aboutTheBlockStandAtEachStepThatSolders() {
      Pattern joint =
          Pattern.compile(
              "(?i)\\b(solder (a|the last|those|its|it|with)|(easi|hard|easy)\\w*\\s+solder|pallion)");
      assertThat(
              in(
                  step ->
                      step.does().contains(Hazard.HEATS)
                          && joint.matcher(step.doText()).find()
                          && !step.cautions().contains("soldering-surface")))
          .isEmpty();
    }

    /**
     * Links that touch, and a cap over them, hold pickle: whatever is pickled once it is joined.
     */
    @Test
    void aboutTrappedPickleStandWhereverJoinedWorkIsPickled() {
      Set<RoutinePart> joined =
          EnumSet.of(RoutinePart.SAMPLE, RoutinePart.JOIN, RoutinePart.FINISH);
      assertThat(
              in(
                  step ->
                      step.does().contains(Hazard.PICKLES)
                          && joined.contains(step.part())
                          && !step.cautions().contains("trapped-pickle")))
          .isEmpty();
    }

    /** What a joint is soldered with stands in the solder map, wherever pieces are made. */
    @Test
    void nameTheGradeOfEveryJointThatIsMade() {
      int joints = 0;
      for (Routine routine : LIBRARY.routines().values()) {
        for (Step step : routine.steps()) {
          boolean made = step.part() != RoutinePart.TRIAL && step.part() != RoutinePart.SAMPLE;
          if (made && step.doText().contains("pallion")) {
            joints++;
            assertThat(step.detail().solder()).as(routine.id() + " " + step.id()).isNotEmpty();
          }
        }
      }
      assertThat(joints).as("steps with a pallion").isPositive();
    }

    @Test
    void areEachNamedBySomeStep() {
      Set<Hazard> done = EnumSet.noneOf(Hazard.class);
      ShippedSteps.steps().forEach(step -> done.addAll(step.does()));
      // One for a deed that no shipped step does, such as the dip, is for routines of her own.
      List<String> usable =
          LIBRARY.cautions().values().stream()
              .filter(
                  card ->
                      card.covers().isEmpty() || card.covers().stream().anyMatch(done::contains))
              .map(Caution::id)
              .toList();
      assertThat(ShippedSteps.steps().flatMap(step -> step.cautions().stream()))
          .containsAll(usable)
          .doesNotContain("boric-dip");
    }

    @Test
    void doNotMakeUpForARinseThatIsLost() {
      for (Routine routine : LIBRARY.routines().values()) {
        if (routine.steps().stream().noneMatch(step -> step.does().contains(Hazard.PICKLES))) {
          continue;
        }
        List<Step> unrinsed =
            routine.steps().stream().map(step -> changed(step, false, step.cautions())).toList();
        assertThat(
                RoutineChecks.check(
                    with(routine, unrinsed),
                    LIBRARY.cautions().values(),
                    formers(),
                    LIBRARY.reference()))
            .as("%s without any rinse", routine.id())
            .extracting(Finding::expected)
            .anyMatch(text -> text.contains("rinse: yes"));
      }
    }

    private static Map<String, Set<String>> formers() {
      return LIBRARY.patterns().values().stream()
          .collect(
              Collectors.toMap(
                  linkwright.link.Pattern::id, pattern -> pattern.formersMm().keySet()));
    }

    private static Step bare(Step step) {
      return changed(step, step.rinses(), List.of());
    }

    private static Step changed(Step step, boolean rinses, List<String> cautions) {
      return new Step(
          step.id(),
          step.title(),
          step.part(),
          step.stage(),
          step.counts(),
          step.does(),
          rinses,
          step.doText(),
          step.lookFor(),
          step.why(),
          step.mind(),
          step.usualSeconds(),
          step.waits(),
          step.measure(),
          cautions,
          step.wrong(),
          StepDetail.NONE);
    }

    private static Routine with(Routine routine, List<Step> steps) {
      return new Routine(
          routine.id(),
          routine.title(),
          routine.says(),
          routine.makes(),
          routine.plan(),
          routine.patterns(),
          routine.ends(),
          routine.usualLoss(),
          routine.usualRedo(),
          routine.pieces(),
          steps,
          RoutineDetail.NONE);
    }
  }

  @Nested
  class Marks {
    /** What a do text cannot speak of without doing it. */
    private static final Map<String, Hazard> SPEAKS_OF =
        Map.ofEntries(
            Map.entry(
                "\\bflame\\b(?! once)|until (it|solder) (runs|flashes)"
                    + "|\\b[Aa]nneal (it|all|the)\\b",
                Hazard.HEATS),
            Map.entry("pallion", Hazard.FLUX_FUMES),
            Map.entry(
                "\\b(into|in) warm pickle\\b|(?<!warm )\\b[Pp]ickle, (soda|rinse|neutralise)",
                Hazard.PICKLES),
            Map.entry("\\b[Qq]uench\\b(?! water)(?! bowl)", Hazard.QUENCHES),
            Map.entry(
                "\\bsaw (along|it|them)\\b|\\b[Cc]ut (a blank|\\{|the bar)|\\bsawn\\b",
                Hazard.CUTS),
            Map.entry(
                "\\b[Tt]ap it\\b|\\bmallet (on|first)|\\b[Ss]trike (it|the|that|along)\\b",
                Hazard.HAMMERS),
            Map.entry("\\b[Tt]umble (it|a)\\b", Hazard.TUMBLES),
            Map.entry("draw tongs|wooden plate", Hazard.DRAWS),
            Map.entry("\\b[Ss]aw (off|it|them|along)\\b|\\band saw\\b|; saw\\.", Hazard.DUST),
            Map.entry("\\bfile (both|the) ends?\\b|\\bFile off\\b", Hazard.DUST),
            Map.entry("liver of sulphur", Hazard.CHEMICALS),
            Map.entry("\\bmelt the metal\\b", Hazard.MELTS),
            Map.entry("\\bpour in one go\\b|\\b[Pp]our (it|the)\\b", Hazard.POURS),
            Map.entry("spark lighter from|\\b[Ll]ight the torch\\b", Hazard.LIGHTS),
            Map.entry("hand vice[^.]*[,;.] pull", Hazard.TWISTS),
            Map.entry("flat rolls|grooves of the mill", Hazard.ROLLS),
            Map.entry("\\b[Dd]rill\\b", Hazard.DRILLS),
            Map.entry("(^|[.;:] )(Then )?([Ss]aw|[Cc]ut|[Ss]nip|[Tt]rim)\\b", Hazard.CUTS),
            Map.entry("File along|file its two ends|File the end to", Hazard.FILES));

    @Test
    void nameWhatTheTextSpeaksOf() {
      SPEAKS_OF.forEach(
          (words, hazard) -> {
            Predicate<Step> speaks = step -> Pattern.compile(words).matcher(step.doText()).find();
            assertThat(in(speaks)).as("do texts with %s", words).isNotEmpty();
            assertThat(in(speaks.and(step -> !step.does().contains(hazard))))
                .as("do texts with %s in steps that are not marked: %s", words, hazard.word())
                .isEmpty();
          });
    }

    @Test
    void bringGasWithEveryFlame() {
      assertThat(
              in(
                  step ->
                      step.does().contains(Hazard.HEATS) != step.does().contains(Hazard.BURNS_GAS)))
          .isEmpty();
    }
  }
}
