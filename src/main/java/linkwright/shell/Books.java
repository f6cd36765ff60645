package linkwright.shell;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.books.BookFile;
import linkwright.books.BookLine;
import linkwright.books.EntryLines;
import linkwright.books.Suspect;
import linkwright.coach.kernel.DoubtfulLine;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.TrayJob;
import linkwright.drawer.Drawer;
import linkwright.files.BenchFile;
import linkwright.files.DraftStore;
import linkwright.files.HandsFile;
import linkwright.files.Home;
import linkwright.job.CautionsMet;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.quantity.Problem;
import linkwright.quantity.Read;
import linkwright.shell.entering.EnteringDrafts;
import linkwright.standing.Handbook;

/** The job books in the user's folder, one of them open at a time. */
final class Books {
  private static final Instant EVER = Instant.EPOCH;

  private final Home home;
  private final String device;
  private final InstantSource clock;
  private final DraftStore drafts;
  private final ReadingProgress patience;
  private final Tray tray;
  private final BenchReading bench;
  private final ChangedElsewhere elsewhere;
  private Optional<BookFile> open = Optional.empty();
  private String person = "";
  private ClockNotes notes = ClockNotes.NONE;

  Books(
      Home home, String device, InstantSource clock, DraftStore drafts, ReadingProgress patience) {
    this.home = home;
    this.device = device;
    this.clock = clock;
    this.drafts = drafts;
    this.patience = patience;
    this.tray = new Tray(home);
    this.bench = new BenchReading(home);
    this.elsewhere = new ChangedElsewhere(home);
  }

  void noting(ClockNotes clock) {
    notes = clock;
    tray.noting(clock);
  }

  /** Writes facts, syncs them, and only then tells that they are kept. All carry one time. */
  Message keep(List<Fact> facts, Handbook handbook) {
    if (open.isEmpty()) {
      return new Message.NotKept("No book is open.");
    }
    if (open.get().isChangedElsewhere() || open.get().whyReadOnly().isPresent()) {
      return takenOver(facts, handbook);
    }
    Read<List<Entry>> kept = facts.isEmpty() ? Read.good(List.of()) : append(open.get(), facts);
    return kept.problem()
        .<Message>map(why -> new Message.NotKept(why))
        .orElseGet(() -> new Message.Kept(kept.orThrow()));
  }

  /** Where the open book is. */
  Optional<Path> book() {
    return open.map(BookFile::path);
  }

  /** The highest number that this device gave in the open book; nought for none. */
  int last() {
    return open.map(book -> EnteringDrafts.last(book, device)).orElse(0);
  }

  /** Writes them at one time; the person is whose sitting it is when each is entered. */
  private Read<List<Entry>> append(BookFile book, List<Fact> facts) {
    Instant now = clock.instant();
    int number = book.nextNumber();
    List<Entry> entries = new ArrayList<>();
    for (Fact fact : facts) {
      person = fact instanceof Fact.SittingStarted started ? started.person() : person;
      entries.add(new Entry(number, now, device, person, fact));
      number++;
    }
    Read<List<Entry>> written =
        book.append(entries.stream().map(EntryLines::line).toList()).map(lines -> entries);
    if (written.problem().isEmpty()) {
      notes.note(now);
    }
    return written;
  }

  /** Writes facts to the book of another job, which is let go of at once. */
  Message keepElsewhere(String slug, List<Fact> facts, Handbook handbook) {
    Path path = home.jobs().resolve(slug + ".yaml");
    Read<BookFile> found =
        home.leadsOut(path)
            .map(Read::<BookFile>bad)
            .orElseGet(() -> BookFile.open(path, device, clock.instant()));
    if (!(found instanceof Read.Good<BookFile> good)) {
      return new Message.NotKept(found.problem().orElse(""));
    }
    BookFile book = good.value();
    Optional<String> problem =
        book.whyReadOnly().isPresent() ? book.whyReadOnly() : append(book, facts).problem();
    close(book);
    return problem
        .<Message>map(why -> new Message.NotKept(why))
        .orElseGet(() -> new Message.KeptElsewhere(bench(handbook)));
  }

  /** What the other books give to the bench. */
  Message.OthersRead bench(Handbook handbook) {
    Optional<Path> written = open.filter(book -> book.whyReadOnly().isEmpty()).map(BookFile::path);
    return new Message.OthersRead(device, bench.books(handbook, written));
  }

  /**
   * A book that another program wrote may be free by now, and one that was changed under this one
   * is read anew. What was entered there is shown first; nothing is entered on top of what nobody
   * here has seen.
   */
  private Message takenOver(List<Fact> facts, Handbook handbook) {
    BookFile looked = open.orElseThrow();
    Read<BookFile> again = again(looked);
    if (!(again instanceof Read.Good<BookFile> good)) {
      return new Message.NotKept(again.problem().orElse(""));
    }
    boolean same =
        good.value().lines().equals(looked.lines())
            && good.value().suspects().equals(looked.suspects());
    return same ? keep(facts, handbook) : opened(good.value(), handbook);
  }

