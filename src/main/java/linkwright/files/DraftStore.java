package linkwright.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.text.Slug;

/**
 * What was typed into forms and not entered yet, a file a job, so that a crash costs no typing. A
 * draft is a convenience: one that cannot be read is simply none.
 */
public final class DraftStore {
  private final Path folder;

  /** The drafts in a folder, which need not exist yet. */
  public DraftStore(Path folder) {
    this.folder = folder;
  }

  /** The drafts of a job: form → field → what was typed. */
  public Map<String, Map<String, String>> of(String slug) {
    Path path = file(slug);
    List<Problem> trouble = new ArrayList<>();
    if (!Files.exists(path)) {
      return Map.of();
    }
    ProblemList problems = new ProblemList(path.toString());
    Map<String, Map<String, String>> drafts = new LinkedHashMap<>();
    Home.read(path, trouble)
        .flatMap(file -> Fields.ofFile(file.bytes(), "a draft", problems))
        .flatMap(fields -> fields.group("forms", "the forms"))
        .ifPresent(
            forms -> {
              for (String form : forms.names()) {
                forms
                    .group(form, "a form")
                    .ifPresent(
                        group ->
                            drafts.put(form, Collections.unmodifiableMap(group.all(Read::good))));
              }
            });
    return Collections.unmodifiableMap(drafts);
  }

  /** Keeps what is typed in a form; a sentence if the disk refuses. */
  public Optional<String> keep(String slug, String form, Map<String, String> texts) {
    Map<String, Map<String, String>> drafts = new LinkedHashMap<>(of(slug));
    drafts.put(form, texts);
    return write(slug, drafts);
  }

  /** Forgets what was typed in a form; a sentence if the disk refuses. */
  public Optional<String> drop(String slug, String form) {
    Map<String, Map<String, String>> drafts = new LinkedHashMap<>(of(slug));
    return drafts.remove(form) == null ? Optional.empty() : write(slug, drafts);
  }

  private Optional<String> write(String slug, Map<String, Map<String, String>> drafts) {
    Path path = file(slug);
    try {
      if (drafts.isEmpty()) {
        Files.deleteIfExists(path);
        return Optional.empty();
      }
      Disk.folders(folder);
      Disk.replace(path, text(drafts).getBytes(StandardCharsets.UTF_8));
      return Optional.empty();
    } catch (IOException trouble) {
      return Optional.of(DiskTrouble.writing(path, trouble));
    }
  }

  private static String text(Map<String, Map<String, String>> drafts) {
    StringBuilder out = new StringBuilder("format: 1\nforms:\n");
    drafts.forEach(
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
    return out.toString();
  }

  /**
   * A slug is a file's name already; anything else is made one, so that nothing leaves the folder.
   */
  private Path file(String slug) {
    return folder.resolve(Slug.of(slug, taken -> false) + ".yaml");
  }
}
