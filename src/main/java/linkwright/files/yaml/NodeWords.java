package linkwright.files.yaml;

import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** What stands in a file, in words for sentences. */
final class NodeWords {
  private NodeWords() {}

  /** Whether a single value is none: nothing after its key, or only space. */
  static boolean isNothing(ScalarNode one) {
    return one.getTag().equals(Tag.NULL) || one.getValue().isBlank();
  }

  /** "a list", "a group of keys", "a single value (12)". */
  static String kind(Node node) {
    if (node instanceof MappingNode) {
      return "a group of keys";
    }
    if (node instanceof SequenceNode) {
      return "a list";
    }
    return node instanceof ScalarNode one && isNothing(one)
        ? "empty"
        : "a single value (" + shown(node) + ")";
  }

  /** A single value as it stands, else what it is. */
  static String shown(Node node) {
    return node instanceof ScalarNode one ? ProblemList.excerpt(one.getValue()) : kind(node);
  }

  /** The text with a capital at its start. */
  static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
