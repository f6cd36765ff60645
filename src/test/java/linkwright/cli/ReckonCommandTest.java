package linkwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code linkwright reckon} from the outside: text, YAML, exit codes, files. */
class ReckonCommandTest {

  @Nested
  class AResult {
    @Test
    void isTextWithUnitsUnlessYamlIsAskedFor() {
      Ran ran = Ran.reckon("wire", "--metal", "sterling", "--wire", "0,9 mm", "--length", "1 m");

      assertThat(ran.exit()).isZero();
      assertThat(ran.out()).contains("6.59 g").contains("sterling silver");
      assertThat(ran.err()).isEmpty();
    }

    @Test
    void keepsWarningsOutOfTheYaml() {
      Ran ran =
          Ran.reckon("cut", "--stock", "50 mm", "--blank", "38 mm", "--want", "3", "--as", "yaml");

      assertThat(ran.exit()).isZero();
      assertThat(ran.number("short")).isEqualTo(2);
      assertThat(ran.err()).contains("The wire will not do");
    }

    @Test
    void followsTheUsersUnits(@TempDir Path home) throws IOException {
      Files.writeString(home.resolve("settings.yaml"), "units: inch\n");

      Ran ran = Ran.reckon(home, "ring", "--wire", "19 AWG", "--inside", "1/8 in");

      assertThat(ran.out()).contains("0.125 in").doesNotContain(" mm");
    }
  }

  @Nested
  class HerBench {
    @Test
    void is_taken_and_told_and_left_out_on_demand(@TempDir Path home) throws IOException {
      Files.writeString(home.resolve("bench.yaml"), "format: 1\nplate: [1.2 mm, 1.1 mm, 1 mm]\n");
      String[] draw = {"draw", "--from", "1.2 mm", "--to", "1 mm", "--length", "1 m"};
      assertThat(Ran.reckon(home, draw).out())
          .contains("From your bench: plate's holes 1.2 mm,1.1 mm,1 mm.")
          .contains("2 passes");
      String[] without =
          Stream.concat(Stream.of(draw), Stream.of("--no-bench")).toArray(String[]::new);
      assertThat(Ran.reckon(home, without).out()).doesNotContain("From your bench");
    }

    @Test
    void that_does_not_fit_stands_in_no_ones_way(@TempDir Path home) throws IOException {
      Files.writeString(home.resolve("bench.yaml"), "format: 1\nplate: [1.2 mm, 1.1 mm, 1 mm]\n");
      Ran thin = Ran.reckon(home, "draw", "--from", "0.9 mm", "--to", "0.5 mm", "--length", "1 m");
      assertThat(thin.exit()).isZero();
      assertThat(thin.err()).contains("Your bench does not fit here.", "no hole of 0.5 mm");
      assertThat(thin.out()).contains("No holes were given").doesNotContain("From your bench");
    }
  }

  @Nested
  class InInches {
    @Test
    void isSaidInPoundsAndFahrenheit(@TempDir Path home) throws IOException {
      Files.writeString(home.resolve("settings.yaml"), "units: inch\n");

      Ran heat = Ran.reckon(home, "heat", "--metal", "sterling", "--solder", "easy-silver");
      Ran pull =
          Ran.reckon(home, "pull", "--metal", "sterling", "--wire", "19 AWG", "--inside", "1/8 in");

      assertThat(heat.out() + heat.err()).contains("°F").doesNotContain("°C");
      assertThat(pull.out()).contains(" lbf").doesNotContain(" N", " kg");
    }
  }

  @Nested
  class WrongData {
    @Test
    void isToldByOptionAsWrongUse() {
      Ran ran = Ran.reckon("wire", "--metal", "sterlin", "--wire", "0 mm", "--length", "1 m");

      assertThat(ran.exit()).isEqualTo(2);
      assertThat(ran.out()).isEmpty();
      assertThat(ran.err().lines())
          .containsExactly(
              "--metal: “sterlin” is not a known metal. Did you mean sterling?",
              "--wire: “0 mm” is nothing. It has to be more than 0 mm.");
    }

    @Test
    void inAFileIsToldWithItsPlace(@TempDir Path folder) throws IOException {
      Ran ran = tried(folder, "- {blank: 38, length: 14 mm}\n- {blnk: 38 mm}\n");

      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err()).contains("line 1").contains("line 2").contains("blank");
    }

    private static Ran tried(Path folder, String pieces) throws IOException {
      Path file = folder.resolve("pieces.yaml");
      Files.writeString(file, pieces);
      return Ran.reckon(
          "blank",
          "--pattern",
          "scroll",
          "--metal",
          "sterling",
          "--wire",
          "0.9 mm",
          "--length",
          "14 mm",
          "--width",
          "5 mm",
          "--tried",
          file.toString());
    }

