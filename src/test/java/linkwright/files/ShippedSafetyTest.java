package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linkwright.routine.Caution;
import linkwright.routine.CautionChecks;
import linkwright.routine.Hazard;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import org.junit.jupiter.api.Test;

/** The shipped safety cards: complete, sourced, and short enough for a screen of 80 by 24. */
final class ShippedSafetyTest {
  private static final int CARD_WIDTH = 76;
  private static final int CARD_LINES = 18;

  /** A short line stands beside its word at 80 signs and takes one line there. */
  private static final int ONE_LINE = 68;

  /** A number with a unit: advice of that kind has to come from somewhere. */
  private static final Pattern FIGURE =
      Pattern.compile("\\d+(\\.\\d+)?\\s?(min|ft|m|bar|psig|psi|h|dB|mg|µg|°C)\\b");

  private static final Pattern SPACES = Pattern.compile("\\s+");

  private static final List<Caution> CARDS =
      List.copyOf(Library.load(new Home(Path.of("target", "no-such-folder"))).cautions().values());

  private static Stream<String> items(Caution card) {
    return Stream.of(card.doList(), card.doNot(), card.ifItGoesWrong()).flatMap(List::stream);
  }

  private static String text(String id) {
    Caution card = CARDS.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    return String.join(
        " ", Stream.concat(Stream.of(card.shortLine(), card.canHappen()), items(card)).toList());
  }

  /** Lines that a text takes when broken at spaces. */
  private static int lines(String text, int width) {
    int lines = 1;
    int used = 0;
    for (String word : SPACES.splitAsStream(text.strip()).toList()) {
      if (used > 0 && used + 1 + word.length() > width) {
        lines++;
        used = 0;
      }
      used += (used > 0 ? 1 : 0) + word.length();
    }
    return lines;
  }

  private static int height(Caution card) {
    String signs =
        String.join("  ", card.wear().stream().map(w -> w.sign() + " " + w.says()).toList());
    return 1
        + lines(card.canHappen(), CARD_WIDTH)
        + items(card).mapToInt(item -> lines(item, CARD_WIDTH - 2)).sum()
        + lines(signs, CARD_WIDTH)
        + lines(card.source(), CARD_WIDTH)
        + lines(card.defers(), CARD_WIDTH);
  }

  @Test
  void everyCardPassesItsChecks() {
    assertThat(CARDS).hasSizeGreaterThan(20);
    assertThat(CARDS).flatExtracting(CautionChecks::check).isEmpty();
  }

  @Test
  void everyHazardIsCovered() {
    Set<Hazard> covered = EnumSet.noneOf(Hazard.class);
    CARDS.forEach(card -> covered.addAll(card.covers()));
    assertThat(covered).containsExactlyInAnyOrder(Hazard.values());
  }

  @Test
  void everyCardFitsASmallScreen() {
    assertThat(CARDS)
        .allSatisfy(
            card -> {
              assertThat(card.shortLine()).hasSizeLessThanOrEqualTo(ONE_LINE);
              assertThat(items(card)).allMatch(item -> item.length() <= 100);
              assertThat(card.doList()).hasSizeBetween(3, 6);
              assertThat(card.doNot()).hasSizeBetween(3, 6);
              assertThat(card.ifItGoesWrong()).hasSizeBetween(3, 6);
              assertThat(height(card)).as(card.id()).isLessThanOrEqualTo(CARD_LINES);
            });
  }

  @Test
  void aCardWithFiguresNamesWhereTheyComeFrom() {
    List<String> bare = new ArrayList<>();
    for (Caution card : CARDS) {
      boolean figures = FIGURE.matcher(text(card.id())).find();
      if (figures && card.source().startsWith("common practice")) {
        bare.add(card.id());
      }
    }
    assertThat(bare).isEmpty();
    assertThat(CARDS).filteredOn(card -> FIGURE.matcher(text(card.id())).find()).isNotEmpty();
  }

  @Test
  void everyCardDefersToLocalRulesTheMakersSheetAndLicensedPractice() {
    assertThat(CARDS)
        .allSatisfy(
            card ->
                assertThat(card.defers()).contains("Local rules", "sheet", "licensed practice"));
  }

  /** 29 CFR 1915.153, table I-1: torch brazing 3, torch soldering 2, each the least shade. */
  @Test
  void theTorchCardAsksForTheShadeOfBrazing() {
    Caution torch =
        CARDS.stream().filter(card -> card.id().equals("torch")).findFirst().orElseThrow();
    assertThat(torch.wear())
        .filteredOn(gear -> gear.sign().equals("M004"))
        .singleElement()
        .satisfies(gear -> assertThat(gear.says()).contains("shade 3 at least", "2 below 450 °C"));
    assertThat(torch.source()).contains("29 CFR", "1915.153, table I-1");
  }

  /**
   * Once a step of the chain itself has spoken of the spring clasp, no flame and no acid comes
   * without its card. A bail is soldered away from the chain.
   */
  @Test
  void nothingIsHeatedOrPickledUnwarnedOnceASpringClaspMayHang() {
    List<String> unwarned = new ArrayList<>();
    for (Routine routine : ShippedSteps.LIBRARY.routines().values()) {
      boolean mayHang = false;
      for (Step step : routine.steps()) {
        boolean harms = step.does().contains(Hazard.HEATS) || step.does().contains(Hazard.PICKLES);
        boolean warned = step.cautions().contains("spring-clasp");
        if (mayHang && harms && !warned && !step.id().toString().endsWith("-bail")) {
          unwarned.add(routine.id() + ": " + step.id());
        }
        mayHang |= warned;
      }
    }
    assertThat(unwarned).isEmpty();
  }

