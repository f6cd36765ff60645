package linkwright.files;

import static linkwright.files.ShippedSteps.LIBRARY;
import static linkwright.files.ShippedSteps.in;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.TradeWords;
import linkwright.routine.Wording;
import org.junit.jupiter.api.Test;

/** The shipped texts read well in every unit, on either side of the Atlantic, on a small screen. */
class ShippedTextsTest {
  @Test
  void nameOnlyFormersThatEachOfTheRoutinesPatternsHas() {
    Pattern former = Pattern.compile("\\{former ([^}]*)\\}");
    List<String> strangers = new ArrayList<>();
    for (Routine routine : LIBRARY.routines().values()) {
      routine.steps().stream()
          .flatMap(ShippedSteps::texts)
          .flatMap(text -> former.matcher(text).results())
          .map(found -> found.group(1))
          .filter(
              name ->
                  routine.patterns().stream()
                      .anyMatch(id -> !LIBRARY.patterns().get(id).formersMm().containsKey(name)))
          .forEach(name -> strangers.add(routine.id() + ": " + name));
    }
    assertThat(strangers).isEmpty();
  }

  private static final Pattern BARE_LENGTH = Pattern.compile("\\d\\s*(mm|cm|in|inch|m)\\b");

  @Test
  void keepTheirLengthsInBracesSoThatTheyReadInEveryUnit() {
    assertThat(
            in(
                step ->
                    ShippedSteps.texts(step)
                        .map(text -> text.replaceAll("\\{[^}]*\\}", ""))
                        .anyMatch(text -> BARE_LENGTH.matcher(text).find())))
        .isEmpty();
  }

  @Test
  void leaveNoMillimetresForThoseWhoWorkInInches() {
    assertThat(
            in(
                step ->
                    ShippedSteps.texts(step)
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
  void giveEveryStepItsOwnReasonAndWhatMayGoWrong() {
    assertThat(in(step -> step.why().isBlank())).as("steps without a why").isEmpty();
    assertThat(in(step -> step.wrong().isEmpty())).as("steps without a wrong").isEmpty();
    List<String> whys = ShippedSteps.steps().map(Step::why).toList();
    assertThat(whys).as("whys that stand in two steps").doesNotHaveDuplicates();
  }

  /** "Tap it flat" became a plumber's word, and "a trace of solder" a chain. */
  @Test
  void turnAmericanInTheSenseOfTheTradeOnly() {
    Pattern strange = Pattern.compile("(?i)\\bfaucet|\\bcables? of (?!small|broad)");
    assertThat(
            in(
                step ->
                    ShippedSteps.texts(step)
                        .map(
                            text ->
                                Wording.fill(text, Map.of(), UnitStyle.INCH, TradeWords.AMERICAN))
                        .anyMatch(text -> strange.matcher(text).find())))
        .isEmpty();
    assertThat(TradeWords.AMERICAN.show("Tap each link flat.")).isEqualTo("Tap each link flat.");
  }

  @Test
  void useTradeWordsThatTurnAmerican() {
    Pattern british =
        Pattern.compile(
            "\\b(joints?|pallions?|formers?|belcher|bolt ring|lemel|hallmark|vice"
                + "|\\w*(colour|vapour|mould|neighbour|centre|metre|oxidis|neutralis|labell)\\w*)\\b",
            Pattern.CASE_INSENSITIVE);
    assertThat(
            in(
                step ->
                    ShippedSteps.texts(step)
                        .map(
                            text ->
                                Wording.fill(text, Map.of(), UnitStyle.METRIC, TradeWords.AMERICAN))
                        .anyMatch(text -> british.matcher(text).find())))
        .isEmpty();
  }

  /** So that nobody lays out two grades and lacks the third at the last joint. */
  @Test
  void layOutAsManyGradesOfSolderAsTheRoutineTakes() {
    Pattern grades = Pattern.compile("(\\w+) grades of solder|solder of (\\w+) grades");
    List<String> words = List.of("no", "one", "two", "three", "four");
    List<String> asked = new ArrayList<>();
    for (Routine routine : LIBRARY.routines().values()) {
      long taken =
          routine.steps().stream()
              .flatMap(step -> step.detail().solder().values().stream())
              .distinct()
              .count();
      for (Step step : routine.steps()) {
        Matcher said = grades.matcher(step.doText());
        if (said.find()) {
          asked.add(routine.id());
          String word = said.group(1) == null ? said.group(2) : said.group(1);
          assertThat(word).as(routine.id()).isEqualTo(words.get((int) taken));
        }
      }
    }
    assertThat(asked).contains("scroll-and-ring", "round-cable");
  }
}
