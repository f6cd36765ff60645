package linkwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import linkwright.coach.keys.Act;
import linkwright.plan.Wishes;
import linkwright.quantity.Problem;
import linkwright.schema.FileSchemas;
import linkwright.shell.StudentsFile;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The schemas against an independent validator of JSON Schema (networknt, draft 2020-12), and
 * against what the readers themselves ask for: what they say is known in a group of keys.
 */
class FileSchemasTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final Path RESOURCES = Path.of("src/test/resources");
  private static final String UNHEARD_OF = "zzqqx";

  private static JsonNode schema(String kind) {
    return JSON.valueToTree(FileSchemas.of(kind).orElseThrow());
  }

  private static Set<ValidationMessage> faults(String kind, JsonNode file) {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema(kind));
    return schema.validate(file);
  }

  private static List<Path> yaml(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** What is wrong by the program's own reader. */
  private static List<Problem> told(String kind, String text) {
    DataFile file = ToldOfFile.file(text);
    return switch (kind) {
      case "plan" -> PlanFile.of(file, Wishes.LIBRARY).problems();
      case "settings" -> UserSettings.of(file).problems();
      case "bench" -> BenchFile.of(file).problems();
      case "students" -> StudentsFile.of(file).problems();
      case "keys" ->
          KeysFile.of(file, Stream.of(Act.values()).map(Act::id).toList(), any -> true).problems();
      default -> {
        LibraryReading reading = new LibraryReading();
        reading.read(
            List.of(file),
            switch (kind) {
              case "routine" -> DataKind.ROUTINES;
              case "caution" -> DataKind.SAFETY;
              default -> DataKind.SHARED;
            });
        yield reading.library().problems();
      }
    };
  }

  @TestFactory
  Stream<DynamicTest> every_file_that_ships_and_every_sample_of_a_release_is_valid()
      throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    BiConsumer<String, Path> valid =
        (kind, file) ->
            tests.add(
                DynamicTest.dynamicTest(
                    kind + " " + file,
                    () -> assertThat(faults(kind, YAML.readTree(file.toFile()))).isEmpty()));
    yaml(Path.of("routines")).forEach(file -> valid.accept("routine", file));
    yaml(Path.of("safety")).forEach(file -> valid.accept("caution", file));
    yaml(Path.of("shared/patterns")).forEach(file -> valid.accept("pattern", file));
    valid.accept("plan", Path.of("src/main/resources/linkwright/demo.yaml"));
    yaml(RESOURCES.resolve("books/format-1")).forEach(file -> valid.accept("book", file));
    yaml(RESOURCES.resolve("books/format-2")).forEach(file -> valid.accept("book", file));
    yaml(RESOURCES.resolve("books/format-2")).forEach(file -> valid.accept("drawer", file));
    for (String release : List.of("first-release", "second-release")) {
      for (Path file : yaml(RESOURCES.resolve("samples").resolve(release))) {
        String kind = file.getFileName().toString().replace(".yaml", "");
        if (FileSchemas.kinds().contains(kind)) {
          valid.accept(kind, file);
        }
      }
    }
    assertThat(tests).hasSizeGreaterThan(60);
    return tests.stream();
  }

  @ParameterizedTest
  @CsvSource({
    "routine, routine",
    "caution, caution",
    "pattern, pattern-half",
    "pattern, pattern-whole",
    "plan, plan",
    "settings, settings",
    "bench, bench",
    "students, students"
  })
  void readers_and_schemas_know_the_same_keys(String kind, String sample) throws IOException {
    JsonNode file = YAML.readTree(RESOURCES.resolve("schema/" + sample + ".yaml").toFile());
    assertThat(faults(kind, file)).isEmpty();
    assertThat(told(kind, YAML.writeValueAsString(file)))
        .noneMatch(problem -> problem.wrong().contains("is not known in"));
    List<String> unsaid = new ArrayList<>();
    walk(kind, file, file, schema(kind), "", unsaid);
    if (!sample.startsWith("pattern")) {
      assertThat(unsaid).as("the sample says all that can be said").isEmpty();
    }
  }

  /** Puts a key that nobody knows into each group, and compares what is said to be known there. */
  private static void walk(
      String kind, JsonNode file, JsonNode at, JsonNode schema, String path, List<String> unsaid)
      throws IOException {
    if (at.isArray()) {
      for (int i = 0; i < at.size(); i++) {
        walk(kind, file, at.get(i), branch(schema, "items").get(0), path + "/" + i, unsaid);
      }
      return;
    }
    if (!at.isObject()) {
      return;
    }
    List<JsonNode> groups = branch(schema, "properties");
    if (groups.isEmpty()) {
      for (Map.Entry<String, JsonNode> named : at.properties()) {
        JsonNode value = schema.get("additionalProperties");
        walk(kind, file, named.getValue(), value, path + "/" + named.getKey(), unsaid);
      }
      return;
    }
    ((ObjectNode) at).put(UNHEARD_OF, 1);
    assertThat(faults(kind, file)).as("schema, with a key more at " + path).isNotEmpty();
    List<Problem> told =
        told(kind, YAML.writeValueAsString(file)).stream()
            .filter(problem -> problem.wrong().contains("\"" + UNHEARD_OF + "\" is not known"))
            .toList();
    ((ObjectNode) at).remove(UNHEARD_OF);
    assertThat(told).as("reader, with a key more at " + path).hasSize(1);
    Set<String> known =
        new LinkedHashSet<>(
            Arrays.asList(told.get(0).expected().replaceAll("^Known here: |\\.$", "").split(", ")));
    Set<String> all = new LinkedHashSet<>();
    groups.forEach(group -> group.fieldNames().forEachRemaining(all::add));
    JsonNode own =
        groups.stream()
            .filter(group -> at.properties().stream().allMatch(key -> group.has(key.getKey())))
            .findFirst()
            .orElseThrow();
    assertThat(all).as("keys of the schema at " + path).containsAll(known);
    own.fieldNames()
        .forEachRemaining(
            key -> {
              assertThat(known).as("keys of the reader at " + path).contains(key);
              if (!at.has(key)) {
                unsaid.add(path + "/" + key);
              }
            });
    for (Map.Entry<String, JsonNode> each : at.properties()) {
      walk(kind, file, each.getValue(), own.get(each.getKey()), path + "/" + each.getKey(), unsaid);
    }
  }

  /** What a schema or the choices in it say by a keyword. */
  private static List<JsonNode> branch(JsonNode schema, String keyword) {
    List<JsonNode> found = new ArrayList<>();
    if (schema.has(keyword)) {
      found.add(schema.get(keyword));
    } else {
      for (String choice : List.of("anyOf", "oneOf")) {
        schema.path(choice).forEach(each -> found.addAll(branch(each, keyword)));
      }
    }
    return found;
  }

  @Test
  void an_act_that_is_none_is_refused_by_both() throws IOException {
    for (Act act : Act.values()) {
      String text = "format: 1\nkeys: {" + act.id() + ": [space]}\n";
      assertThat(faults("keys", YAML.readTree(text))).isEmpty();
      assertThat(told("keys", text)).isEmpty();
    }
    String none = "format: 1\nkeys: {" + UNHEARD_OF + ": [space]}\n";
    assertThat(faults("keys", YAML.readTree(none))).isNotEmpty();
    assertThat(told("keys", none)).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "settings | format: 2",
        "settings | {format: 1, units: furlong}",
        "settings | {format: 1, mouse: perhaps}",
        "bench | {format: 1, prices: {hour: 38}}",
        "bench | {format: 1, prices: {currency: EUR, hour: -1}}",
        "bench | {format: 1, plate: 1 mm}",
        "bench | {format: 1, solders: [{grade: hard}]}",
        "students | {format: 1, gap-days: 0}",
        "students | {format: 1, gap-days: 91}",
        "students | {format: 1, gap-days: weekly}",
        "students | {format: 1, students: [Mara]}",
        "plan | {metal: {name: sterling}}",
        "caution | {format: 1, caution: Big Letters, title: x, covers: [solders]}",
        "caution | {format: 1, caution: a, title: x, covers: [dances]}",
        "pattern | {format: 1, pattern: a, says: b, formers: {}}",
      })
  void what_the_reader_refuses_for_its_form_the_schema_refuses(String kind, String text)
      throws IOException {
    assertThat(told(kind, text)).isNotEmpty();
    assertThat(faults(kind, YAML.readTree(text))).isNotEmpty();
  }

  @Test
  void an_entry_without_what_its_kind_needs_is_refused_and_a_newer_kind_is_not()
      throws IOException {
    String head = "- {n: 1, at: 2026-11-25T20:00:00Z, device: bench, kind: ";
    assertThat(faults("book", YAML.readTree(head + "noted}"))).isNotEmpty();
    assertThat(faults("book", YAML.readTree(head + "noted, text: good}"))).isEmpty();
    assertThat(faults("book", YAML.readTree(head + "not-heard-of, text: good}"))).isEmpty();
    assertThat(faults("book", YAML.readTree(head + "hot-work, state: warm}"))).isNotEmpty();
  }
}
