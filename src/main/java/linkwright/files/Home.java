package linkwright.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlText;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;

/**
 * The user's own folder: jobs, settings, and what she lays over the shipped data.
 *
 * @param folder its place; it need not exist yet
 */
public record Home(Path folder) {
  /** The variable of the environment that names the folder. */
  public static final String VARIABLE = "LINKWRIGHT_HOME";

  private static final String NOT_ORDINARY = " is not an ordinary file.";
  private static final String NOT_READ = "It is not read.";

  /**
   * Where the user's folder is: as asked for, else as the environment says, else {@code linkwright}
   * in her home directory.
   *
   * @param asked what came with {@code --home}
   * @param environment the variables of the environment
   * @param userHome her home directory
   */
  public static Home find(Optional<String> asked, Map<String, String> environment, Path userHome) {
    Optional<String> named =
        asked.or(() -> Optional.ofNullable(environment.get(VARIABLE))).filter(s -> !s.isBlank());
    return new Home(named.map(Path::of).orElseGet(() -> userHome.resolve("linkwright")));
  }

  /** Where job books are. */
  public Path jobs() {
    return folder.resolve("jobs");
  }

  /** Her bench; it need not exist yet. */
  public Path bench() {
    return folder.resolve("bench.yaml");
  }

  /** The drawer's book; it need not exist yet. */
  public Path drawer() {
    return folder.resolve("drawer.yaml");
  }

  /** Where half-typed forms are kept. */
  public Path drafts() {
    return folder.resolve("drafts");
  }

  /** Why the folder of jobs cannot be looked through; empty where it can, or is not there yet. */
  public Optional<String> jobsTrouble() {
    return leadsOut(jobs()).or(() -> listed(jobs(), 1).problem());
  }

  /** The books in the folder of jobs, by name; none if there is no such folder. */
  public List<Path> books() {
    return books(new ArrayList<>());
  }

  /** Where students' books are. */
  public Path students() {
    return folder.resolve("students");
  }

  /** The same, and what keeps books from being listed: a folder that cannot be read, a link. */
  public List<Path> books(List<Problem> problems) {
    return books(jobs(), problems);
  }

  /** Students' books, by name, and what keeps them from being listed. */
  public List<Path> studentBooks(List<Problem> problems) {
    return books(students(), problems);
  }

  /** Whether a file lies where only books do, or is the drawer's. */
  boolean keepsBook(Path path) {
    Path file = path.toAbsolutePath().normalize();
    boolean inFolder =
        Stream.of(jobs(), students())
            .anyMatch(in -> in.toAbsolutePath().normalize().equals(file.getParent()));
    return (inFolder && file.toString().endsWith(".yaml"))
        || file.equals(drawer().toAbsolutePath().normalize());
  }

  private List<Path> books(Path in, List<Problem> problems) {
    List<Path> books = new ArrayList<>();
    for (Path path : hereIn(in, 1, problems)) {
      leadsOut(path)
          .ifPresentOrElse(
              why -> problems.add(new Problem(path.toString(), 0, 0, why, "")),
              () -> books.add(path));
    }
    return List.copyOf(books);
  }

  /** The files of one of these folders; none, and a problem told, where that folder leads out. */
  private List<Path> hereIn(Path in, int depth, List<Problem> problems) {
    Optional<String> out = leadsOut(in);
    out.ifPresent(why -> problems.add(new Problem(in.toString(), 0, 0, why, "")));
    return out.isPresent() ? List.of() : yamlIn(in, depth, problems);
  }

  /**
   * Why a file is neither opened nor made though its name stands in this folder: a link, its own or
   * one of a folder above it, leads elsewhere. Empty for all that lies here, and for what never
   * did.
   */
  public Optional<String> leadsOut(Path path) {
    Path home = folder.toAbsolutePath().normalize();
    Path file = path.toAbsolutePath().normalize();
    if (!file.startsWith(home)) {
      return Optional.empty();
    }
    try {
      Path realHome = folder.toRealPath();
      // The first name on the way that leads out is the link, whether what lies below is there yet.
      Path on = home;
      for (Path name : home.relativize(file)) {
        on = on.resolve(name);
        Path real = on.toRealPath();
        if (!real.startsWith(realHome)) {
          return Optional.of(
              (on.equals(file) ? path : on)
                  + " is a link that leads out of your folder, to "
                  + real
                  + ": it is not followed. "
                  + (Files.isDirectory(real)
                      ? "Put a folder of that name here, and move what lies there into it."
                      : "Open that book by its own name, or move it here."));
        }
      }
      return Optional.empty();
    } catch (IOException notThere) {
      return Optional.empty();
    }
  }

