package linkwright.books;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.books.BookScan.ScannedLine;
import linkwright.books.facts.FactCodecs;
import linkwright.files.yaml.ProblemList;
import linkwright.quantity.Nearest;
import linkwright.quantity.Problem;

/** Entries of kinds that mean nothing here: a newer version may have written them. */
final class UnknownKinds {
  private UnknownKinds() {}

  /**
   * Each such kind where it first stands.
   *
   * @param rows the lines of the entries that are in use
   */
  static List<Problem> problems(String file, List<ScannedLine> rows) {
    Map<String, ScannedLine> first = new LinkedHashMap<>();
    Map<String, Integer> count = new LinkedHashMap<>();
    for (ScannedLine row : rows) {
      String kind = row.entry().orElseThrow().kind();
      if (!FactCodecs.knows(kind)) {
        first.putIfAbsent(kind, row);
        count.merge(kind, 1, Integer::sum);
      }
    }
    FirstProblems problems = new FirstProblems();
    first.forEach((kind, row) -> problems.add(() -> problem(file, row, kind, count.get(kind))));
    return problems.of(file);
  }

  private static Problem problem(String file, ScannedLine row, String kind, int count) {
    String which =
        count == 1 ? "An entry of this kind is" : "The " + count + " entries of this kind are";
    String near =
        Nearest.of(kind, FactCodecs.kinds()).map(known -> ", or meant " + known).orElse("");
    return new Problem(
        file,
        row.line(),
        1,
        which + " not known here: \"" + ProblemList.excerpt(kind) + "\".",
        "A newer Linkwright may have written "
            + (count == 1 ? "it" : "them")
            + near
            + ". Kept and passed over.");
  }
}
