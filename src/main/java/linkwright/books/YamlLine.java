package linkwright.books;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** Reads a book line written by hand or by another program: any YAML that means one entry. */
final class YamlLine {
  private static final class NoField extends Exception {
    NoField() {
      super("not a value that a job book keeps", null, false, false);
    }
  }

  /** Only ever read, so all lines share it. */
  private static final Resolver TAGS = new Resolver();

  private YamlLine() {}

  static Optional<ParsedLine> parse(String line) {
    LoaderOptions limits = new LoaderOptions();
    limits.setMaxAliasesForCollections(0);
    limits.setNestingDepthLimit(FieldValues.DEEPEST + 3);
    limits.setAllowDuplicateKeys(false);
    try {
      // A reader and its constructor made anew for each line would take longer than the reading.
      StreamReader characters = new StreamReader(new StringReader(line));
      Node root = new Composer(new ParserImpl(characters, limits), TAGS, limits).getSingleNode();
      if (root instanceof SequenceNode one
          && one.getValue().size() == 1
          && one.getValue().get(0) instanceof MappingNode entry) {
        return ParsedLine.of(map(entry));
      }
      return Optional.empty();
    } catch (YAMLException | NoField unreadable) {
      return Optional.empty();
    }
  }

  private static Map<String, Object> map(MappingNode node) throws NoField {
    Map<String, Object> fields = new LinkedHashMap<>();
    for (NodeTuple tuple : node.getValue()) {
      if (!(tuple.getKeyNode() instanceof ScalarNode key)
          || fields.put(key.getValue(), value(tuple.getValueNode())) != null) {
        throw new NoField();
      }
    }
    return fields;
  }

  private static Object value(Node node) throws NoField {
    if (node instanceof MappingNode map) {
      return map(map);
    }
    if (node instanceof SequenceNode list) {
      List<Object> items = new ArrayList<>();
      for (Node item : list.getValue()) {
        items.add(value(item));
      }
      return items;
    }
    if (!(node instanceof ScalarNode scalar)) {
      throw new NoField();
    }
    String text = scalar.getValue();
    Tag tag = scalar.getTag();
    try {
      if (tag.equals(Tag.INT)) {
        return Long.parseLong(text.replace("_", ""));
      }
      if (tag.equals(Tag.FLOAT)) {
        double number = Double.parseDouble(text.replace("_", ""));
        if (!Double.isFinite(number)) {
          throw new NoField();
        }
        return number;
      }
    } catch (NumberFormatException unreadable) {
      throw new NoField();
    }
    if (tag.equals(Tag.BOOL)) {
      return text.equalsIgnoreCase("true")
          || text.equalsIgnoreCase("yes")
          || text.equalsIgnoreCase("on");
    }
    if (tag.equals(Tag.STR) || tag.equals(Tag.TIMESTAMP)) {
      return text;
    }
    throw new NoField();
  }
}