  /** The open book opened anew, to be written; where that cannot be it stays as it is. */
  private Read<BookFile> again(BookFile before) {
    if (before.isChangedElsewhere()) {
      close(before);
    }
    Read<BookFile> again = BookFile.open(before.path(), device, clock.instant());
    Optional<String> why = again.found().flatMap(BookFile::whyReadOnly);
    if (why.isPresent()) {
      again.found().ifPresent(Books::close);
      return Read.bad(why.get());
    }
    again.found().ifPresent(book -> open = Optional.of(book));
    return again;
  }

  /**
   * A book that was looked at is written here once the other program has gone: what that entered is
   * shown, or nothing new. Empty while it is at work, and for a book that is written here.
   */
  Optional<Message> letGo(Handbook handbook) {
    return open.filter(BookFile::isLetGo).isEmpty()
        ? Optional.empty()
        : Optional.of(takenOver(List.of(), handbook))
            .filter(answer -> !(answer instanceof Message.NotKept));
  }

  Message begin(String name, List<Fact> facts, Handbook handbook) {
    shut();
    Read<BookFile> created =
        home.jobsTrouble()
            .map(Read::<BookFile>bad)
            .orElseGet(() -> BookFile.create(home.jobs(), name, device, clock.instant()));
    if (created instanceof Read.Bad<BookFile> bad) {
      return new Message.JobNotOpened(bad.sentence());
    }
    open = created.found();
    if (keep(facts, handbook) instanceof Message.NotKept not) {
      BookFile nothing = open.get();
      shut();
      nothing.discard();
      return new Message.JobNotOpened(not.why());
    }
    return opened(open.orElseThrow(), handbook);
  }

  Message open(String slug, Handbook handbook) {
    shut();
    Path path = home.jobs().resolve(slug + ".yaml");
    Read<BookFile> found =
        home.jobsTrouble()
            .or(() -> home.leadsOut(path))
            .map(Read::<BookFile>bad)
            .orElseGet(() -> BookFile.open(path, device, clock.instant()));
    if (found instanceof Read.Bad<BookFile> bad) {
      return new Message.JobNotOpened(bad.sentence());
    }
    open = found.found();
    return opened(open.orElseThrow(), handbook);
  }

  /** A book to look at: nothing is locked, and nothing can be entered in it. */
  Message look(String slug, Handbook handbook) {
    shut();
    Path path = home.jobs().resolve(slug + ".yaml");
    Read<BookFile> found =
        home.leadsOut(path).map(Read::<BookFile>bad).orElseGet(() -> BookFile.look(path));
    return found
        .problem()
        .<Message>map(Message.JobNotOpened::new)
        .orElseGet(() -> opened(found.orThrow(), handbook));
  }

  /** Accepts a line whose check fails, and reads the book anew. */
  Message accept(String check, Handbook handbook) {
    if (open.isEmpty()) {
      return new Message.NotKept("No book is open.");
    }
    Read<BookFile> here =
        open.get().isChangedElsewhere() ? again(open.get()) : Read.good(open.get());
    if (here.problem().isPresent()) {
      return new Message.NotKept(here.problem().get());
    }
    BookFile book = here.orThrow();
    Optional<Suspect> line =
        book.suspects().stream().filter(each -> each.check().equals(check)).findFirst();
    Read<List<BookLine>> accepted =
        line.map(found -> book.accept(found, clock.instant()))
            .orElseGet(() -> Read.bad("That line is not in the book any more."));
    return accepted
        .problem()
        .<Message>map(why -> new Message.NotKept(why))
        .orElseGet(() -> opened(book, handbook));
  }

  private Message opened(BookFile book, Handbook handbook) {
    person = personIn(EntryLines.entries(book.lines()));
    String slug = TrayReading.slug(book.path());
    CautionsMet met = met(handbook);
    if (book.whyReadOnly().isEmpty()) {
      EnteringDrafts.settle(drafts, slug);
    }
    return new Message.JobOpened(
        slug,
        device,
        EntryLines.entries(book.lines()),
        book.whyReadOnly().isPresent(),
        told(book, handbook, drafts.unread(slug)),
        EnteringDrafts.waiting(drafts, slug),
        book.suspects().stream().map(Books::doubtful).toList(),
        met,
        Optional.of(tray.hands()));
  }

  /** A caution that was seen in one job is known in all of them. */
  private CautionsMet met(Handbook handbook) {
    tray.hands(handbook, patience);
    return tray.met();
  }

