package linkwright.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.books.BookFile;
import linkwright.books.EntryLines;
import linkwright.coach.kernel.Message;
import linkwright.disk.Disk;
import linkwright.disk.DiskTrouble;
import linkwright.files.Home;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.LessonFact;
import linkwright.lesson.BroughtOver;
import linkwright.lesson.ClassRoom;
import linkwright.lesson.Learner;
import linkwright.lesson.Roster;
import linkwright.quantity.Read;
import linkwright.standing.Handbook;

/**
 * Students' books, {@code students/ID.yaml} in the user's folder: each a book like a job's, written
 * and synced by the same way. A book is let go of after each entry, so that a class can share one.
 */
public final class StudentBooks {
  private static final SecureRandom CHANCE = new SecureRandom();

  /** No letter that is taken for another. */
  private static final String LETTERS = "abcdefghkmnpqrstuvwxyz23456789";

  private static final int ID_LETTERS = 5;

  private final Home home;
  private final String device;
  private final InstantSource clock;

  /** Books that a class was read from: her own, wherever it lies. */
  private final Map<String, Path> elsewhere = new HashMap<>();

  StudentBooks(Home home, String device, InstantSource clock) {
    this.home = home;
    this.device = device;
    this.clock = clock;
  }

  /** Where a student's book is. */
  public static Path path(Home home, String id) {
    return home.students().resolve(id + ".yaml");
  }

  /** The class of a folder; from now on her own book there is the one that is written. */
  Message room(String folder, ZoneId zone, Handbook handbook) {
    Message.ClassRead read = ClassReading.of(home, folder, zone, handbook, clock.instant());
    elsewhere.clear();
    for (ClassRoom.Seat seat : read.room().students()) {
      elsewhere.put(seat.learner().id(), Path.of(seat.book()));
    }
    return read;
  }

  /** The class of a folder, to look at only. */
  public static Message.ClassRead classOf(
      Home home, String folder, ZoneId zone, Handbook handbook, Instant now) {
    return ClassReading.of(home, folder, zone, handbook, now);
  }

  /** Where her book is that is written here. */
  Path path(String id) {
    return elsewhere.getOrDefault(id, path(home, id));
  }

  /** Reads a student's book, begun if there is none; a name puts her into the roster first. */
  Message open(String id, String name) {
    StudentsFile file = StudentsFile.load(home);
    if (!name.isEmpty()) {
      Read<String> named = named(home, name);
      return named
          .problem()
          .<Message>map(Message.Troubled::new)
          .orElseGet(() -> open(named.orThrow(), ""));
    }
    if (id.isEmpty()) {
      return new Message.StudentRead(file.roster(), "", List.of());
    }
    if (!Files.exists(path(id))) {
      Optional<String> wrong = begin(id);
      if (wrong.isPresent()) {
        return new Message.Troubled(wrong.get());
      }
    }
    Read<List<Entry>> read = entries(path(id));
    return read.problem()
        .<Message>map(Message.Troubled::new)
        .orElseGet(() -> new Message.StudentRead(file.roster(), id, read.orThrow()));
  }

  /** Enters in her book what she made in the jobs of this folder since last time. */
  Message bringOver(String id, Handbook handbook) {
    Message opened = open(id, "");
    if (!(opened instanceof Message.StudentRead read)) {
      return opened;
    }
    Learner learner = Learner.of(id, read.entries(), ZoneOffset.UTC, read.roster().gapDays());
    List<Fact> made = new ArrayList<>();
    for (Path path : homeOf(id).books()) {
      List<Entry> entries = entries(path).found().orElse(List.of());
      String routine = JobState.replay(entries, handbook.stages()).course().routine();
      handbook
          .routine(routine)
          .map(known -> BroughtOver.of(learner, TrayReading.slug(path), entries, known))
          .ifPresent(made::addAll);
    }
    return made.isEmpty() ? opened : keep(id, id, made);
  }

  /** The folder that her book lies in is the one that her jobs lie in. */
  private Home homeOf(String id) {
    Path folder = path(id).toAbsolutePath().getParent();
    Path above = folder == null ? null : folder.getParent();
    return above == null ? home : new Home(above);
  }

  /** Enters facts, syncs them, and only then tells of them. */
  Message keep(String id, String by, List<Fact> facts) {
    Read<List<Entry>> kept = append(id, by, facts);
    return kept.problem()
        .<Message>map(why -> new Message.NotKept(why))
        .orElseGet(
            () -> new Message.StudentRead(StudentsFile.load(home).roster(), id, kept.orThrow()));
  }

  private Optional<String> begin(String id) {
    return append(id, id, List.of(new LessonFact.StudentBookOpened(id))).problem();
  }

