package linkwright.coach;

import java.util.List;
import java.util.Optional;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.content.ActMention;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.asking.AskedContent;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.coach.keys.KeyMap;
import linkwright.coach.keys.KeyNames;

/** Why a key does nothing now: what it is for, and what would have to be so. */
final class NotNow {
  /** At a step that is looked at nothing is asked: it is not the one that is worked at. */
  private static final String ONLY_LOOKED =
      "You only look at this step: {do:back-from-look} leads back to the open one, {do:open-step}"
          + " opens this.";

  private NotNow() {}

  /** What is told of an undo that does nothing, for what stands in front of it. */
  static String notUndone(Model model) {
    Optional<String> closed = BenchAnswers.closed(model);
    if (closed.isPresent()) {
      return "Nothing was undone. " + closed.get();
    }
    return AskedOnce.acts(Places.of(model), model).contains(Act.BACK_FROM_LOOK)
        ? "Nothing was undone. " + ONLY_LOOKED
        : "Nothing was undone: first what stands here, a card or a question.";
  }

  /** What a key does that nothing here answers: a list's ends, else why it does nothing. */
  static Optional<Turn> turn(Model model, Place place, Key key) {
    return ListEnds.reached(model, place, key)
        .or(() -> sentence(model, key).map(model::told).map(Turn::to));
  }

  /** The sentence for a key that no act here has; empty for one that means nothing anywhere. */
  static Optional<String> sentence(Model model, Key key) {
    KeyMap keys = model.settings().keys();
    PlaceId place = model.held().place();
    Optional<Act> here = keys.find(key, ActTable.of(place));
    if (here.isPresent()) {
      return Optional.of(sentence(model, here.get()));
    }
    Optional<Act> elsewhere = keys.find(key, List.of(Act.values()));
    return elsewhere.isEmpty()
        ? Optional.empty()
        : Optional.of(KeyNames.of(key) + " does nothing here; {do:help} tells all keys.");
  }

  /** What an act is for that is not open now. */
  static String sentence(Model model, Act act) {
    Optional<String> closed = BenchAnswers.closed(model);
    if (closed.isPresent()) {
      return closed.get();
    }
    boolean asked = !Places.of(model).undoes(model) && !Places.of(model).isDry();
    String what = act.words().replaceFirst(":.*", "");
    return "Not for now: " + what + ". " + (asked ? before(model) : why(model, act));
  }

  /** What stands here and goes before all else. */
  private static String before(Model model) {
    List<Act> open = AskedOnce.acts(Places.of(model), model);
    if (open.contains(Act.SEEN)) {
      return DueWaits.next(model).isPresent()
          ? "The wait that is over comes first: {do:to-due} goes there."
          : "This card comes first: {do:seen} when it is read.";
    }
    if (open.contains(Act.BACK_FROM_LOOK)) {
      return ONLY_LOOKED;
    }
    return open.contains(Act.BACK_AT_BENCH)
        ? "You are away from the bench: {do:back-at-bench} leads back."
        : AskedContent.FIRST;
  }

  /** Where a step begins with a heat, what is said before it comes first. */
  private static Optional<String> flameFirst(Model model) {
    return BenchAnswers.saidFirst(model)
        .map(first -> "It begins with the heat: " + ActMention.of(first) + " comes first.");
  }

  private static String why(Model model, Act act) {
    if (!ActTable.of(model.held().place()).contains(act)) {
      return "That is no matter of this place: {do:find} leads to where it is.";
    }
    return switch (act) {
      case LOOK_ON ->
          model.job().filter(model.learning()::works).isPresent()
              ? "Who learns says what comes before it is shown: {do:next-step} asks."
              : "The steps are gone through at the bench, when nothing is asked there.";
      case ALL -> flameFirst(model).orElse("No pieces come to this step from another.");
      case REDO, SCRAP -> "No pieces come to this step from another.";
      case TAKE -> "There is nothing to take pieces from at this step.";
      case OTHER_SIZE -> "Links of one size only are counted here.";
      case LOOKED ->
          BenchAnswers.due(model).isPresent()
              ? "First to the wait that is over: {do:to-due} goes there."
              : "No wait runs here that ends by a look.";
      case WAIT -> flameFirst(model).orElse("This step has no wait.");
      case ANSWER -> "No timer is due.";
      case TO_TESTS -> "It leads there from the steps of the test piece.";
      case TO_TRIAL -> "It leads there from the steps of the sample.";
      case MORE, LESS -> "All of it is shown already.";
      case ACCEPT -> "No line of this book fails its check.";
      case SHOW_ALL -> "All of them are shown already.";
      case STOP_TIMER -> "No timer runs.";
      case LIT ->
          "A step with a flame asks for it first; "
              + ActMention.of(Act.TO_HOT_WORK)
              + " asks for the flames at any time.";
      case NEXT_QUESTION ->
          "The number of an answer comes first; " + AskedContent.NOT_KNOWN + " if you do not know.";
      case MAKE_AGAIN -> "Only a job that is closed is made again, and the chosen one is not.";
      case DRAWN -> "Nothing is bent here that could be drawn: there is no blank or no former yet.";
      case SAMPLE -> "No piece is logged that could be the sample.";
      case UP, DOWN, CHOOSE -> "There is no list here to go through.";
      case PUT_AWAY -> "No job is chosen.";
      case REOPEN -> "The job is open.";
      case WEIGH, WEIGH_OUT, PRICE, HOURS ->
          "This job is closed and its figures stay; "
              + ActMention.of(Act.REOPEN)
              + " opens it again.";
      case CLOSE -> "The job is closed.";
      case TO_BENCH -> "No job is open.";
      case TO_TRAY -> "A job is open; the places of the job lead to the tray.";
      default -> "There is nothing here that it could be done with.";
    };
  }
}