  /** The folders in it whose files lie over the shipped ones. */
  public List<Path> dataFolders() {
    return Arrays.stream(DataKind.values()).map(kind -> folder.resolve(kind.folder())).toList();
  }

  /** The user's files below one of the data folders, by name; trouble is told. */
  List<DataFile> files(String sub, List<Problem> problems) {
    List<DataFile> files = new ArrayList<>();
    for (Path path : hereIn(folder.resolve(sub), 3, problems)) {
      read(path, problems).ifPresent(files::add);
    }
    return List.copyOf(files);
  }

  /** Makes or replaces a file of the user's folder, hers alone. */
  public void keep(Path file, String text) throws IOException {
    Disk.folders(folder);
    Disk.replace(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Reads an ordinary file. Anything else may have no end, or never begin. */
  public static Optional<DataFile> read(Path path, List<Problem> problems) {
    try {
      if (Files.exists(path) && !Files.isRegularFile(path)) {
        String what = Files.isDirectory(path) ? " is a folder." : NOT_ORDINARY;
        problems.add(new Problem(path.toString(), 0, 0, path + what, NOT_READ));
        return Optional.empty();
      }
      // One byte more than is allowed tells a file that is too large without reading it all.
      try (var in = Files.newInputStream(path)) {
        return Optional.of(
            new DataFile(path.toString(), in.readNBytes(YamlText.LARGEST_BYTES + 1)));
      }
    } catch (IOException trouble) {
      problems.add(new Problem(path.toString(), 0, 0, DiskTrouble.reading(path, trouble), ""));
      return Optional.empty();
    }
  }

  private static String why(Exception trouble) {
    Throwable cause = trouble.getCause() instanceof IOException inner ? inner : trouble;
    return cause instanceof AccessDeniedException
        ? "you may not look into it. Change its permissions."
        : cause.getMessage() + ".";
  }

  static List<Path> yamlIn(Path folder, int depth, List<Problem> problems) {
    Read<List<Path>> listed = listed(folder, depth);
    listed.problem().ifPresent(why -> problems.add(new Problem(folder.toString(), 0, 0, why, "")));
    List<Path> found = new ArrayList<>();
    for (Path path : listed.orElse(List.of())) {
      if (Files.isRegularFile(path)) {
        found.add(path);
      } else if (!path.getFileName().toString().startsWith(".")) {
        problems.add(new Problem(path.toString(), 0, 0, path + NOT_ORDINARY, NOT_READ));
      }
    }
    return found;
  }

  /**
   * The text of a file of keys that is to be changed line by line; blank for none. What cannot be
   * read whole is not changed: a value that never ends would take its neighbours along.
   */
  static Read<String> textToEdit(Path path) {
    List<Problem> trouble = new ArrayList<>();
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return Read.good("");
    }
    ProblemList problems = new ProblemList(path.toString());
    return read(path, trouble)
        .flatMap(file -> YamlText.text(file.bytes(), problems))
        .filter(text -> !isBegun(text) || isSound(text, problems))
        .map(Read::good)
        .orElseGet(
            () ->
                Read.bad(
                    Stream.concat(trouble.stream(), problems.all().stream())
                            .map(Problem::sentence)
                            .findFirst()
                            .orElse("")
                        + " Nothing is changed in it."));
  }

  /** Whether more than remarks stands in it. */
  private static boolean isBegun(String text) {
    return text.lines().anyMatch(line -> !line.isBlank() && !line.startsWith("#"));
  }

  private static boolean isSound(String text, ProblemList problems) {
    return YamlFields.ofFile(text.getBytes(StandardCharsets.UTF_8), "the file", problems)
        .isPresent();
  }

  /** Whatever ends in .yaml and is no folder; a sentence if the folder cannot be looked through. */
  private static Read<List<Path>> listed(Path folder, int depth) {
    Optional<String> hidden = DiskTrouble.toLookAt(folder);
    if (hidden.isPresent()) {
      return Read.bad(hidden.get());
    }
    if (!Files.isDirectory(folder)) {
      return Files.exists(folder, LinkOption.NOFOLLOW_LINKS)
          ? Read.bad(folder + " is not a folder: move it away.")
          : Read.good(List.of());
    }
    try {
      // A folder that is itself a link is no folder to the walk; its files keep the names of here.
      Path real = folder.toRealPath();
      try (Stream<Path> paths = Files.walk(real, depth)) {
        return Read.good(
            paths
                .map(path -> folder.resolve(real.relativize(path)))
                .filter(path -> path.getFileName().toString().endsWith(".yaml"))
                .filter(path -> !Files.isDirectory(path))
                .sorted()
                .toList());
      }
    } catch (IOException | java.io.UncheckedIOException trouble) {
      return Read.bad("The folder " + folder + " cannot be read: " + why(trouble));
    }
  }
}
