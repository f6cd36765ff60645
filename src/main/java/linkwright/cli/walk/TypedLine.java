package linkwright.cli.walk;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import linkwright.coach.bench.Bench;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Table;
import linkwright.coach.lookup.LookedUp;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.CardContent;
import linkwright.coach.kernel.Cards;
import linkwright.coach.kernel.EntryWords;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Entry;
import linkwright.quantity.Nearest;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Sum;

/** Does what a typed line asks for, by the coach's own acts. */
final class TypedLine {
  private static final int LAST_ENTRIES = 10;

  /** Where undo has something to do, by the words that lead there. */
  private static final Map<String, Act> UNDONE_AT =
      Map.of(
          "note", Act.TO_BOOK,
          "book", Act.TO_BOOK,
          "wire", Act.TO_WIRE,
          "weigh", Act.TO_WEIGH_IN,
          "tests", Act.TO_TESTS,
          "trial", Act.TO_TRIAL);

  /** What comes before a step can be counted at. */
  private static final Set<Act> GATES = Set.of(Act.SEEN, Act.BACK_AT_BENCH, Act.LIT, Act.HOT_ON);

  private final WalkLines lines;
  private final WalkCoach coach;
  private final WalkTelling telling;
  private final ShortVisits visits;

  TypedLine(WalkLines lines, WalkCoach coach, WalkTelling telling) {
    this.lines = lines;
    this.coach = coach;
    this.telling = telling;
    this.visits = new ShortVisits(lines, coach, this::form);
  }

  /** Does it; false when the walk is to end. */
  boolean obey(String line) {
    if (line.isEmpty()) {
      return common();
    }
    if (line.matches("[0-9]{1,4}")) {
      number(Integer.parseInt(line));
      return true;
    }
    String[] parts = line.split("\\s+", 2);
    String rest = parts.length > 1 ? parts[1].strip() : "";
    Optional<WalkWord> word = WalkWord.of(parts[0]);
    if (word.filter(WalkWord.QUIT::equals).isPresent()) {
      quit();
      return true;
    }
    Optional<Act> named = word.isEmpty() ? Act.withId(parts[0]) : Optional.empty();
    if (word.isEmpty() && named.isEmpty()) {
      unknown(parts[0]);
      return true;
    }
    if (coach.failing() && !named.map(new WalkPage(coach.model())::opens).orElse(false)) {
      telling.repeat();
      return true;
    }
    return named.map(this::act).orElseGet(() -> obey(word.orElseThrow(), rest));
  }

  private boolean common() {
    Optional<Act> common = new WalkPage(coach.model()).common();
    if (common.isEmpty()) {
      boolean closed = coach.model().job().map(job -> job.state().course().closed()).orElse(false);
      lines.say(
          closed
              ? "The job is closed. reopen opens it again, quit leaves."
              : "An empty line does nothing here.");
      return true;
    }
    return act(common.get());
  }

  /** By the way round, as the screen leaves: what is open there is asked about first. */
  private void quit() {
    if (coach.failing()) {
      coach.choose(Act.GIVE_UP);
    }
    if (!new WalkPage(coach.model()).opens(Act.LEAVE)) {
      coach.go(Act.ROUND);
    }
    coach.choose(Act.LEAVE);
  }

  private void unknown(String typed) {
    lines.say(
        "“"
            + typed
            + "” is no word here. "
            + Nearest.of(typed, WalkWord.words())
                .map(near -> "Did you mean " + near + "? ")
                .orElse("")
            + "help tells all words. Nothing was entered.");
  }

  /** An act and the form that it may open; one that is not open says so. */
  private boolean act(Act act) {
    if (new WalkPage(coach.model()).opens(act)) {
      coach.choose(act);
    } else {
      refuse(act);
    }
    return form("");
  }

