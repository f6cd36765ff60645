package linkwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.coach.classroom.ClassContent;
import linkwright.coach.content.Part;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.lesson.Roster;
import linkwright.plain.PlainLines;
import linkwright.quantity.Read;
import linkwright.shell.Start;
import linkwright.shell.StudentBooks;
import linkwright.standing.Handbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright class}: the students' books of a folder at a glance. */
@Command(
    name = "class",
    mixinStandardHelpOptions = true,
    description = {
      "Shows the students whose books lie in a folder, and who waits for a mark.",
      "Who is at which step as of when, what is got wrong most, the room's last flame."
    },
    footer = {"", "Example: linkwright class /media/class --plain"})
final class ClassCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..1",
      description = "Where their folders are; without it your own.")
  private Optional<String> folder = Optional.empty();

  @Option(names = "--plain", description = "Line by line over standard input and output.")
  private boolean plain;

  @Option(
      names = "--as",
      paramLabel = "FORM",
      completionCandidates = OutForm.Named.class,
      description = OutForm.SAYS)
  private Optional<String> form = Optional.empty();

  @Option(names = "--names", description = "With --as: names, not ids.")
  private boolean names;

  ClassCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<Path> path = folder.map(Root::path).orElseGet(() -> Read.good(root.home().folder()));
    if (path instanceof Read.Bad<Path> bad) {
      return root.wrong(bad.sentence());
    }
    if (folder.isPresent() && !Files.isDirectory(path.orThrow())) {
      return root.wrong("There is no folder " + path.orThrow() + ".");
    }
    if (form.isPresent() || !(plain || root.here().environment().terminal())) {
      return answer(path.orThrow().toAbsolutePath().toString());
    }
    return root.start(
        plain,
        Optional.empty(),
        Optional.of(
            new Message.Led(PlaceId.CLASS_ROOM, path.orThrow().toAbsolutePath().toString())));
  }

  /** The same as the place says, as lines or rows. */
  private int answer(String folderName) {
    Read<OutForm> as = OutForm.named(form.orElse("text"));
    if (as instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    ZoneId zone = ZoneId.systemDefault();
    Handbook handbook = Start.handbook(Library.load(root.home()));
    Instant now = root.here().clock().instant();
    Message.ClassRead read = StudentBooks.classOf(root.home(), folderName, zone, handbook, now);
    Roster roster =
        names ? read.room().named(read.roster()) : new Roster(Map.of(), read.roster().gapDays());
    List<Part> parts =
        new ClassContent(
                read.room(), roster, handbook, Choices.load(root.home()).user().words(), now, zone)
            .parts(-1);
    if (as.orThrow() == OutForm.TEXT) {
      PlainLines lines = new PlainLines(Act::words);
      root.inHerWords(parts).forEach(part -> root.here().out().sayAll(part.answer(lines)));
    } else {
      root.here().out().print(AnswerRows.written(as.orThrow(), "class", parts));
    }
    return read.room().problems().isEmpty() ? Exit.GOOD : Exit.PROBLEMS;
  }
}
