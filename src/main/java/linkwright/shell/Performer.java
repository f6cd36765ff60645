package linkwright.shell;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import linkwright.coach.Coach;
import linkwright.coach.Pages;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.EffectCases;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.files.DraftStore;
import linkwright.files.Home;
import linkwright.job.Fact;
import linkwright.quantity.Read;
import linkwright.shell.entering.EnteringDrafts;

/**
 * Performs the effects of updates and feeds what became of them back, until nothing more is asked.
 * When {@link #take} returns, whatever the model shows as done is on the disk.
 */
public final class Performer {
  private final Books books;
  private final DraftStore drafts;
  private final Runnable bell;
  private final Predicate<String> clipboard;
  private final Home home;
  private final String device;
  private final StudentBooks students;
  private final EnteringDrafts entering;
  private ClockNotes notes = ClockNotes.NONE;
  private boolean left;
  private boolean looks;
  private String parting = "";

  /**
   * A performer.
   *
   * @param home the user's folder
   * @param device the name of this machine in the books
   * @param clock the time of entries
   * @param bell rings once
   */
  public Performer(Home home, String device, InstantSource clock, Runnable bell) {
    this(home, device, clock, bell, ReadingProgress.ENDLESS);
  }

  /** The same, with someone who is told how far a long reading of the tray has come. */
  Performer(
      Home home, String device, InstantSource clock, Runnable bell, ReadingProgress patience) {
    this(home, device, clock, bell, patience, text -> false);
  }

  /** The same, with somewhere to hand a text that is to be pasted; false where it takes none. */
  Performer(
      Home home,
      String device,
      InstantSource clock,
      Runnable bell,
      ReadingProgress patience,
      Predicate<String> clipboard) {
    this.clipboard = clipboard;
    this.drafts = new DraftStore(home.drafts());
    this.books = new Books(home, device, clock, drafts, patience);
    this.entering = new EnteringDrafts(drafts, device);
    this.bell = bell;
    this.home = home;
    this.device = device;
    this.students = new StudentBooks(home, device, clock);
  }

  /** The same, which notes with each entry how the computer's clock went. */
  public Performer noting(ClockNotes clock) {
    notes = clock;
    books.noting(clock);
    return this;
  }

  /** A model that knows whether the clock was set while the program was shut. */
  public Model clocked(Model model) {
    return model.clockMoved(notes.moves(model.now()));
  }

  /** A model that knows what was typed that is no job's, and keeps what is typed from now on. */
  public Model reminded(Model model) {
    EnteringDrafts.settle(drafts, Effect.NO_JOB);
    Model known = model.typed(Optional.of(drafts.of(Effect.NO_JOB)));
    return drafts.unread(Effect.NO_JOB).map(known::trouble).orElse(known);
  }

  /**
   * The model with the tray read, a first job laid in it if it is empty, and a job opened if one
   * was asked for.
   *
   * @param first the entries of that first job, the opening of the job before all
   */
  public Model begin(Model model, List<Fact> first, Optional<String> job) {
    if (books.empty() && first.get(0) instanceof Fact.JobOpened opened) {
      books.begin(opened.name(), first, model.handbook());
      books.shut();
    }
    Model read = take(model, books.tray(model.handbook()));
    Model ready = take(read, students.open("", ""));
    return job.map(slug -> take(ready, books.open(slug, ready.handbook()))).orElse(ready);
  }

  /** A model that knows what the other jobs lack, their books looked at only. */
  public Model besideOthers(Model model) {
    return model.withTray(books.tray(model.handbook()).jobs());
  }

  /** The model after the message and everything that followed from it. */
  public Model take(Model model, Message message) {
    Model current = model;
    Deque<Message> messages = new ArrayDeque<>(List.of(message));
    while (!messages.isEmpty()) {
      Turn turn = Coach.update(current, messages.remove());
      current = turn.model();
      List<Message> answers = new ArrayList<>();
      for (Effect effect : turn.effects()) {
        effect.answer(new Performing(current)).ifPresent(answers::add);
      }
      messages.addAll(answers);
    }
    entering.over();
    return looks ? elsewhere(current) : current;
  }

  /** What another program changed is taken over, a bench not under a form that was filled by it. */
  private Model elsewhere(Model model) {
    boolean still = model.writing() instanceof Writing.Nothing;
    looks = !still;
    if (!still) {
      return model;
    }
    Model next =
        books.drawerElsewhere(model.handbook()).map(message -> take(model, message)).orElse(model);
    return next.held().form().isPresent()
        ? next
        : books.benchElsewhere(next.handbook()).map(message -> take(next, message)).orElse(next);
  }

  /** Whether something is left that is done while no key waits. */
  boolean isBehind() {
    return books.isBehind();
  }

  /** The model after a little of what was left for later. */
  Model goOn(Model model) {
    // Not under what is being typed or waits to be written.
    boolean quiet = model.writing() instanceof Writing.Nothing && model.held().form().isEmpty();
    looks = true;
    return books
        .trayGoesOn(model.handbook())
        .or(() -> quiet ? books.letGo(model.handbook()) : Optional.empty())
        .map(message -> take(model, message))
        .or(() -> quiet ? trayElsewhere(model) : Optional.empty())
        .orElseGet(() -> elsewhere(model));
  }

  /** Where no job is open the jobs are looked at anew; the one that was chosen stays it. */
  private Optional<Model> trayElsewhere(Model model) {
    return model.job().isPresent() || books.isBehind()
        ? Optional.empty()
        : books
            .trayElsewhere(model.handbook())
            .map(read -> take(take(model, new Message.TrayGoesOn(read.jobs())), read));
  }

  /** Whether the program is to end. */
  public boolean left() {
    return left;
  }

