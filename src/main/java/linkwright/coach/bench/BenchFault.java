package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;
import linkwright.coach.keys.Key;
import linkwright.job.Again;
import linkwright.job.Fact;
import linkwright.quantity.Count;
import linkwright.routine.AfterFault;
import linkwright.routine.Remedy;
import linkwright.routine.Stage;
import linkwright.standing.sizes.SizeAtBench;

/** What went wrong with pieces: asked for once, entered, and its remedy shown at once. */
final class BenchFault {
  /** Reasons are numbered with one digit each. */
  private static final int MOST_CHOICES = 9;

  private BenchFault() {}

  /** Asks for the reason; scrap says whether the pieces are lost. */
  static Turn ask(Model model, AtBench at, boolean scrap, int count) {
    Optional<JustCounted> counted = JustCounted.of(model, at);
    boolean lost = scrap && (at.failable() > 0 || counted.isPresent());
    if (!at.counts() || (at.begins() && !lost)) {
      return Turn.to(model.told("Nothing has come so far that it could fail here."));
    }
    int most = counted.map(last -> last.count(at)).orElse(at.failable());
    if (at.size().isEmpty()
        && counted.isEmpty()
        && SizeAtBench.choices(
                    model.job().orElseThrow().state(),
                    model.job().orElseThrow().standing(),
                    at.piece(),
                    at.failsAt())
                .size()
            > 1) {
      return Turn.to(
          model.trouble("Which size of link is it? {do:other-size} says so, and then this again."));
    }
    if (count > most) {
      return Turn.to(
          model
              .with(BenchScreens.plain(BenchPlace.screen(model)))
              .trouble(
                  most == 0
                      ? "No piece waits here that could fail."
                      : "Only "
                          + most
                          + (counted.isEmpty()
                              ? (most == 1 ? " is" : " are") + " here; "
                              : (most == 1 ? " was" : " were") + " counted here last; ")
                          + count
                          + " cannot fail."));
    }
    BenchAsk why = new BenchAsk.Why(scrap, count, choices(at, scrap), counted);
    return Turn.to(model.with(BenchScreens.asking(BenchPlace.screen(model), why)));
  }

  private static List<Remedy> choices(AtBench at, boolean scrap) {
    AfterFault wanted = scrap ? AfterFault.SCRAP : AfterFault.REDO;
    List<Remedy> choices = new ArrayList<>();
    at.step().wrong().stream()
        .filter(remedy -> remedy.then() == wanted)
        .limit(MOST_CHOICES - 1L)
        .forEach(choices::add);
    choices.add(
        scrap
            ? new Remedy(
                "something else",
                "",
                "Put it with the scrap of its kind.",
                wanted,
                Stage.NONE,
                "other")
            : new Remedy(
                "something else",
                "",
                "Find out why before you try again.",
                wanted,
                at.usualRedoStage(),
                "other"));
    return choices;
  }

  /** What was half asked as a wait fell due: nothing is entered of it, and that is told. */
  static String notSaid(Model model) {
    return BenchPlace.screen(model).ask() instanceof BenchAsk.Why why
        ? " Not entered, no reason was said: "
            + why.count()
            + (why.scrap() ? " scrapped." : " to redo.")
        : "";
  }

  /** Takes the reason by its number; any other key but a number leaves the question. */
  static Turn answer(Model model, BenchAsk.Why why, Key key) {
    int choice = Count.inDigits(key.text(), 1).orElse(0);
    if (choice < 1 || choice > why.choices().size()) {
      return Turn.to(
          model.told("Press the number of the reason, 1 to " + why.choices().size() + "."));
    }
    Remedy remedy = why.choices().get(choice - 1);
    AtBench at = AtBench.of(model).orElseThrow();
    String reason = remedy.reason().isEmpty() ? "other" : remedy.reason();
    boolean redo = why.counted().map(last -> last.through().redo()).orElse(at.fromRedo());
    String size = why.counted().map(JustCounted::size).orElse(at.size());
    List<Fact> facts =
        new ArrayList<>(
            why.counted().map(last -> last.takenBack(model, at, why.count())).orElse(List.of()));
    Fact fact =
        why.scrap()
            ? new Fact.PiecesScrapped(
                at.piece(), why.count(), at.failsAt(), !at.begins() && redo, reason, size)
            : new Fact.PiecesSentBack(
                at.piece(),
                why.count(),
                at.stage(),
                remedy.backTo().equals(Stage.NONE) ? at.usualRedoStage() : remedy.backTo(),
                redo,
                reason,
                Again.NOT_SAID,
                size);
    facts.add(fact);
    Model told =
        why.scrap() ? ScrapWords.of(model, at, fact).map(model::told).orElse(model) : model;
    return Turn.keep(told.with(BenchScreens.remedy(BenchPlace.screen(model), remedy)), facts);
  }
}