  private boolean obey(WalkWord word, String rest) {
    switch (word) {
      case HELP -> new WalkHelp(lines, coach).tell(rest);
      case REPEAT -> telling.repeat();
      case BRIEF -> telling.turnBrief();
      case FIND -> find(rest);
      case SEARCH -> search(rest);
      case STRIKE -> {
        return strike(rest);
      }
      case WHERE -> where();
      case TIMERS -> visits.look(Act.TO_TIMERS);
      case LIT -> bench(Act.LIT, "");
      case SHUT -> shut();
      case CAUTIONS -> visits.look(Act.TO_CAUTIONS);
      case BOOK -> book(rest);
      case UNDO -> undo(Act.UNDO, rest);
      case RESTORE -> undo(Act.BRING_BACK, rest);
      case ANSWER -> coach.choose(Act.ANSWER);
      case LOOKED -> bench(Act.LOOKED, "");
      case ALL -> bench(Act.ALL, "");
      case REDO -> bench(Act.REDO, rest);
      case SCRAP -> bench(Act.SCRAP, rest);
      case TAKE -> bench(Act.TAKE, rest);
      case JOINTS -> {
        bench(Act.TO_JOINTS, "");
        return form(rest);
      }
      case LOOK -> bench(Act.LOOK_ON, "");
      case PILES -> {
        if (rest.isEmpty()) {
          coach.go(Act.TO_PILES);
        } else {
          chosenAt(Act.TO_PILES, Act.TAKE_UP, rest);
        }
      }
      case LIES -> {
        chosenAt(Act.TO_PILES, Act.SAY_WHERE, rest);
        return form("");
      }
      case NEXT -> bench(Act.NEXT_STEP, "");
      case BACK -> bench(Act.PREVIOUS_STEP, "");
      case TIMER -> {
        if (!rest.isEmpty()) {
          return visits.timer(rest);
        }
        bench(Act.WAIT, "");
      }
      case STOP -> {
        return visits.to(
            Act.TO_TIMERS,
            () -> {
              chosen(Act.STOP_TIMER, rest);
              return form("");
            });
      }
      case WHY -> why();
      case CARDS -> cards();
      case WORDS -> words(rest);
      case AWAY -> away();
      case BENCH -> toBench();
      case NEAREST -> coach.go(Act.TO_NEAREST);
      case TESTS -> coach.go(Act.TO_TESTS);
      case TRIAL -> coach.go(Act.TO_TRIAL);
      case SAMPLE -> chosenAt(Act.TO_TESTS, Act.SAMPLE, rest);
      case FOLLOW -> chosenAt(Act.TO_TRIAL, Act.CHOOSE_TRIAL, rest);
      case NOTE -> {
        return visits.note(rest);
      }
      case WIRE -> {
        return visits.wire(rest);
      }
      default -> {
        return withForm(word, rest);
      }
    }
    return true;
  }

  /** What opens a form. */
  private boolean withForm(WalkWord word, String rest) {
    switch (word) {
      case WHO -> {
        coach.choose(Act.TO_PERSONS);
        return form(rest.isEmpty() ? "" : "name: " + rest);
      }
      case PLAN -> coach.go(Act.TO_PLAN);
      case RECKONER -> {
        coach.go(Act.TO_RECKONER);
        if (!rest.isEmpty() && !sum(rest)) {
          return true;
        }
        return form("");
      }
      case SETTINGS -> coach.choose(Act.TO_SETTINGS);
      case LOG -> {
        if (coach.place() != PlaceId.TRIAL_LENGTH) {
          coach.go(Act.TO_TESTS);
        }
        coach.choose(Act.LOG);
      }
      case WEIGH -> weigh(Act.WEIGH);
      case OUT -> weigh(Act.WEIGH_OUT);
      case PRICES -> weigh(Act.PRICE);
      case CLOSE -> weigh(Act.CLOSE);
      default -> weigh(Act.REOPEN);
    }
    return form(rest);
  }

  private void weigh(Act act) {
    coach.go(Act.TO_WEIGH_IN);
    coach.choose(act);
  }

  /** Talks the form through that is open, if one is; false when the lines have ended. */
  private boolean form(String rest) {
    if (coach.model().held().form().isEmpty() || coach.failing()) {
      return true;
    }
    lines.sayAll(coach.takeTold());
    FormTalk talk = new FormTalk(lines, coach);
    return rest.isEmpty() ? talk.ask() : talk.answer(rest);
  }

