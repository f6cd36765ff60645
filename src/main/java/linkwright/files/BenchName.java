package linkwright.files;

import java.util.List;
import linkwright.files.yaml.YamlFields;
import org.yaml.snakeyaml.error.Mark;

/**
 * Something of which her bench says a figure, by her name for it: what it is stands elsewhere.
 *
 * @param file where
 * @param group the key that it stands below
 * @param name what stands there
 * @param line its line, from 1
 * @param column its column, from 1
 */
public record BenchName(String file, String group, String name, int line, int column) {
  /** All names in a group. */
  static List<BenchName> in(YamlFields from, String group) {
    return from.names().stream()
        .map(
            name -> {
              Mark at = from.place(name).getStartMark();
              return new BenchName(
                  from.problems().file(), group, name, at.getLine() + 1, at.getColumn() + 1);
            })
        .toList();
  }
}
