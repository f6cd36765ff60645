package linkwright.cli;

import java.util.List;
import linkwright.quantity.Problem;

/** Problems as a command tells them: {@code file:line:column: what is wrong. What is right.} */
final class Located {
  private Located() {}

  static String of(Problem problem) {
    String text = new Problem("", 0, 0, problem.wrong(), problem.expected()).sentence();
    StringBuilder place = new StringBuilder(problem.file());
    if (problem.line() > 0) {
      place.append(':').append(problem.line()).append(':').append(Math.max(1, problem.column()));
    }
    return place.isEmpty() ? text : place + ": " + text;
  }

  static List<String> all(List<Problem> problems) {
    return problems.stream().map(Located::of).toList();
  }
}
