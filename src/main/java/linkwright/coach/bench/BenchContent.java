package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Emphasis;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Clock;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.PictureContent;
import linkwright.coach.kernel.safety.CardContent;
import linkwright.coach.kernel.safety.Cards;
import linkwright.job.TimerRun;
import linkwright.routine.Caution;
import linkwright.routine.Remedy;
import linkwright.standing.StillToDo;
import linkwright.standing.WaitingPiece;

/** The bench: what is to be seen or answered first, else the step with its count. */
final class BenchContent {
  private BenchContent() {}

  static Content of(Model model, BenchHeld held) {
    Optional<AtBench> found = AtBench.of(model);
    if (found.isEmpty()) {
      return Content.of(
          "bench", Prose.stop("The routine of this job is not among the files at hand."));
    }
    AtBench at = found.get();
    return BenchLook.at(model, at)
        .map(there -> BenchLook.content(model, at, there))
        .orElseGet(() -> new Content(title(model, at), parts(model, held, at)));
  }

  private static String title(Model model, AtBench at) {
    return BenchSitting.closed(model) ? "closed" : title(at);
  }

  static String title(AtBench at) {
    return "step " + at.number() + " of " + at.routine().steps().size();
  }

  private static List<Part> parts(Model model, BenchHeld held, AtBench at) {
    if (BenchSitting.away(model)) {
      return BenchAway.parts(model, at);
    }
    Optional<Cards.Card> card = BenchGate.caution(model);
    if (card.isPresent()) {
      return card(model, at, card.get().caution());
    }
    if (held.ask() instanceof BenchAsk.Why why) {
      List<Part> parts = new ArrayList<>(List.of(why(model, at, why)));
      // What is seen is held against what it looks like.
      parts.addAll(PictureContent.below(at.step(), model));
      return parts;
    }
    if (held.ask() instanceof BenchAsk.Passing passing) {
      return List.of(
          new Question(
              passing.told() + ". {do:pass-on} goes on past that, and it is entered.",
              List.of(new Question.Answer("1", passing.there(), ""))));
    }
    if (held.ask() instanceof BenchAsk.WhenAgain again) {
      return again(model, again);
    }
    return StepContent.of(model, held, at);
  }

  private static List<Part> card(Model model, AtBench at, Caution card) {
    String which = Cards.of(model, at).which(model.job().orElseThrow());
    return CardContent.of(model, card, which + ", before step " + at.number());
  }

  private static Question why(Model model, AtBench at, BenchAsk.Why why) {
    String what = why.scrap() ? "scrapped" : "to redo";
    String pieces =
        why.counted()
            .map(
                last -> AtBench.counted(last.size(), at.piece(), why.count()) + " counted just now")
            .orElseGet(() -> at.counted(why.count()));
    List<Question.Answer> answers = new ArrayList<>();
    for (int i = 0; i < why.choices().size(); i++) {
      Remedy choice = why.choices().get(i);
      String means = JobWords.fill(choice.means(), model);
      answers.add(new Question.Answer(Integer.toString(i + 1), choice.sees(), means));
    }
    return new Question(why.count() + " " + pieces + " " + what + ": what do you see?", answers);
  }

  private static List<Part> again(Model model, BenchAsk.WhenAgain asked) {
    WaitingPiece pile = asked.pile();
    String step = JobWords.fill(pile.step().orElseThrow().title(), model);
    StillToDo left = model.job().orElseThrow().standing().left().get(pile.spot().piece());
    List<Question.Answer> answers =
        List.of(
            new Question.Answer("1", "with the next heat", "They wait there till then."),
            new Question.Answer("2", "now", "{do:again-now} too."),
            new Question.Answer("3", "let spares cover", spares(left)));
    String where = ", at step " + pile.number() + ", “" + step + "”: when?";
    return List.of(new Question(pile.counted() + where, answers));
  }

  /** Whether there are others that could take their place. */
  private static String spares(StillToDo left) {
    if (left == null) {
      return "";
    }
    int others = left.good() + left.inWork() - left.redo();
    return others
        + (others == 1 ? " other is" : " others are")
        + " good or in work, "
        + left.wanted()
        + (left.wanted() == 1 ? " is" : " are")
        + " wanted.";
  }

  /** The timer that ends first, of any step. */
  static Optional<Figure> next(Model model) {
    return model
        .timers()
        .next()
        .map(timer -> figure(model, timer, ": due. {do:answer} quiets it."));
  }

  static Figure figure(Model model, TimerRun timer, String due) {
    boolean rings = timer.rings(model.steady());
    return new Figure(
        Clock.running(timer.left(model.steady()).toSeconds()),
        timer.named() + (rings ? due : ""),
        rings ? Emphasis.TROUBLE : Emphasis.NOW);
  }
}
