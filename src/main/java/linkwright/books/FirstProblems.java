package linkwright.books;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import linkwright.files.yaml.ProblemList;
import linkwright.quantity.Problem;

/**
 * The first problems of a book in words, and how many there are in all: nobody reads the words of
 * eighty thousand, and finding them would take seconds.
 */
final class FirstProblems {
  private final List<Problem> worded = new ArrayList<>();
  private int unworded;

  void add(Supplier<Problem> problem) {
    if (worded.size() < ProblemList.MOST_TOLD) {
      worded.add(problem.get());
    } else {
      unworded++;
    }
  }

  /** The first, and last of all how many more there are. */
  List<Problem> of(String file) {
    List<Problem> told = new ArrayList<>(worded);
    if (unworded > 0) {
      told.add(Problem.more(file, unworded));
    }
    return List.copyOf(told);
  }
}
