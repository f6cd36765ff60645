package linkwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.link.Bend;
import linkwright.link.Joint;
import linkwright.link.OtherHalf;
import linkwright.link.Pattern;
import linkwright.link.PatternCheck;
import linkwright.link.PatternPart;
import linkwright.link.Run;
import linkwright.link.Side;
import linkwright.quantity.Decimals;

/**
 * A pattern's runs, bends and joints in one line, so that a kept plan can hold them: {@code
 * mirrored/closed; run/rest; bend/end/-/180/left/eye; run/as rest; join/tip to tip}.
 */
final class HeldBends {
  private static final String PART = "; ";
  private static final String NONE = "-";

  private HeldBends() {}

  /** The line; empty for a pattern that it could not be read back from. */
  static Optional<String> of(Pattern pattern) {
    List<String> parts = new ArrayList<>();
    parts.add(word(pattern.other()) + (pattern.closed() ? "/closed" : "/open"));
    pattern.path().forEach(part -> parts.add(written(part)));
    pattern.joints().forEach(joint -> parts.add("join/" + joint.words()));
    String line = String.join(PART, parts);
    return read(line, pattern, pattern.formersMm()).filter(pattern::equals).map(same -> line);
  }

  private static String written(PatternPart part) {
    if (part instanceof Run run) {
      return "run/"
          + (run.mm().isPresent()
              ? Decimals.exactly(run.mm().getAsDouble())
              : run.asRest() ? "as rest" : "rest");
    }
    Bend bend = (Bend) part;
    return List.of(
            bend.curl() ? "curl" : "bend",
            bend.over(),
            bend.to().orElse(NONE),
            Decimals.exactly(bend.turnDeg()),
            word(bend.side()),
            (bend.eye() ? "eye" : NONE) + (bend.overOnPurpose() ? "/over" : ""))
        .stream()
        .collect(Collectors.joining("/"));
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  /**
   * The pattern with the bends of a line; empty where the line says none that can be bent: a book
   * may hold anything.
   */
  static Optional<Pattern> read(String line, Pattern now, Map<String, Double> formersMm) {
    try {
      List<PatternPart> path = new ArrayList<>();
      List<Joint> joints = new ArrayList<>();
      String[] parts = line.split(PART, -1);
      for (int i = 1; i < parts.length; i++) {
        String[] words = parts[i].split("/", -1);
        switch (words[0]) {
          case "run" -> path.add(run(words[1]));
          case "join" -> joints.add(Joint.of(words[1]).orElseThrow());
          default -> path.add(bend(words));
        }
      }
      String[] whole = parts[0].split("/", -1);
      Pattern held =
          new Pattern(
              now.id(),
              now.says(),
              formersMm,
              path,
              OtherHalf.valueOf(whole[0].toUpperCase(Locale.ROOT)),
              whole[1].equals("closed"),
              joints,
              now.usual());
      return PatternCheck.of(held).isEmpty() ? Optional.of(held) : Optional.empty();
    } catch (IllegalArgumentException | IndexOutOfBoundsException | NoSuchElementException unread) {
      return Optional.empty();
    }
  }

  private static double number(String word) {
    return Decimals.read(word).orElseThrow();
  }

  private static Run run(String word) {
    return switch (word) {
      case "rest" -> Run.rest();
      case "as rest" -> Run.likeRest();
      default -> new Run(OptionalDouble.of(number(word)), false);
    };
  }

  private static Bend bend(String... words) {
    return new Bend(
        words[1],
        Optional.of(words[2]).filter(to -> !to.equals(NONE)),
        number(words[3]),
        Side.valueOf(words[4].toUpperCase(Locale.ROOT)),
        words[5].equals("eye"),
        words[0].equals("curl"),
        words.length > 6);
  }
}
