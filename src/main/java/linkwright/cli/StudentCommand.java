package linkwright.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import linkwright.cli.console.Choices;
import linkwright.cli.console.Exit;
import linkwright.cli.console.Surroundings;
import linkwright.coach.content.Part;
import linkwright.coach.content.Row;
import linkwright.coach.content.Rows;
import linkwright.coach.kernel.Settings;
import linkwright.coach.keys.Act;
import linkwright.coach.student.StudentContent;
import linkwright.exchange.forms.OutForm;
import linkwright.files.Library;
import linkwright.lesson.Learner;
import linkwright.lesson.Roster;
import linkwright.lesson.StudentReport;
import linkwright.plain.PlainLines;
import linkwright.quantity.Nearest;
import linkwright.quantity.Read;
import linkwright.shell.Start;
import linkwright.shell.StudentBooks;
import linkwright.shell.StudentsFile;
import linkwright.standing.Handbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code linkwright student}: the report of a student; she is handed over or removed whole. */
@Command(
    name = "student",
    mixinStandardHelpOptions = true,
    description = {
      "What a student knows, what she made, what to practise next, her metal tab.",
      "It names her by her id unless --names is given."
    },
    footer = {
      "",
      "Example: linkwright student Mara --as csv",
      "         linkwright student Mara --hand-over mara.yaml"
    })
final class StudentCommand implements Callable<Integer> {
  private final Root root;

  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      description = "Her name or id; without it your own book.")
  private Optional<String> name = Optional.empty();

  @Option(
      names = "--as",
      paramLabel = "FORM",
      completionCandidates = OutForm.Named.class,
      description = OutForm.SAYS)
  private String form = "text";

  @Option(names = "--names", description = "Names her by her name, not by her id.")
  private boolean names;

  @Option(names = "--seeds", description = "Tells the seed of each question, for a teacher.")
  private boolean seeds;

  @Option(
      names = "--hand-over",
      paramLabel = "FILE",
      description = "Copies her whole book into a new file, for her or her next teacher.")
  private Optional<String> into = Optional.empty();

  @Option(names = "--remove", description = "Takes away her book and her name, whole; needs --yes.")
  private boolean remove;

  @Option(names = "--yes", description = "With --remove: she is removed without being asked about.")
  private boolean yes;

  StudentCommand(Root root) {
    this.root = root;
  }

  @Override
  public Integer call() {
    Read<OutForm> as = OutForm.named(form);
    if (as instanceof Read.Bad<OutForm> bad) {
      return root.wrong(bad.sentence());
    }
    StudentsFile file = StudentsFile.load(root.home());
    root.here().err().sayAll(Located.all(file.problems()));
    String typed = name.orElse(Roster.OWN);
    Optional<String> id =
        file.roster().find(typed).or(() -> StudentBooks.isThere(root.home(), typed));
    if (id.isEmpty() && !file.problems().isEmpty()) {
      // What cannot be read may well hold that name.
      root.here().err().say("Mend students.yaml first: it tells who your students are.");
      return Exit.PROBLEMS;
    }
    if (id.isEmpty()) {
      return root.wrong(
          "There is no student \""
              + typed
              + "\"."
              + Nearest.of(typed, file.roster().names().values())
                  .map(near -> " Did you mean " + near + "?")
                  .orElse(" linkwright lesson ROUTINE --student NAME begins her book."));
    }
    int entries = StudentBooks.entriesIn(root.home(), id.get());
    boolean own = id.get().equals(Roster.OWN);
    String hers =
        own || id.get().equals(file.roster().name(id.get()))
            ? ""
            : " and her name, " + file.roster().name(id.get());
    if (remove && !yes) {
      root.here()
          .err()
          .say(
              "Nothing is removed yet. It would take away "
                  + (own ? "your book" : "the book of " + id.get())
                  + ", its "
                  + counted(entries)
                  + hers
                  + ", for good. First, as a copy: linkwright student "
                  + id.get()
                  + " --hand-over FILE. Then --remove --yes.");
      return Exit.PROBLEMS;
    }
    Optional<String> unkept =
        into.map(Root::path)
            .flatMap(
                path ->
                    path.problem()
                        .or(() -> StudentBooks.handOver(root.home(), id.get(), path.orThrow())));
    if (unkept.isEmpty() && remove) {
      unkept = StudentBooks.remove(root.home(), id.get());
    }
    if (unkept.isPresent()) {
      root.here().err().say(unkept.get());
      return Exit.PROBLEMS;
    }
    return into.isPresent() || remove
        ? done(id.get(), entries, hers)
        : report(as.orThrow(), file, id.get());
  }

  private int done(String id, int entries, String hers) {
    String whose = id.equals(Roster.OWN) ? "your" : "her";
    into.ifPresent(
        path -> root.here().out().say(id + ": " + whose + " book is in " + path + ", whole."));
    if (remove) {
      root.here()
          .out()
          .say(
              id
                  + " is removed: "
                  + whose
                  + " book of "
                  + counted(entries)
                  + hers
                  + ", gone from here. Jobs keep the id.");
    }
    return Exit.GOOD;
  }

  private static String counted(int entries) {
    return entries == 1 ? "1 entry" : entries + " entries";
  }

  private int report(OutForm as, StudentsFile file, String id) {
    Surroundings here = root.here();
    Library library = Library.load(root.home());
    Choices choices = Choices.load(root.home());
    Settings settings = choices.settings().in(ZoneId.systemDefault());
    Handbook handbook = Start.handbook(library);
    String device = choices.device(here, root.home());
    Read<Learner> read =
        StudentBooks.learner(root.home(), device, here.clock(), id, handbook, settings.zone());
    if (read instanceof Read.Bad<Learner> bad) {
      here.err().say(bad.sentence());
      return Exit.PROBLEMS;
    }
    Learner learner = read.orThrow();
    LocalDate today = here.clock().instant().atZone(settings.zone()).toLocalDate();
    StudentReport report = StudentContent.report(learner, handbook, today);
    String who = names ? file.roster().name(id) : id;
    List<Part> parts =
        new ArrayList<>(
            StudentContent.of(report, learner, handbook, settings.units(), choices.user().words()));
    parts.add(0, new Rows(List.of(Row.of("report of", who), Row.of("as of", today.toString()))));
    if (seeds) {
      parts.add(StudentContent.asked(learner));
    }
    if (as == OutForm.TEXT) {
      PlainLines plain = new PlainLines(Act::words);
      root.inHerWords(parts).forEach(part -> here.out().sayAll(part.answer(plain)));
    } else {
      here.out().print(AnswerRows.written(as, "student", parts));
    }
    return Exit.GOOD;
  }
}
