package linkwright.files.yaml;

import java.util.List;
import java.util.Locale;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** Says what a YAML reader stumbled over in words that need no knowledge of YAML. */
final class SyntaxTrouble {
  private static final String INDENTED = "This line does not fit the lines above it.";
  private static final String INDENT =
      "Lines that belong together start in the same column, and a key ends with a colon and a"
          + " space. Text with a colon, a quotation mark or a # in it stands in quotes.";

  /**
   * What the reader's own message contains, and what it means for the person who wrote the file.
   */
  private record Saying(String message, String wrong, String expected) {}

  private static final List<Saying> SAYINGS =
      List.of(
          new Saying(
              "mapping values are not allowed here",
              "There is a second colon on this line.",
              "Put text that holds a colon and a space in quotes, or indent the line like its"
                  + " neighbours."),
          new Saying(
              "found unexpected end of stream",
              "A quotation mark is opened here and never closed.",
              "Close it."),
          new Saying(
              "expected ',' or ']'",
              "A list in square brackets is not closed, or a comma is missing.",
              "Write it like [soft, hard]; text with a comma or a bracket stands in quotes."),
          new Saying(
              "expected ',' or '}'",
              "A group in curly brackets is not closed, or a comma is missing.",
              "Write it like {from: 600, to: 650}; text with a comma or a bracket stands in"
                  + " quotes."),
          new Saying("could not find expected ':'", "A colon is missing.", "key: value"),
          new Saying(
              "cannot start any token",
              "A text cannot start with this character.",
              "Put the whole text in quotes."),
          new Saying(
              "found undefined alias",
              "A text cannot start with a star.",
              "Put the whole text in quotes."),
          new Saying(
              "escape",
              "A backslash in double quotes starts something unknown.",
              "Write two backslashes for one, or use single quotes."),
          new Saying("expected <block end>", INDENTED, INDENT),
          new Saying("sequence entries are not allowed here", INDENTED, INDENT),
          new Saying("block collections are not allowed", INDENTED, INDENT),
          new Saying("expected the node content", INDENTED, INDENT),
          new Saying("expected '<document start>'", INDENTED, INDENT));

  private SyntaxTrouble() {}

  static void tell(String text, YAMLException trouble, ProblemList problems) {
    if (trouble instanceof ReaderException character) {
      int at = Math.min(character.getPosition(), text.codePointCount(0, text.length()));
      String before = text.substring(0, text.offsetByCodePoints(0, at));
      problems.add(
          1 + (int) before.chars().filter(c -> c == '\n').count(),
          1 + before.codePointCount(before.lastIndexOf('\n') + 1, before.length()),
          String.format(
              Locale.ROOT,
              "There is a character here that cannot be shown (U+%04X).",
              character.getCodePoint()),
          "Take it out; it may have come in with copied text.");
    } else if (trouble instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      located(text, marked, problems);
    } else {
      limit(trouble, problems);
    }
  }

  private static void located(String text, MarkedYAMLException trouble, ProblemList problems) {
    Mark mark = trouble.getProblemMark();
    String problem = String.valueOf(trouble.getProblem());
    boolean neverClosed = problem.contains("end of stream") && trouble.getContextMark() != null;
    Mark place = neverClosed ? trouble.getContextMark() : mark;
    int tab = tabBefore(text, place.getLine());
    if (tab > 0) {
      problems.add(
          place.getLine() + 1,
          tab,
          "There is a tab in the space before the text.",
          "Indent with spaces, two for each step.");
      return;
    }
    Saying saying =
        SAYINGS.stream()
            .filter(known -> problem.contains(known.message()))
            .findFirst()
            .orElse(new Saying("", "This cannot be read as YAML: " + problem + ".", ""));
    problems.add(place.getLine() + 1, place.getColumn() + 1, saying.wrong(), saying.expected());
  }

  private static void limit(YAMLException trouble, ProblemList problems) {
    String message = String.valueOf(trouble.getMessage());
    if (message.contains("Nesting Depth")) {
      problems.add(
          0, 0, "The file is nested too deeply.", "No file of ours goes deeper than ten steps.");
    } else if (message.contains("aliases")) {
      problems.add(
          0, 0, "The file repeats itself with too many aliases (*).", "Write it out instead.");
    } else {
      problems.add(0, 0, "The file cannot be read as YAML: " + message + ".", "");
    }
  }

  /** The column of a tab in the indentation of a line, from 1; 0 if there is none. */
  private static int tabBefore(String text, int line) {
    String[] lines = text.split("\n", -1);
    if (line >= lines.length) {
      return 0;
    }
    for (int i = 0; i < lines[line].length(); i++) {
      char c = lines[line].charAt(i);
      if (c == '\t') {
        return i + 1;
      }
      if (c != ' ') {
        return 0;
      }
    }
    return 0;
  }
}
