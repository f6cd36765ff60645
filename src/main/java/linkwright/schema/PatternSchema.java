package linkwright.schema;

import static linkwright.schema.KeyGroup.flag;
import static linkwright.schema.KeyGroup.id;
import static linkwright.schema.KeyGroup.list;
import static linkwright.schema.KeyGroup.named;
import static linkwright.schema.KeyGroup.text;
import static linkwright.schema.KeyGroup.word;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linkwright.link.Joint;

/** What may stand in a link pattern's file. */
final class PatternSchema {
  private static final String REQUIRED = "required";

  private PatternSchema() {}

  static Map<String, Object> pattern() {
    Map<String, Object> path = list(part());
    Map<String, Object> joint = word(Stream.of(Joint.values()).map(Joint::words).toList());
    return new KeyGroup()
        .needed("format", KeyGroup.format())
        .needed("pattern", id())
        .needed("says", text())
        .needed("formers", named(text("An inside diameter: 2.5 mm.")))
        .some("half", path)
        .some("whole", path)
        .some("other", word(List.of("turned", "mirrored")))
        .some("closed", flag())
        .some("joints", list(new KeyGroup().needed("join", joint).group()))
        .some(
            "usual",
            new KeyGroup()
                .needed("wire", text("A thickness: 0.9 mm."))
                .needed("blank", text("A length: 40 mm."))
                .some("ring-inside", text("A length: 3 mm."))
                .some("ring-wire", text("A thickness: 0.9 mm."))
                .group())
        .with(
            "oneOf",
            List.of(
                Map.of(
                    REQUIRED, List.of("half", "other"), "not", Map.of(REQUIRED, List.of("whole"))),
                Map.of(REQUIRED, List.of("whole"), "not", Map.of(REQUIRED, List.of("other")))))
        .file("pattern", "A link pattern: its centre line as runs, bends and curls over formers");
  }

  private static Map<String, Object> part() {
    Map<String, Object> arc =
        new KeyGroup()
            .needed("over", text("A former by its name."))
            .some("to", text("The former that it grows to."))
            .needed("turn", text("Degrees: 300."))
            .needed("side", word(List.of("left", "right")))
            .some("eye", flag())
            .group();
    return KeyGroup.of(
        "oneOf",
        List.of(
            new KeyGroup().needed("run", text("rest, as rest, or a length: 1.5 mm.")).group(),
            new KeyGroup().needed("bend", arc).some("over", flag()).group(),
            new KeyGroup().needed("curl", arc).some("over", flag()).group()));
  }
}
