package linkwright.cli.walk;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import linkwright.coach.Act;
import linkwright.coach.AtBench;
import linkwright.coach.Bench;
import linkwright.coach.BenchAsk;
import linkwright.coach.EntryWords;
import linkwright.coach.Key;
import linkwright.coach.Model;
import linkwright.coach.Screen;
import linkwright.job.Entry;
import linkwright.quantity.Nearest;

/** Does what a line asks for, by the coach's own keys. */
final class Obeying {
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

  private final Desk desk;
  private final Hands hands;
  private final Told told;

  Obeying(Desk desk, Hands hands, Told told) {
    this.desk = desk;
    this.hands = hands;
    this.told = told;
  }

  /** Does it; false when the walk is to end. */
  boolean obey(String line) {
    if (line.isEmpty()) {
      if (hands.model().screen() instanceof Screen.WeighIn && closed()) {
        desk.say("The job is closed. reopen opens it again, quit leaves.");
        return true;
      }
      hands.press(Key.of(Key.Kind.ENTER));
      return form("");
    }
    if (line.matches("[0-9]{1,4}")) {
      number(Integer.parseInt(line));
      return true;
    }
    String[] parts = line.split("\\s+", 2);
    String rest = parts.length > 1 ? parts[1].strip() : "";
    Optional<Word> word = Word.of(parts[0]);
    if (word.isEmpty()) {
      desk.say(
          "“"
              + parts[0]
              + "” is no word here. "
              + Nearest.of(parts[0], Word.words())
                  .map(near -> "Did you mean " + near + "? ")
                  .orElse("")
              + "help tells all words. Nothing was entered.");
      return true;
    }
    return obey(word.get(), rest);
  }

  private boolean obey(Word word, String rest) {
    switch (word) {
      case QUIT -> {
        return false;
      }
      case HELP -> desk.sayAll(Word.help());
      case WHERE -> where();
      case TIMERS -> timers();
      case BOOK -> book(rest);
      case UNDO -> undo(Act.UNDO, rest);
      case RESTORE -> undo(Act.BRING_BACK, rest);
      case ANSWER -> hands.press(Act.ANSWER);
      case ALL -> bench(Act.ALL, "");
      case REDO -> bench(Act.REDO, rest);
      case SCRAP -> bench(Act.SCRAP, rest);
      case TAKE -> bench(Act.TAKE, rest);
      case NEXT -> bench(Act.NEXT_STEP, "");
      case BACK -> bench(Act.PREVIOUS_STEP, "");
      case TIMER -> {
        if (!rest.isEmpty()) {
          return talk(word, rest);
        }
        bench(Act.WAIT, "");
      }
      case WHY -> aside(true);
      case CARDS -> aside(false);
      case AWAY -> {
        return away();
      }
      case BENCH -> toBench();
      case TESTS -> hands.go(Act.TO_TESTS);
      case TRIAL -> hands.go(Act.TO_TRIAL);
      case SAMPLE -> choose(Act.TO_TESTS, Act.SAMPLE, rest);
      case FOLLOW -> choose(Act.TO_TRIAL, Act.CHOOSE_TRIAL, rest);
      default -> {
        return talk(word, rest);
      }
    }
    return true;
  }

  /** Undo keeps to one place: here, or the one that is named, and back again. */
  private void undo(Act act, String rest) {
    if (rest.isEmpty()) {
      hands.press(act);
      return;
    }
    Optional<Act> place = Optional.ofNullable(UNDONE_AT.get(rest.toLowerCase(Locale.ROOT)));
    if (place.isEmpty()) {
      desk.say(
          "After "
              + (act == Act.UNDO ? "undo" : "restore")
              + " write nothing, or where it was entered: "
              + String.join(", ", new TreeSet<>(UNDONE_AT.keySet()))
              + ".");
      return;
    }
    boolean atBench = hands.model().screen() instanceof Screen.Bench;
    hands.go(place.get());
    hands.press(act);
    if (atBench) {
      hands.go(Act.TO_BENCH);
    } else {
      hands.press(Act.ROUND);
    }
  }

  private boolean closed() {
    return hands.model().job().map(job -> job.state().course().closed()).orElse(false);
  }

  /** What opens a form. */
  private boolean talk(Word word, String rest) {
    switch (word) {
      case PLAN -> hands.go(Act.TO_PLAN);
      case LOG -> {
        if (!(hands.model().screen() instanceof Screen.Trial)) {
          hands.go(Act.TO_TESTS);
        }
        hands.press(Act.LOG);
      }
      case WEIGH -> weigh(Act.WEIGH);
      case OUT -> weigh(Act.WEIGH_OUT);
      case PRICES -> weigh(Act.PRICE);
      case CLOSE -> weigh(Act.CLOSE);
      case REOPEN -> weigh(Act.REOPEN);
      default -> {
        return FarPlaces.obey(word, rest, desk, hands, this::form);
      }
    }
    return form(rest);
  }

  private void weigh(Act act) {
    hands.go(Act.TO_WEIGH_IN);
    hands.press(act);
  }

  /** Talks the form through that is open, if one is; false when the lines have ended. */
  private boolean form(String rest) {
    if (hands.model().screen().form().isEmpty()) {
      return true;
    }
    desk.sayAll(hands.takeTold());
    FormTalk talk = new FormTalk(desk, hands);
    return rest.isEmpty() ? talk.ask() : talk.answer(rest);
  }

