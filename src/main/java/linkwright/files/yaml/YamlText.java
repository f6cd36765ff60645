package linkwright.files.yaml;

import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;

/**
 * From the bytes of a file to located YAML nodes, within limits. Only nodes are made, never
 * objects: nothing a file says can start anything.
 */
public final class YamlText {
  /** Larger than any file a person writes; what is larger is not one of ours. */
  public static final int LARGEST_BYTES = 1 << 20;

  private static final int DEEPEST = 40;
  private static final int MOST_ALIASES = 50;

  private YamlText() {}

  /** The file's one document, or empty after telling why there is none. */
  public static Optional<Node> compose(byte[] bytes, ProblemList problems) {
    return text(bytes, problems).flatMap(text -> document(text, problems));
  }

  /** The text of a file, or empty after telling why it is not read. */
  public static Optional<String> text(byte[] bytes, ProblemList problems) {
    if (bytes.length > LARGEST_BYTES) {
      problems.add(
          0,
          0,
          "The file is larger than 1 MB, so it is not read.",
          "Such a file is a few kilobytes: is it the right one?");
      return Optional.empty();
    }
    return decode(bytes, problems);
  }

  private static Optional<Node> document(String text, ProblemList problems) {
    if (text.isBlank()) {
      problems.add(1, 1, "The file is empty.", "Its first line is format: 1.");
      return Optional.empty();
    }
    LoaderOptions limits = new LoaderOptions();
    limits.setMaxAliasesForCollections(MOST_ALIASES);
    limits.setNestingDepthLimit(DEEPEST);
    limits.setCodePointLimit(LARGEST_BYTES);
    try {
      Iterator<Node> documents =
          new Yaml(new SafeConstructor(limits)).composeAll(new StringReader(text)).iterator();
      if (!documents.hasNext()) {
        problems.add(1, 1, "The file holds nothing but comments.", "Its first line is format: 1.");
        return Optional.empty();
      }
      Node first = documents.next();
      if (documents.hasNext()) {
        problems.add(
            documents.next(),
            "A second document begins here, after a line ---.",
            "One document a file: take the --- out or make two files.");
      }
      return Optional.of(first);
    } catch (YAMLException unreadable) {
      SyntaxTrouble.tell(text, unreadable, problems);
      return Optional.empty();
    }
  }

  private static Optional<String> decode(byte[] bytes, ProblemList problems) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (!result.isError()) {
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }
    int lineStart = text.lastIndexOf('\n') + 1;
    problems.add(
        1 + (int) text.chars().filter(c -> c == '\n').count(),
        1 + text.codePointCount(lineStart, text.length()),
        "A character here is not written in UTF-8.",
        "Save the file as UTF-8; most editors offer it under the encoding.");
    return Optional.empty();
  }
}
