package linkwright.coach;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.bench.BenchHeld;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.Pile;
import linkwright.lesson.Roster;
import linkwright.routine.Caution;
import linkwright.routine.PieceKind;
import linkwright.shell.Demo;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import linkwright.view.Screens;

/**
 * Somebody at the bench, for tests: presses keys and reads what the coach makes of them. Facts are
 * kept in memory at once; every key takes a second.
 */
public final class Bencher {
  public static final Library LIBRARY = Library.load(new Home(Path.of("target", "no-home-at-all")));
  public static final Handbook SHELF = Start.handbook(LIBRARY);
  public static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");

  private final List<Entry> entries = new ArrayList<>();
  private final List<Effect> performed = new ArrayList<>();
  private final Map<String, List<Entry>> students = new LinkedHashMap<>();
  private Roster roster = Roster.EMPTY;
  private Model model;
  private Instant now = MORNING;
  private Instant steady = MORNING;
  private static final String WRITTEN =
      "Another Linkwright is writing this job now: it is open here to look.";

  private boolean lookOnly;
  private boolean diskFull;
  private int bells;

  private Bencher(Settings settings) {
    model = Coach.begin(SHELF, settings, Screens::parts, now, 80, 24);
  }

  /** With the tray in front, empty. */
  public static Bencher atTheTray() {
    return atTheTray(Settings.USUAL);
  }

  public static Bencher atTheTray(Settings settings) {
    return new Bencher(settings);
  }

  /** With the demo's job open, its plan set. */
  public static Bencher withTheDemo() {
    return withTheDemo(Settings.USUAL);
  }

  public static Bencher withTheDemo(Settings settings) {
    return with(settings, false, Demo.facts(LIBRARY));
  }

  /** With a job open that those facts began. */
  public static Bencher with(Fact... facts) {
    return with(Settings.USUAL, false, List.of(facts));
  }

  /** With a book open to look at only. */
  public static Bencher lookingOnly() {
    return with(Settings.USUAL, true, Demo.facts(LIBRARY));
  }

  public static Bencher with(Settings settings, boolean lookOnly, List<Fact> facts) {
    Bencher bencher = new Bencher(settings);
    facts.forEach(fact -> bencher.enter(List.of(fact)));
    bencher.lookOnly = lookOnly;
    bencher.take(
        new Message.JobOpened(
            "job", "bench", List.copyOf(bencher.entries), lookOnly, List.of(), Map.of()));
    return bencher;
  }

  /** Presses keys, by their names. */
  public Bencher press(String... names) {
    for (String name : names) {
      pass(Duration.ofSeconds(1));
      take(new Message.KeyPressed(KeyNames.read(name).orElseThrow(), Optional.of(steady)));
    }
    return this;
  }

  /** The same key so often, so many milliseconds apart, as a quick hand or a worn pedal does. */
  public Bencher pressEvery(long millis, int times, String name) {
    for (int i = 0; i < times; i++) {
      pass(Duration.ofMillis(millis));
      take(new Message.KeyPressed(KeyNames.read(name).orElseThrow(), Optional.of(steady)));
    }
    return this;
  }

  public Bencher press(int times, String name) {
    for (int i = 0; i < times; i++) {
      press(name);
    }
    return this;
  }

  /** Types a text, a character a key. */
  public Bencher type(String text) {
    text.codePoints()
        .mapToObj(Character::toString)
        .forEach(each -> take(new Message.KeyPressed(Key.of(each))));
    return this;
  }

  /** Puts the caret into the field of that name, as a click does. */
  public Bencher toField(String id) {
    List<String> ids = form().fields().stream().map(field -> field.id()).toList();
    if (form().at() != ids.indexOf(id)) {
      take(new Message.FieldChosen(ids.indexOf(id)));
    }
    return this;
  }

  /** Types a text into the field of that name, in place of what stood there. */
  public Bencher put(String id, String text) {
    return toField(id).press("ctrl-u").type(text);
  }

  /** Lets time pass; the clock ticks once at its end. */
  public Bencher pass(Duration time) {
    // What stands on the screen stands there since before the time passed.
    Optional<Instant> drawn = Optional.of(steady);
    now = now.plus(time);
    steady = steady.plus(time);
    take(new Message.Ticked(now, steady, drawn));
    return this;
  }

  /** The computer's clock is set; time itself goes on as it does. */
  public Bencher setClock(Duration by) {
    now = now.plus(by);
    take(new Message.Ticked(now, steady, Optional.of(steady)));
    return this;
  }

  /** The program ends and opens the same book again, its clock as it stands now. */
  public Bencher restart() {
    model = Coach.begin(SHELF, model.settings(), Screens::parts, now, 80, 24);
    steady = now;
    take(new Message.JobOpened("job", "bench", entries(), false, List.of(), Map.of()));
    return this;
  }

