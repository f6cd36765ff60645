package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.quantity.Problem;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Caution;
import linkwright.routine.Finding;
import linkwright.routine.Hazard;
import linkwright.routine.Remedy;
import linkwright.routine.Routine;
import linkwright.routine.RoutineChecks;
import linkwright.routine.Step;
import linkwright.routine.TradeWords;
import linkwright.routine.Wording;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The coverage check of the build: no shipped step that can hurt someone lacks its caution. */
class ShippedRoutinesTest {
  private static final Library LIBRARY = Library.load(new Home(Path.of("no-such-folder")));

  private static List<String> in(Predicate<Step> wanted) {
    List<String> places = new ArrayList<>();
    for (Routine routine : LIBRARY.routines().values()) {
      routine.steps().stream()
          .filter(wanted)
          .forEach(step -> places.add(routine.id() + ": " + step.id()));
    }
    return places;
  }

  private static Stream<Step> steps() {
    return LIBRARY.routines().values().stream().flatMap(routine -> routine.steps().stream());
  }

  private static Stream<String> texts(Step step) {
    return Stream.concat(
        Stream.of(
            step.title(), step.doText(), step.lookFor(), step.why(), step.mind(), step.measure()),
        step.wrong().stream()
            .flatMap(remedy -> Stream.of(remedy.sees(), remedy.means(), remedy.remedy())));
  }

  @Test
  void allRoutinesAreThere() {
    assertThat(LIBRARY.routines())
        .containsOnlyKeys(
            "bar-and-ring",
            "clasp-hook-and-eye",
            "clasp-s-hook",
            "clasp-toggle",
            "figure-of-eight",
            "graduated-units",
            "jump-rings",
            "loop-in-loop",
            "oval-and-long",
            "repair-one-link",
            "round-cable",
            "scroll-and-ring",
            "wire-drawing");
  }

  @Test
  void everyRoutineAndCautionPassesAllChecks() {
    assertThat(LIBRARY.problems())
        .filteredOn(problem -> problem.file().matches("(routines|safety)/.*"))
        .extracting(Problem::sentence)
        .isEmpty();
  }

