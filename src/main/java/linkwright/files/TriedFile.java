package linkwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlText;
import linkwright.fit.Tried;
import linkwright.fit.Verdict;
import linkwright.quantity.Length;
import linkwright.quantity.Problem;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A list of test pieces, as {@code - {blank: 38 mm, formers: {body: 3 mm}, length: 14.1 mm, width:
 * 5.0 mm}}; lengths may be missing, a {@code verdict} (one or a list) may stand instead. {@code
 * confirmed: yes} says that an odd measure is right.
 *
 * @param pieces the pieces in the order of the file; those with a problem are left out
 * @param toAsk those of which nobody said that they are right as they stand
 * @param problems all that is wrong, located
 */
public record TriedFile(List<Tried> pieces, List<Tried> toAsk, List<Problem> problems) {
  private static final List<String> VERDICTS =
      Stream.of(Verdict.values()).map(TriedFile::word).toList();

  /** Copies the lists. */
  public TriedFile {
    pieces = List.copyOf(pieces);
    toAsk = List.copyOf(toAsk);
    problems = List.copyOf(problems);
  }

  /** Reads a file of test pieces. */
  public static TriedFile read(Path path) {
    List<Problem> trouble = new ArrayList<>();
    return Home.read(path, trouble)
        .map(TriedFile::of)
        .orElseGet(() -> new TriedFile(List.of(), List.of(), trouble));
  }

  static TriedFile of(DataFile file) {
    ProblemList problems = new ProblemList(file.name());
    Optional<Node> document = YamlText.compose(file.bytes(), problems);
    List<Tried> toAsk = new ArrayList<>();
    List<Tried> pieces = document.map(node -> of(node, toAsk, problems)).orElseGet(List::of);
    return new TriedFile(pieces, toAsk, problems.all());
  }

  private static List<Tried> of(Node document, List<Tried> toAsk, ProblemList problems) {
    List<Tried> pieces = new ArrayList<>();
    if (!(document instanceof SequenceNode list)) {
      problems.add(
          document,
          "A file of test pieces is a list.",
          "Write - {blank: 38 mm, length: 14.1 mm, width: 5 mm}, one piece a line.");
      return pieces;
    }
    for (Node item : list.getValue()) {
      if (item instanceof MappingNode mapping) {
        YamlFields from = new YamlFields(mapping, "a test piece", problems);
        boolean confirmed = from.flag("confirmed");
        piece(from)
            .filter(piece -> saysSomething(piece, item, problems))
            .ifPresent(
                piece -> {
                  pieces.add(piece);
                  if (!confirmed) {
                    toAsk.add(piece);
                  }
                });
      } else {
        problems.add(
            item, "A test piece is a group of keys.", "Write {blank: 38 mm, length: 14.1 mm}.");
      }
    }
    return pieces;
  }

  private static boolean saysSomething(Tried piece, Node item, ProblemList problems) {
    boolean says =
        piece.lengthMm().isPresent() || piece.widthMm().isPresent() || !piece.verdicts().isEmpty();
    if (!says) {
      problems.add(
          item,
          "Nothing measured and nothing said of this piece: it teaches nothing.",
          "Write what it measured, such as length: 14.1 mm, or a verdict: "
              + VERDICTS.get(0)
              + ".");
    }
    return says;
  }

  private static Optional<Tried> piece(YamlFields from) {
    Length blank = from.value("blank", Length::readSize, new Length(1));
    Map<String, Double> formersMm = new LinkedHashMap<>();
    from.group("formers", "the formers")
        .ifPresent(
            group ->
                group
                    .all(Length::readSize)
                    .forEach((name, size) -> formersMm.put(name, size.mm())));
    OptionalDouble lengthMm = PatternYaml.mm(from.optional("length", Length::readSize));
    OptionalDouble widthMm = PatternYaml.mm(from.optional("width", Length::readSize));
    var reader = Values.word(TriedFile::verdict, VERDICTS);
    List<Verdict> verdicts =
        from.isList("verdict")
            ? from.list("verdict", reader)
            : from.optional("verdict", reader).map(List::of).orElse(List.of());
    return from.sound()
        ? Optional.of(new Tried(blank.mm(), formersMm, lengthMm, widthMm, verdicts))
        : Optional.empty();
  }

  private static Optional<Verdict> verdict(String text) {
    String word = text.toLowerCase(Locale.ROOT).replace('-', ' ').strip();
    return Stream.of(Verdict.values()).filter(v -> word(v).equals(word)).findFirst();
  }

  private static String word(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
