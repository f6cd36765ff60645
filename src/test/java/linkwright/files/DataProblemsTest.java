package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What can be wrong with what a data file says, each with a file that provokes it. */
class DataProblemsTest {
  @Nested
  class AMetal {
    private static final String TIN =
        """
        format: 1
        metals:
        - metal: tin
          name: Tin
          family: other
          density-g-cm3: {is: 7.3, source: s}
          melts-c: {from: 232, to: 232, source: s}
          anneals-c: {from: 20, to: 100, source: s}
          glow: none
          quench: Air.
          modulus-gpa: {is: 50, source: s}
          yield-soft-mpa: {is: 10, source: s}
          yield-hard-mpa: {is: 14, source: s}
          tensile-soft-mpa: {is: 15, source: s}
          tensile-hard-mpa: {is: 20, source: s}
          reduction-between-anneals: {is: 50 %, source: s}
        """;

    private void assertTold(String from, String to, String... expected) {
      assertThat(TIN).contains(from);
      assertThat(ToldOfFile.of(DataKind.SHARED, TIN.replace(from, to))).containsExactly(expected);
    }

    @Test
    void thatIsSoundIsRead() {
      assertTold("tin", "tin");
    }

    @Test
    void lacksAFigure() {
      assertTold(
          "  modulus-gpa: {is: 50, source: s}\n",
          "",
          "3:3: A metal has no \"modulus-gpa\". Write modulus-gpa: {is: …, source: \"…\"}.");
    }

    @Test
    void hasAFigureWithoutSource() {
      assertTold(
          "{is: 50, source: s}", "{is: 50}", "11:16: A figure has no \"source\". Write source: …");
    }

    @Test
    void hasABareFigure() {
      assertTold(
          "{is: 50, source: s}",
          "50",
          "11:16: \"modulus-gpa\" is a single value (50)."
              + " It should be a group of keys, such as {from: 600, to: 650}.");
    }

    @Test
    void hasAFigureOfNothing() {
      assertTold("{is: 7.3,", "{is: 0,", "6:23: \"is\": \"0\" must be above 0.");
    }

    @Test
    void meltsTheWrongWayRound() {
      assertTold(
          "{from: 232, to: 232,",
          "{from: 300, to: 232,",
          "7:13: The range of \"melts-c\" begins above its end."
              + " The lower figure under from, the higher under to.");
    }

    @Test
    void isSofterHard() {
      assertTold(
          "yield-hard-mpa: {is: 14",
          "yield-hard-mpa: {is: 4",
          "12:3: \"yield-soft-mpa\" is above \"yield-hard-mpa\"."
              + " Drawn wire is the stronger: look whether the two are the wrong way round.");
    }

    @Test
    void isOfNoFamily() {
      assertTold(
          "family: other",
          "family: sliver",
          "5:11: \"family\": “sliver” is not a family of metals. Did you mean silver? Known: gold,"
              + " silver, platinum, palladium, copper, other.");
    }

    @Test
    void isFinerThanPure() {
      assertTold(
          "  glow: none\n",
          "  glow: none\n  fineness-permille: 9250\n",
          "10:3: A fineness of 9250 is more than all of it. Parts in a thousand, at most 1000.");
      assertTold(
          "  glow: none\n",
          "  glow: none\n  fineness-permille: 92.5\n",
          "10:22: \"fineness-permille\": \"92.5\" is not a whole number of 1 or more.");
    }
  }

  @Test
  void aSolderThatFlowsBeforeItMeltsIsTold() {
    assertThat(
            ToldOfFile.of(
                DataKind.SHARED,
                """
                format: 1
                solders:
                - solder: easy
                  name: Easy
                  family: silver
                  flow-order: 0
                  solidus-c: 700
                  liquidus-c: 600
                  density-g-cm3: 9
                  source: s
                """))
        .containsExactly(
            "7:3: The solder begins to melt (solidus-c) above where it flows (liquidus-c)."
                + " The lower figure under solidus-c.",
            "6:15: \"flow-order\": \"0\" is not a whole number of 1 or more.");
  }

  @Nested
  class APattern {
    private static final String BAR =
        """
        format: 1
        pattern: bar
        says: A bar with two eyes.
        formers: {eye: 2 mm}
        half:
          - bend: {over: eye, turn: 300, side: left, eye: true}
          - run: rest
        other: turned
        joints:
          - join: tip to body
          - join: tip to body
        """;

    private void assertTold(String from, String to, String... expected) {
      assertThat(BAR).contains(from);
      assertThat(ToldOfFile.of(DataKind.SHARED, BAR.replace(from, to))).containsExactly(expected);
    }

    @Test
    void thatIsSoundIsRead() {
      assertTold("bar", "bar");
    }

    @Test
    void hasAFormerWithoutUnit() {
      assertThat(ToldOfFile.of(DataKind.SHARED, BAR.replace("2 mm", "2")))
          .singleElement()
          .asString()
          .startsWith("4:16: \"eye\": 2 what? Write a unit");
    }

    @Test
    void namesAFormerThatItDoesNotHave() {
      assertTold(
          "over: eye",
          "over: tip",
          "6:5: There is no former \"tip\"" + " Right would be: one of the pattern's formers, eye");
    }

    @Test
    void bendsToNeitherHand() {
      assertTold(
          "side: left",
          "side: lift",
          "6:40: \"side\": \"lift\" is not known here. Did you mean left?");
    }

