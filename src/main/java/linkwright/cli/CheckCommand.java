package linkwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import linkwright.books.BookChecks;
import linkwright.books.GoneBooks;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.disk.DiskTrouble;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Checking;
import linkwright.files.DataFile;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.shell.BookOfJob;
import linkwright.shell.StudentsFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright check}: every problem of the files that Linkwright reads. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description =
        "Tells every problem of routines, cautions, reference data, link patterns, plan files,"
            + " settings and job books, each with its place and what would be right.",
    footer = {
      "",
      "Example: linkwright check my-plan.yaml",
      "         cat my-plan.yaml | linkwright check -"
    })
final class CheckCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..*",
      description =
          "Files, folders or jobs; without any, all that came with Linkwright and all of yours.")
  private List<String> paths = new ArrayList<>();

  private static final Map<String, Function<DataFile, List<Problem>>> OTHERS =
      Map.of("keys", Choices::keysProblems, "students", file -> StudentsFile.of(file).problems());

  private static final List<String> COLUMNS = List.of("file", "line", "column", "wrong", "right");

  @Option(
      names = "--as",
      paramLabel = "FORM",
      completionCandidates = OutForm.Named.class,
      description = OutForm.SAYS)
  private String form = "text";

  CheckCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<OutForm> as = OutForm.named(form);
    if (as instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    List<Path> asked = new ArrayList<>();
    for (String typed : paths) {
      Read<Path> path = root.input(typed).map(named -> orBook(named, typed));
      if (path instanceof Read.Bad<Path> bad) {
        return root.wrong(bad.sentence());
      }
      Optional<String> hidden = DiskTrouble.toLookAt(path.orThrow());
      if (hidden.isPresent()) {
        root.here().err().say(hidden.get());
        return Exit.PROBLEMS;
      }
      if (!Files.exists(path.orThrow())) {
        return root.wrong(
            "There is no file or folder " + typed + "." + BookOfJob.near(typed, root.home()));
      }
      asked.add(path.orThrow());
    }
    List<Problem> problems =
        new ArrayList<>(
            Checking.check(
                root.home(), asked, BookChecks.at(root.here().clock().instant()), OTHERS));
    if (asked.isEmpty()) {
      problems.addAll(GoneBooks.of(root.home()));
      problems.addAll(StudentsFile.load(root.home()).problems());
      Choices.load(root.home()).problems().stream()
          .filter(problem -> !problems.contains(problem))
          .forEach(problems::add);
    }
    boolean typed = paths.contains("-");
    problems.replaceAll(each -> typed ? Located.asTyped(each) : each);
    if (as.orThrow() == OutForm.TEXT) {
      root.here().out().sayAll(Located.all(problems));
      root.here().out().say(count(problems.stream().mapToInt(Problem::stands).sum()));
    } else {
      root.here().out().print(as.orThrow().written("problems", rows(problems), COLUMNS));
    }
    return problems.isEmpty() ? Exit.GOOD : Exit.PROBLEMS;
  }

  /** A file of that name, else the job's book. */
  private Path orBook(Path named, String typed) {
    Path book = root.home().jobs().resolve(typed + ".yaml");
    return !Files.exists(named) && Files.exists(book) ? book : named;
  }

  private static List<Map<String, Object>> rows(List<Problem> problems) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Problem problem : problems) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("file", problem.file());
      row.put("line", problem.line());
      row.put("column", problem.column());
      row.put("wrong", problem.wrong());
      row.put("right", problem.expected());
      rows.add(row);
    }
    return rows;
  }

  private static String count(int problems) {
    return switch (problems) {
      case 0 -> "No problem found.";
      case 1 -> "1 problem found.";
      default -> problems + " problems found.";
    };
  }
}
