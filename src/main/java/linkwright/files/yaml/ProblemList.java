package linkwright.files.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linkwright.quantity.Problem;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.Node;

/** Everything found wrong in one file so far. */
public final class ProblemList {
  /** So many problems of a file are told; of the others, how many there are. */
  public static final int MOST_TOLD = 20;

  private static final int LONGEST_SENTENCE = 1000;
  private static final int EXCERPT = 80;
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|“[^”]*”");

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private int more;

  /** No problems yet of that file. */
  public ProblemList(String file) {
    this.file = file;
  }

  /** The name of the file. */
  public String file() {
    return file;
  }

  /** Tells a problem at the place where a node begins. */
  public void add(Node node, String wrong, String expected) {
    Mark mark = node.getStartMark();
    add(mark.getLine() + 1, mark.getColumn() + 1, wrong, expected);
  }

  /** Tells a problem at a place, counted from 1. */
  public void add(int line, int column, String wrong, String expected) {
    if (full()) {
      more++;
    } else {
      problems.add(new Problem(file, line, column, shortened(wrong), shortened(expected)));
    }
  }

  /** Whether as many were told as anybody reads: of the rest only the number is kept. */
  public boolean full() {
    return problems.size() >= MOST_TOLD;
  }

  /** A long value is told by its beginning; what else is endless by its beginning and its end. */
  private static String shortened(String told) {
    String sentence =
        QUOTED
            .matcher(told)
            .replaceAll(quoted -> Matcher.quoteReplacement(quotedBriefly(quoted.group())));
    return sentence.length() <= LONGEST_SENTENCE
        ? sentence
        : sentence.substring(0, LONGEST_SENTENCE / 2)
            + " … "
            + sentence.substring(sentence.length() - LONGEST_SENTENCE / 2);
  }

  private static String quotedBriefly(String quoted) {
    int last = quoted.length() - 1;
    return quoted.length() <= EXCERPT
        ? quoted
        : quoted.charAt(0) + excerpt(quoted.substring(1, last)) + quoted.charAt(last);
  }

  /** How many problems were found. */
  public int size() {
    return problems.size() + more;
  }

  /** The first problems, and how many more there are. */
  public List<Problem> all() {
    List<Problem> told = new ArrayList<>(problems);
    if (more > 0) {
      told.add(Problem.more(file, more));
    }
    return List.copyOf(told);
  }

  /** The first problems of a file, and how many more there are: nobody reads a thousand. */
  public static List<Problem> first(String file, List<Problem> problems) {
    if (problems.size() <= MOST_TOLD) {
      return List.copyOf(problems);
    }
    List<Problem> told = new ArrayList<>(problems.subList(0, MOST_TOLD));
    List<Problem> rest = problems.subList(MOST_TOLD, problems.size());
    told.add(Problem.more(file, rest.stream().mapToInt(Problem::stands).sum()));
    return List.copyOf(told);
  }

  /** What stands in a file, as one line of 80 characters at most. */
  public static String excerpt(String text) {
    String shown = text.strip().replaceAll("\\p{Cntrl}|\uFFFD", "?");
    return shown.codePointCount(0, shown.length()) <= EXCERPT
        ? shown
        : shown.substring(0, shown.offsetByCodePoints(0, EXCERPT - 3)) + "…";
  }
}