  /** Undo keeps to one place: here, or the one that is named, and back again. */
  private void undo(Act act, String rest) {
    if (rest.isEmpty()) {
      coach.choose(act);
      return;
    }
    Optional<Act> place = Optional.ofNullable(UNDONE_AT.get(rest.toLowerCase(Locale.ROOT)));
    if (place.isEmpty()) {
      lines.say(
          "After "
              + WalkWord.of(act)
              + " write nothing, or where it was entered: "
              + String.join(", ", new TreeSet<>(UNDONE_AT.keySet()))
              + ".");
      return;
    }
    visits.to(
        place.get(),
        () -> {
          coach.choose(act);
          return true;
        });
  }

  /** Every flame out: the question, and its answer in one. */
  private void shut() {
    if (coach.place() != PlaceId.HOT_WORK) {
      coach.choose(Act.TO_HOT_WORK);
    }
    if (coach.place() == PlaceId.HOT_WORK) {
      coach.choose(Act.FLAMES_OUT);
    }
  }

  private void where() {
    if (coach.place() == PlaceId.ROUND) {
      telling.repeat();
    } else {
      coach.choose(Act.ROUND);
    }
  }

  private void toBench() {
    if (coach.place() == PlaceId.BENCH) {
      telling.repeat();
    } else {
      coach.go(Act.TO_BENCH);
    }
  }

  /** Nothing is counted at a step that the user has not heard yet. */
  private void bench(Act act, String rest) {
    if (coach.place() != PlaceId.BENCH) {
      coach.go(Act.TO_BENCH);
      lines.say("You are at the bench now. Type it again if you mean the step that follows.");
      return;
    }
    if (!rest.isEmpty() && !rest.matches("[0-9]{1,4}")) {
      lines.say("“" + rest + "” is not a number of pieces. Nothing was entered.");
      return;
    }
    if (!new WalkPage(coach.model()).opens(act)) {
      refuse(act);
      return;
    }
    type(rest);
    coach.choose(act);
  }

  /** The coach says that it is not for now; what comes first is told with it. */
  private void refuse(Act act) {
    coach.choose(act);
    lines.sayAll(coach.takeTold());
    WalkPage page = new WalkPage(coach.model());
    page.inFront()
        .map(first -> page.plain().prose(Prose.says("First: " + first)))
        .ifPresent(lines::sayAll);
    lines.sayAll(page.emptyLine());
  }

  private void type(String digits) {
    digits.codePoints().forEach(digit -> coach.press(Key.of(Character.toString(digit))));
  }

  private void number(int number) {
    WalkPage page = new WalkPage(coach.model());
    if (coach.place() != PlaceId.BENCH || page.common().isEmpty() || coach.failing()) {
      lines.say("A number counts pieces at the bench. bench leads there.");
    } else if (page.asks()) {
      coach.press(Key.of(number < 10 ? Integer.toString(number) : "0"));
    } else if (page.common().filter(GATES::contains).isPresent()) {
      refuse(Act.THROUGH);
    } else if (number == 0) {
      lines.say("None came through; nothing was entered.");
    } else {
      type(Integer.toString(number));
      coach.choose(page.common().get());
    }
  }

  private void away() {
    if (coach.place() != PlaceId.BENCH) {
      coach.go(Act.TO_BENCH);
    }
    if (!Bench.away(coach.model())) {
      bench(Act.STEP_AWAY, "");
    }
  }

  private void chosenAt(Act place, Act act, String rest) {
    if (coach.place().act() != place || rest.isEmpty()) {
      coach.go(place);
    }
    chosen(act, rest);
  }

