package linkwright.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.kernel.Message;
import linkwright.disk.DiskTrouble;
import linkwright.files.Home;
import linkwright.job.BenchFact;
import linkwright.job.Entry;
import linkwright.job.HotWorkState;
import linkwright.job.JobState;
import linkwright.job.LessonFact;
import linkwright.lesson.BroughtOver;
import linkwright.lesson.ClassRoom;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.QuestionBank;
import linkwright.lesson.Roster;
import linkwright.lesson.Topic;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.routine.Routine;
import linkwright.standing.Handbook;

/**
 * Reads a class: all students' books of a folder and below it, to look at only. The same student
 * met in two places is read from the book with more entries.
 */
final class ClassReading {
  private static final int DEEP = 4;

  private ClassReading() {}

  static Message.ClassRead of(
      Home home, String folder, ZoneId zone, Handbook handbook, Instant now) {
    StudentsFile file = StudentsFile.load(home);
    List<String> problems = new ArrayList<>();
    List<ClassRoom.Seat> seats = new ArrayList<>();
    Map<String, List<Item>> banks = new HashMap<>();
    Optional<ClassRoom.LastFlame> flame = Optional.empty();
    Instant flameAt = Instant.MIN;
    Path root = (folder.isEmpty() ? home.folder() : Path.of(folder)).toAbsolutePath().normalize();
    List<Book> books = new ArrayList<>();
    for (Path path : yaml(root, problems)) {
      Read<List<Entry>> read = StudentBooks.entries(path);
      read.problem().ifPresent(problems::add);
      read.found().ifPresent(entries -> books.add(new Book(path, entries)));
    }
    for (Book book : books) {
      Optional<String> student = student(book.entries());
      if (student.isPresent()) {
        List<Book> jobs = books.stream().filter(other -> other.isBeside(book)).toList();
        ClassRoom.Seat seat =
            seat(student.get(), root, book, jobs, zone, file.roster().gapDays(), handbook);
        seats.add(seat.with(seat.learner().without(item -> isGone(item, handbook, banks))));
      }
      for (Entry entry : book.entries()) {
        if (entry.fact() instanceof BenchFact.HotWorkSaid said && !entry.at().isBefore(flameAt)) {
          flameAt = entry.at();
          flame =
              Optional.of(
                  new ClassRoom.LastFlame(
                      entry.at(), words(said.state()), said.state() == HotWorkState.SHUT));
        }
      }
    }
    seats.sort(
        Comparator.comparing((ClassRoom.Seat seat) -> file.roster().name(seat.learner().id())));
    return new Message.ClassRead(
        file.roster(),
        room(root.toString(), onceEach(seats), flame, problems, handbook, banks, now));
  }

  private static ClassRoom room(
      String folder,
      List<ClassRoom.Seat> seats,
      Optional<ClassRoom.LastFlame> flame,
      List<String> problems,
      Handbook handbook,
      Map<String, List<Item>> banks,
      Instant now) {
    Map<String, String> called = new HashMap<>();
    for (ClassRoom.Missed missed : ClassRoom.worst(seats)) {
      Stream.of(missed.item(), missed.lesson())
          .map(id -> id.split("/", 2)[0])
          .flatMap(id -> handbook.routine(id).stream())
          .flatMap(known -> bank(known, handbook, banks).stream())
          .filter(item -> item.id().equals(missed.item()))
          .findFirst()
          .ifPresent(item -> called.put(item.id(), asks(item)));
    }
    return new ClassRoom(folder, seats, flame, problems, called, now);
  }

  /** Whether a routine that is known here does not ask it any more, so that it never comes back. */
  private static boolean isGone(String item, Handbook handbook, Map<String, List<Item>> banks) {
    return handbook
        .routine(item.split("/", 2)[0])
        .filter(r -> bank(r, handbook, banks).stream().noneMatch(each -> each.id().equals(item)))
        .isPresent();
  }

  private static List<Item> bank(
      Routine routine, Handbook handbook, Map<String, List<Item>> banks) {
    return banks.computeIfAbsent(
        routine.id(), any -> QuestionBank.of(routine, handbook.cautions(), handbook.reference()));
  }

  /** A sum has other numbers each time: one that stands for all. */
  private static String asks(Item item) {
    String asks = item.draw(1, UnitStyle.METRIC).asks();
    return item.topic() == Topic.NUMBER ? "a sum, such as “" + asks + "”" : asks;
  }

  private static List<ClassRoom.Seat> onceEach(List<ClassRoom.Seat> seats) {
    List<ClassRoom.Seat> once = new ArrayList<>();
    for (ClassRoom.Seat seat : seats) {
      Optional<ClassRoom.Seat> other = once.stream().filter(each -> isSame(each, seat)).findFirst();
      if (other.isEmpty()) {
        once.add(seat);
      } else if (seat.at().isAfter(other.get().at())) {
        once.set(once.indexOf(other.get()), seat);
      }
    }
    return once;
  }

