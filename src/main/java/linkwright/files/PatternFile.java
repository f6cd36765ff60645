package linkwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.link.Pattern;
import linkwright.quantity.Problem;

/**
 * One link pattern in a file of its own, wherever it is.
 *
 * @param pattern the pattern; empty while something is wrong
 * @param problems all that is wrong, located
 */
public record PatternFile(Optional<Pattern> pattern, List<Problem> problems) {
  /** Copies the list. */
  public PatternFile {
    problems = List.copyOf(problems);
  }

  /** Reads a pattern's file. */
  public static PatternFile read(Path path) {
    List<Problem> trouble = new ArrayList<>();
    return Home.read(path, trouble)
        .map(PatternFile::of)
        .orElseGet(() -> new PatternFile(Optional.empty(), trouble));
  }

  private static PatternFile of(DataFile file) {
    ProblemList problems = new ProblemList(file.name());
    DataRead shelves = DataRead.empty();
    YamlFields.ofFile(file.bytes(), "a pattern", problems)
        .ifPresent(fields -> PatternYaml.read(fields, shelves));
    return new PatternFile(shelves.patterns().values().stream().findFirst(), problems.all());
  }
}