  /** Whose sitting it is by the book, as this device entered it last. */
  private String personIn(List<Entry> entries) {
    String last = "";
    for (Entry entry : entries) {
      if (entry.device().equals(device) && entry.fact() instanceof Fact.SittingStarted started) {
        last = started.person();
      }
    }
    return last;
  }

  private static DoubtfulLine doubtful(Suspect line) {
    return new DoubtfulLine(
        line.line(), line.check(), line.text(), line.reading().map(EntryLines::entry));
  }

  private static List<String> told(BookFile book, Handbook handbook, Optional<String> unreadDraft) {
    List<Problem> problems = new ArrayList<>(book.problems());
    problems.addAll(book.unknownKinds());
    problems.addAll(book.unknownSteps(handbook::routine));
    book.headless().ifPresent(problems::add);
    List<String> told = new ArrayList<>(problems.stream().map(Problem::sentence).toList());
    unreadDraft.ifPresent(told::add);
    book.whyReadOnly().ifPresent(told::add);
    return told;
  }

  void shut() {
    open.ifPresent(Books::close);
    open = Optional.empty();
  }

  private static void close(BookFile book) {
    try {
      book.close();
    } catch (IOException alreadySafe) {
      // Every entry was synced when it was made; a close that fails loses nothing.
    }
  }

  /** Whether there is no book yet; not where nobody can know. */
  boolean empty() {
    return home.jobsTrouble().isEmpty() && home.books().isEmpty();
  }

  /** Changes her bench's file; what is wrong is told and nothing is changed. */
  Message changeBench(Map<String, String> changes, Handbook handbook) {
    Read<BenchFile> changed =
        BenchFile.change(home, changes, handbook.reference(), handbook.routines());
    return changed
        .problem()
        .<Message>map(Message.Troubled::new)
        .orElseGet(
            () -> new Message.BenchRead(changed.orThrow().bench(), Message.From.HERE, List.of()));
  }

  /** Enters facts in the drawer's book; tells what lies there then. */
  Message keepInDrawer(List<Fact> facts, Handbook handbook) {
    return DrawerBook.keep(home, device, clock.instant(), facts)
        .<Message>map(Message.Troubled::new)
        .orElseGet(() -> new Message.DrawerRead(tray.drawer(handbook), Message.From.HERE));
  }

  /** Her bench as another program left it; empty where it says what it said. */
  Optional<Message> benchElsewhere(Handbook handbook) {
    if (!elsewhere.bench()) {
      return Optional.empty();
    }
    BenchFile read = BenchFile.load(home).known(handbook.reference(), handbook.routines());
    return read.bench().equals(handbook.own()) && read.problems().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Message.BenchRead(
                read.bench(),
                Message.From.ELSEWHERE,
                read.problems().stream().map(Problem::sentence).toList()));
  }

  /** The drawer with what another program entered; empty where there is nothing new. */
  Optional<Message> drawerElsewhere(Handbook handbook) {
    if (!elsewhere.drawer()) {
      return Optional.empty();
    }
    Drawer lying = tray.drawer(handbook);
    return lying.book().equals(handbook.drawer().book())
        ? Optional.empty()
        : Optional.of(new Message.DrawerRead(lying, Message.From.ELSEWHERE));
  }

  /** Lets a book no more teach, or again. */
  Message leaveOut(String slug, boolean out, Handbook handbook) {
    return HandsFile.load(home)
        .with(slug, out)
        .save(home)
        .<Message>map(Message.Troubled::new)
        .orElseGet(() -> tray(handbook));
  }

  /** The jobs in the folder, the one last worked on first. */
  Message.TrayRead tray(Handbook handbook) {
    List<TrayJob> jobs =
        home.jobsTrouble()
            .map(why -> List.of(new TrayJob("jobs", "Your jobs", why, List.of(), EVER, false)))
            .orElseGet(() -> tray.jobs(handbook, clock.instant(), patience));
    return new Message.TrayRead(
        jobs,
        tray.unread(),
        tray.problems(),
        Optional.of(tray.hands()),
        Optional.of(tray.drawer(handbook)));
  }

  /** The jobs as another program left them; empty where all stands as it was read. */
  Optional<Message.TrayRead> trayElsewhere(Handbook handbook) {
    return home.jobsTrouble().isEmpty() && tray.isOld()
        ? Optional.of(tray(handbook))
        : Optional.empty();
  }

  boolean isBehind() {
    return tray.isBehind();
  }

  /** Some more of a tray that was not reckoned to its end; empty where nothing is behind. */
  Optional<Message> trayGoesOn(Handbook handbook) {
    return tray.isBehind()
        ? Optional.of(new Message.TrayGoesOn(tray.more(handbook, clock.instant())))
        : Optional.empty();
  }
}
