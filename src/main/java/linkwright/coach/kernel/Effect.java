package linkwright.coach.kernel;

import java.util.List;
import java.util.Map;
import linkwright.job.Fact;

/**
 * What the coach asks the shell to do. Each kind is performed through {@link EffectCases}, so that
 * a new one does not compile until it is.
 */
public sealed interface Effect {
  /** In place of a book's name: what belongs to no job. */
  String NO_JOB = "";

  /** Answers with the case for this kind. */
  <R> R answer(EffectCases<R> cases);

  /** Whether the model waits for its answer before it goes on. */
  default boolean writes() {
    return false;
  }

  /** Whether it enters something in a job's book, or begins one. */
  default boolean entersInJob() {
    return false;
  }

  /** Writes facts to the open book and syncs it; answers {@link Message.Kept}. */
  record KeepFacts(List<Fact> facts) implements Effect {
    public KeepFacts {
      facts = List.copyOf(facts);
    }

    @Override
    public boolean writes() {
      return true;
    }

    @Override
    public boolean entersInJob() {
      return true;
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.keepFacts(this);
    }
  }

  /**
   * Writes facts to the book of another job and syncs it; answers {@link Message.KeptElsewhere}.
   */
  record KeepElsewhere(String slug, List<Fact> facts) implements Effect {
    public KeepElsewhere {
      facts = List.copyOf(facts);
    }

    @Override
    public boolean writes() {
      return true;
    }

    @Override
    public boolean entersInJob() {
      return true;
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.keepElsewhere(this);
    }
  }

  /** Looks at the other books of the bench; answers {@link Message.BenchRead}. */
  record ReadBench() implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.readBench(this);
    }
  }

  /**
   * Begins a book with these facts, and with the plan of that file if one is named, and opens it;
   * answers {@link Message.JobOpened}.
   */
  record BeginJob(String name, List<Fact> facts, String planFile) implements Effect {
    public BeginJob {
      facts = List.copyOf(facts);
    }

    /** Without a plan file. */
    public BeginJob(String name, List<Fact> facts) {
      this(name, facts, "");
    }

    @Override
    public boolean writes() {
      return true;
    }

    @Override
    public boolean entersInJob() {
      return true;
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.beginJob(this);
    }
  }

  /** Opens a book; answers {@link Message.JobOpened}. */
  record OpenBook(String slug) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.openBook(this);
    }
  }

  /** Closes the open book and lets go of its lock. */
  record ShutBook() implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.shutBook(this);
    }
  }

  /** Reads the jobs at hand; answers {@link Message.TrayRead}. */
  record ReadTray() implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.readTray(this);
    }
  }

  /** Keeps what is typed and not entered yet, so that a crash does not lose it. */
  record KeepDraft(String slug, String form, Map<String, String> texts) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.keepDraft(this);
    }
  }

  /** Forgets a draft that was entered or given up. */
  record DropDraft(String slug, String form) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.dropDraft(this);
    }
  }

  /**
   * Accepts the line of the open book that has this check now; answers {@link Message.JobOpened}
   * with the book read anew.
   */
  record AcceptLine(String check) implements Effect {
    @Override
    public boolean entersInJob() {
      return true;
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.acceptLine(this);
    }
  }

  /** Puts the user's choices into her file; answers {@link Message.SettingsKept}. */
  record KeepSettings(Map<String, String> texts) implements Effect {
    public KeepSettings {
      texts = Map.copyOf(texts);
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.keepSettings(this);
    }
  }

  /** Lets a book no more count in what the hands were taught, or again; answers with the tray. */
  record LeaveOut(String slug, boolean out) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.leaveOut(this);
    }
  }

  /**
   * Changes her bench, key by key; an empty value takes it out. Answers {@link Message.BenchRead}.
   */
  record ChangeBench(Map<String, String> changes) implements Effect {
    public ChangeBench {
      changes = Map.copyOf(changes);
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.changeBench(this);
    }
  }

  /** Enters facts in the drawer's book and syncs it; answers {@link Message.DrawerRead}. */
  record KeepInDrawer(List<Fact> facts) implements Effect {
    public KeepInDrawer {
      facts = List.copyOf(facts);
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.keepInDrawer(this);
    }
  }

  /**
   * Reads a student's book, and begins it if there is none; an empty id reads the roster alone. A
   * name puts a new student into the roster. Answers {@link Message.StudentRead}.
   */
  record OpenStudent(String id, String name) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.openStudent(this);
    }
  }

  /**
   * Enters facts in a student's book and syncs it, by that person; answers {@link
   * Message.StudentRead}.
   */
  record KeepOfStudent(String id, String by, List<Fact> facts) implements Effect {
    public KeepOfStudent {
      facts = List.copyOf(facts);
    }

    @Override
    public boolean writes() {
      return true;
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.keepOfStudent(this);
    }
  }

  /**
   * Brings over into a student's book what she made in the jobs of this folder since last time;
   * answers {@link Message.StudentRead}.
   */
  record BringOver(String id) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.bringOver(this);
    }
  }

  /** Reads the students' books of a folder; answers {@link Message.ClassRead}. */
  record ReadClass(String folder) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.readClass(this);
    }
  }

  /** Hands what the place says to whatever the user pastes from; answers {@link Message.Copied}. */
  record Copy() implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.copy(this);
    }
  }

  /**
   * Writes a text into a file of hers; one that is there already only if that was said. Answers
   * {@link Message.WrittenOut}.
   *
   * @param folder the folder of her own that a bare name lies in
   * @param file a name, or a path
   */
  record WriteOut(String folder, String file, String text, boolean over) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.writeOut(this);
    }
  }

  /** Reads a file of rows; answers {@link Message.RowsRead}. */
  record ReadRows(String folder, String file) implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.readRows(this);
    }
  }

  /** Rings the bell once. */
  record RingBell() implements Effect {
    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.ringBell(this);
    }
  }

  /** Ends the program; what is said once the screen is gone, empty for nothing. */
  record Leave(String says) implements Effect {
    /** With nothing to say. */
    public Leave() {
      this("");
    }

    @Override
    public <R> R answer(EffectCases<R> cases) {
      return cases.leave(this);
    }
  }
}
