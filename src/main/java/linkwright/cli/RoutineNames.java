package linkwright.cli;

import linkwright.files.Library;
import linkwright.quantity.Nearest;

/** What is said of a routine that there is not. */
final class RoutineNames {
  private RoutineNames() {}

  static String unknown(String typed, Library library) {
    return "There is no routine \""
        + typed
        + "\". "
        + Nearest.of(typed, library.routines().keySet())
            .map(near -> "Did you mean " + near + "?")
            .orElse("There are: " + String.join(", ", library.routines().keySet()) + ".");
  }
}
