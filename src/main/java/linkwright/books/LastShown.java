package linkwright.books;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.books.BookScan.ScannedLine;
import linkwright.disk.Disk;
import linkwright.files.Home;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.Values;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlScalar;
import linkwright.job.EntryId;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * The last entry of each device that was shown as done, remembered in a file beside the book. The
 * book alone cannot tell that its end was cut off; this can, but after a power cut, for it is
 * written without waiting until it is on the disk.
 */
final class LastShown {
  /**
   * An entry.
   *
   * @param number its number on its device
   * @param check its check as it stands in the book
   */
  record Shown(int number, String check) {}

  /** What the name of such a file ends in. */
  static final String ENDING = ".last";

  private static final List<String> HEAD = List.of("format: 1", "last:");

  private final Path file;
  private final Map<String, Shown> byDevice;

  private LastShown(Path file, Map<String, Shown> byDevice) {
    this.file = file;
    this.byDevice = byDevice;
  }

  /** What is remembered of a book; nothing if there is no such file or it cannot be read. */
  static LastShown of(Path book) {
    Path file = BookLock.beside(book, ENDING);
    Map<String, Shown> byDevice = new LinkedHashMap<>();
    if (Files.isRegularFile(file) && !asWritten(file, byDevice)) {
      byDevice.clear();
      ProblemList unread = new ProblemList(file.toString());
      Home.read(file, new ArrayList<>())
          .flatMap(data -> YamlFields.ofFile(data.bytes(), "what is remembered", unread))
          .flatMap(fields -> fields.group("last", "the last entries"))
          .ifPresent(last -> read(last, byDevice));
    }
    return new LastShown(file, byDevice);
  }

  /** Reads it as it is written here; a whole YAML reader for each of many books takes long. */
  private static boolean asWritten(Path file, Map<String, Shown> byDevice) {
    List<String> lines;
    try {
      lines = Files.readAllLines(file);
    } catch (IOException unread) {
      return false;
    }
    boolean ours = lines.size() > HEAD.size() && lines.subList(0, HEAD.size()).equals(HEAD);
    for (int i = HEAD.size(); i < lines.size() && ours; i++) {
      Map<String, Object> one =
          BookParser.fields("{" + lines.get(i).strip() + "}").orElse(Map.of());
      ours = !one.isEmpty();
      for (Map.Entry<String, Object> each : one.entrySet()) {
        if (each.getValue() instanceof Map<?, ?> last
            && last.get("n") instanceof Long number
            && number == number.intValue()
            && last.get("check") instanceof String check) {
          byDevice.put(each.getKey(), new Shown(number.intValue(), check));
        } else {
          ours = false;
        }
      }
    }
    return ours;
  }

  private static void read(YamlFields last, Map<String, Shown> byDevice) {
    for (String device : last.names()) {
      Optional<YamlFields> one = last.group(device, "an entry");
      Optional<Integer> number = one.flatMap(entry -> entry.optional("n", Values::whole));
      Optional<String> check = one.flatMap(entry -> entry.optional("check", Read::good));
      if (number.isPresent() && check.isPresent()) {
        byDevice.put(device, new Shown(number.get(), check.get()));
      }
    }
  }

  /** Remembers an entry of a device. What the disk refuses is not remembered, and no more. */
  void remember(String device, Shown shown) {
    byDevice.put(device, shown);
    StringBuilder text = new StringBuilder(String.join("\n", HEAD)).append('\n');
    byDevice.forEach(
        (each, last) -> {
          text.append("  ");
          YamlScalar.quoted(text, each);
          text.append(": {n: ").append(last.number()).append(", check: ");
          YamlScalar.quoted(text, last.check());
          text.append("}\n");
        });
    try {
      Disk.replaceUnsynced(file, text.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException refused) {
      return;
    }
  }

  Optional<Shown> of(String device) {
    return Optional.ofNullable(byDevice.get(device));
  }

  /** Whether anything is remembered and all of it is in the book. */
  boolean allIn(List<ScannedLine> rows) {
    return !byDevice.isEmpty() && problems("", rows, 0).isEmpty();
  }

  /** What was shown as done and is not in the book. */
  List<Problem> problems(String book, List<ScannedLine> rows, int lastLine) {
    if (rows.isEmpty() && !byDevice.isEmpty()) {
      return List.of(emptied(book));
    }
    List<Problem> problems = new ArrayList<>();
    byDevice.forEach(
        (device, shown) -> {
          boolean there =
              rows.stream()
                  .filter(row -> row.stated().equals(shown.check()))
                  .flatMap(row -> row.entry().stream())
                  .anyMatch(
                      entry -> entry.device().equals(device) && entry.number() == shown.number());
          if (!there) {
            problems.add(gone(book, lastLine, device, shown));
          }
        });
    return problems;
  }

  /** What to tell where the whole book is gone; nothing where no entry of it was shown. */
  List<Problem> gone(Path book) {
    return byDevice.isEmpty()
        ? List.of()
        : List.of(
            new Problem(
                book.toString(),
                0,
                0,
                "This book is gone; " + shown(),
                "Bring it back from a copy. If you took it away yourself, take "
                    + file.getFileName()
                    + " away too."));
  }

  /** What to tell of a book in which nothing stands any more. */
  private Problem emptied(String book) {
    return new Problem(
        book, 1, 1, "This book was emptied; " + shown(), "Bring it back from a copy.");
  }

  /** Why an emptied book is only looked at; nothing where no entry of it was shown. */
  Optional<String> whyNotOn() {
    return byDevice.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Nothing is written to a book that was emptied until it is brought back from a copy."
                + " If you emptied it yourself, take "
                + file.getFileName()
                + " away, too.");
  }

  private String shown() {
    List<String> entries = new ArrayList<>();
    byDevice.forEach((device, last) -> entries.add(new EntryId(device, last.number()).toString()));
    String which =
        byDevice.size() == 1
            ? "entry " + byDevice.values().iterator().next().number()
            : "entries " + String.join(", ", entries);
    return which + (byDevice.size() == 1 ? " was" : " were") + " shown as done.";
  }

  private static Problem gone(String book, int lastLine, String device, Shown shown) {
    return new Problem(
        book,
        lastLine,
        1,
        "Entry "
            + shown.number()
            + " of "
            + device
            + " was shown as done and is not in the book: its end was cut off, or an older copy"
            + " put in its place.",
        "Bring the newer one back, if there is one: linkwright merge takes both together.");
  }
}