  /** An act on the line of a list with that number; without one, on the line that is chosen. */
  private void chosen(Act act, String rest) {
    if (!rest.isEmpty()) {
      if (!rest.matches("[0-9]{1,3}")) {
        lines.say("“" + rest + "” is not the number of one. Nothing was entered.");
        return;
      }
      int wanted = Integer.parseInt(rest) - 1;
      for (int at = at(); at != wanted; at = at()) {
        coach.choose(at < wanted ? Act.DOWN : Act.UP);
        if (at() == at) {
          lines.say("There is no number " + rest + ". Nothing was entered.");
          return;
        }
      }
    }
    coach.choose(act);
  }

  private int at() {
    return new WalkPage(coach.model()).table().map(Table::chosen).orElse(0);
  }

  /** Opens the sum of that name; false when there is none, which is told. */
  private boolean sum(String name) {
    List<String> ids = Reckoner.sums().stream().map(Sum::id).toList();
    int at = ids.indexOf(name.toLowerCase(Locale.ROOT));
    if (at < 0) {
      lines.say("“" + name + "” is no sum. There are: " + String.join(", ", ids) + ".");
      return false;
    }
    chosen(Act.CHOOSE, Integer.toString(at + 1));
    return true;
  }

  private void find(String words) {
    if (words.isEmpty()) {
      lines.say("Write what to find, such as find pickle.");
      return;
    }
    coach.choose(Act.FIND);
    type(words);
    coach.press(Key.of(Key.Kind.ENTER));
    if (coach.place() == PlaceId.FIND) {
      coach.press(Key.of(Key.Kind.ESCAPE));
    }
  }

  private void search(String words) {
    Model model = coach.model();
    List<Entry> all = model.job().map(job -> job.entries()).orElse(List.of());
    List<Integer> found = model.job().map(job -> job.words().holding(words)).orElse(List.of());
    lines.say(found.size() + " of " + all.size() + " entries say so.");
    found.stream().limit(2L * LAST_ENTRIES).forEach(at -> lines.say(told(all.get(at), model)));
  }

  /** Strikes the entry of that number of this machine, for a reason. */
  private boolean strike(String rest) {
    String[] parts = rest.split("\\s+", 2);
    List<Entry> all = coach.model().job().map(job -> job.entries()).orElse(List.of());
    int at = -1;
    for (int i = 0; i < all.size(); i++) {
      String id = all.get(i).id().toString();
      if (id.equals(parts[0]) || id.endsWith("-" + parts[0])) {
        at = i;
      }
    }
    if (parts[0].isEmpty() || at < 0) {
      lines.say("Write the entry's number, as book tells it, and why: strike 12 miscounted.");
      return true;
    }
    int row = all.size() - 1 - at;
    return visits.to(
        Act.TO_BOOK,
        () -> {
          chosen(Act.STRIKE, Integer.toString(row + 1));
          return form(parts.length > 1 ? "why: " + parts[1].replace(';', ',') : "");
        });
  }

  private void why() {
    List<String> later = new WalkPage(coach.model()).later();
    lines.sayAll(later.isEmpty() ? List.of("There is no more to say here.") : later);
  }

  private void words(String rest) {
    if (rest.isEmpty()) {
      lines.sayAll(new WalkPage(coach.model()).plain().of(LookedUp.ofStep(coach.model())));
    } else {
      new WalkHelp(lines, coach).look(rest);
    }
  }

  private void cards() {
    Model model = coach.model();
    WalkPage page = new WalkPage(model);
    AtBench.of(model)
        .map(at -> Cards.of(model, at).cautions())
        .orElse(List.of())
        .forEach(card -> lines.sayAll(page.plain().of(CardContent.of(model, card, ""))));
  }

  private void book(String rest) {
    int wanted = rest.matches("[0-9]{1,4}") ? Integer.parseInt(rest) : LAST_ENTRIES;
    Model model = coach.model();
    List<Entry> all = model.job().map(job -> job.entries()).orElse(List.of());
    for (Entry entry : all.subList(Math.max(0, all.size() - wanted), all.size())) {
      lines.say(told(entry, model));
    }
  }

  private static String told(Entry entry, Model model) {
    return entry.id()
        + ", "
        + entry.at().truncatedTo(ChronoUnit.SECONDS)
        + ": "
        + EntryWords.of(entry.fact(), model.settings());
  }
}