    @Test
    void hasNoPath() {
      assertTold(
          "half:",
          "whole:",
          "8:1: A pattern with whole has no other half. Take other out, or write half.");
      assertThat(ToldOfFile.of(DataKind.SHARED, BAR.replace("half:", "halves:")))
          .contains(
              "1:1: The pattern has neither half nor whole. half for what is symmetric about the"
                  + " middle of the blank, else whole.");
    }

    @Test
    void hasAPieceThatIsNothing() {
      assertTold(
          "- run: rest",
          "- ran: rest",
          "7:5: A piece of the path is neither a run nor a bend nor a curl."
              + " One of run, bend, curl after each hyphen.");
    }

    @Test
    void hasAPieceThatIsTwoThings() {
      assertTold(
          "- run: rest",
          "- {run: rest, curl: {}}",
          "7:6: A piece of the path is more than one thing."
              + " One of run, bend, curl after each hyphen.");
    }

    @Test
    void joinsWhatNobodyJoins() {
      assertTold(
          "  - join: tip to body\n  - join: tip to body\n",
          "  - join: tip to botty\n",
          "10:11: \"join\": \"tip to botty\" is not known here. Did you mean tip to body?");
    }
  }

  @Nested
  class ARoutine {
    private static final String CUT =
        """
        format: 1
        routine: cut-only
        title: Cut blanks
        says: Blanks, for this test.
        makes: part
        pieces:
          link: [cut]
        steps:
          - step: cut
            title: Cut
            part: run
            stage: {link: cut}
            counts: each
            does: [cuts]
            do: Cut blanks of {blank}.
            usual-time: 30 s
            waits:
              - {name: Rest, for: 1 min}
            cautions: [cutting-wire]
            wrong:
              - sees: too short
                means: Measured badly.
                remedy: Cut another.
                then: scrap
                reason: size
        """;

    private void assertTold(String from, String to, String... expected) {
      assertThat(CUT).contains(from);
      assertThat(ToldOfFile.of(DataKind.ROUTINES, CUT.replace(from, to))).contains(expected);
    }

    @Test
    void findingsOfTheChecksAreToldAtTheirStep() {
      // Read alone there is no caution to name.
      assertThat(ToldOfFile.of(DataKind.ROUTINES, CUT))
          .contains(
              "19:5: Step cut names the caution \"cutting-wire\", which nobody has written."
                  + " There is none yet.");
    }

    @Test
    void hasAStepWithAWordThatNobodyKnows() {
      assertTold(
          "counts: each",
          "counts: eech",
          "13:13: \"counts\": \"eech\" is not known here. Did you mean each?");
      assertTold(
          "does: [cuts]",
          "does: [cut]",
          "14:12: \"does\": \"cut\" is not known here. Did you mean cuts?");
    }

    @Test
    void hasATimeWithoutUnit() {
      assertThat(ToldOfFile.of(DataKind.ROUTINES, CUT.replace("30 s", "30")))
          .anyMatch(told -> told.startsWith("16:17: \"usual-time\": 30 what? Write a unit"));
    }

    @Test
    void waitsForNothing() {
      assertTold(
          "for: 1 min", "for: 0 min", "18:27: \"for\": A wait of nothing is none. Write 8 min.");
    }

    @Test
    void hasNoSteps() {
      assertThat(ToldOfFile.of(DataKind.ROUTINES, CUT.substring(0, CUT.indexOf("steps:"))))
          .contains(
              "1:1: A routine has no \"steps\"."
                  + " Write steps: and under it the steps, each after a hyphen.");
    }

    @Test
    void makesAChainWithoutSayingHowItEnds() {
      assertTold(
          "makes: part",
          "makes: chain",
          "1:1: A routine has no \"ends\". Write ends: rings, or ends: links.");
    }

    @Test
    void hasALossOfMoreThanAll() {
      assertThat(
              ToldOfFile.of(
                  DataKind.ROUTINES, CUT.replace("pieces:", "usual-loss: 120 %\npieces:")))
          .anyMatch(
              told -> told.startsWith("6:13: \"usual-loss\": “120 %” is more than the whole."));
    }
  }

  @Test
  void aCautionWithoutWhatItMustSayIsToldByTheChecks() {
    assertThat(
            ToldOfFile.of(
                DataKind.SAFETY,
                """
                format: 1
                caution: test
                title: For a test
                covers: [heat]
                wear:
                  - {sign: M004}
                """))
        .containsExactly(
            "4:10: \"covers\": \"heat\" is not known here. Did you mean heats?",
            "6:5: Something to wear has no \"says\". Write says: …");
    assertThat(
            ToldOfFile.of(
                DataKind.SAFETY,
                """
                format: 1
                caution: test
                title: For a test
                covers: [heats]
                short: Mind.
                can-happen: Burns.
                do: [Mind.]
                wear:
                  - {sign: X9, says: gloves}
                source: common practice, no source
                """))
        .containsExactly(
            "1:1: The caution \"test\" does not put local rules first. Write under defers that"
                + " local rules, the maker's sheet and licensed practice come first.",
            "8:1: The caution \"test\" has the sign \"X9\", which is no ISO 7010 code."
                + " A code is one of W, M, P, E, F and three digits, such as M004.");
  }
}
