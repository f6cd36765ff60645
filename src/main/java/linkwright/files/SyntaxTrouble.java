package linkwright.files;

import java.util.Map;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** Says what a YAML reader stumbled over in words that need no knowledge of YAML. */
final class SyntaxTrouble {
  private record Saying(String wrong, String expected) {}

  private static final Saying INDENT =
      new Saying(
          "This line does not fit the lines above it.",
          "Lines that belong together start in the same column, and a key ends with a colon and a"
              + " space. Text with a colon, a quotation mark or a # in it stands in quotes.");

  /** What the reader's own message contains, and what it means for the person who wrote it. */
  private static final Map<String, Saying> SAYINGS =
      Map.ofEntries(
          Map.entry(
              "mapping values are not allowed here",
              new Saying(
                  "There is a second colon on this line.",
                  "Put text that holds a colon and a space in quotes, or indent the line like its"
                      + " neighbours.")),
          Map.entry(
              "found unexpected end of stream",
              new Saying("A quotation mark is opened here and never closed.", "Close it.")),
          Map.entry(
              "expected ',' or ']'",
              new Saying(
                  "A list in square brackets is not closed, or a comma is missing.",
                  "Write it like [soft, hard]; text with a comma or a bracket stands in quotes.")),
          Map.entry(
              "expected ',' or '}'",
              new Saying(
                  "A group in curly brackets is not closed, or a comma is missing.",
                  "Write it like {from: 600, to: 650}; text with a comma or a bracket stands in"
                      + " quotes.")),
          Map.entry("could not find expected ':'", new Saying("A colon is missing.", "key: value")),
          Map.entry(
              "cannot start any token",
              new Saying(
                  "A text cannot start with this character.", "Put the whole text in quotes.")),
          Map.entry(
              "found undefined alias",
              new Saying("A text cannot start with a star.", "Put the whole text in quotes.")),
          Map.entry(
              "escape",
              new Saying(
                  "A backslash in double quotes starts something unknown.",
                  "Write two backslashes for one, or use single quotes.")),
          Map.entry("expected <block end>", INDENT),
          Map.entry("sequence entries are not allowed here", INDENT),
          Map.entry("block collections are not allowed", INDENT),
          Map.entry("expected the node content", INDENT),
          Map.entry("expected '<document start>'", INDENT));

  private SyntaxTrouble() {}

  static void tell(String text, YAMLException trouble, ProblemList problems) {
    if (trouble instanceof ReaderException character) {
      int at = Math.min(character.getPosition(), text.codePointCount(0, text.length()));
      String before = text.substring(0, text.offsetByCodePoints(0, at));
      problems.add(
          1 + (int) before.chars().filter(c -> c == '\n').count(),
          1 + before.codePointCount(before.lastIndexOf('\n') + 1, before.length()),
          String.format(
              java.util.Locale.ROOT,
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
        SAYINGS.entrySet().stream()
            .filter(entry -> problem.contains(entry.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(new Saying("This cannot be read as YAML: " + problem + ".", ""));
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
