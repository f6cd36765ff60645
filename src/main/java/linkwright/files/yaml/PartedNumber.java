package linkwright.files.yaml;

import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** A decimal comma in a list between brackets, where a comma parts the items: 0,9 mm. */
final class PartedNumber {
  static final String EXPECTED = "Write it with a point, as 0.9 mm.";

  private PartedNumber() {}

  /** Whether a bare number is followed, with nothing but a comma between, by an amount. */
  static boolean is(Node item, Node next) {
    return item instanceof ScalarNode one
        && next instanceof ScalarNode other
        && one.getValue().matches("[+-]?\\d+")
        && other.getValue().matches("\\d+\\s*[^\\d\\s.].*")
        && item.getEndMark().getIndex() + 1 == next.getStartMark().getIndex();
  }

  static String wrong(Node item, Node next) {
    return "A comma parts the items of a list here, so that “"
        + ((ScalarNode) item).getValue()
        + ","
        + ((ScalarNode) next).getValue()
        + "” is two of them; neither is taken.";
  }
}
