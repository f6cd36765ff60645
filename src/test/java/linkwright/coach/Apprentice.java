package linkwright.coach;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.DoubtfulLine;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Held;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Settings;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyNames;
import linkwright.files.Home;
import linkwright.files.Library;
import linkwright.job.Entry;
import linkwright.job.Fact;
import linkwright.plan.WishKeys;
import linkwright.routine.Caution;
import linkwright.routine.Gear;
import linkwright.routine.When;
import linkwright.shell.Start;
import linkwright.standing.Handbook;
import linkwright.view.Glyphs;
import linkwright.view.Screens;
import linkwright.view.Shown;

/**
 * Presses keys for a test and keeps facts in a book of its own in place of the disk. Time stands
 * still but for a second with each entry, and {@link #wait}.
 */
public final class Apprentice {
  /** A Wednesday evening. */
  public static final Instant BEGIN = Instant.parse("2026-03-04T17:00:00Z");

  private static final Handbook SHIPPED =
      Start.handbook(
          Library.load(
              Home.find(Optional.of("no such folder"), Map.of(), Path.of("no such folder"))));

  private final List<Entry> book = new ArrayList<>();
  private long waited;
  private final List<Effect> asked = new ArrayList<>();
  private Optional<String> refusal = Optional.empty();
  private Model model;

  private Apprentice(Model model) {
    this.model = model;
  }

  /** At the tray, no job open, 80 x 24; three cautions of the test's own lie on the handbook. */
  public static Apprentice atTheTray() {
    Handbook handbook =
        new Handbook(
            SHIPPED.reference(),
            SHIPPED.patterns(),
            SHIPPED.routines(),
            cards(),
            List.of(),
            SHIPPED.own());
    Settings settings = Settings.USUAL.in(ZoneId.of("Europe/Vienna"));
    return new Apprentice(Coach.begin(handbook, settings, Screens::parts, BEGIN, 80, 24));
  }

  /** With a planned job open, at the way round. */
  public static Apprentice withAJob(Map<String, String> changes) {
    Map<String, String> wish = wish();
    wish.putAll(changes);
    Apprentice apprentice = atTheTray();
    apprentice.enter(new Fact.JobOpened("Gate chain", "scroll-and-ring"), new Fact.PlanSet(wish));
    return apprentice.opens(List.of());
  }

  /** With a planned job open whose book holds these facts too. */
  public static Apprentice withManyEntries(List<Fact> facts) {
    Apprentice apprentice = atTheTray();
    apprentice.enter(new Fact.JobOpened("Gate chain", "scroll-and-ring"), new Fact.PlanSet(wish()));
    facts.forEach(apprentice::enter);
    return apprentice.opens(List.of());
  }

  private static Map<String, String> wish() {
    Map<String, String> wish = new LinkedHashMap<>();
    wish.put(WishKeys.METAL, "sterling");
    wish.put(WishKeys.WIRE, "1.0 mm");
    wish.put(WishKeys.TEMPER, "soft");
    wish.put(WishKeys.LINK_PATTERN, "scroll");
    wish.put(WishKeys.LINK_BLANK, "42 mm");
    wish.put(WishKeys.RING_INSIDE, "3.2 mm");
    wish.put(WishKeys.FINISHED, "19 cm");
    wish.put(WishKeys.CLASP_LENGTH, "16 mm");
    wish.put(WishKeys.CLASP_MASS, "1.4 g");
    wish.put(WishKeys.KERF, "0.3 mm");
    wish.put(WishKeys.STOCK, "420 mm, 260 mm, 150 mm");
    return wish;
  }

  private static List<Caution> cards() {
    return List.of(
        card("torch", "Torch and gas", "Hair tied back, sleeves off."),
        card("ladder", "Ladders in the store", "Three points of contact."),
        card("ventilation", "Fresh air", "Open the hood first."));
  }