  @Test
  void theStartingFileForAnOwnRoutinePassesAllChecks(@TempDir Path home) throws IOException {
    Path routines = Files.createDirectories(home.resolve("routines"));
    try (InputStream start = Library.class.getResourceAsStream("/linkwright/new-routine.yaml")) {
      Files.copy(start, routines.resolve("my-routine.yaml"));
    }
    Library library = Library.load(new Home(home));
    assertThat(library.routines()).containsKey("my-routine");
    assertThat(library.problems())
        .filteredOn(problem -> problem.file().endsWith("my-routine.yaml"))
        .extracting(Problem::sentence)
        .isEmpty();
  }

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
          .allMatch(text -> text.toLowerCase(java.util.Locale.ROOT).contains("local rules"));
    }

    @Test
    void areMissedWhenAnyStepLosesThem() {
      for (Routine routine : LIBRARY.routines().values()) {
        for (Step step : routine.steps()) {
          List<Step> bare =
              routine.steps().stream().map(each -> each == step ? bare(each) : each).toList();
          assertThat(
                  RoutineChecks.check(
                          with(routine, bare), LIBRARY.cautions().values(), routine.patterns())
                      .stream()
                      .filter(finding -> finding.key().equals("cautions"))
                      .map(Finding::step))
              .as("%s: %s without its cautions", routine.id(), step.id())
              .hasSize(step.does().size())
              .allMatch(step.id()::equals);
        }
      }
    }

    @Test
    void areEachNamedBySomeStep() {
      assertThat(steps().flatMap(step -> step.cautions().stream()))
          .containsAll(LIBRARY.cautions().keySet());
    }

    private static Step bare(Step step) {
      return new Step(
          step.id(),
          step.title(),
          step.part(),
          step.stage(),
          step.counts(),
          step.does(),
          step.rinses(),
          step.doText(),
          step.lookFor(),
          step.why(),
          step.mind(),
          step.usualSeconds(),
          step.waits(),
          step.measure(),
          List.of(),
          step.wrong());
    }

    private static Routine with(Routine routine, List<Step> steps) {
      return new Routine(
          routine.id(),
          routine.title(),
          routine.says(),
          routine.makes(),
          routine.patterns(),
          routine.ends(),
          routine.usualLoss(),
          routine.usualRedo(),
          routine.pieces(),
          steps);
    }
  }

  @Nested
  class Marks {
    /** What a do text cannot speak of without doing it. */
    private static final Map<String, Hazard> SPEAKS_OF =
        Map.of(
            "\\bflame\\b(?! once)|until (it|solder) (runs|flashes)", Hazard.HEATS,
            "pallion", Hazard.FLUX_FUMES,
            "\\b(into|in) warm pickle\\b|(?<!warm )\\b[Pp]ickle, (soda|rinse|neutralise)", Hazard.PICKLES,
            "\\b[Qq]uench\\b(?! water)(?! bowl)", Hazard.QUENCHES,
            "\\bsaw (along|it|them)\\b|\\b[Cc]ut (a blank|\\{|the bar)|\\bsawn\\b", Hazard.CUTS,
            "\\b[Tt]ap it\\b|\\bmallet (on|first)|\\b[Ss]trike\\b", Hazard.HAMMERS,
            "\\b[Tt]umble (it|a)\\b", Hazard.TUMBLES,
            "draw tongs|wooden plate", Hazard.DRAWS,
            "\\bfile (both|the) ends?\\b|\\bFile off\\b", Hazard.DUST,
            "liver of sulphur", Hazard.CHEMICALS);

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

  @Nested
  class Texts {
    private static final Pattern BARE_LENGTH = Pattern.compile("\\d\\s*(mm|cm|in|inch|m)\\b");

    @Test
    void keepTheirLengthsInBracesSoThatTheyReadInEveryUnit() {
      assertThat(
              in(
                  step ->
                      texts(step)
                          .map(text -> text.replaceAll("\\{[^}]*\\}", ""))
                          .anyMatch(text -> BARE_LENGTH.matcher(text).find())))
          .isEmpty();
    }

    @Test
    void leaveNoMillimetresForThoseWhoWorkInInches() {
      assertThat(
              in(
                  step ->
                      texts(step)
                          .map(
                              text ->
                                  Wording.fill(text, Map.of(), UnitStyle.INCH, TradeWords.AMERICAN))
                          .anyMatch(
                              text -> {
                                Matcher metric = Pattern.compile("\\d\\s*mm\\b").matcher(text);
                                return metric.find() || text.contains("{") || text.contains("}");
                              })))
          .isEmpty();
    }

    @Test
    void areShortEnoughForASmallTerminal() {
      assertThat(
              in(
                  step ->
                      step.doText().length() > 420
                          || step.lookFor().length() > 200
                          || step.why().length() > 200
                          || step.mind().length() > 200
                          || step.title().length() > 48))
          .isEmpty();
      assertThat(in(step -> step.wrong().stream().anyMatch(one -> one.remedy().length() > 200)))
          .isEmpty();
    }

    @Test
    void useTradeWordsThatTurnAmerican() {
      Pattern british =
          Pattern.compile(
              "\\b(joints?|pallions?|formers?|belcher|bolt ring|lemel|hallmark|colour|vice)\\b",
              Pattern.CASE_INSENSITIVE);
      assertThat(
              in(
                  step ->
                      texts(step)
                          .map(
                              text ->
                                  Wording.fill(
                                      text, Map.of(), UnitStyle.METRIC, TradeWords.AMERICAN))
                          .anyMatch(text -> british.matcher(text).find())))
          .isEmpty();
    }
  }

  @Test
  void everyMishapOfTheTradeHasItsRemedySomewhere() {
    List<String> mishaps =
        List.of(
            "solder .*will not run",
            "solder ran into the curl",
            "joint opened again",
            "link is twisted",
            "firescale",
            "too chunky",
            "too open",
            "ring (is|looks) too big",
            "links face different ways",
            "wire springs back",
            "wire cracks .*in the plate",
            "ring is soldered to its neighbour",
            "dead soft",
            "oval no longer swings",
            "flux is left in a curl");
    List<String> sees = steps().flatMap(step -> step.wrong().stream()).map(Remedy::sees).toList();
    for (String mishap : mishaps) {
      assertThat(sees).as(mishap).anyMatch(Pattern.compile(mishap).asPredicate());
    }
  }
}
