package linkwright.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlScalar;
import linkwright.quantity.Problem;

/**
 * Which books are not to teach, from {@code hands.yaml} in the user's folder. What they taught is
 * written nowhere: it is reckoned from the books.
 *
 * @param leftOut the names of the books
 * @param problems all that is wrong, located; what is wrong is passed over
 */
public record HandsFile(Set<String> leftOut, List<Problem> problems) {
  private static final String NAME = "hands.yaml";

  /** Copies the collections. */
  public HandsFile {
    leftOut = Set.copyOf(leftOut);
    problems = List.copyOf(problems);
  }

  /** Reads the file in the user's folder; without one every book counts. */
  public static HandsFile load(Home home) {
    Path path = home.folder().resolve(NAME);
    List<Problem> trouble = new ArrayList<>();
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS)
        ? Home.read(path, trouble)
            .map(HandsFile::of)
            .orElseGet(() -> new HandsFile(Set.of(), trouble))
        : new HandsFile(Set.of(), trouble);
  }

  static HandsFile of(DataFile file) {
    ProblemList problems = new ProblemList(file.name());
    Set<String> books = new LinkedHashSet<>();
    YamlFields.ofFile(file.bytes(), "the hands", problems)
        .ifPresent(
            from -> {
              books.addAll(from.texts("left-out"));
              from.sound();
            });
    return new HandsFile(books, problems.all());
  }

  /** The same with one book left out, or counting again. */
  public HandsFile with(String book, boolean out) {
    Set<String> books = new LinkedHashSet<>(leftOut);
    if (out) {
      books.add(book);
    } else {
      books.remove(book);
    }
    return new HandsFile(books, problems);
  }

  /** Writes it; answers with what is wrong, if it could not be. */
  public Optional<String> save(Home home) {
    if (!problems.isEmpty()) {
      // What could not be read would be lost with it.
      return Optional.of(problems.get(0).sentence() + " Mend it first: nothing is changed in it.");
    }
    StringBuilder text =
        new StringBuilder("format: 1\n# Books that do not count in what the hands were taught.\n");
    text.append("left-out:").append(leftOut.isEmpty() ? " []\n" : "\n");
    for (String book : new TreeSet<>(leftOut)) {
      text.append("  - ");
      YamlScalar.quoted(text, book);
      text.append('\n');
    }
    Path path = home.folder().resolve(NAME);
    try {
      Disk.folders(home.folder());
      Disk.replace(path, text.toString().getBytes(StandardCharsets.UTF_8));
      return Optional.empty();
    } catch (IOException trouble) {
      return Optional.of(DiskTrouble.writing(path, trouble));
    }
  }
}