  private static Caution card(String id, String title, String line) {
    return new Caution(
        id,
        title,
        Set.of(),
        line,
        "It burns whoever leans in.",
        List.of("Look behind you.", "Keep water near."),
        List.of("Never leave it lit."),
        List.of("Cool it under the tap for 20 min."),
        List.of(new Gear("M004", "eye protection")),
        "common practice, no source",
        "Local rules come first.",
        When.ALWAYS,
        List.of(),
        false);
  }

  /** Opens the book as it stands, with lines whose check failed. */
  Apprentice opens(List<DoubtfulLine> doubtful) {
    return take(
        new Message.JobOpened(
            "gate-chain", "bench", List.copyOf(book), false, List.of(), Map.of(), doubtful));
  }

  /** Opens the book as it stands, with lines whose check failed. */
  public Apprentice opensWith(DoubtfulLine... doubtful) {
    return opens(List.of(doubtful));
  }

  /** Opens the book while another program writes it. */
  Apprentice looksOnly() {
    Held before = model.held();
    take(
        new Message.JobOpened("gate-chain", "bench", List.copyOf(book), true, List.of(), Map.of()));
    model = model.with(before);
    return diskRefuses("Another Linkwright is writing this job now.");
  }

  /** Writes facts into the book as if they had been entered before; open the job after. */
  public Apprentice enter(Fact... facts) {
    for (Fact fact : facts) {
      book.add(new Entry(book.size() + 1, now(), "bench", fact));
    }
    return this;
  }

  private Instant now() {
    return BEGIN.plusSeconds(book.size()).plusSeconds(waited);
  }

  /** Lets time go by. */
  public Apprentice wait(int seconds) {
    waited += seconds;
    return take(new Message.Ticked(now(), now(), Optional.empty()));
  }

  /** Presses keys by their names: {@code "n"}, {@code "enter"}. */
  public Apprentice press(String... keys) {
    for (String key : keys) {
      take(new Message.KeyPressed(KeyNames.read(key).orElseThrow()));
    }
    return this;
  }

  /** Types a text. */
  public Apprentice type(String text) {
    text.codePoints().forEach(c -> take(new Message.KeyPressed(Key.of(Character.toString(c)))));
    return this;
  }

  /** From now on the disk refuses, with this sentence. */
  public Apprentice diskRefuses(String sentence) {
    refusal = Optional.of(sentence);
    return this;
  }

  /** Another size of window. */
  public Apprentice window(int width, int height) {
    return take(new Message.Resized(width, height));
  }

  Apprentice take(Message message) {
    Turn turn = Coach.update(model, message);
    model = turn.model();
    for (Effect effect : turn.effects()) {
      asked.add(effect);
      if (effect instanceof Effect.KeepFacts keep) {
        take(refusal.isPresent() ? new Message.NotKept(refusal.get()) : kept(keep));
      }
    }
    return this;
  }

  private Message kept(Effect.KeepFacts keep) {
    int before = book.size();
    Instant at = now();
    for (Fact fact : keep.facts()) {
      book.add(new Entry(book.size() + 1, at, "bench", fact));
    }
    take(new Message.Ticked(now(), now(), Optional.empty()));
    return new Message.Kept(List.copyOf(book.subList(before, book.size())));
  }

  /** The model as it is now. */
  public Model model() {
    return model;
  }

  /** The facts in the book. */
  public List<Fact> facts() {
    return book.stream().map(Entry::fact).toList();
  }

  /** The last fact in the book. */
  public Fact lastFact() {
    return book.get(book.size() - 1).fact();
  }

  /** All effects asked for so far. */
  public List<Effect> asked() {
    return List.copyOf(asked);
  }

  /** The sentence told to the user; empty for none. */
  public String told() {
    return ToldOnScreen.of(model);
  }

  /** The screen as it is drawn, without spaces at the ends of lines. */
  public String shown() {
    return Shown.draw(model, Glyphs.FULL)
        .text()
        .lines()
        .map(String::stripTrailing)
        .reduce((a, b) -> a + "\n" + b)
        .orElse("")
        .stripTrailing();
  }
}
