package linkwright.coach.kernel;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.bench.OwnBench;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.drawer.Drawer;
import linkwright.hands.Hands;
import linkwright.job.CautionsMet;
import linkwright.job.Entry;
import linkwright.lesson.ClassRoom;
import linkwright.lesson.Roster;
import linkwright.quantity.Read;

/**
 * What reaches the coach: keys, acts, time, and what became of the effects it asked for. Each kind
 * is answered through {@link MessageCases}, so that a new one does not compile until it is.
 */
public sealed interface Message {
  /** Answers with the case for this kind. */
  <R> R answer(MessageCases<R> cases);

  /**
   * A key was pressed, at that moment of the steady clock; without one it is no key that could
   * bounce, such as a line of the plain walk.
   */
  record KeyPressed(Key key, Optional<Instant> at) implements Message {
    /** One that cannot bounce. */
    public KeyPressed(Key key) {
      this(key, Optional.empty());
    }

    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.keyPressed(this);
    }
  }

  /** An act was chosen by whatever means: a click, a word typed in a plain walk. */
  record ActChosen(Act act) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.actChosen(this);
    }
  }

  /** Text was pasted; only a field takes it. */
  record Pasted(String text) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.pasted(this);
    }
  }

  /** A row of a list was clicked, from 0. */
  record RowChosen(int row) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.rowChosen(this);
    }
  }

  /** A field of a form was clicked, from 0; one past the last is the line that keeps it. */
  record FieldChosen(int field) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.fieldChosen(this);
    }
  }

  /**
   * The clock went on.
   *
   * @param now by the computer's clock
   * @param steady the same moment by a clock that nobody can set
   * @param drawn since when, by that clock, what the model holds stands on the screen; empty where
   *     it does not yet, or nothing is drawn
   */
  record Ticked(Instant now, Instant steady, Optional<Instant> drawn) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.ticked(this);
    }
  }

  /** The room to draw in changed. */
  record Resized(int width, int height) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.resized(this);
    }
  }

  /**
   * A job book was opened; device is this machine's name in it, lookOnly says that another program
   * writes it, doubtful are the lines that are kept and not used, met the cautions that were met in
   * any of the books, hands what all books taught till now, as far as they were read.
   */
  record JobOpened(
      String slug,
      String device,
      List<Entry> entries,
      boolean lookOnly,
      List<String> told,
      Map<String, Map<String, String>> drafts,
      List<DoubtfulLine> doubtful,
      CautionsMet met,
      Optional<Hands> hands)
      implements Message {
    /** One book alone. */
    public JobOpened(
        String slug,
        String device,
        List<Entry> entries,
        boolean lookOnly,
        List<String> told,
        Map<String, Map<String, String>> drafts,
        List<DoubtfulLine> doubtful) {
      this(
          slug,
          device,
          entries,
          lookOnly,
          told,
          drafts,
          doubtful,
          CautionsMet.NONE,
          Optional.empty());
    }

    /** A book of which every line passed its check. */
    public JobOpened(
        String slug,
        String device,
        List<Entry> entries,
        boolean lookOnly,
        List<String> told,
        Map<String, Map<String, String>> drafts) {
      this(slug, device, entries, lookOnly, told, drafts, List.of());
    }

    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.jobOpened(this);
    }
  }

  /** A job book could not be opened or begun. */
  record JobNotOpened(String why) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.jobNotOpened(this);
    }
  }

  /** Entries are on the disk. */
  record Kept(List<Entry> entries) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.kept(this);
    }
  }

  /** Entries could not be written; nothing of them is in the book. */
  record NotKept(String why) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.notKept(this);
    }
  }

  /** The other books of the bench were looked at, by the machine of that name. */
  record OthersRead(String device, List<BenchBook> books) implements Message {
    public OthersRead {
      books = List.copyOf(books);
    }

    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.othersRead(this);
    }
  }

  /** Entries are on the disk in the book of another job; the bench was looked at since. */
  record KeptElsewhere(OthersRead bench) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.keptElsewhere(this);
    }
  }

  /** Something is wrong that the user should know of at once. */
  record Troubled(String sentence) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.troubled(this);
    }
  }

  /**
   * The jobs at hand were read; unread says how many were left out, for it took too long; problems
   * what keeps books from being listed, in sentences; hands is what all their books taught.
   */
  record TrayRead(
      List<TrayJob> jobs,
      int unread,
      List<String> problems,
      Optional<Hands> hands,
      Optional<Drawer> drawer)
      implements Message {

    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.trayRead(this);
    }
  }

  /** The jobs at hand, of which some more are reckoned by now. */
  record TrayGoesOn(List<TrayJob> jobs) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.trayGoesOn(this);
    }
  }

  /** The user's choices as they stand now; trouble says why they could not be kept. */
  record SettingsKept(Settings settings, Optional<String> trouble) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.settingsKept(this);
    }
  }

  /** Whether what was to be copied was handed on, and what it was in a few words. */
  record Copied(boolean taken, String what) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.copied(this);
    }
  }

  /**
   * What became of a text that was to be written: where it lies, that something lies there already
   * and is as it was, or a sentence that says why it is not written.
   */
  record WrittenOut(FileFate fate, String says) implements Message {
    /** What became of it. */
    public enum FileFate {
      WRITTEN,
      THERE,
      REFUSED
    }

    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.writtenOut(this);
    }
  }

  /** A file of rows was read, or a sentence says why not. */
  record RowsRead(String file, Read<String> text) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.rowsRead(this);
    }
  }

  /** Whether it was done here or by another program. */
  enum From {
    HERE,
    ELSEWHERE
  }

  /** Her bench is on the disk as it is now; with what is wrong in its file, in sentences. */
  record BenchRead(OwnBench bench, From from, List<String> problems) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.benchRead(this);
    }
  }

  /** What lies in the drawer now, after an entry that is on the disk. */
  record DrawerRead(Drawer drawer, From from) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.drawerRead(this);
    }
  }

  /** Someone is to come to a place at once, to one thing of it: as the command line asked. */
  record Led(PlaceId place, String id) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.led(this);
    }
  }

  /**
   * A student's book as it is on the disk, after what was entered in it; empty id and no entries
   * where only the roster was read.
   */
  record StudentRead(Roster roster, String id, List<Entry> entries) implements Message {
    public StudentRead {
      entries = List.copyOf(entries);
    }

    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.studentRead(this);
    }
  }

  /** The class of a folder was read. */
  record ClassRead(Roster roster, ClassRoom room) implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.classRead(this);
    }
  }

  /** The terminal is gone, or asked the program to leave. */
  record Ended() implements Message {
    @Override
    public <R> R answer(MessageCases<R> cases) {
      return cases.ended(this);
    }
  }
}
