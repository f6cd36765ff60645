package linkwright.files;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.quantity.Nearest;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * The user's own keys, from {@code keys.yaml} in her folder: {@code keys: {through: [space,
 * page-down]}}.
 *
 * @param keys act → the names of its keys, the one to be shown first
 * @param problems all that is wrong, located; what is wrong is left as usual
 */
public record KeysFile(Map<String, List<String>> keys, List<Problem> problems) {
  private static final String NAME = "keys.yaml";

  /** Copies the collections. */
  public KeysFile {
    keys = Collections.unmodifiableMap(new LinkedHashMap<>(keys));
    problems = List.copyOf(problems);
  }

  /**
   * Reads the file in the user's folder; without one nothing is changed.
   *
   * @param home the user's folder
   * @param acts the names of all that a key can do
   * @param isKey whether a word names a key
   */
  public static KeysFile load(Home home, Collection<String> acts, Predicate<String> isKey) {
    Path path = home.folder().resolve(NAME);
    List<Problem> trouble = new ArrayList<>();
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return new KeysFile(Map.of(), trouble);
    }
    return Home.read(path, trouble)
        .map(file -> of(file, acts, isKey))
        .orElseGet(() -> new KeysFile(Map.of(), trouble));
  }

  /** Reads a file of keys wherever it lies. */
  public static KeysFile of(DataFile file, Collection<String> acts, Predicate<String> isKey) {
    ProblemList problems = new ProblemList(file.name());
    Map<String, List<String>> keys = new LinkedHashMap<>();
    YamlFields.ofFile(file.bytes(), "the keys", problems)
        .ifPresent(
            from -> {
              from.group("keys", "the keys").ifPresent(group -> read(group, acts, isKey, keys));
              from.sound();
            });
    return new KeysFile(keys, problems.all());
  }

  private static void read(
      YamlFields group,
      Collection<String> acts,
      Predicate<String> isKey,
      Map<String, List<String>> keys) {
    for (String act : group.names()) {
      List<String> names =
          group.isList(act)
              ? group.list(act, name -> key(name, isKey))
              : group.optional(act, name -> key(name, isKey)).map(List::of).orElse(List.of());
      if (!acts.contains(act)) {
        group.wrong(
            act,
            "Nothing that a key can do is called \"" + act + "\".",
            group.problems().full() ? "" : instead(act, acts));
      } else if (!names.isEmpty()) {
        keys.put(act, names);
      }
    }
  }

  private static String instead(String act, Collection<String> acts) {
    return Nearest.of(act, acts)
        .map(near -> "Did you mean " + near + "?")
        .orElse("There are: " + String.join(", ", acts) + ".");
  }

  private static Read<String> key(String name, Predicate<String> isKey) {
    return isKey.test(name)
        ? Read.good(name)
        : Read.bad(
            "\""
                + name
                + "\" names no key. Write a single character, space, enter, page-down,"
                + " ctrl-z and the like.");
  }
}
