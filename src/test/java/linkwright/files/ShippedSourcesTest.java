package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

/** Every figure of the reference files says a source that is one, or says that it has none. */
class ShippedSourcesTest {
  /** Standards, statutes and offices, institutes, handbooks, makers' public sheets. */
  private static final Pattern NAMED =
      Pattern.compile(
          "NIST|CRC Handbook|Callister, (Materials Science|table)|ISO \\d+|ASTM|BS \\d+|ESPI"
              + " Metals, data sheet|Little Falls Alloys, wire maker, data sheet|Austral Wright"
              + " Metals, data sheet|Kemper, data sheet|KME, data sheet|Bruno Welz, data"
              + " sheet|Diversified Bronze, data sheet|Olin Brass, data sheet|Wieland K32|Copper"
              + " Development Association, (publication|alloy data)|Hallmarking Act"
              + " 1973|Hallmarking Convention|SI"
              + " \\d{4}/\\d+|Waarborgwet|Waarborgbesluit|FeinGehG|\\d+ U\\.?S\\.?C\\.? \\d+|\\d+"
              + " CFR|Regulation \\(EC\\)|silver-copper phase diagram");

  private static final Pattern MARKED =
      Pattern.compile("common practice, no source|no source:|from memory");

  /** Where a figure stands without a source of its own. */
  private static void figures(
      Object node, String path, String above, List<String> bare, List<String> sources) {
    if (node instanceof Map<?, ?> map) {
      String own = map.get("source") instanceof String text ? text : above;
      if (map.get("source") instanceof String text) {
        sources.add(path + ": " + text);
      }
      map.forEach((key, value) -> figures(value, path + "." + key, own, bare, sources));
    } else if (node instanceof List<?> list) {
      list.forEach(each -> figures(each, path, above, bare, sources));
    } else if (node instanceof Number && above.isEmpty() && !harmless(path)) {
      bare.add(path);
    }
  }

  /** The file's format; parts of a thousand, which are the metal's name. */
  private static boolean harmless(String path) {
    return path.endsWith(".format") || path.endsWith(".metals.fineness-permille");
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("shared"))) {
      return all.filter(path -> path.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @Test
  void no_figure_stands_without_a_source() throws IOException {
    List<String> bare = new ArrayList<>();
    List<String> sources = new ArrayList<>();
    for (Path file : files()) {
      Object read = new Yaml().load(Files.readString(file));
      figures(read, file.getFileName().toString(), "", bare, sources);
    }
    assertThat(sources).hasSizeGreaterThan(150);
    assertThat(bare).isEmpty();
  }

  @Test
  void a_source_is_a_standard_a_law_an_institute_a_handbook_a_makers_sheet_or_marked()
      throws IOException {
    List<String> doubtful = new ArrayList<>();
    for (Path file : files()) {
      List<String> sources = new ArrayList<>();
      figures(
          new Yaml().load(Files.readString(file)),
          file.getFileName().toString(),
          "",
          new ArrayList<>(),
          sources);
      sources.stream()
          .filter(text -> !NAMED.matcher(text).find() && !MARKED.matcher(text).find())
          .forEach(doubtful::add);
    }
    assertThat(doubtful).isEmpty();
  }

  /** No law is told by what somebody else wrote of it. */
  @Test
  void no_law_rests_on_a_quotation() throws IOException {
    String fineness = Files.readString(Path.of("shared/fineness.yaml"));
    assertThat(fineness).doesNotContainPattern("(?i)quoted|quotation|not read in");
  }
}
