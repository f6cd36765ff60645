package linkwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import linkwright.books.BookMerge;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.content.Part;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.quantity.Read;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright merge}: one book out of those that several machines kept of one job. */
@Command(
    name = "merge",
    mixinStandardHelpOptions = true,
    description =
        "Unites books of one job from several machines; they stay as they are. One alone is put in"
            + " order and becomes a book of the newest format.",
    footer = {"", "Example: linkwright merge laptop/chain.yaml bench/chain.yaml --into chain.yaml"})
final class MergeCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(paramLabel = "BOOK", arity = "1..*", description = "The books; - for standard input.")
  private List<String> books = new ArrayList<>();

  @Option(
      names = "--into",
      required = true,
      paramLabel = "FILE",
      description = "The new book; it must not be there yet.")
  private String into = "";

  @Mixin private final AnswerRows answer = new AnswerRows();

  MergeCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    if (answer.form() instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    List<Read<Path>> typed = new ArrayList<>(books.stream().map(root::input).toList());
    typed.add(Root.path(into));
    Read<List<Path>> paths = Read.all(typed);
    if (paths instanceof Read.Bad<List<Path>> bad) {
      return root.wrong(bad.sentence());
    }
    List<Path> from = paths.orThrow().subList(0, books.size());
    Path to = paths.orThrow().get(books.size()).toAbsolutePath();
    for (Path book : from) {
      if (!Files.isRegularFile(book)) {
        return root.wrong(
            Files.exists(book)
                ? book + " is no book: it is no ordinary file."
                : "There is no book " + book + ".");
      }
    }
    if (!to.toString().endsWith(".yaml")) {
      return root.wrong("A job book ends in .yaml: --into " + into + ".yaml");
    }
    if (Files.exists(to)) {
      return root.wrong(to + " is there already, and stays as it is: take another name.");
    }
    return merge(from, to);
  }

  private int merge(List<Path> from, Path to) {
    Surroundings here = root.here();
    Read<BookMerge> merged = BookMerge.of(from);
    if (merged instanceof Read.Bad<BookMerge> bad) {
      here.err().say(Located.asTyped(bad.sentence(), from));
      return Exit.PROBLEMS;
    }
    BookMerge union = merged.orThrow();
    Located.all(union.problems()).stream()
        .map(told -> Located.asTyped(told, from))
        .forEach(here.err()::say);
    List<String> summary =
        Stream.concat(union.summary().stream(), chain().told(union).stream())
            .map(told -> Located.asTyped(told, from))
            .toList();
    if (answer.forReading()) {
      here.out().sayAll(summary);
    }
    Read<Path> written = union.write(to);
    if (written instanceof Read.Bad<Path> bad) {
      here.err().say(bad.sentence());
      return Exit.PROBLEMS;
    }
    if (answer.forReading()) {
      here.out().say("Written: " + written.orThrow() + ", " + union.texts().size() + " entries.");
    } else {
      List<Part> parts = new ArrayList<>();
      summary.forEach(line -> parts.add(new Rows(List.of(Row.of("", "").remark(line)))));
      Row file = Row.of("written", written.orThrow().toString());
      parts.add(new Rows(List.of(file, Row.of("entries", "" + union.texts().size()))));
      answer.print(root, "merged", parts);
    }
    return union.problems().isEmpty() ? Exit.GOOD : Exit.PROBLEMS;
  }

  private MergedChain chain() {
    Handbook handbook = Start.handbook(Library.load(root.home()), root.home());
    return new MergedChain(Choices.load(root.home()).user().units(), handbook);
  }
}