  private void toBench() {
    if (hands.model().screen() instanceof Screen.Bench) {
      told.repeat();
    } else {
      hands.go(Act.TO_BENCH);
    }
  }

  /** Nothing is counted at a step that the user has not heard yet. */
  private void bench(Act act, String rest) {
    if (!(hands.model().screen() instanceof Screen.Bench screen)) {
      hands.go(Act.TO_BENCH);
      desk.say("You are at the bench now. Type it again if you mean the step that follows.");
      return;
    }
    boolean gate = Bench.away(hands.model()) || Bench.caution(hands.model()).isPresent();
    if (gate && act != Act.PREVIOUS_STEP) {
      desk.say(
          Bench.away(hands.model())
              ? "You are away from the bench: an empty line leads back."
              : "First the caution: an empty line says that you have seen it.");
      return;
    }
    if (!(screen.ask() instanceof BenchAsk.Nothing)) {
      desk.say("First the number of the reason, or an empty line.");
      return;
    }
    if (!rest.isEmpty() && !rest.matches("[0-9]{1,4}")) {
      desk.say("“" + rest + "” is not a number of pieces. Nothing was entered.");
      return;
    }
    type(rest);
    hands.press(act);
  }

  private void type(String digits) {
    digits.codePoints().forEach(digit -> hands.press(Key.of(Character.toString(digit))));
  }

  private void number(int number) {
    if (hands.model().screen() instanceof Screen.Bench screen) {
      if (screen.ask() instanceof BenchAsk.Why) {
        hands.press(Key.of(number < 10 ? Integer.toString(number) : "0"));
      } else if (number == 0) {
        desk.say("None came through; nothing was entered.");
      } else {
        bench(Act.THROUGH, Integer.toString(number));
      }
      return;
    }
    desk.say("A number counts pieces at the bench. bench leads there.");
  }

  private boolean away() {
    if (!(hands.model().screen() instanceof Screen.Bench)) {
      hands.go(Act.TO_BENCH);
    }
    if (Bench.away(hands.model())) {
      return true;
    }
    hands.press(Act.STEP_AWAY);
    if (!(hands.model().screen() instanceof Screen.Bench screen)
        || !(screen.ask() instanceof BenchAsk.Away)) {
      desk.say("First the caution or the question before you; then away.");
      return true;
    }
    List<String> questions =
        List.of(
            "Is the torch out? yes or no.",
            "Is the gas shut at the bottle? yes or no.",
            "Does nothing glow or smoulder, is the pickle covered and off? yes or no.");
    for (int i = 0; i < questions.size(); i++) {
      desk.say(questions.get(i));
      Optional<String> answer = desk.next();
      if (answer.isEmpty()) {
        return false;
      }
      if (answer.get().matches("(?i)y|yes")) {
        hands.press(Key.of(Integer.toString(i + 1)));
      }
    }
    hands.press(Act.SEEN);
    desk.say(
        "After hot work look round again half an hour later (29 CFR 1910.252 asks a fire watch of"
            + " at least 30 min; local rules come first).");
    return true;
  }

  private void choose(Act place, Act act, String rest) {
    boolean there =
        (place == Act.TO_TESTS && hands.model().screen() instanceof Screen.Tests)
            || (place == Act.TO_TRIAL && hands.model().screen() instanceof Screen.Trial);
    if (!there || rest.isEmpty()) {
      hands.go(place);
    }
    if (!rest.isEmpty()) {
      if (!rest.matches("[0-9]{1,3}")) {
        desk.say("“" + rest + "” is not the number of one. Nothing was entered.");
        return;
      }
      int wanted = Integer.parseInt(rest) - 1;
      for (int at = at(); at != wanted; at = at()) {
        hands.press(at < wanted ? Act.DOWN : Act.UP);
        if (at() == at) {
          desk.say("There is no number " + rest + ". Nothing was entered.");
          return;
        }
      }
    }
    hands.press(act);
  }

  private int at() {
    Screen screen = hands.model().screen();
    return screen instanceof Screen.Tests tests
        ? tests.at()
        : screen instanceof Screen.Trial trial ? trial.at() : 0;
  }

  private void where() {
    desk.sayAll(PlaceLines.where(hands.model()));
    Bench.target(hands.model())
        .ifPresent(at -> desk.sayAll(StepLines.counts(hands.model(), at).subList(0, 1)));
    desk.sayAll(desk.timers());
  }

  private void timers() {
    List<String> timers = desk.timers();
    desk.sayAll(timers.isEmpty() ? List.of("No timer runs.") : timers);
  }

  private void aside(boolean why) {
    Model model = hands.model();
    Optional<AtBench> at = Bench.target(model);
    at.ifPresent(
        step ->
            desk.sayAll(
                why
                    ? StepLines.detail(model, step)
                    : step.cautions(model.handbook()).stream()
                        .flatMap(card -> StepLines.card(model, card, step.step().title()).stream())
                        .filter(line -> !line.startsWith("An empty line"))
                        .toList()));
  }

  private void book(String rest) {
    int wanted = rest.matches("[0-9]{1,4}") ? Integer.parseInt(rest) : LAST_ENTRIES;
    Model model = hands.model();
    List<Entry> all = model.job().map(job -> job.entries()).orElse(List.of());
    for (Entry entry : all.subList(Math.max(0, all.size() - wanted), all.size())) {
      desk.say(
          entry.id()
              + ", "
              + entry.at().truncatedTo(ChronoUnit.SECONDS)
              + ": "
              + EntryWords.of(entry.fact(), model.settings()));
    }
  }
}
