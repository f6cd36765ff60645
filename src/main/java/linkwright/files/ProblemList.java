package linkwright.files;

import java.util.ArrayList;
import java.util.List;
import linkwright.quantity.Problem;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.Node;

/** Everything found wrong in one file so far. */
final class ProblemList {
  private final String file;
  private final List<Problem> problems = new ArrayList<>();

  ProblemList(String file) {
    this.file = file;
  }

  String file() {
    return file;
  }

  /** Tells a problem at the place where a node begins. */
  void add(Node node, String wrong, String expected) {
    Mark mark = node.getStartMark();
    add(mark.getLine() + 1, mark.getColumn() + 1, wrong, expected);
  }

  /** Tells a problem at a place, counted from 1. */
  void add(int line, int column, String wrong, String expected) {
    problems.add(new Problem(file, line, column, wrong, expected));
  }

  int size() {
    return problems.size();
  }

  List<Problem> all() {
    return List.copyOf(problems);
  }
}
