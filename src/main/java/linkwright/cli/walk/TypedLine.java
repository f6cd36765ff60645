package linkwright.cli.walk;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.quantity.Count;
import linkwright.quantity.Nearest;

/** Does what a typed line asks for, by the coach's own acts. */
final class TypedLine {
  /** Where undo has something to do, by the words that lead there. */
  private static final Map<String, Act> UNDONE_AT =
      Map.of(
          "note", Act.TO_BOOK,
          "book", Act.TO_BOOK,
          "wire", Act.TO_WIRE,
          "weigh", Act.TO_WEIGH_IN,
          "tests", Act.TO_TESTS,
          "trial", Act.TO_TRIAL);

  /** How the screen names the look-up; to look alone is to look on. */
  private static final Pattern LOOK_UP =
      Pattern.compile("^look( it)?[ -]+up\\b", Pattern.CASE_INSENSITIVE);

  private final WalkLines lines;
  private final WalkCoach coach;
  private final WalkTelling telling;
  private final ShortVisits visits;
  private final WalkChoice choice;
  private final WalkBench bench;
  private final WalkBook book;
  private final WalkStep step;

  TypedLine(WalkLines lines, WalkCoach coach, WalkTelling telling) {
    this.lines = lines;
    this.coach = coach;
    this.telling = telling;
    this.visits = new ShortVisits(lines, coach, this::form);
    this.choice = new WalkChoice(lines, coach);
    this.bench = new WalkBench(lines, coach, choice);
    this.book = new WalkBook(lines, coach, visits, choice, this::form);
    this.step = new WalkStep(lines, coach, bench);
  }

