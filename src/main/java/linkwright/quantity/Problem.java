package linkwright.quantity;

/**
 * Something wrong in what a person wrote, with its place.
 *
 * @param file the file's name as the user knows it; empty when it came from elsewhere
 * @param line line, counted from 1; 0 when there is none
 * @param column column, counted from 1; 0 when there is none
 * @param wrong what is wrong, a clause or a sentence
 * @param expected what would be right; empty when the first part already says it
 * @param stands for how many problems it stands: 1, but for a line that says how many more there
 *     are
 */
public record Problem(
    String file, int line, int column, String wrong, String expected, int stands) {
  /** A problem that stands for itself. */
  public Problem(String file, int line, int column, String wrong, String expected) {
    this(file, line, column, wrong, expected, 1);
  }

  /** That so many more were found in a file than are told. */
  public static Problem more(String file, int more) {
    return new Problem(
        file,
        0,
        0,
        more == 1 ? "One problem more." : more + " problems more.",
        "Mend these first, then check again.",
        more);
  }

  /** A place before the beginning of a file is the programmer's fault. */
  public Problem {
    if (line < 0 || column < 0) {
      throw new IllegalArgumentException("line " + line + ", column " + column + " is below 0");
    }
  }

  /** The same trouble in a file of another name. */
  public Problem in(String named) {
    return new Problem(named, line, column, wrong, expected);
  }

  /** The whole of it in one line: where, what is wrong, what would be right. */
  public String sentence() {
    // Where the sentence begins with the file's name it needs no other place.
    StringBuilder text = new StringBuilder(namesFile() ? "" : place());
    if (text.length() > 0) {
      text.append(": ");
    }
    text.append(closed(wrong));
    if (!expected.isBlank()) {
      text.append(' ').append(closed(expected));
    }
    return text.toString();
  }

  /** Whether what is wrong is told of the whole file and names it. */
  public boolean namesFile() {
    int at = file.isEmpty() ? -1 : wrong.indexOf(file);
    // A point that ends a sentence is no part of a longer name.
    boolean wholeName =
        at >= 0
            && (at == 0 || wrong.charAt(at - 1) == ' ')
            && wrong.substring(at + file.length()).matches("(?s)(|[ :,;].*|\\.( .*)?)");
    return line == 0 && wholeName;
  }

  /** Where it is: {@code my-chain.yaml, line 3, column 7}, as much of it as is known. */
  public String place() {
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(text.length() > 0 ? ", line " : "line ").append(line);
      if (column > 0) {
        text.append(", column ").append(column);
      }
    }
    return text.toString();
  }

  private static String closed(String clause) {
    String text = clause.strip();
    boolean ended = text.endsWith(".") || text.endsWith("?") || text.endsWith("!");
    return ended || text.isEmpty() ? text : text + ".";
  }
}
