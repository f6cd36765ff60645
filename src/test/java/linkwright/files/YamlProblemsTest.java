package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import linkwright.files.yaml.YamlText;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Whatever can be wrong with the YAML of any file, each with a file that provokes it. */
class YamlProblemsTest {
  private static void assertTold(String text, String... expected) {
    assertThat(ToldOfFile.of(DataKind.SHARED, text)).containsExactly(expected);
  }

  private static final String TRIGGER =
      """
      format: 1
      clasps:
      - clasp: trigger
        name: Trigger clasp
        inside-length-mm: 9
        mass-g: 0.6
        spring-inside: true
        source: made up for this test
      """;

  @Test
  void aSoundFileHasNoProblems() {
    assertTold(TRIGGER);
  }

  @Test
  void everythingWrongInOneFileIsToldAtOnce() {
    assertTold(
        """
        format: 1
        clasps:
        - clasp: Big Trigger
          nam: Trigger clasp
          inside-length-mm: 9 mm
          mass-g: -0.6
          mass-g: 0.6
          spring-inside: perhaps
          source: [made, up]
        """,
        "7:3: The key \"mass-g\" stands here a second time."
            + " Once in a clasp; the first is on line 6",
        "3:10: \"clasp\": \"Big Trigger\" cannot be a name in files."
            + " Small letters, digits and hyphens, such as hook-link.",
        "3:3: A clasp has no \"name\". Write name: …",
        "5:21: \"inside-length-mm\": \"9 mm\" is not a number. The key names its unit; write"
            + " 10.36.",
        "6:11: \"mass-g\": \"-0.6\" is less than nothing; write 0 or more.",
        "8:18: \"spring-inside\": \"perhaps\" is neither true nor false.",
        "9:11: \"source\" is a list. It should be a single value.",
        "4:3: The key \"nam\" is not known in a clasp. Did you mean name?");
  }

  @Nested
  class TheFileAsAWhole {
    @Test
    void isEmpty() {
      assertTold("", "1:1: The file is empty. Its first line is format: 1.");
      assertTold(" \n\n", "1:1: The file is empty. Its first line is format: 1.");
    }

    @Test
    void isOnlyComments() {
      assertTold(
          "# nothing yet\n",
          "1:1: The file holds nothing but comments. Its first line is format: 1.");
    }

    @Test
    void hasNoKeys() {
      assertTold("- 1\n- 2\n", "1:1: The file has no keys. Its first line is format: 1.");
    }

    @Test
    void hasNoFormatLine() {
      assertTold(
          TRIGGER.replace("format: 1\n", ""),
          "1:1: The file has no format line. Write format: 1 as its first line.");
    }

    @Test
    void isOfAnotherFormat() {
      assertTold(
          TRIGGER.replace("format: 1", "format: 2"),
          "1:9: This program reads files of format 1, not of format 2."
              + " Write format: 1, or use the newer Linkwright that wrote it.");
    }

    @Test
    void isHuge() {
      byte[] bytes = new byte[YamlText.LARGEST_BYTES + 1];
      Arrays.fill(bytes, (byte) '#');
      assertThat(ToldOfFile.of(DataKind.SHARED, bytes))
          .containsExactly(
              "0:0: The file is larger than 1 MB, so it is not read."
                  + " Such a file is a few kilobytes: is it the right one?");
    }

    @Test
    void isNotUtf8() {
      byte[] bytes = "format: 1\nsays: G\u00e4nse\n".getBytes(StandardCharsets.ISO_8859_1);
      assertThat(ToldOfFile.of(DataKind.SHARED, bytes))
          .containsExactly(
              "2:8: A character here is not written in UTF-8."
                  + " Save the file as UTF-8; most editors offer it under the encoding.");
    }

    @Test
    void holdsACharacterThatCannotBeShown() {
      assertTold(
          "format: 1\nsays: a\u0007b\n",
          "2:8: There is a character here that cannot be shown (U+0007)."
              + " Take it out; it may have come in with copied text.");
    }

    @Test
    void isTwoDocuments() {
      assertThat(ToldOfFile.of(DataKind.SHARED, TRIGGER + "---\nformat: 1\n"))
          .containsExactly(
              "10:1: A second document begins here, after a line ---."
                  + " One document a file: take the --- out or make two files.");
    }

    @Test
    void isNestedTooDeeply() {
      assertTold(
          "format: 1\nmetals: " + "[".repeat(200) + "]".repeat(200) + "\n",
          "0:0: The file is nested too deeply. No file of ours goes deeper than ten steps.");
    }

    @Test
    void isABillionLaughs() {
      StringBuilder text = new StringBuilder("format: 1\na0: &a0 [x]\n");
      for (int i = 1; i < 30; i++) {
        text.append("a%d: &a%d [*a%d, *a%d, *a%d]\n".formatted(i, i, i - 1, i - 1, i - 1));
      }
      assertTold(
          text.toString(),
          "0:0: The file repeats itself with too many aliases (*). Write it out instead.");
    }

