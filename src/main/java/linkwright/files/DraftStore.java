package linkwright.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlScalar;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.text.Slug;

/**
 * What was typed into forms and not entered yet, a file a job, so that a crash costs no typing. A
 * file of drafts that cannot be read holds none: that is told, and it is set aside before anything
 * is written in its place.
 */
public final class DraftStore {
  private final Path folder;
  private final Home home;
  private final Map<Path, Known> known = new HashMap<>();

  /** What was read or written last, and how the file looked then. */
  private record Known(
      String stamp,
      Map<String, Map<String, String>> drafts,
      Map<String, Map<String, String>> entering,
      Optional<String> unread) {}

  /** The drafts in a folder, which need not exist yet. */
  public DraftStore(Path folder) {
    this.folder = folder;
    this.home = new Home(folder.resolveSibling(""));
  }

  /**
   * The drafts of a job: form → field → what was typed. The file is read only if it is not as this
   * store left it.
   */
  public Map<String, Map<String, String>> of(String slug) {
    return known(file(slug)).drafts();
  }

  /** A sentence where what was typed cannot be read; empty where it can, or nothing was typed. */
  public Optional<String> unread(String slug) {
    return known(file(slug)).unread();
  }

  private Known known(Path path) {
    String stamp = stamp(path);
    Known before = known.get(path);
    if (before == null || !before.stamp().equals(stamp)) {
      before = read(path, stamp);
      known.put(path, before);
    }
    return before;
  }

  private static String stamp(Path path) {
    try {
      BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
      return now.lastModifiedTime() + " " + now.size();
    } catch (IOException notThere) {
      return "";
    }
  }

  private static Known read(Path path, String stamp) {
    List<Problem> trouble = new ArrayList<>();
    if (!Files.exists(path)) {
      return new Known(stamp, Map.of(), Map.of(), Optional.empty());
    }
    ProblemList problems = new ProblemList(path.toString());
    Map<String, Map<String, String>> drafts = new LinkedHashMap<>();
    Map<String, Map<String, String>> entering = new LinkedHashMap<>();
    Home.read(path, trouble)
        .flatMap(file -> YamlFields.ofFile(file.bytes(), "a draft", problems))
        .ifPresent(
            fields -> {
              fields.group("forms", "the forms").ifPresent(forms -> into(drafts, forms));
              if (fields.names().contains("entering")) {
                fields.group("entering", "the forms").ifPresent(forms -> into(entering, forms));
              }
            });
    boolean whole = trouble.isEmpty() && problems.all().isEmpty();
    return new Known(
        stamp,
        Collections.unmodifiableMap(drafts),
        entering,
        whole
            ? Optional.empty()
            : Optional.of(
                "Not all that was typed and not entered can be read from "
                    + path
                    + ". Once something is typed, the file is set aside as "
                    + aside(path).getFileName()
                    + "."));
  }

  private static void into(Map<String, Map<String, String>> all, YamlFields forms) {
    for (String form : forms.names()) {
      forms
          .group(form, "a form")
          .ifPresent(group -> all.put(form, Collections.unmodifiableMap(group.all(Read::good))));
    }
  }

  private static Path aside(Path path) {
    return path.resolveSibling(path.getFileName() + ".unread");
  }

  /** Keeps what is typed in a form; a sentence if the disk refuses. */
  public Optional<String> keep(String slug, String form, Map<String, String> texts) {
    Map<String, Map<String, String>> drafts = new LinkedHashMap<>(of(slug));
    drafts.put(form, texts);
    return write(slug, drafts, enteringWithout(slug, form));
  }

  /** Forgets what was typed in a form; a sentence if the disk refuses. */
  public Optional<String> drop(String slug, String form) {
    Map<String, Map<String, String>> drafts = new LinkedHashMap<>(of(slug));
    return drafts.remove(form) == null
        ? Optional.empty()
        : write(slug, drafts, enteringWithout(slug, form));
  }

  private Map<String, Map<String, String>> enteringWithout(String slug, String form) {
    Map<String, Map<String, String>> entering = new LinkedHashMap<>(known(file(slug)).entering());
    entering.remove(form);
    return entering;
  }