  /** A book that lies here under that id, though no name is known for it. */
  public static Optional<String> isThere(Home home, String id) {
    return id.matches("[a-z0-9-]{1,40}") && Files.exists(path(home, id))
        ? Optional.of(id)
        : Optional.empty();
  }

  /** A student as her book tells of her, what she made since brought over first. */
  public static Read<Learner> learner(
      Home home, String device, InstantSource clock, String id, Handbook handbook, ZoneId zone) {
    if (!Files.exists(path(home, id)) && home.books().isEmpty()) {
      // No book is begun only because it was asked for.
      int gapDays = StudentsFile.load(home).roster().gapDays();
      return Read.good(Learner.of(id, List.of(), zone, gapDays));
    }
    Message read = new StudentBooks(home, device, clock).bringOver(id, handbook);
    return read instanceof Message.StudentRead told
        ? Read.good(Learner.of(id, told.entries(), zone, told.roster().gapDays()))
        : Read.bad(
            "That lesson book could not be read: "
                + path(home, id)
                + ". linkwright check tells why.");
  }

  /** How many entries her book holds; nought for one that cannot be read. */
  public static int entriesIn(Home home, String id) {
    return entries(path(home, id)).found().map(List::size).orElse(0);
  }

  /** Copies her whole book into a new file; answers with what is wrong, if it could not be. */
  public static Optional<String> handOver(Home home, String id, Path into) {
    try {
      Disk.create(into, Files.readAllBytes(path(home, id)));
      return Optional.empty();
    } catch (IOException trouble) {
      return Optional.of(DiskTrouble.writing(into, trouble));
    }
  }

  /** Takes away her book, all that lies beside it, and her name; answers with what is wrong. */
  public static Optional<String> remove(Home home, String id) {
    Path book = path(home, id);
    Optional<String> out = home.leadsOut(book);
    if (out.isPresent()) {
      return out;
    }
    try (Stream<Path> beside = Files.list(book.getParent())) {
      List<Path> hers =
          beside.filter(path -> String.valueOf(path.getFileName()).startsWith(id + ".")).toList();
      for (Path path : hers) {
        Files.delete(path);
      }
    } catch (IOException trouble) {
      return Optional.of(DiskTrouble.writing(book, trouble));
    }
    StudentsFile file = StudentsFile.load(home);
    return new StudentsFile(file.roster().without(id), file.problems()).save(home);
  }

  /** A new student's id, by which her name is known in the teacher's file from now on. */
  public static Read<String> named(Home home, String name) {
    StudentsFile file = StudentsFile.load(home);
    Optional<String> known = file.roster().find(name);
    if (known.isPresent()) {
      return Read.good(known.get());
    }
    String id = newId(home, file.roster());
    return new StudentsFile(file.roster().and(id, name.strip()), file.problems())
        .save(home)
        .map(Read::<String>bad)
        .orElseGet(() -> Read.good(id));
  }

  private static String newId(Home home, Roster roster) {
    String id;
    do {
      StringBuilder letters = new StringBuilder("s-");
      for (int i = 0; i < ID_LETTERS; i++) {
        letters.append(LETTERS.charAt(CHANCE.nextInt(LETTERS.length())));
      }
      id = letters.toString();
    } while (roster.names().containsKey(id) || Files.exists(path(home, id)));
    return id;
  }

  /** The entries of a book, to look at. */
  static Read<List<Entry>> entries(Path path) {
    Read<BookFile> looked = BookFile.look(path);
    return looked.map(book -> EntryLines.entries(book.lines()));
  }

  private Read<List<Entry>> append(String id, String by, List<Fact> facts) {
    Instant now = clock.instant();
    Path path = path(id);
    Read<BookFile> opened =
        home.leadsOut(path)
            .map(Read::<BookFile>bad)
            .orElseGet(
                () ->
                    Files.exists(path)
                        ? BookFile.open(path, device, now)
                        : BookFile.create(path.getParent(), id, device, now));
    if (opened instanceof Read.Bad<BookFile> bad) {
      return Read.bad(bad.sentence());
    }
    try (BookFile book = opened.orThrow()) {
      if (book.whyReadOnly().isPresent()) {
        return Read.bad(book.whyReadOnly().get());
      }
      List<Entry> entries = new ArrayList<>();
      for (Fact fact : facts) {
        entries.add(new Entry(book.nextNumber() + entries.size(), now, device, by, fact));
      }
      return book.append(entries.stream().map(EntryLines::line).toList()).map(EntryLines::entries);
    } catch (IOException alreadySafe) {
      // Every entry was synced when it was made; a close that fails loses nothing.
      return entries(path);
    }
  }
}