  /** Does it; false when the walk is to end. */
  boolean obey(String typed) {
    String line = LOOK_UP.matcher(typed).replaceFirst(WalkWord.WORDS.word());
    if (line.isEmpty()) {
      return common();
    }
    Optional<String> refused =
        RehearsedLine.refused(line, coach.model()).or(() -> AskedLine.refused(line, coach));
    if (refused.isPresent()) {
      lines.say(refused.get());
      return true;
    }
    Optional<Integer> number = Count.inDigits(line, 4);
    if (number.isPresent()) {
      bench.number(number.get(), line.length() > 1 && line.startsWith("0"));
      return true;
    }
    Optional<Act> called = new WalkPage(coach.model()).called(line);
    if (called.isPresent() && WalkWord.of(line).isEmpty()) {
      return act(called.get());
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
      if (!new WalkHelp(lines, coach).listed(line)) {
        unknown(parts[0]);
      }
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
      if (new WalkPage(coach.model()).asksStudent()) {
        lines.say(AskedLine.FIRST);
      }
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
    if (typed.equalsIgnoreCase("list")) {
      new WalkHelp(lines, coach).listed("lists");
      return;
    }
    lines.say(
        "“"
            + typed
            + "” is no word here. "
            // A guess never says that a flame burns or is out.
            + Nearest.of(typed, WalkWord.words())
                .filter(near -> !near.equals(WalkWord.LIT.word()))
                .filter(near -> !near.equals(WalkWord.SHUT.word()))
                .map(near -> "Did you mean " + near + "? ")
                .orElse("")
            + "help tells all words. Nothing was entered.");
  }

  /** An act and the form that it may open; one that is not open says so. */
  private boolean act(Act act) {
    if (new WalkPage(coach.model()).opens(act)) {
      coach.choose(act);
    } else {
      bench.refuse(act);
    }
    return form("");
  }

  private boolean obey(WalkWord word, String rest) {
    switch (word) {
      case HELP -> new WalkHelp(lines, coach).tell(rest);
      case REPEAT -> telling.repeat();
      case BRIEF -> telling.turnBrief();
      case FIND -> find(rest);
      case SEARCH -> book.search(rest);
      case STRIKE -> {
        return book.strike(rest);
      }
      case WHERE -> telling.where();
      case PLACES -> places();
      case TIMERS -> visits.look(Act.TO_TIMERS);
      case LIT -> bench.act(Act.LIT, "");
      case SHUT -> shut();
      case CAUTIONS -> {
        if (coach.place() == PlaceId.REHEARSAL) {
          step.cards();
        } else {
          visits.look(Act.TO_CAUTIONS);
        }
      }
      case BOOK -> book.tell(rest);
      case UNDO -> undo(Act.UNDO, rest);
      case RESTORE -> undo(Act.BRING_BACK, rest);
      case QUIET -> coach.choose(Act.ANSWER);
      case LOOKED -> bench.act(Act.LOOKED, "");
      case ALL -> bench.act(Act.ALL, "");
      case REDO -> bench.act(Act.REDO, rest);
      case SCRAP -> bench.act(Act.SCRAP, rest);
      case TAKE -> bench.act(Act.TAKE, rest);
      case JOINTS -> {
        bench.act(Act.TO_JOINTS, "");
        return form(rest);
      }
      case LOOK -> bench.act(Act.LOOK_ON, "");
      case PILES -> {
        if (rest.isEmpty()) {
          coach.go(Act.TO_PILES);
        } else {
          choice.chosenAt(Act.TO_PILES, Act.TAKE_UP, rest);
        }
      }
      case FAILED -> {
        coach.go(Act.TO_PILES);
        coach.choose(Act.TO_FAILED);
      }
      case LIES -> {
        choice.chosenAt(Act.TO_PILES, Act.SAY_WHERE, rest);
        return form("");
      }
      case NEXT -> bench.act(Act.NEXT_STEP, "");
      case BACK -> bench.act(Act.PREVIOUS_STEP, "");
      case TIMER -> {
        if (!rest.isEmpty()) {
          return visits.timer(rest);
        }
        bench.act(Act.WAIT, "");
      }
      case STOP -> {
        return visits.to(
            Act.TO_TIMERS,
            () -> {
              choice.chosen(Act.STOP_TIMER, rest);
              return form("");
            });
      }
      case WHY -> step.why();
      case CARDS -> step.cards();
      case WORDS -> step.words(rest);
      case AWAY -> bench.away();
      case BENCH -> toBench();
      case LESSON -> coach.go(Act.TO_LESSON);
      case REHEARSE -> coach.go(Act.TO_REHEARSAL);
      case STUDENT -> {
        if (rest.isEmpty()) {
          ofLesson(Act.TO_STUDENT);
        } else {
          visits.student(rest);
        }
      }
      case CLASS -> ofLesson(Act.TO_CLASS);
      case SIGN -> {
        PlaceId before = coach.place();
        if (before != PlaceId.STUDENT) {
          ofLesson(Act.TO_STUDENT);
        }
        coach.choose(Act.SIGN_STEP);
        boolean goesOn = form(rest);
        visits.back(before);
        return goesOn;
      }
      case NEAREST -> coach.go(Act.TO_NEAREST);
      case TESTS -> coach.go(Act.TO_TESTS);
      case TRIAL -> coach.go(Act.TO_TRIAL);
      case SAMPLE -> choice.chosenAt(Act.TO_TESTS, Act.SAMPLE, rest);
      case FOLLOW -> choice.chosenAt(Act.TO_TRIAL, Act.CHOOSE_TRIAL, rest);
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
        if (!rest.isEmpty() && !choice.sum(rest)) {
          return true;
        }
        return form("");
      }
      case SETTINGS -> coach.choose(Act.TO_SETTINGS);
      case CARD -> {
        coach.go(Act.TO_CARD);
        if (rest.isEmpty()) {
          return true;
        }
        coach.choose(Act.WRITE_CARD);
      }
      case THERE -> {
        coach.go(Act.TO_REACH);
        if (!rest.isEmpty() && coach.model().held().form().isEmpty()) {
          coach.choose(Act.SAY_WHAT_THERE_IS);
        }
      }
      case LOG -> {
        if (coach.place() != PlaceId.TRIAL_LENGTH) {
          coach.go(Act.TO_TESTS);
        }
        coach.choose(Act.LOG);
      }
      case WEIGH -> weigh(Act.WEIGH);
      case OUT -> weigh(Act.WEIGH_OUT);
      case PRICES -> weigh(Act.PRICE);
      case HOURS -> weigh(Act.HOURS);
      case CLOSE -> weigh(Act.CLOSE);
      default -> weigh(Act.REOPEN);
    }
    return form(rest);
  }

  /** What is come to from the lesson. */
  private void ofLesson(Act act) {
    if (!new WalkPage(coach.model()).opens(act)) {
      coach.go(Act.TO_LESSON);
    }
    coach.choose(act);
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

  private void places() {
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

  private void find(String words) {
    if (words.isEmpty()) {
      lines.say("Write what to find, such as find pickle.");
      return;
    }
    coach.choose(Act.FIND);
    bench.type(words);
    coach.press(Key.of(Key.Kind.ENTER));
    if (coach.place() == PlaceId.FIND) {
      coach.press(Key.of(Key.Kind.ESCAPE));
    }
  }
}