    /** No link is 140 mm long of 38 mm of wire: both readings are told, and yes stands. */
    @Test
    void aTestPieceOutOfReasonIsAskedAboutAndStandsWhereItIsConfirmed(@TempDir Path folder)
        throws IOException {
      Ran asked = tried(folder, "- {blank: 38 mm, length: 14 cm}\n");
      assertThat(asked.exit()).isEqualTo(2);
      assertThat(asked.err())
          .contains("140 mm long from a blank of 38 mm?", "Did you mean 14 mm?", "confirmed: yes");
      assertThat(tried(folder, "- {blank: 38 mm, length: 14 mm}\n").exit()).isZero();
      assertThat(tried(folder, "- {blank: 38 mm, length: 14 cm, confirmed: yes}\n").exit())
          .isZero();
    }

    @Test
    void solderIsReckonedForWireOfAnySection() {
      String[] rest = {"--gap", "0.05 mm", "--strip", "1 mm x 0.3 mm", "--as", "json"};
      String[] flat = {"solder", "--wire", "half-round 2 mm x 1 mm"};
      // Of the same area: πd²/8 of 2 mm is πd²/4 of 1.41421 mm.
      String[] round = {"solder", "--wire", "1.4142135624 mm"};
      assertThat(Ran.reckon(joined(flat, rest)).out())
          .isEqualTo(Ran.reckon(joined(round, rest)).out());
    }

    private static String[] joined(String[] first, String[] rest) {
      return java.util.stream.Stream.of(first, rest)
          .flatMap(java.util.stream.Stream::of)
          .toArray(String[]::new);
    }

    @Test
    void thatIsAFileThatIsNotThereIsASentence() {
      Ran ran =
          Ran.reckon(
              "link", "--pattern", "no-such-file.yaml", "--wire", "0.9 mm", "--blank", "38 mm");

      assertThat(ran.exit()).isEqualTo(2);
      assertThat(ran.err()).contains("There is no file no-such-file.yaml.");
    }
  }

  @Nested
  class WrongUse {
    @Test
    void ofAnUnknownOptionNamesTheNearest() {
      Ran ran = Ran.reckon("wire", "--wrie", "0.9 mm");

      assertThat(ran.exit()).isEqualTo(2);
      assertThat(ran.err()).contains("no option --wrie").contains("Did you mean --wire?");
    }

    @Test
    void ofAnUnknownSumNamesTheNearest() {
      Ran ran = Ran.reckon("wyre");

      assertThat(ran.exit()).isEqualTo(2);
      assertThat(ran.err()).contains("Did you mean wire?");
    }

    @Test
    void withoutASumNamesThemAll() {
      Ran ran = Ran.reckon();

      assertThat(ran.exit()).isEqualTo(2);
      assertThat(ran.err()).contains("wire, draw, ring").contains("pull");
    }

    @Test
    void withoutWhatIsNeededSaysWhatToGive() {
      Ran ran = Ran.reckon("wire", "--metal", "sterling", "--length", "1 m");

      assertThat(ran.exit()).isEqualTo(2);
      assertThat(ran.err()).contains("--wire: Give the thickness, such as");
    }

    @Test
    void ofAnAmountWithoutQuotesSaysSo() {
      Ran ran = Ran.reckon("wire", "--metal", "sterling", "--wire", "0.9", "mm");

      assertThat(ran.exit()).isEqualTo(2);
      assertThat(ran.err()).contains("in quotes");
    }

    @Test
    void ofAnOptionGivenTwiceOrEmptyOrAnUnknownForm() {
      assertThat(Ran.reckon("wire", "--metal", "sterling", "--metal", "copper").err())
          .contains("The option --metal stands twice");
      assertThat(Ran.reckon("wire", "--metal").err()).contains("--metal needs a value");
      assertThat(Ran.reckon("spare", "--more", "1", "--as", "jaml").exit()).isEqualTo(2);
    }
  }

  @Nested
  class APattern {
    private static final String PATTERN =
        """
        format: 1
        pattern: my-hook
        says: A hook of my own.
        formers: {eye: 2 mm}
        half:
          - bend: {over: eye, turn: 270, side: left, eye: true}
          - run: rest
        other: turned
        joints:
          - join: tip to body
          - join: tip to body
        """;

    @Test
    void mayBeAFile(@TempDir Path folder) throws IOException {
      Path file = folder.resolve("my-hook.yaml");
      Files.writeString(file, PATTERN);

      Ran ran =
          Ran.reckon(
              "link",
              "--pattern",
              file.toString(),
              "--wire",
              "0.8 mm",
              "--blank",
              "30 mm",
              "--as",
              "yaml");

      assertThat(ran.exit()).as(ran.err()).isZero();
      // 30 mm less two bends of 270° at a radius of 1.4 mm, and half an eye and a wire at each end
      assertThat(ran.number("length_mm")).isGreaterThan(15);
    }

    @Test
    void ofTheUsersOwnFolderIsKnownByItsName(@TempDir Path home) throws IOException {
      Path folder = Files.createDirectories(home.resolve("shared/patterns"));
      Files.writeString(folder.resolve("my-hook.yaml"), PATTERN);

      Ran ran =
          Ran.reckon(home, "link", "--pattern", "my-hook", "--wire", "0.8 mm", "--blank", "30 mm");

      assertThat(ran.exit()).as(ran.err()).isZero();
    }
  }
}
