package linkwright.schema;

import static linkwright.schema.KeyGroup.list;
import static linkwright.schema.KeyGroup.named;
import static linkwright.schema.KeyGroup.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.books.facts.FactCodecs;
import linkwright.books.facts.FieldShape;

/**
 * What may stand in a job's book and in the drawer's: one entry a line. Kinds and fields that are
 * not known stand in a book of a newer version and are let be, as the program lets them be.
 */
final class BookSchema {
  private BookSchema() {}

  static Map<String, Object> book(String kind, String title) {
    Map<String, Object> schema = KeyGroup.head(kind, title);
    schema.put("type", "array");
    List<Object> kinds = new ArrayList<>();
    FactCodecs.shapes()
        .forEach(
            (name, fields) ->
                kinds.add(
                    ordered(
                        "if",
                        Map.of("properties", Map.of("kind", Map.of("const", name))),
                        "then",
                        fields(fields).group())));
    schema.put(
        "items",
        new KeyGroup()
            .needed("n", whole(1, 10_000_000))
            .needed("at", pattern("^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.]+Z$"))
            .some("device", string())
            .some("by", string())
            .some("after", pattern("^[0-9a-f]{8}$"))
            .needed("kind", string())
            .open()
            .with("anyOf", List.of(required("device"), required("by")))
            .with("allOf", kinds)
            .group());
    return schema;
  }

  private static KeyGroup fields(Map<String, FieldShape> fields) {
    KeyGroup shape = new KeyGroup().open();
    fields.forEach(
        (name, field) -> {
          if (field.needed()) {
            shape.needed(name, value(field));
          } else {
            shape.some(name, value(field));
          }
        });
    return shape;
  }

  private static Map<String, Object> value(FieldShape field) {
    return switch (field.sort()) {
      case TEXT -> text();
      case WORD -> words(field);
      case ENTRY -> pattern("^.+-[0-9]+$");
      case COUNT -> whole(0, 1_000_000);
      case SECONDS -> whole(0, 36_000_000);
      case NUMBER -> KeyGroup.of("type", "integer");
      case DECIMAL -> decimal();
      case FLAG -> KeyGroup.of("type", "boolean");
      case TEXTS_BY_NAME -> named(text());
      case COUNTS_BY_NAME -> named(whole(0, 1_000_000));
      case DECIMALS_BY_NAME -> named(decimal());
      case NUMBERS_BY_NAME -> named(KeyGroup.of("type", "number"));
      case GROUPS_BY_NAME -> named(fields(field.group()).group());
      case LIST -> list(text());
    };
  }

  private static Map<String, Object> words(FieldShape field) {
    List<String> words = new ArrayList<>(field.words());
    if (!field.needed()) {
      words.add("");
    }
    return KeyGroup.word(words);
  }

  private static Map<String, Object> decimal() {
    return ordered("type", "number", "minimum", 0);
  }

  private static Map<String, Object> whole(int from, int to) {
    Map<String, Object> whole = ordered("type", "integer", "minimum", from);
    whole.put("maximum", to);
    return whole;
  }

  private static Map<String, Object> string() {
    return KeyGroup.of("type", "string");
  }

  private static Map<String, Object> pattern(String pattern) {
    return ordered("type", "string", "pattern", pattern);
  }

  private static Map<String, Object> required(String key) {
    return Map.of("required", List.of(key));
  }

  private static Map<String, Object> ordered(String one, Object first, String two, Object second) {
    Map<String, Object> both = new LinkedHashMap<>();
    both.put(one, first);
    both.put(two, second);
    return both;
  }
}
