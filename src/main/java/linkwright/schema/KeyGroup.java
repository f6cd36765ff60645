package linkwright.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.files.yaml.Values;

/**
 * A group of keys as a JSON Schema, and the schemas of single values. Amounts and texts may stand
 * without quotes in YAML, so that a text is whatever single value there is.
 */
final class KeyGroup {
  private static final String TYPE = "type";

  private final Map<String, Object> properties = new LinkedHashMap<>();
  private final List<String> needed = new ArrayList<>();
  private final Map<String, Object> more = new LinkedHashMap<>();
  private boolean open;

  /** A key that has to be there. */
  KeyGroup needed(String key, Map<String, Object> value) {
    needed.add(key);
    return some(key, value);
  }

  /** A key that may be missing. */
  KeyGroup some(String key, Map<String, Object> value) {
    properties.put(key, value);
    return this;
  }

  /** Lets other keys stand too. */
  KeyGroup open() {
    open = true;
    return this;
  }

  /** Something that holds of the group as a whole. */
  KeyGroup with(String keyword, Object value) {
    more.put(keyword, value);
    return this;
  }

  /** The group as a schema. */
  Map<String, Object> group() {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put(TYPE, "object");
    schema.put("properties", properties);
    if (!needed.isEmpty()) {
      schema.put("required", needed);
    }
    if (!open) {
      schema.put("additionalProperties", false);
    }
    schema.putAll(more);
    return schema;
  }

  /** The group as a whole file, with its name; the format line is a key of every file. */
  Map<String, Object> file(String kind, String title) {
    Map<String, Object> schema = head(kind, title);
    schema.putAll(group());
    return schema;
  }

  static Map<String, Object> head(String kind, String title) {
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    head.put("$id", "urn:linkwright:" + kind + ":1");
    head.put("title", title);
    return head;
  }

  /** The line {@code format: 1}. */
  static Map<String, Object> format() {
    return Map.of("enum", List.of(1, "1"));
  }

  /** Any single value. */
  static Map<String, Object> text() {
    return of(TYPE, List.of("string", "number", "boolean"));
  }

  /** Any single value, with a word what it is. */
  static Map<String, Object> text(String says) {
    Map<String, Object> text = text();
    text.put("description", says);
    return text;
  }

  /** A name as it stands in files. */
  static Map<String, Object> id() {
    Map<String, Object> id = of(TYPE, List.of("string", "integer"));
    id.put("pattern", "^(" + Values.ID_SHAPE + ")$");
    return id;
  }

  /** One of a few words. */
  static Map<String, Object> word(List<String> words) {
    return of("enum", words);
  }

  static Map<String, Object> flag() {
    Map<String, Object> flag = of(TYPE, List.of("boolean", "string"));
    flag.put("pattern", "^([Tt]rue|TRUE|[Yy]es|YES|[Oo]n|ON|[Ff]alse|FALSE|[Nn]o|NO|[Oo]ff|OFF)$");
    return flag;
  }

  /** A whole number of 1 or more. */
  static Map<String, Object> whole() {
    Map<String, Object> whole = of(TYPE, List.of("integer", "string"));
    whole.put("minimum", 1);
    whole.put("pattern", "^ *[0-9]+ *$");
    return whole;
  }

  /** A number of 0 or more, or a share as it is typed. */
  static Map<String, Object> notNegative() {
    Map<String, Object> number = of(TYPE, List.of("number", "string"));
    number.put("minimum", 0);
    number.put("pattern", "^[+0-9]");
    return number;
  }

  /** A number, below 0 too. */
  static Map<String, Object> number() {
    Map<String, Object> number = of(TYPE, List.of("number", "string"));
    number.put("pattern", "^[-+0-9]");
    return number;
  }

  static Map<String, Object> list(Map<String, Object> item) {
    Map<String, Object> list = of(TYPE, "array");
    list.put("items", item);
    return list;
  }

  /** A single value or a list of them. */
  static Map<String, Object> oneOrMore(Map<String, Object> item) {
    return of("anyOf", List.of(item, list(item)));
  }

  /** A group whose keys are names of the user's own choice. */
  static Map<String, Object> named(Map<String, Object> value) {
    Map<String, Object> named = of(TYPE, "object");
    named.put("additionalProperties", value);
    return named;
  }

  /** A schema of one keyword; the caller may add to it. */
  static Map<String, Object> of(String keyword, Object value) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put(keyword, value);
    return schema;
  }
}
