package linkwright.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linkwright.files.yaml.YamlScalar;

/**
 * Changes one value in a file of keys, line by line: comments, order and all else that a person
 * wrote stay as they are.
 */
final class BenchEdit {
  /** Keys whose values are lists. */
  private static final List<String> LISTS = List.of("persons", "plate", "tools");

  private final List<String> lines;

  private BenchEdit(String text) {
    lines = new ArrayList<>(text.lines().toList());
  }

  /**
   * The text with a value set.
   *
   * @param text the file as it is; empty for none
   * @param key the key, with its groups before it and dots between: {@code prices.hour}
   * @param value what it is to be; empty takes the line out
   */
  static String set(String text, String key, String value) {
    boolean begun = text.lines().anyMatch(line -> !line.isBlank() && !line.startsWith("#"));
    BenchEdit edit = new BenchEdit(begun ? text : "format: 1\n" + text.stripTrailing());
    edit.set(List.of(key.split("\\.", -1)), value);
    return String.join("\n", edit.lines) + "\n";
  }

  private void set(List<String> path, String value) {
    int from = 0;
    int to = lines.size();
    int indent = 0;
    for (int depth = 0; depth < path.size() - 1; depth++) {
      int group = find(path.get(depth), indent, from, to);
      if (group < 0) {
        if (!value.isEmpty()) {
          insert(path.subList(depth, path.size()), value, indent, end(from, to, indent));
        }
        return;
      }
      Matcher flow = Pattern.compile("^(\\s*[^:]+:\\s*)\\{(.*)}(.*)$").matcher(lines.get(group));
      if (flow.matches()) {
        lines.set(group, flow.group(1).stripTrailing() + flow.group(3).stripTrailing());
        lines.addAll(group + 1, block(flow.group(2), indent + 2));
      }
      from = group + 1;
      to = endOfGroup(from, indent);
      indent = indentOf(from, to, indent + 2);
    }
    String key = path.get(path.size() - 1);
    int at = find(key, indent, from, to);
    if (at >= 0) {
      replace(at, key, value, indent);
    } else if (!value.isEmpty()) {
      lines.add(end(from, to, indent), line(key, value, indent));
    }
  }

  /** What stands between braces, a line each. */
  private static List<String> block(String flow, int indent) {
    return Arrays.stream(flow.split(",", -1))
        .filter(each -> !each.isBlank())
        .map(each -> " ".repeat(indent) + each.strip())
        .collect(Collectors.toList());
  }

  private int find(String key, int indent, int from, int to) {
    Pattern line =
        Pattern.compile(" {" + indent + "}[\"']?" + Pattern.quote(key) + "[\"']?\\s*:(\\s.*|$)");
    for (int i = from; i < to; i++) {
      if (line.matcher(lines.get(i)).matches()) {
        return i;
      }
    }
    return -1;
  }

  private static int indentOf(String line) {
    return line.length() - line.stripLeading().length();
  }

  private static boolean says(String line) {
    return !line.isBlank() && !line.strip().startsWith("#");
  }

  private int indentOf(int from, int to, int usual) {
    for (int i = from; i < to; i++) {
      if (says(lines.get(i))) {
        return indentOf(lines.get(i));
      }
    }
    return usual;
  }

  private int endOfGroup(int from, int indent) {
    for (int i = from; i < lines.size(); i++) {
      if (says(lines.get(i)) && indentOf(lines.get(i)) <= indent) {
        return i;
      }
    }
    return lines.size();
  }

  /** Behind the last line of the group that says anything. */
  private int end(int from, int to, int indent) {
    int end = from;
    for (int i = from; i < to; i++) {
      if (says(lines.get(i)) && indentOf(lines.get(i)) >= indent) {
        end = i + 1;
      }
    }
    return end;
  }

  private void insert(List<String> path, String value, int indent, int at) {
    for (int depth = 0; depth < path.size() - 1; depth++) {
      lines.add(at + depth, " ".repeat(indent + 2 * depth) + path.get(depth) + ":");
    }
    int deepest = path.size() - 1;
    lines.add(at + deepest, line(path.get(deepest), value, indent + 2 * deepest));
  }

  /** The remark behind a value stays; what stood below a list of lines goes. */
  private void replace(int at, String key, String value, int indent) {
    Matcher remark =
        Pattern.compile("^[^\"'#]*?(?:\"[^\"]*\"|'[^']*')?[^#\"']*?(\\s+#.*)$")
            .matcher(lines.get(at));
    String kept = remark.matches() ? remark.group(1) : "";
    while (at + 1 < lines.size()
        && says(lines.get(at + 1))
        && (indentOf(lines.get(at + 1)) > indent
            || lines.get(at + 1).startsWith(" ".repeat(indent) + "- "))) {
      lines.remove(at + 1);
    }
    if (value.isEmpty()) {
      lines.remove(at);
    } else {
      lines.set(at, line(key, value, indent) + kept);
    }
  }

  private static String line(String key, String value, int indent) {
    StringBuilder line = new StringBuilder(" ".repeat(indent));
    line.append(key).append(": ");
    if (LISTS.contains(key)) {
      line.append('[');
      String[] items = bare(value, '[', ']').split(",", -1);
      for (int i = 0; i < items.length; i++) {
        String item = items[i].strip();
        line.append(i == 0 ? "" : ", ");
        YamlScalar.quoted(line, bare(bare(item, '"', '"'), '\'', '\''));
      }
      line.append(']');
    } else if (value.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ./%-]*")) {
      line.append(value.strip());
    } else {
      YamlScalar.quoted(line, value.strip());
    }
    return line.toString();
  }

  /** What is typed with or without the marks that the file has around it. */
  private static String bare(String typed, char open, char close) {
    int last = typed.length() - 1;
    return last > 0 && typed.charAt(0) == open && typed.charAt(last) == close
        ? typed.substring(1, last)
        : typed;
  }
}