  /** Sees all cautions that are up and opens the step behind them. */
  public Bencher seeCautions() {
    while (caution().isPresent()) {
      press("space");
    }
    return this;
  }

  /** Goes to the bench, sees what there is to see, and opens the step of that name. */
  public Bencher goTo(String step) {
    if (!(model.held() instanceof BenchHeld)) {
      press("esc");
      take(new Message.KeyPressed(Key.of("b")));
    }
    if (BenchAnswers.away(model)) {
      press("space");
    }
    seeCautions();
    List<String> ids = at().routine().steps().stream().map(each -> each.id().word()).toList();
    if (!ids.contains(step)) {
      throw new IllegalArgumentException("no step " + step + " among " + ids);
    }
    while (!at().step().id().word().equals(step)) {
      press(ids.indexOf(step) > at().number() - 1 ? "n" : "b");
      seeCautions();
    }
    return this;
  }

  public void take(Message message) {
    Deque<Message> messages = new ArrayDeque<>(List.of(message));
    while (!messages.isEmpty()) {
      Turn turn = Coach.update(model, messages.remove());
      model = turn.model();
      for (Effect effect : turn.effects()) {
        performed.add(effect);
        if (effect instanceof Effect.KeepFacts keep) {
          messages.add(
              diskFull || lookOnly
                  ? new Message.NotKept(diskFull ? "the disk is full." : WRITTEN)
                  : new Message.Kept(enter(keep.facts())));
        } else if (effect instanceof Effect.OpenStudent open) {
          messages.add(student(open.id()));
        } else if (effect instanceof Effect.BringOver over) {
          messages.add(student(over.id()));
        } else if (effect instanceof Effect.KeepOfStudent keep) {
          enterOfStudent(keep.id(), keep.by(), keep.facts());
          messages.add(student(keep.id()));
        } else if (effect instanceof Effect.RingBell) {
          bells++;
        }
      }
    }
  }

  /** In front of a class in which that student is known by her name. */
  public Bencher teaching(String id, String name) {
    roster = roster.and(id, name);
    take(student(""));
    return this;
  }

  /** Enters facts in a student's book, as if they were made before. */
  public Bencher enterOfStudent(String id, String by, List<Fact> facts) {
    List<Entry> book = students.computeIfAbsent(id, any -> new ArrayList<>());
    facts.forEach(fact -> book.add(new Entry(book.size() + 1, now, "bench", by, fact)));
    return this;
  }

  private Message student(String id) {
    return new Message.StudentRead(roster, id, students.getOrDefault(id, List.of()));
  }

  private List<Entry> enter(List<Fact> facts) {
    List<Entry> kept = new ArrayList<>();
    for (Fact fact : facts) {
      Entry entry = new Entry(entries.size() + 1, now, "bench", fact);
      entries.add(entry);
      kept.add(entry);
    }
    return kept;
  }

  /** Waits out what the open step waits for, and takes all through together. */
  Bencher together() {
    for (int i = 0; i < 9 && at().waiting() + at().redo() > 0; i++) {
      press("space").pass(Duration.ofMinutes(15));
    }
    return this;
  }

  /** From now on nothing can be written. */
  public Bencher diskIsFull(boolean full) {
    diskFull = full;
    return this;
  }

  public Model model() {
    return model;
  }

  public Instant now() {
    return now;
  }

  public OpenJob job() {
    return model.job().orElseThrow();
  }

  public JobState state() {
    return job().state();
  }

  /** The step that is open. */
  public AtBench at() {
    return AtBench.of(model).orElseThrow();
  }

  public Optional<Caution> caution() {
    return AtBench.of(model).flatMap(at -> Cards.of(model, at).next()).map(Cards.Card::caution);
  }

  public Pile pile(String piece) {
    return pile(new PieceKind(piece));
  }

  public Pile pile(PieceKind piece) {
    return state().piles().of(piece);
  }

  public String notice() {
    return ToldOnScreen.of(model);
  }

  public Form form() {
    return model.held().form().orElseThrow();
  }

  public List<Entry> entries() {
    return List.copyOf(entries);
  }

  /** The facts of that kind that were entered, in order. */
  public <T extends Fact> List<T> entered(Class<T> kind) {
    return entries.stream().map(Entry::fact).filter(kind::isInstance).map(kind::cast).toList();
  }

  /** The effects of that kind that were asked for, in order. */
  public <T extends Effect> List<T> performed(Class<T> kind) {
    return performed.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** Whether the page says that in a head. */
  public boolean shows(String head) {
    return Pages.of(model).body().parts().contains(new Prose(Prose.Kind.HEAD, head));
  }

  public int bells() {
    return bells;
  }

  /** With so many links waiting to be soldered. */
  Bencher toSolder(int links) {
    goTo("cut-blanks").type(Integer.toString(links)).press("space");
    goTo("anneal-blanks").together();
    goTo("form-links").type(Integer.toString(links)).press("space");
    return goTo("solder-links");
  }
}