  /** What is to be said once the screen is gone; empty for nothing. */
  public String parting() {
    return parting;
  }

  /** Opens a job by its book's name. */
  public Model open(Model model, String slug) {
    return take(model, books.open(slug, model.handbook()));
  }

  /** Opens a job by its book's name to look at only. */
  public Model look(Model model, String slug) {
    return take(model, books.look(slug, model.handbook()));
  }

  /** Lets go of the open book; for leaving by any way. */
  public void shut() {
    books.shut();
  }

  /** Performs effects for the model that they belong to. */
  private final class Performing implements EffectCases<Optional<Message>> {
    private final Model model;

    Performing(Model model) {
      this.model = model;
    }

    @Override
    public Optional<Message> keepFacts(Effect.KeepFacts effect) {
      books.book().ifPresent(book -> entering.mark(model, book, books::last));
      return Optional.of(books.keep(effect.facts(), model.handbook()));
    }

    @Override
    public Optional<Message> keepElsewhere(Effect.KeepElsewhere effect) {
      Path book = home.jobs().resolve(effect.slug() + ".yaml");
      entering.mark(model, book, () -> EnteringDrafts.last(book, device));
      return Optional.of(books.keepElsewhere(effect.slug(), effect.facts(), model.handbook()));
    }

    @Override
    public Optional<Message> readBench(Effect.ReadBench effect) {
      looks = true;
      return Optional.of(books.bench(model.handbook()));
    }

    @Override
    public Optional<Message> beginJob(Effect.BeginJob effect) {
      if (effect.planFile().isEmpty()) {
        return Optional.of(books.begin(effect.name(), effect.facts(), model.handbook()));
      }
      Read<List<Fact>> facts =
          SavedPlan.read(home, effect.planFile(), effect.facts(), model.handbook());
      if (facts instanceof Read.Bad<List<Fact>> bad) {
        return Optional.of(new Message.JobNotOpened(bad.sentence()));
      }
      return Optional.of(books.begin(effect.name(), facts.orThrow(), model.handbook()));
    }

    @Override
    public Optional<Message> openBook(Effect.OpenBook effect) {
      return Optional.of(books.open(effect.slug(), model.handbook()));
    }

    @Override
    public Optional<Message> shutBook(Effect.ShutBook effect) {
      books.shut();
      return Optional.empty();
    }

    @Override
    public Optional<Message> readTray(Effect.ReadTray effect) {
      return Optional.of(books.tray(model.handbook()));
    }

    @Override
    public Optional<Message> keepDraft(Effect.KeepDraft effect) {
      return drafts
          .keep(effect.slug(), effect.form(), effect.texts())
          .map(
              why -> new Message.Troubled("What is typed stays here, but not on the disk: " + why));
    }

    @Override
    public Optional<Message> dropDraft(Effect.DropDraft effect) {
      return drafts
          .drop(effect.slug(), effect.form())
          .map(why -> new Message.Troubled("On the disk it is still kept as typed: " + why));
    }

    @Override
    public Optional<Message> acceptLine(Effect.AcceptLine effect) {
      return Optional.of(books.accept(effect.check(), model.handbook()));
    }

    @Override
    public Optional<Message> keepSettings(Effect.KeepSettings effect) {
      return Optional.of(SettingsKeeping.keep(home, effect.texts(), model.settings()));
    }

    @Override
    public Optional<Message> leaveOut(Effect.LeaveOut effect) {
      return Optional.of(books.leaveOut(effect.slug(), effect.out(), model.handbook()));
    }

    @Override
    public Optional<Message> changeBench(Effect.ChangeBench effect) {
      return Optional.of(books.changeBench(effect.changes(), model.handbook()));
    }

    @Override
    public Optional<Message> keepInDrawer(Effect.KeepInDrawer effect) {
      entering.mark(model, home.drawer(), () -> EnteringDrafts.last(home.drawer(), device));
      return Optional.of(books.keepInDrawer(effect.facts(), model.handbook()));
    }

    @Override
    public Optional<Message> openStudent(Effect.OpenStudent effect) {
      return Optional.of(students.open(effect.id(), effect.name()));
    }

    @Override
    public Optional<Message> keepOfStudent(Effect.KeepOfStudent effect) {
      Path book = students.path(effect.id());
      entering.mark(model, book, () -> EnteringDrafts.last(book, device));
      return Optional.of(students.keep(effect.id(), effect.by(), effect.facts()));
    }

    @Override
    public Optional<Message> bringOver(Effect.BringOver effect) {
      return Optional.of(students.bringOver(effect.id(), model.handbook()));
    }

    @Override
    public Optional<Message> readClass(Effect.ReadClass effect) {
      return Optional.of(students.room(effect.folder(), model.settings().zone(), model.handbook()));
    }

    @Override
    public Optional<Message> copy(Effect.Copy effect) {
      CopiedText copied = CopiedText.of(Pages.of(model));
      return Optional.of(new Message.Copied(clipboard.test(copied.text()), copied.name()));
    }

    @Override
    public Optional<Message> writeOut(Effect.WriteOut effect) {
      return Optional.of(HerFiles.write(home, effect));
    }

    @Override
    public Optional<Message> readRows(Effect.ReadRows effect) {
      return Optional.of(
          new Message.RowsRead(
              effect.file(),
              HerFiles.found(home, effect.folder(), effect.file()).flatMap(HerFiles::text)));
    }

    @Override
    public Optional<Message> ringBell(Effect.RingBell effect) {
      bell.run();
      return Optional.empty();
    }

    @Override
    public Optional<Message> leave(Effect.Leave effect) {
      left = true;
      parting = effect.says();
      return Optional.empty();
    }
  }
}
