package linkwright.coach.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Fact;
import linkwright.job.OnWay;

/** A number that was typed is counted, stays, or is told: it never goes in silence. */
final class TypedNumber {
  /** What a number belongs to. */
  private static final Set<Act> TAKES =
      Set.of(Act.THROUGH, Act.CUT_ONE, Act.BEGIN_ONE, Act.REDO, Act.SCRAP, Act.TAKE);

  /** What counts so many; none of it counts 0. */
  private static final Set<Act> COUNTING =
      Set.of(Act.THROUGH, Act.CUT_ONE, Act.ONWARD, Act.REDO, Act.SCRAP, Act.TAKE);

  /** What takes all that is here, where all goes together. */
  private static final Set<Act> TAKES_ALL = Set.of(Act.TOGETHER, Act.WAIT_FIRST, Act.WAIT);

  private static final int MOST_DIGITS = 4;

  private TypedNumber() {}

  /** The same with a digit more, or the last one taken away. */
  static Model typed(Model model, BenchHeld screen, Key key) {
    String digits = screen.digits();
    if (key.is(Key.Kind.BACKSPACE) && !digits.isEmpty()) {
      return model.with(BenchScreens.digits(screen, digits.substring(0, digits.length() - 1)));
    }
    boolean digit = key.kind() == Key.Kind.CHARACTER && key.text().matches("[0-9]");
    return digit && digits.length() < MOST_DIGITS
        ? model.with(
            BenchScreens.digits(screen, (digits + key.text()).replaceFirst("^0+(?=.)", "")))
        : model;
  }

  /** Why the number that stands there cannot be counted by that act; empty where it can. */
  static Optional<Turn> refused(Model model, AtBench at, Act act) {
    BenchHeld screen = BenchPlace.screen(model);
    Optional<Integer> number = BenchPlace.number(screen);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    if (COUNTING.contains(act) && number.get() == 0) {
      return Optional.of(
          Turn.to(
              model
                  .with(BenchScreens.plain(screen))
                  .trouble("0 counts nothing. Type how many, or just press the key for one.")));
    }
    boolean together = at.together() && TAKES_ALL.contains(act);
    int all = all(model, at);
    return together && all > 0 && number.get() != all
        ? Optional.of(
            Turn.to(
                model.trouble(
                    "All "
                        + all
                        + " here go together: "
                        + number.get()
                        + " by themselves are not counted. {do:leave-question} takes the number"
                        + " away.")))
        : Optional.empty();
  }

  /** How many of what is counted here go together now: out of the wait, else into it. */
  private static int all(Model model, AtBench at) {
    AtWait wait = AtWait.of(model, at);
    Map<OnWay, Integer> go = wait.out().isEmpty() ? wait.goesIn() : wait.out();
    return go.entrySet().stream()
        .filter(each -> each.getKey().piece().equals(at.piece()))
        .mapToInt(Map.Entry::getValue)
        .sum();
  }

  /** A number that stands there is given up before the bench is left. */
  static List<Act> givenUp(BenchHeld screen, List<Act> acts) {
    return standing(screen).isEmpty() || acts.contains(Act.LEAVE_QUESTION)
        ? List.of()
        : List.of(Act.LEAVE_QUESTION);
  }

  /** What leaving does, in words: where nothing else is asked, it takes the number away. */
  static String says(BenchHeld screen, Act leave) {
    return screen.digits().isEmpty() ? leave.words() : "no number";
  }

  /** The turn, with that told if the number is gone with it and counted nothing. */
  static Turn told(Model before, Act act, Turn turn) {
    String digits = standing(BenchPlace.screen(before));
    Model after = turn.model();
    // Where nothing is counted a number that stays is not seen.
    boolean shown = AtBench.of(after).filter(AtBench::counts).isPresent();
    boolean stays = turn.next().isEmpty() && !BenchPlace.screen(after).digits().isEmpty() && shown;
    boolean asked = BenchPlace.screen(after).ask() instanceof BenchAsk.Sure;
    boolean all =
        TAKES_ALL.contains(act) && AtBench.of(before).filter(AtBench::together).isPresent();
    if (digits.isEmpty() || stays || asked || all || TAKES.contains(act) || cuts(turn)) {
      return turn;
    }
    String sentence = (after.notice().text() + dropped(digits)).strip();
    Model gone =
        after.held() instanceof BenchHeld held ? after.with(BenchScreens.digits(held, "")) : after;
    Model told = after.notice().trouble() ? gone.trouble(sentence) : gone.told(sentence);
    return new Turn(told, turn.effects(), turn.next());
  }

  /** The number that stands there: typed, or asked about. */
  private static String standing(BenchHeld screen) {
    return screen.ask() instanceof BenchAsk.Sure sure && screen.digits().isEmpty()
        ? Integer.toString(sure.count())
        : screen.digits();
  }

  private static boolean cuts(Turn turn) {
    return turn.effects().stream()
        .anyMatch(
            effect ->
                effect instanceof Effect.KeepFacts keep
                    && keep.facts().stream().anyMatch(Fact.WireCut.class::isInstance));
  }

  /**
   * That a number that stands there counts nothing, behind another sentence; empty if none does.
   */
  static String dropped(BenchHeld screen) {
    return dropped(standing(screen));
  }

  private static String dropped(String digits) {
    return digits.isEmpty() ? "" : " The " + digits + " that was typed is not counted.";
  }
}