  /**
   * Marks what is typed in fields of a form with the entry that it is to become, before that is
   * written: should the program die in between, what stands in the book is not typed any more.
   */
  public Optional<String> entering(String slug, String form, Set<String> fields, String entry) {
    Map<String, String> marked = new LinkedHashMap<>();
    of(slug).getOrDefault(form, Map.of()).keySet().stream()
        .filter(fields::contains)
        .forEach(field -> marked.put(field, entry));
    if (marked.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Map<String, String>> entering = enteringWithout(slug, form);
    entering.put(form, marked);
    return write(slug, of(slug), entering);
  }

  /** What waits of a job, without what became an entry that stands. */
  public Map<String, Map<String, String>> of(String slug, Predicate<String> stands) {
    Map<String, Map<String, String>> drafts = new LinkedHashMap<>(of(slug));
    known(file(slug))
        .entering()
        .forEach(
            (form, fields) -> {
              Map<String, String> left = new LinkedHashMap<>(drafts.getOrDefault(form, Map.of()));
              fields.forEach(
                  (field, entry) -> {
                    if (stands.test(entry)) {
                      left.remove(field);
                    }
                  });
              drafts.put(form, Collections.unmodifiableMap(left));
              if (left.isEmpty()) {
                drafts.remove(form);
              }
            });
    return Collections.unmodifiableMap(drafts);
  }

  /** Forgets what became an entry that stands; of the rest, that it was to become one. */
  public Optional<String> settle(String slug, Predicate<String> stands) {
    return known(file(slug)).entering().isEmpty()
        ? Optional.empty()
        : write(slug, of(slug, stands), Map.of());
  }

  private Optional<String> write(
      String slug,
      Map<String, Map<String, String>> drafts,
      Map<String, Map<String, String>> entering) {
    Path path = file(slug);
    Optional<String> out = home.leadsOut(path);
    if (out.isPresent()) {
      return out;
    }
    try {
      if (known(path).unread().isPresent() && Files.isRegularFile(path)) {
        Files.move(path, aside(path), StandardCopyOption.REPLACE_EXISTING);
      }
      if (drafts.isEmpty()) {
        Files.deleteIfExists(path);
      } else {
        Disk.folders(folder);
        Disk.replaceSoon(path, text(drafts, entering).getBytes(StandardCharsets.UTF_8));
      }
      return Optional.empty();
    } catch (IOException trouble) {
      return Optional.of(DiskTrouble.writing(path, trouble));
    } finally {
      // What could not be written is written with the next that can be.
      known.put(
          path,
          new Known(stamp(path), Collections.unmodifiableMap(drafts), entering, Optional.empty()));
    }
  }

  private static String text(
      Map<String, Map<String, String>> drafts, Map<String, Map<String, String>> entering) {
    StringBuilder out = new StringBuilder("format: 1\nforms:\n");
    text(out, drafts);
    if (!entering.isEmpty()) {
      out.append("entering:\n");
      text(out, entering);
    }
    return out.toString();
  }

  private static void text(StringBuilder out, Map<String, Map<String, String>> forms) {
    forms.forEach(
        (form, texts) -> {
          out.append("  ");
          YamlScalar.quoted(out, form);
          out.append(": {");
          String[] comma = {""};
          texts.forEach(
              (field, text) -> {
                if (!text.isBlank()) {
                  out.append(comma[0]);
                  YamlScalar.quoted(out, field);
                  out.append(": ");
                  YamlScalar.quoted(out, text);
                  comma[0] = ", ";
                }
              });
          out.append("}\n");
        });
  }

  /**
   * A slug is a file's name already, none for what is no job's; anything else is made one, so that
   * nothing leaves the folder.
   */
  private Path file(String slug) {
    // A sign that no book's name has.
    return slug.isEmpty()
        ? folder.resolve("no_job.yaml")
        : folder.resolve(Slug.of(slug, taken -> false) + ".yaml");
  }
}
