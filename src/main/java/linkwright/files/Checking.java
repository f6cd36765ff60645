package linkwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import linkwright.files.yaml.ProblemList;
import linkwright.files.yaml.YamlFields;
import linkwright.files.yaml.YamlText;
import linkwright.plan.WishKeys;
import linkwright.quantity.Problem;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;

/** Finds every problem of routines, cautions, reference data, patterns, plans and job books. */
public final class Checking {
  /** A book is known by its beginning. */
  private static final int HEAD_BYTES = 64 << 10;

  private static final Set<String> PLAN_KEYS = Set.of(WishKeys.METAL, "finished-length", "link");
  private static final Set<String> BENCH_KEYS =
      BenchKeys.ALL.stream()
          .map(key -> key.key().replaceAll("\\..*", ""))
          .filter(key -> !key.equals("units"))
          .collect(Collectors.toSet());
  private static final Set<String> SETTINGS_KEYS = Set.copyOf(UserSettings.KEYS);

  /** Finds the problems of a job book, which knows more than its file. */
  public interface BookCheck {
    /** Every problem of the book there, located. */
    List<Problem> problems(Path book, Supplier<Library> library);
  }

  private final Home home;
  private final BookCheck bookCheck;
  private final Map<String, Function<DataFile, List<Problem>>> others;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<ProblemList> checked = new LinkedHashSet<>();
  private final List<YamlFields> plans = new ArrayList<>();
  private final List<Path> books = new ArrayList<>();
  private final List<BenchFile> benches = new ArrayList<>();
  private Optional<LibraryReading> reading = Optional.empty();
  private Library library;

  private Checking(
      Home home, BookCheck bookCheck, Map<String, Function<DataFile, List<Problem>>> others) {
    this.home = home;
    this.bookCheck = bookCheck;
    this.others = others;
    this.library = LibraryReading.NOTHING;
  }

  /**
   * Every problem, located.
   *
   * @param home the user's folder
   * @param paths files and folders to check, each file told by its keys; none means all that ships
   *     and all in the user's folder
   * @param bookCheck what tells the problems of a book
   * @param others key → what tells the problems of a file that has it, such as her keys, which only
   *     a room above this one can judge
   */
  public static List<Problem> check(
      Home home,
      List<Path> paths,
      BookCheck bookCheck,
      Map<String, Function<DataFile, List<Problem>>> others) {
    Checking checking = new Checking(home, bookCheck, others);
    if (paths.isEmpty()) {
      checking.everything();
    } else {
      checking.these(paths);
    }
    return List.copyOf(checking.problems);
  }

  /** Every problem of what ships and of what the user wrote, but for books and keys. */
  public static List<Problem> written(Home home) {
    Library library = Library.load(home);
    List<Problem> problems = new ArrayList<>(library.problems());
    problems.addAll(UserSettings.load(home).problems());
    problems.addAll(library.bench().problems());
    problems.addAll(HandsFile.load(home).problems());
    return problems;
  }

  private void everything() {
    library = Library.load(home);
    problems.addAll(written(home));
    check(home.books(problems), () -> library);
    check(home.studentBooks(problems), () -> library);
    drawer();
  }

  private void drawer() {
    Path drawer = home.drawer();
    if (Files.exists(drawer, LinkOption.NOFOLLOW_LINKS)) {
      here(drawer).ifPresent(book -> check(List.of(book), () -> library));
    }
  }

  /** A book that no link leads to out of her folder; one that does is told and not followed. */
  private Optional<Path> here(Path book) {
    Optional<String> why = home.leadsOut(book);
    why.ifPresent(told -> problems.add(new Problem(book.toString(), 0, 0, told, "")));
    return why.isPresent() ? Optional.empty() : Optional.of(book);
  }