    @Test
    void startsWithAByteOrderMarkAndIsReadAllTheSame() {
      assertTold("\uFEFF" + TRIGGER);
    }
  }

  @Nested
  class ALine {
    @Test
    void isIndentedWithATab() {
      assertTold(
          "format: 1\nclasps:\n\t- clasp: trigger\n",
          "3:1: There is a tab in the space before the text."
              + " Indent with spaces, two for each step.");
    }

    @Test
    void hasASecondColon() {
      assertTold(
          "format: 1\nsays: one: two\n",
          "2:10: There is a second colon on this line."
              + " Put text that holds a colon and a space in quotes, or indent the line like its"
              + " neighbours.");
    }

    @Test
    void opensAQuotationMarkAndNeverClosesIt() {
      assertTold(
          "format: 1\nsays: \"one\nmore: 2\n",
          "2:7: A quotation mark is opened here and never closed. Close it.");
    }

    @Test
    void leavesAListOpen() {
      assertTold(
          "format: 1\nfinenesses: [800, 925\nmore: 2\n",
          "3:5: A list in square brackets is not closed, or a comma is missing."
              + " Write it like [soft, hard]; text with a comma or a bracket stands in quotes.");
    }

    @Test
    void leavesAGroupOpen() {
      assertTold(
          "format: 1\nmelts-c: {from: 600, to: 650\n",
          "3:1: A group in curly brackets is not closed, or a comma is missing."
              + " Write it like {from: 600, to: 650}; text with a comma or a bracket stands in"
              + " quotes.");
    }

    @Test
    void lacksItsColon() {
      assertTold("format: 1\nclasps\n", "3:1: A colon is missing. key: value");
    }

    @Test
    void startsWithACharacterOfYamlsOwn() {
      assertTold(
          "format: 1\nsays: @home\n",
          "2:7: A text cannot start with this character. Put the whole text in quotes.");
      assertTold(
          "format: 1\nsays: *star\n",
          "2:7: A text cannot start with a star. Put the whole text in quotes.");
    }

    @Test
    void holdsABackslashThatMeansNothing() {
      assertTold(
          "format: 1\nsays: \"a\\qb\"\n",
          "2:10: A backslash in double quotes starts something unknown."
              + " Write two backslashes for one, or use single quotes.");
    }

    @Test
    void doesNotFitTheLinesAbove() {
      assertTold(
          "format: 1\nclasps:\n  - clasp: a\n name: b\n",
          "4:2: This line does not fit the lines above it. Lines that belong together start in the"
              + " same column, and a key ends with a colon and a space. Text with a colon, a"
              + " quotation mark or a # in it stands in quotes.");
    }
  }

  @Nested
  class AValue {
    private void assertValue(String key, String value, String... expected) {
      assertTold(TRIGGER.replaceFirst("(?m)^  " + key + ":.*", "  " + key + ":" + value), expected);
    }

    @Test
    void isMissing() {
      assertValue("name", "", "4:3: There is nothing after \"name:\". Write its value.");
      assertValue("name", " ''", "4:3: There is nothing after \"name:\". Write its value.");
    }

    @Test
    void isAGroupWhereASingleValueBelongs() {
      assertValue(
          "name", " {a: b}", "4:9: \"name\" is a group of keys. It should be a single value.");
    }

    @Test
    void hasADecimalComma() {
      assertValue(
          "mass-g", " 0,6", "6:11: \"mass-g\": \"0,6\" has a comma: write it with a point, 0.6.");
    }

    @Test
    void isTooLarge() {
      assertValue("mass-g", " 1e999", "6:11: \"mass-g\": \"1e999\" is too large a number.");
    }

    @Test
    void isNoNumberAtAll() {
      assertValue(
          "mass-g",
          " .nan",
          "6:11: \"mass-g\": \".nan\" is not a number. The key names its unit; write 10.36.");
    }
  }

  @Nested
  class AList {
    @Test
    void isASingleValue() {
      assertTold(
          "format: 1\nclasps: trigger\n",
          "2:9: \"clasps\" is a single value (trigger). It should be a list, such as [soft, hard] or"
              + " one item a line after a hyphen.");
    }

    @Test
    void holdsAnItemOfTheWrongKind() {
      assertTold(
          "format: 1\nclasps:\n- trigger\n",
          "3:3: An item of \"clasps\" is a single value (trigger). A group of keys for a clasp.");
      assertTold(
          "format: 1\nfineness:\n- {country: X, family: gold, finenesses: [[585]],"
              + " compulsory: no, date: d, source: s}\n",
          "3:43: An item of \"finenesses\" is a list. A single value.");
    }
  }

  @Nested
  class AKey {
    @Test
    void isAList() {
      assertTold(
          TRIGGER + "? [a, b]\n: c\n",
          "9:3: A key must be a word, not a list or a group. key: value");
    }

    @Test
    void isUnlikeAnyKnown() {
      assertTold(
          TRIGGER + "colour: red\n",
          "9:1: The key \"colour\" is not known in this file."
              + " Known here: format, metals, solders, fineness, clasps, limits, glossary, tools.");
    }
  }
}