  /** Whoever learns without a name is another in each folder. */
  private static boolean isSame(ClassRoom.Seat one, ClassRoom.Seat other) {
    return one.learner().id().equals(other.learner().id())
        && (!one.learner().id().equals(Roster.OWN) || one.book().equals(other.book()));
  }

  /** What she is called in the file of the folder that her book lies in; empty where nothing is. */
  private static String name(String id, Path book) {
    Path folder = book.toAbsolutePath().getParent();
    Path home = folder == null ? null : folder.getParent();
    return home == null
        ? ""
        : StudentsFile.load(new Home(home)).roster().names().getOrDefault(id, "");
  }

  private static String words(HotWorkState state) {
    return switch (state) {
      case LIT -> "lit";
      case HOT -> "hot, no flame";
      case SHUT -> "every flame out, gas shut";
      case NOT_KNOWN -> "not known";
    };
  }

  private static Optional<String> student(List<Entry> entries) {
    return entries.stream()
        .map(Entry::fact)
        .filter(LessonFact.StudentBookOpened.class::isInstance)
        .map(fact -> ((LessonFact.StudentBookOpened) fact).student())
        .findFirst();
  }

  /** What she made since her book was opened last is told with it, and written nowhere. */
  private static ClassRoom.Seat seat(
      String id,
      Path root,
      Book hers,
      List<Book> jobs,
      ZoneId zone,
      int gapDays,
      Handbook handbook) {
    List<Entry> entries = new ArrayList<>(hers.entries());
    Learner known = Learner.of(id, entries, zone, gapDays);
    Instant at = entries.get(entries.size() - 1).at();
    for (Book job : jobs) {
      Optional<Instant> last =
          job.entries().stream()
              .filter(entry -> entry.person().equals(id))
              .map(Entry::at)
              .max(Comparator.naturalOrder());
      at = last.filter(at::isBefore).orElse(at);
      for (LessonFact fact : made(known, job, handbook)) {
        entries.add(new Entry(entries.size() + 1, last.orElse(at), "class", id, fact));
      }
    }
    Optional<LastStep.Seen> there =
        LastStep.of(
            Learner.of(id, List.of(), zone, gapDays),
            hers.entries(),
            jobs.stream().flatMap(job -> job.of(handbook).stream()).toList());
    return new ClassRoom.Seat(
        Learner.of(id, entries, zone, gapDays),
        at,
        there.map(LastStep.Seen::step).orElse(""),
        there.map(LastStep.Seen::at).orElse(at),
        hers.path().toString(),
        hers.folder(root),
        name(id, hers.path()));
  }

  private static List<LessonFact> made(Learner learner, Book job, Handbook handbook) {
    return job.of(handbook)
        .map(known -> BroughtOver.of(learner, known.slug(), known.entries(), known.routine()))
        .orElse(List.of());
  }

  /** A book of the folder. */
  private record Book(Path path, List<Entry> entries) {
    /** The folder below that one in which the folder of its kind lies; empty if it is that one. */
    String folder(Path root) {
      Path home = path.toAbsolutePath().normalize().resolve("../..").normalize();
      Path in = root.toAbsolutePath().normalize();
      return home.startsWith(in) ? in.relativize(home).toString() : "";
    }

    /** The job that it is of; empty where its routine is not known here. */
    Optional<LastStep.Job> of(Handbook handbook) {
      String routine = JobState.replay(entries, handbook.stages()).course().routine();
      return handbook
          .routine(routine)
          .map(known -> new LastStep.Job(TrayReading.slug(path), entries, known));
    }

    /** Whether it is a job's in the folder that a student's book lies in. */
    boolean isBeside(Book student) {
      Path jobs = path.toAbsolutePath().getParent();
      Path students = student.path().toAbsolutePath().getParent();
      return !jobs.equals(students)
          && String.valueOf(jobs.getParent()).equals(String.valueOf(students.getParent()));
    }
  }

  private static List<Path> yaml(Path root, List<String> problems) {
    if (Files.notExists(root)) {
      return List.of();
    }
    try (Stream<Path> paths = Files.walk(root, DEEP)) {
      return paths
          .filter(path -> path.toString().endsWith(".yaml"))
          .filter(Files::isRegularFile)
          .filter(ClassReading::isInBooks)
          .sorted()
          .toList();
    } catch (IOException | java.io.UncheckedIOException trouble) {
      problems.add(
          trouble instanceof IOException refused
              ? DiskTrouble.reading(root, refused)
              : root + " cannot be read.");
      return List.of();
    }
  }

  /** Books lie in folders of their kind; all else there is no book and not opened. */
  private static boolean isInBooks(Path path) {
    Path folder = path.getParent();
    String name = folder == null ? "" : String.valueOf(folder.getFileName());
    return name.equals("students") || name.equals("jobs");
  }
}
