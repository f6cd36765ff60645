package linkwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.quantity.Problem;
import linkwright.shell.DrawerBook;

/** Problems as a command tells them: {@code file:line:column: what is wrong. What is right.} */
final class Located {
  /** The file that holds what came on standard input; none of the user's. */
  static final String STANDARD_INPUT = "standard-input.yaml";

  private static final String AS_TYPED = "standard input";

  private Located() {}

  /** Whether that file holds what came on standard input: its path says nothing to the user. */
  static boolean isStandardInput(Path path) {
    return path.endsWith(STANDARD_INPUT);
  }

  static Problem asTyped(Problem problem) {
    return problem.file().endsWith(STANDARD_INPUT) ? problem.in(AS_TYPED) : problem;
  }

  /** A sentence that names those files, as they were typed. */
  static String asTyped(String sentence, List<Path> files) {
    String told = sentence;
    for (Path file : files) {
      told = isStandardInput(file) ? told.replace(file.toString(), AS_TYPED) : told;
    }
    return told;
  }

  static String of(Problem found) {
    Problem problem = asTyped(found);
    String text = new Problem("", 0, 0, problem.wrong(), problem.expected()).sentence();
    StringBuilder place = new StringBuilder(problem.file());
    if (problem.line() > 0) {
      place.append(':').append(problem.line()).append(':').append(Math.max(1, problem.column()));
    }
    return place.isEmpty() || problem.namesFile() ? text : place + ": " + text;
  }

  /** All that is wrong with what can be looked up, with her bench and with the drawer. */
  static List<String> hers(Library library, Home home) {
    List<String> told = new ArrayList<>(all(library.problems()));
    told.addAll(all(library.bench().problems()));
    told.addAll(DrawerBook.problems(home));
    return told;
  }

  static List<String> all(List<Problem> problems) {
    return problems.stream().map(Located::of).toList();
  }
}
