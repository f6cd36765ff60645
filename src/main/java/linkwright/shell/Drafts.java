package linkwright.shell;

import java.nio.file.Path;
import java.util.Map;

/** What is typed and not entered yet. */
final class Drafts {
  private final Path home;

  Drafts(Path home) {
    this.home = home;
  }

  void keep(String slug, String form, Map<String, String> texts) {}

  void drop(String slug, String form) {}

  Map<String, Map<String, String>> of(String slug) {
    return Map.of();
  }
}
