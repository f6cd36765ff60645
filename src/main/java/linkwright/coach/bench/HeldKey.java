package linkwright.coach.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.ActMention;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.job.Again;
import linkwright.job.Fact;

/** The key of the common act was held: the piece just counted is offered to be redone. */
final class HeldKey {
  private HeldKey() {}

  /** Offers it once; if the held key had begun to repeat before that was seen, it counts once. */
  static Turn held(Model model) {
    if (BenchPlace.screen(model).ask() instanceof BenchAsk.Repeated) {
      return Turn.to(model.told(offered()));
    }
    boolean counted =
        model.held() instanceof BenchHeld
            && model.presses().act().filter(Act.THROUGH::equals).isPresent();
    if (!counted) {
      return Turn.to(model.told("The key is held: it counts once. Let go."));
    }
    Model asking =
        model.with(BenchScreens.asking(BenchPlace.screen(model), new BenchAsk.Repeated()));
    return Turn.keep(
        asking.told(offered()),
        model.presses().countedTwice() ? Undo.lastAtBench(model) : List.of());
  }

  private static String offered() {
    return "Held: counted once. Do that one again? Let go, then "
        + ActMention.of(Act.HELD_REDO)
        + ": yes. Else: no.";
  }

  /** The piece counted last goes back, where such a piece usually goes. */
  static Turn redo(Model model, AtBench at) {
    Model shown = model.with(BenchScreens.plain(BenchPlace.screen(model)));
    Optional<Fact.PiecesThrough> last =
        Undo.lastThrough(model)
            .filter(through -> through.pieces().getOrDefault(at.piece(), 0) == 1);
    if (last.isEmpty()) {
      return Turn.to(shown.told("Not one piece was counted last: redo asks how many."));
    }
    List<Fact> facts = new ArrayList<>(Undo.lastAtBench(model));
    facts.add(
        new Fact.PiecesSentBack(
            at.piece(),
            1,
            at.stage(),
            at.usualRedoStage(),
            last.get().redo(),
            "other",
            Again.NOT_SAID,
            last.get().sizes().keySet().stream().findFirst().orElse("")));
    return Turn.keep(shown.told("1 " + at.piece() + " is to be redone."), facts);
  }
}