  private void these(List<Path> paths) {
    for (Path path : paths) {
      if (Files.isDirectory(path)) {
        Home.yamlIn(path, 8, problems).forEach(this::file);
      } else {
        file(path);
      }
    }
    // All that ships is read while a book is; where neither a book nor anything else asks for it,
    // nobody waits for it.
    CompletableFuture<Library> read =
        reading.isEmpty() && plans.isEmpty() && books.isEmpty() && benches.isEmpty()
            ? CompletableFuture.completedFuture(library)
            : CompletableFuture.supplyAsync(() -> reading().library());
    check(books, read::join);
    library = read.join();
    plans.forEach(plan -> PlanFile.of(plan, library));
    benches.forEach(
        bench ->
            problems.addAll(
                bench.known(library.reference(), library.routines().values()).problems()));
    checked.forEach(list -> problems.addAll(list.all()));
  }

  /** What ships and is the user's, so that the files to check can be laid over it. */
  private LibraryReading reading() {
    if (reading.isEmpty()) {
      LibraryReading begun = Library.reading(home);
      begun.nextLayer();
      reading = Optional.of(begun);
    }
    return reading.get();
  }

  private void file(Path path) {
    if (home.keepsBook(path) || isBook(path)) {
      here(path).ifPresent(books::add);
      return;
    }
    Optional<DataFile> file = Home.read(path, problems);
    if (file.isEmpty()) {
      return;
    }
    ProblemList list = new ProblemList(file.get().name());
    checked.add(list);
    Optional<Node> document = YamlText.compose(file.get().bytes(), list);
    if (document.isEmpty()) {
      return;
    }
    if (document.get() instanceof MappingNode mapping) {
      keyed(new YamlFields(mapping, "this file", list), file.get());
    } else {
      checked.remove(list);
      problems.addAll(TriedFile.of(file.get()).problems());
    }
  }

  private void keyed(YamlFields fields, DataFile file) {
    // A plan may name its routine by the key that a routine begins with.
    boolean plan = PLAN_KEYS.stream().anyMatch(fields::names) && !fields.names("steps");
    Optional<DataKind> kind =
        DataKind.of(fields).filter(found -> !plan || found != DataKind.ROUTINES);
    if (kind.isPresent()) {
      fields.format();
      reading().read(fields, kind.get());
    } else if (plan) {
      plans.add(fields);
    } else if (BENCH_KEYS.stream().anyMatch(fields::names)) {
      benches.add(BenchFile.of(file));
    } else if (SETTINGS_KEYS.stream().anyMatch(fields::names)) {
      problems.addAll(UserSettings.onThisMachine(file).problems());
    } else if (fields.names("left-out")) {
      problems.addAll(HandsFile.of(file).problems());
    } else if (others.keySet().stream().anyMatch(fields::names)) {
      others.forEach(
          (key, check) -> {
            if (fields.names(key)) {
              problems.addAll(check.apply(file));
            }
          });
    } else if (!fields.names("forms")) {
      fields.unknown(DataKind.allKeys());
    }
  }

  /** A book is told by its header or its first entry, whatever else is wrong with it. */
  private static boolean isBook(Path path) {
    if (!Files.isRegularFile(path)) {
      return false;
    }
    // What a book showed is remembered beside it, though the book itself was emptied.
    Path remembered =
        path.resolveSibling(path.getFileName().toString().replaceFirst("\\.yaml$", "") + ".last");
    try (InputStream in = Files.newInputStream(path)) {
      if (Files.size(path) == 0 && Files.isRegularFile(remembered)) {
        return true;
      }
      // No more than that: there are files that are one line of gigabytes.
      String start = new String(in.readNBytes(HEAD_BYTES), StandardCharsets.ISO_8859_1);
      return start
          .lines()
          .anyMatch(line -> line.startsWith("# Linkwright job book") || line.startsWith("- {n: "));
    } catch (IOException unreadable) {
      // Whatever is wrong is told when the file is read.
      return false;
    }
  }

  private void check(List<Path> found, Supplier<Library> read) {
    found.forEach(book -> problems.addAll(bookCheck.problems(book, read)));
  }
}
