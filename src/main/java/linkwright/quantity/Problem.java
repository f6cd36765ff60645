package linkwright.quantity;

/**
 * Something wrong in what a person wrote, with its place.
 *
 * @param file the file's name as the user knows it; empty when it came from elsewhere
 * @param line line, counted from 1; 0 when there is none
 * @param column column, counted from 1; 0 when there is none
 * @param wrong what is wrong, a clause or a sentence
 * @param expected what would be right; empty when the first part already says it
 */
public record Problem(String file, int line, int column, String wrong, String expected) {
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
    StringBuilder text = new StringBuilder(place());
    if (text.length() > 0) {
      text.append(": ");
    }
    text.append(closed(wrong));
    if (!expected.isBlank()) {
      text.append(' ').append(closed(expected));
    }
    return text.toString();
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