  /** Through shade 3 a dull red is not seen, so no step may rest on it. */
  @Test
  void annealingIsJudgedByWhatADarkLensLetsThrough() {
    assertThat(ShippedSteps.in(step -> step.doText().contains("{glow}"))).hasSizeGreaterThan(10);
    assertThat(
            ShippedSteps.in(
                step ->
                    step.doText().contains("{glow}")
                        && !Pattern.compile("flux|temperature paint|streaked")
                            .matcher(step.doText())
                            .find()))
        .isEmpty();
    assertThat(
            ShippedSteps.in(
                step -> ShippedSteps.texts(step).anyMatch(text -> text.contains("im light"))))
        .isEmpty();
    assertThat(ShippedSteps.LIBRARY.reference().metals())
        .allSatisfy(
            metal ->
                assertThat(metal.glow())
                    .as(metal.id())
                    .containsAnyOf("flux clear", "temperature paint", "dark lens"));
  }

  private static boolean says(Step step, String words) {
    return Pattern.compile(words).matcher(step.doText()).find();
  }

  @Test
  void everyRoutineThatBurnsGasEndsWithTheGasShutAndAFireWatch() {
    for (Routine routine : ShippedSteps.LIBRARY.routines().values()) {
      List<Step> steps = routine.steps();
      int last = -1;
      for (int at = 0; at < steps.size(); at++) {
        last = steps.get(at).does().contains(Hazard.BURNS_GAS) ? at : last;
      }
      if (last < 0) {
        continue;
      }
      assertThat(steps.subList(last + 1, steps.size()))
          .as(routine.id())
          .anyMatch(
              step ->
                  step.waits().stream().anyMatch(wait -> wait.name().equals("Fire watch"))
                      && step.cautions().contains("fire-watch")
                      && says(step, "(?i)(gas|bottle) (shut|off)|shut the gas"));
    }
  }

  /** As the pickle card says: water, soda water apart, water again. */
  @Test
  void workFromThePickleIsRinsedBeforeTheSodaWaterToo() {
    assertThat(
            ShippedSteps.in(
                step ->
                    says(step, "soda water|neutralise|baking soda")
                        && step.does().contains(Hazard.PICKLES)
                        && !says(step, "(?is)rinse.*(soda|neutralise).*(rinse|rinses)")))
        .isEmpty();
  }

  @Test
  void wirePulledStraightHasTheCardForIt() {
    assertThat(
            ShippedSteps.in(
                step ->
                    says(
                            step,
                            "(and pull it|pull the other) straight|one steady pull|pull until the wire")
                        && !step.cautions().contains("pulling-wire")))
        .isEmpty();
  }

  @Test
  void whoeverIsToldToDrillHasReadTheCardForIt() {
    assertThat(
            ShippedSteps.in(
                step ->
                    (says(step, "(?i)\\bdrill\\b")
                            || step.wrong().stream()
                                .anyMatch(wrong -> wrong.remedy().matches("(?is).*\\bdrill\\b.*")))
                        && !step.cautions().contains("drilling")))
        .isEmpty();
  }

  @Test
  void whatMustNotBeForgottenIsSaid() {
    assertThat(text("pickle")).contains("acid into water", "hot work", "steel", "rinse");
    assertThat(text("spring-clasp")).contains("steel spring");
    assertThat(text("liver-of-sulphur")).contains("acid", "hydrogen sulphide");
    assertThat(text("soft-solder-repair")).contains("red heat");
    assertThat(text("soldering-surface")).contains("asbestos", "damp", "smoulders");
    assertThat(text("boric-dip")).contains("Lid on", "flame");
    assertThat(text("trapped-pickle")).contains("soda water apart", "rinse", "dry");
    assertThat(text("binding-wire")).contains("before the work goes into pickle");
    assertThat(text("foot-pedal")).contains("well away from the motor");
    assertThat(text("germanium-silver")).contains("neither moved nor quenched while it is red");
    assertThat(text("marking-bends")).contains("pen, not a scriber");
    assertThat(text("rotary-polishing")).contains("loose chain");
    assertThat(text("drilling")).contains("Clamp", "Centre punch", "gloves", "grabs");
    assertThat(text("chain-does-not-let-go")).contains("child", "machine");
    assertThat(text("ventilation")).contains("Zinc", "Cadmium", "Fluoride");
    assertThat(text("lone-work")).contains("Asthma", "Pregnant", "Alone");
    assertThat(text("fire-watch")).contains("60 min", "30 min");
    assertThat(text("molten-metal")).contains("Face shield", "leather", "shoes", "dry", "others");
    assertThat(text("torch-lighting"))
        .contains("Check", "Purge", "fuel first", "spark lighter", "neutral", "Off: torch");
    assertThat(text("torch-fuels")).contains("butane", "Propane", "Acetylene", "local rules");
    assertThat(text("pulling-wire")).contains("Beside the pull");
    assertThat(text("metal-on-skin")).contains("Nickel", "Brass");
  }
}
