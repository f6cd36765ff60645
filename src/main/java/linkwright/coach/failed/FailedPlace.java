package linkwright.coach.failed;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.job.FailedPieces;

/** What failed in this job: where, why, how often, and the cure. Nothing is entered here. */
public final class FailedPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new FailedHeld(0, 0)));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.UP, Act.DOWN, Act.TO_PILES, Act.TO_BENCH, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>();
    if (failed(model).size() > 1) {
      acts.addAll(List.of(Act.UP, Act.DOWN));
    }
    acts.addAll(List.of(Act.TO_PILES, Act.TO_BENCH));
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    FailedHeld held = (FailedHeld) model.held();
    return switch (act) {
      case UP -> row(model, held.at() - 1);
      case DOWN -> row(model, held.at() + 1);
      case MORE, LESS ->
          Turn.to(model.with(new FailedHeld(held.at(), Turning.to(held.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  @Override
  public Turn row(Model model, int row) {
    int last = Math.max(0, failed(model).size() - 1);
    return Turn.to(model.with(new FailedHeld(Math.max(0, Math.min(last, row)), 0)));
  }

  @Override
  public Content content(Model model) {
    return FailedContent.of(model, (FailedHeld) model.held(), failed(model));
  }

  private static List<FailedPieces> failed(Model model) {
    return FailedPieces.in(model.job().map(OpenJob::entries).orElse(List.of()));
  }
}
