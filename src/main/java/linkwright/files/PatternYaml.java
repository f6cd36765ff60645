package linkwright.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.link.Bend;
import linkwright.link.Joint;
import linkwright.link.OtherHalf;
import linkwright.link.Pattern;
import linkwright.link.PatternCheck;
import linkwright.link.PatternPart;
import linkwright.link.Run;
import linkwright.link.Side;
import linkwright.link.UsualSizes;
import linkwright.quantity.Angle;
import linkwright.quantity.Length;
import linkwright.quantity.Read;

/** A link pattern from its file. */
final class PatternYaml {
  private static final Length NO_LENGTH = new Length(0);

  private PatternYaml() {}

  static void read(YamlFields file, DataRead shelves) {
    pattern(file)
        .ifPresent(pattern -> shelves.patterns().put(pattern.id(), pattern, file, "pattern"));
  }

  private static Optional<Pattern> pattern(YamlFields from) {
    String id = from.value("pattern", Values::id, "");
    String says = from.text("says");
    Map<String, Double> formersMm = new LinkedHashMap<>();
    from.require("formers", "Write formers: {eye: 2.5 mm}, each by its name.");
    from.group("formers", "the formers")
        .ifPresent(
            group -> {
              group.all(Length::readSize).forEach((name, size) -> formersMm.put(name, size.mm()));
              group.sound();
            });
    boolean whole = from.has("whole");
    if (whole == from.has("half")) {
      from.wrong(
          "half",
          whole
              ? "The pattern has both half and whole."
              : "The pattern has neither half nor whole.",
          "half for what is symmetric about the middle of the blank, else whole.");
    }
    List<YamlFields> bitFields = from.groups(whole ? "whole" : "half", "a run or a bend");
    List<PatternPart> path = new ArrayList<>();
    bitFields.forEach(bit -> bit(bit).ifPresent(path::add));
    OtherHalf other = other(from, whole);
    Pattern pattern =
        new Pattern(
            id, says, formersMm, path, other, from.flag("closed"), joints(from), usual(from));
    if (!from.sound()) {
      return Optional.empty();
    }
    for (PatternCheck.PatternFault finding : PatternCheck.of(pattern)) {
      YamlFields place = finding.bit().isPresent() ? bitFields.get(finding.bit().getAsInt()) : from;
      place.wrong(
          whole ? "whole" : "half", finding.wrong(), "Right would be: " + finding.expected());
    }
    return from.sound() ? Optional.of(pattern) : Optional.empty();
  }

  private static OtherHalf other(YamlFields from, boolean whole) {
    if (whole) {
      if (from.has("other")) {
        from.wrong(
            "other", "A pattern with whole has no other half.", "Take other out, or write half.");
      }
      return OtherHalf.NONE;
    }
    return from.value(
        "other",
        Values.word(
            word ->
                switch (word) {
                  case "turned" -> Optional.of(OtherHalf.TURNED);
                  case "mirrored" -> Optional.of(OtherHalf.MIRRORED);
                  default -> Optional.empty();
                },
            List.of("turned", "mirrored")),
        OtherHalf.TURNED);
  }

  private static Optional<PatternPart> bit(YamlFields from) {
    long kinds = Stream.of("run", "bend", "curl").filter(from::has).count();
    if (kinds != 1) {
      from.wrong(
          "run",
          kinds == 0
              ? "A piece of the path is neither a run nor a bend nor a curl."
              : "A piece of the path is more than one thing.",
          "One of run, bend, curl after each hyphen.");
      from.flag("over");
      return Optional.empty();
    }
    if (from.has("run")) {
      Run run = from.value("run", PatternYaml::run, Run.rest());
      return from.sound() ? Optional.of(run) : Optional.empty();
    }
    boolean onPurpose = from.flag("over");
    boolean curl = from.has("curl");
    Optional<PatternPart> bend =
        from.group(curl ? "curl" : "bend", "a bend").flatMap(arc -> bend(arc, curl, onPurpose));
    return from.sound() ? bend : Optional.empty();
  }

  private static Read<Run> run(String text) {
    return switch (text) {
      case "rest" -> Read.good(Run.rest());
      case "as rest" -> Read.good(Run.likeRest());
      default -> Length.readSize(text).map(length -> Run.of(length.mm()));
    };
  }

  private static Optional<PatternPart> bend(YamlFields arc, boolean curl, boolean onPurpose) {
    String over = arc.text("over");
    Optional<String> to = arc.optional("to", Read::good);
    Angle turn = arc.value("turn", Angle::read, new Angle(1));
    Side side =
        arc.value(
            "side",
            Values.word(
                word ->
                    switch (word) {
                      case "left" -> Optional.of(Side.LEFT);
                      case "right" -> Optional.of(Side.RIGHT);
                      default -> Optional.empty();
                    },
                List.of("left", "right")),
            Side.LEFT);
    boolean eye = arc.flag("eye");
    return arc.sound()
        ? Optional.of(new Bend(over, to, turn.degrees(), side, eye, curl, onPurpose))
        : Optional.empty();
  }

  private static List<Joint> joints(YamlFields from) {
    List<Joint> joints = new ArrayList<>();
    List<String> words = Stream.of(Joint.values()).map(Joint::words).toList();
    for (YamlFields one : from.groups("joints", "a joint")) {
      Joint joint = one.value("join", Values.word(Joint::of, words), Joint.TIP_TO_BODY);
      if (one.sound()) {
        joints.add(joint);
      }
    }
    return joints;
  }

  private static Optional<UsualSizes> usual(YamlFields from) {
    return from.group("usual", "the usual sizes")
        .flatMap(
            group -> {
              double wireMm = group.value("wire", Length::readWire, NO_LENGTH).mm();
              double blankMm = group.value("blank", Length::readSize, NO_LENGTH).mm();
              OptionalDouble insideMm = mm(group.optional("ring-inside", Length::readSize));
              OptionalDouble ringWireMm = mm(group.optional("ring-wire", Length::readWire));
              return group.sound()
                  ? Optional.of(new UsualSizes(wireMm, blankMm, insideMm, ringWireMm))
                  : Optional.empty();
            });
  }

  static OptionalDouble mm(Optional<Length> length) {
    return length.map(l -> OptionalDouble.of(l.mm())).orElse(OptionalDouble.empty());
  }
}
