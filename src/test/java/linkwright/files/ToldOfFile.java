package linkwright.files;

import java.nio.charset.StandardCharsets;
import java.util.List;
import linkwright.quantity.Problem;

/** What is told of a file's text, short enough to be written beside it in a test. */
final class ToldOfFile {
  private ToldOfFile() {}

  static DataFile file(String text) {
    return new DataFile("it.yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  /** The problems of a data file read alone, with nothing to look up, as line:column: sentence. */
  static List<String> of(DataKind kind, String text) {
    return of(kind, text.getBytes(StandardCharsets.UTF_8));
  }

  static List<String> of(DataKind kind, byte[] bytes) {
    LibraryReading reading = new LibraryReading();
    reading.read(List.of(new DataFile("it.yaml", bytes)), kind);
    return shown(reading.library().problems());
  }

  static List<String> shown(List<Problem> problems) {
    return problems.stream()
        .map(
            problem ->
                problem.line()
                    + ":"
                    + problem.column()
                    + ": "
                    + (problem.wrong() + " " + problem.expected()).strip())
        .toList();
  }
}
