package linkwright.books;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import linkwright.books.BookScan.ScannedLine;
import linkwright.quantity.Nearest;
import linkwright.quantity.Problem;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.routine.StepId;

/** Whether the steps that a book names are in its routine still, under this or a former name. */
final class StepNames {
  private static final String OPENED = "job-opened";

  private StepNames() {}

  /** Every name that leads nowhere, where it first stands. */
  static List<Problem> problems(
      String file, List<ScannedLine> rows, Function<String, Optional<Routine>> routines) {
    Optional<Routine> routine =
        rows.stream()
            .flatMap(row -> row.entry().stream())
            .filter(entry -> entry.kind().equals(OPENED))
            .flatMap(entry -> text(entry, "routine").stream())
            .reduce((first, last) -> last)
            .flatMap(routines);
    List<Problem> problems = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (ScannedLine row : rows) {
      Optional<String> step = row.entry().flatMap(entry -> text(entry, "step"));
      if (routine.isPresent()
          && step.isPresent()
          && !step.get().isEmpty()
          && routine.get().step(new StepId(step.get())).isEmpty()
          && told.add(step.get())) {
        problems.add(problem(file, row, routine.get(), step.get()));
      }
    }
    return problems;
  }

  private static Problem problem(String file, ScannedLine row, Routine routine, String step) {
    List<StepId> ids = routine.steps().stream().map(Step::id).toList();
    String near = Nearest.of(step, StepId.words(ids)).orElse("the step that it is now");
    return new Problem(
        file,
        row.line(),
        1,
        "The step \"" + step + "\" is not in the routine " + routine.id() + " any more.",
        "If it was renamed, write was: ["
            + step
            + "] under its new name, such as "
            + near
            + ", in your own copy of the routine.");
  }

  private static Optional<String> text(BookLine entry, String field) {
    return entry.fields().get(field) instanceof String text ? Optional.of(text) : Optional.empty();
  }
}
