package linkwright.files.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * The keys of one mapping of a file, read one by one. What is wrong is told to the file's list and
 * a stand-in is given back, so that reading goes on and finds the rest; {@link #sound} then says
 * whether the values may be used. A key that nobody asked for is unknown.
 */
public final class YamlFields {
  private final MappingNode node;
  private final String what;
  private final ProblemList problems;
  private final Map<String, Node> keys = new LinkedHashMap<>();
  private final Map<String, Node> values = new LinkedHashMap<>();
  private final Set<String> asked = new LinkedHashSet<>();
  private static final String LIST =
      "a list, such as [soft, hard] or one item a line after a hyphen";
  private final int problemsBefore;
  private boolean closed;

  /**
   * Opens a mapping.
   *
   * @param what what the mapping describes, with its article, for sentences: "a step"
   */
  public YamlFields(MappingNode node, String what, ProblemList problems) {
    this.node = node;
    this.what = what;
    this.problems = problems;
    this.problemsBefore = problems.size();
    for (NodeTuple tuple : node.getValue()) {
      Node key = tuple.getKeyNode();
      if (!(key instanceof ScalarNode scalar)) {
        problems.add(key, "A key must be a word, not a list or a group.", "key: value");
      } else if (values.containsKey(scalar.getValue())) {
        Node first = keys.get(scalar.getValue());
        problems.add(
            key,
            "The key \"" + scalar.getValue() + "\" stands here a second time.",
            "Once in " + what + "; the first is on line " + (first.getStartMark().getLine() + 1));
      } else {
        keys.put(scalar.getValue(), key);
        values.put(scalar.getValue(), tuple.getValueNode());
      }
    }
  }

  /** Whether the file's own keys hold that one; for telling what sort of file it is. */
  public boolean names(String key) {
    return values.containsKey(key);
  }

  /** The document of a file as fields, after looking at its format line. */
  public static Optional<YamlFields> ofFile(byte[] bytes, String what, ProblemList problems) {
    Optional<Node> document = YamlText.compose(bytes, problems);
    if (document.isEmpty()) {
      return Optional.empty();
    }
    if (!(document.get() instanceof MappingNode mapping)) {
      problems.add(document.get(), "The file has no keys.", "Its first line is format: 1.");
      return Optional.empty();
    }
    YamlFields fields = new YamlFields(mapping, what, problems);
    fields.format();
    return Optional.of(fields);
  }

  /** Looks at the format line if there is one; files that a user writes in passing need none. */
  public void formatIfThere() {
    if (names("format")) {
      format();
    }
  }

  /** Tells if the format is not said, or is none that this program knows. */
  public void format() {
    Optional<Node> format = find("format");
    if (format.isEmpty()) {
      problems.add(1, 1, "The file has no format line.", "Write format: 1 as its first line.");
    } else if (!(format.get() instanceof ScalarNode one && one.getValue().equals("1"))) {
      problems.add(
          format.get(),
          "This program reads files of format 1, not of format "
              + NodeWords.shown(format.get())
              + ".",
          "Write format: 1, or use the newer Linkwright that wrote it.");
    }
  }

  /** Whether a key is there. */
  public boolean has(String key) {
    return find(key).isPresent();
  }

  /** A text that must be there and say something. */
  public String text(String key) {
    return scalar(key, true).map(ScalarNode::getValue).orElse("");
  }

  /** A text that may be missing: then it is empty. */
  public String textOrEmpty(String key) {
    return scalar(key, false).map(ScalarNode::getValue).orElse("");
  }

  /** A value that must be there, such as a length with its unit; the stand-in if it is not. */
  public <T> T value(String key, Function<String, Read<T>> reader, T standIn) {
    return scalar(key, true).flatMap(one -> read(one, key, reader)).orElse(standIn);
  }

  /** A value that may be missing. */
  public <T> Optional<T> optional(String key, Function<String, Read<T>> reader) {
    return scalar(key, false).flatMap(one -> read(one, key, reader));
  }

  /** True or false; false if it is missing. */
  public boolean flag(String key) {
    return optional(key, Values::flag).orElse(false);
  }

  /** A list of values, each a scalar; empty if it is missing. */
  public <T> List<T> list(String key, Function<String, Read<T>> reader) {
    List<T> items = new ArrayList<>();
    List<Node> all = sequence(key);
    for (int i = 0; i < all.size(); i++) {
      Node item = all.get(i);
      if (i + 1 < all.size() && PartedNumber.is(item, all.get(i + 1))) {
        problems.add(item, PartedNumber.wrong(item, all.get(++i)), PartedNumber.EXPECTED);
        continue;
      }
      if (item instanceof ScalarNode one && !NodeWords.isNothing(one)) {
        read(one, key, reader).ifPresent(items::add);
      } else {
        problems.add(
            item, "An item of \"" + key + "\" is " + NodeWords.kind(item) + ".", "A single value.");
      }
    }
    return List.copyOf(items);
  }

  /** A list of texts; empty if it is missing. */
  public List<String> texts(String key) {
    return list(key, Read::good);
  }

  /** A group of keys, if it is there. */
  public Optional<YamlFields> group(String key, String groupWhat) {
    Optional<Node> found = find(key);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    if (found.get() instanceof MappingNode mapping) {
      return Optional.of(new YamlFields(mapping, groupWhat, problems));
    }
    wrongKind(found.get(), key, "a group of keys, such as {from: 600, to: 650}");
    return Optional.empty();
  }

  /** A list of groups of keys; empty if it is missing. */
  public List<YamlFields> groups(String key, String groupWhat) {
    return groups(key, groupWhat, LIST);
  }

  /**
   * The same.
   *
   * @param wanted what it should be, for whoever wrote no list: a list, such as …
   */
  public List<YamlFields> groups(String key, String groupWhat, String wanted) {
    List<YamlFields> groups = new ArrayList<>();
    for (Node item : sequence(key, wanted)) {
      if (item instanceof MappingNode mapping) {
        groups.add(new YamlFields(mapping, groupWhat, problems));
      } else {
        problems.add(
            item,
            "An item of \"" + key + "\" is " + NodeWords.kind(item) + ".",
            "A group of keys for " + groupWhat + ".");
      }
    }
    return List.copyOf(groups);
  }

  /** All keys with scalar values, for names of the user's own choice; closes the group. */
  public <T> Map<String, T> all(Function<String, Read<T>> reader) {
    Map<String, T> all = new LinkedHashMap<>();
    for (String key : List.copyOf(values.keySet())) {
      scalar(key, true).flatMap(one -> read(one, key, reader)).ifPresent(v -> all.put(key, v));
    }
    return all;
  }

  /** The names of all keys as they stand. */
  public List<String> names() {
    return List.copyOf(values.keySet());
  }

  /** The groups of a list that has been read, for telling more about them. */
  public List<YamlFields> groupsAgain(String key) {
    List<YamlFields> groups = new ArrayList<>();
    if (values.get(key) instanceof SequenceNode sequence) {
      for (Node item : sequence.getValue()) {
        if (item instanceof MappingNode mapping) {
          groups.add(new YamlFields(mapping, what, problems));
        }
      }
    }
    return List.copyOf(groups);
  }

  /** Whether a key has exactly that text. */
  public boolean saysPlainly(String key, String text) {
    return values.get(key) instanceof ScalarNode one && one.getValue().equals(text);
  }

  /** Tells that a key must be there, if it is not. */
  public void require(String key, String expected) {
    if (!has(key)) {
      problems.add(node, NodeWords.capital(what) + " has no \"" + key + "\".", expected);
    }
  }

  /** Tells a problem of the value at a key, or of the whole group if the key is missing. */
  public void wrong(String key, String wrong, String expected) {
    problems.add(place(key), wrong, expected);
  }

  /** Tells a problem of the value at a key, at the value; of the whole group if it is missing. */
  public void wrongValue(String key, String wrong, String expected) {
    problems.add(values.getOrDefault(key, node), wrong, expected);
  }

  /** Whether a list stands at a key. */
  public boolean isList(String key) {
    return values.get(key) instanceof SequenceNode;
  }

  /** Whether a single value stands at a key. */
  public boolean isScalar(String key) {
    return values.get(key) instanceof ScalarNode;
  }

  /** Where a key stands, or the group if it is missing. */
  public Node place(String key) {
    return keys.getOrDefault(key, node);
  }

  /** What is found wrong in the file so far. */
  public ProblemList problems() {
    return problems;
  }

  /** Tells that no key says what sort of file this is. */
  public void unknown(List<String> tellingKeys) {
    String near =
        keys.keySet().stream()
            .flatMap(
                key ->
                    Nearest.of(key, tellingKeys).stream()
                        .map(known -> "Did you mean " + known + " by " + key + "?"))
            .findFirst()
            .orElse("Files are told by one of the keys " + String.join(", ", tellingKeys) + ".");
    problems.add(node, "No key says what sort of file this is.", near);
  }

  /** Tells the keys that nobody asked for, and answers whether all was well within this group. */
  public boolean sound() {
    if (!closed) {
      closed = true;
      keys.forEach(
          (key, keyNode) -> {
            if (!asked.contains(key)) {
              problems.add(
                  keyNode,
                  "The key \"" + key + "\" is not known in " + what + ".",
                  problems.full() ? "" : nearestTo(key));
            }
          });
    }
    return problems.size() == problemsBefore;
  }

  private String nearestTo(String key) {
    return Nearest.of(key, asked)
        .map(near -> "Did you mean " + near + "?")
        .orElse("Known here: " + String.join(", ", asked) + ".");
  }

  private Optional<Node> find(String key) {
    asked.add(key);
    return Optional.ofNullable(values.get(key));
  }

  private Optional<ScalarNode> scalar(String key, boolean needed) {
    Optional<Node> found = find(key);
    if (found.isEmpty()) {
      if (needed) {
        problems.add(
            node, NodeWords.capital(what) + " has no \"" + key + "\".", "Write " + key + ": …");
      }
      return Optional.empty();
    }
    if (!(found.get() instanceof ScalarNode one)) {
      wrongKind(found.get(), key, "a single value");
      return Optional.empty();
    }
    if (NodeWords.isNothing(one)) {
      problems.add(
          place(key),
          "There is nothing after \"" + key + ":\".",
          needed ? "Write its value." : "Write its value, or take the key out.");
      return Optional.empty();
    }
    return Optional.of(one);
  }

  private List<Node> sequence(String key) {
    return sequence(key, LIST);
  }

  private List<Node> sequence(String key, String wanted) {
    Optional<Node> found = find(key);
    if (found.isEmpty()) {
      return List.of();
    }
    if (found.get() instanceof SequenceNode sequence) {
      return sequence.getValue();
    }
    wrongKind(found.get(), key, wanted);
    return List.of();
  }

  private <T> Optional<T> read(ScalarNode one, String key, Function<String, Read<T>> reader) {
    Read<T> read = reader.apply(one.getValue());
    read.problem().ifPresent(sentence -> problems.add(one, "\"" + key + "\": " + sentence, ""));
    return read.found();
  }

  private void wrongKind(Node node, String key, String wanted) {
    problems.add(
        node, "\"" + key + "\" is " + NodeWords.kind(node) + ".", "It should be " + wanted + ".");
  }
}
