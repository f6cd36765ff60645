package linkwright.cli;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.content.Part;
import linkwright.coach.hands.HandsContent;
import linkwright.coach.keys.Act;
import linkwright.exchange.forms.OutForm;
import linkwright.files.HandsFile;
import linkwright.files.Library;
import linkwright.plain.PlainLines;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import linkwright.shell.BookOfJob;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code linkwright hands}: what all books taught, and which of them are not to count. */
@Command(
    name = "hands",
    mixinStandardHelpOptions = true,
    description = "What all your books taught of the hands that work here, and from which jobs.",
    footer = {"", "Example: linkwright hands --leave-out first-try"})
final class HandsCommand implements Callable<Integer> {
  private final Root root;

  @Option(
      names = "--leave-out",
      paramLabel = "JOB",
      description = "From now on this book does not count.")
  private List<String> out = new ArrayList<>();

  @Option(names = "--count", paramLabel = "JOB", description = "This book counts again.")
  private List<String> again = new ArrayList<>();

  @Mixin private final AnswerRows answer = new AnswerRows();

  HandsCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    if (answer.form() instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    Surroundings here = root.here();
    Library library = Library.load(root.home());
    here.err().sayAll(Located.all(library.problems()));
    HandsFile file = HandsFile.load(root.home());
    here.err().sayAll(Located.all(file.problems()));
    List<String> unread = new ArrayList<>();
    Handbook handbook = Start.handbook(library, root.home(), unread);
    here.err().sayAll(unread);
    Map<String, String> known = new LinkedHashMap<>();
    handbook.hands().jobs().forEach(job -> known.put(job.slug(), job.name()));
    for (String job : out) {
      Read<String> meant = meant(job, known);
      if (meant instanceof Read.Bad<String> bad) {
        return root.wrong(bad.sentence());
      }
      file = file.with(meant.orThrow(), true);
    }
    for (String job : again) {
      // A book that is gone may still be among those left out.
      Read<String> meant = file.leftOut().contains(job) ? Read.good(job) : meant(job, known);
      if (meant instanceof Read.Bad<String> bad) {
        return root.wrong(bad.sentence());
      }
      file = file.with(meant.orThrow(), false);
    }
    if (!out.isEmpty() || !again.isEmpty()) {
      Optional<String> unkept = file.save(root.home());
      if (unkept.isPresent()) {
        here.err().say(unkept.get());
        return Exit.PROBLEMS;
      }
      handbook = Start.handbook(library, root.home());
    }
    Choices choices = Choices.load(root.home());
    List<Part> parts =
        new HandsContent(handbook, choices.settings().in(ZoneId.systemDefault())).parts(-1);
    if (answer.forReading()) {
      PlainLines plain = new PlainLines(Act::words);
      root.inHerWords(parts)
          .forEach(
              part -> {
                here.out().sayAll(part.answer(plain));
                here.out().say("");
              });
    } else {
      answer.print(root, "hands", parts);
    }
    return file.problems().isEmpty() && unread.isEmpty() ? Exit.GOOD : Exit.PROBLEMS;
  }

  /** The book that is meant by its own name or by its job's. */
  private static Read<String> meant(String job, Map<String, String> known) {
    if (known.containsKey(job)) {
      return Read.good(job);
    }
    return BookOfJob.called(job, known)
        .flatMap(
            book ->
                book.map(Read::good)
                    .orElseGet(
                        () ->
                            Read.bad(
                                "There is no job \""
                                    + job
                                    + "\"."
                                    + Nearest.of(job, known.keySet())
                                        .map(near -> " Did you mean " + near + "?")
                                        .orElse(""))));
  }
}
