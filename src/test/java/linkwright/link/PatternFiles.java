package linkwright.link;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import linkwright.quantity.Length;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The patterns that ship, read just well enough to be tested without the room of files. */
public final class PatternFiles {
  private PatternFiles() {}

  public static List<Pattern> all() {
    try (Stream<Path> files = Files.list(Path.of("shared", "patterns"))) {
      return files
          .sorted()
          .filter(f -> f.toString().endsWith(".yaml"))
          .map(PatternFiles::read)
          .toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  public static Pattern named(String id) {
    return all().stream().filter(pattern -> pattern.id().equals(id)).findFirst().orElseThrow();
  }

  private static Pattern read(Path file) {
    try {
      return pattern(
          new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(file)));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static Pattern pattern(Map<String, Object> file) {
    Map<String, Double> formers = new LinkedHashMap<>();
    map(file.get("formers")).forEach((name, size) -> formers.put(name, mm(size)));
    List<PatternPart> path = new ArrayList<>();
    for (Object bit : (List<?>) file.getOrDefault("half", file.get("whole"))) {
      path.add(bit(map(bit)));
    }
    List<Joint> joints = new ArrayList<>();
    for (Object joint : (List<?>) file.getOrDefault("joints", List.of())) {
      joints.add(Joint.of((String) map(joint).get("join")).orElseThrow());
    }
    String other = (String) file.getOrDefault("other", "none");
    return new Pattern(
        (String) file.get("pattern"),
        (String) file.get("says"),
        formers,
        path,
        OtherHalf.valueOf(other.toUpperCase(java.util.Locale.ROOT)),
        Boolean.TRUE.equals(file.get("closed")),
        joints,
        Optional.ofNullable(file.get("usual")).map(usual -> usual(map(usual))));
  }

  private static UsualSizes usual(Map<String, Object> usual) {
    return new UsualSizes(
        mm(usual.get("wire")),
        mm(usual.get("blank")),
        optional(usual.get("ring-inside")),
        optional(usual.get("ring-wire")));
  }

  private static PatternPart bit(Map<String, Object> bit) {
    if (bit.containsKey("run")) {
      return switch (String.valueOf(bit.get("run"))) {
        case "rest" -> Run.rest();
        case "as rest" -> Run.likeRest();
        default -> Run.of(mm(bit.get("run")));
      };
    }
    boolean curl = bit.containsKey("curl");
    Map<String, Object> bend = map(bit.get(curl ? "curl" : "bend"));
    return new Bend(
        (String) bend.get("over"),
        Optional.ofNullable((String) bend.get("to")),
        ((Number) bend.get("turn")).doubleValue(),
        Side.valueOf(((String) bend.get("side")).toUpperCase(java.util.Locale.ROOT)),
        Boolean.TRUE.equals(bend.get("eye")),
        curl,
        Boolean.TRUE.equals(bit.get("over")));
  }

  private static OptionalDouble optional(Object size) {
    return size == null ? OptionalDouble.empty() : OptionalDouble.of(mm(size));
  }

  private static double mm(Object size) {
    return Length.read((String) size).orThrow().mm();
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(Object value) {
    return (Map<String, Object>) value;
  }
}
