package linkwright.coach.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drawn.PictureContent;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.routine.Caution;
import linkwright.routine.Routine;
import linkwright.routine.Step;
import linkwright.standing.CardTraits;

/**
 * A rehearsal: the steps of a routine dry, forwards and back. It asks for nothing to be written.
 */
public final class RehearsalPlace implements Place {
  private static final String BACK = "back to the step";

  @Override
  public boolean isDry() {
    return true;
  }

  /** The open job's routine, from its open step on; without a job the routines to choose from. */
  @Override
  public Turn enter(Model model) {
    Optional<String> routine = model.job().map(job -> job.state().course().routine());
    return routine
        .filter(id -> model.handbook().routine(id).isPresent())
        .map(id -> shown(model, id, 0))
        .orElseGet(() -> Turn.to(model.with(held(model, "", 0))));
  }

  @Override
  public Turn enterAt(Model model, String id) {
    if (id.isEmpty()) {
      return enter(model);
    }
    return model.handbook().routine(id).isPresent()
        ? shown(model, id, 0)
        : Turn.to(model.with(held(model, "", 0)).trouble("There is no routine “" + id + "”."));
  }

  /** The cautions of the step that is rehearsed; none anywhere else. */
  public static List<Caution> cautions(Model model) {
    return step(model)
        .map(step -> cautions(model, (RehearsalHeld) model.held(), step))
        .orElse(List.of());
  }

  /** The step that is rehearsed; empty anywhere else. */
  public static Optional<Step> step(Model model) {
    return model.held() instanceof RehearsalHeld held && !held.routine().isEmpty()
        ? RehearsalContent.routine(model, held.routine())
            .map(routine -> routine.steps().get(held.at()))
        : Optional.empty();
  }

  /** Why the step is done so, and what may go wrong; nothing anywhere else. */
  public static List<Part> reasons(Model model) {
    return step(model).map(step -> RehearsalContent.reasons(model, step)).orElse(List.of());
  }

  private static int drawings(Model model) {
    return step(model).map(step -> PictureContent.pages(step, model).size()).orElse(0);
  }

  /** In the order of the bench; of a job those that are meant for it. */
  private static List<Caution> cautions(Model model, RehearsalHeld held, Step step) {
    List<Caution> named =
        step.cautions().stream().flatMap(id -> model.handbook().caution(id).stream()).toList();
    Optional<CardTraits> traits =
        model
            .job()
            .filter(job -> job.state().course().routine().equals(held.routine()))
            .map(job -> job.standing().traits());
    return Cards.worstFirst(named, step.does()).stream()
        .filter(card -> traits.map(each -> each.meet(card)).orElse(true))
        .toList();
  }

  private static RehearsalHeld held(Model model, String routine, int at) {
    boolean waits =
        RehearsalContent.routine(model, routine)
            .map(found -> !found.steps().get(at).waits().isEmpty())
            .orElse(false);
    return new RehearsalHeld(
        routine, at, model.steady(), waits, RehearsalHeld.StepSide.TEXTS, 0, 0);
  }

  @Override
  public Content content(Model model) {
    return RehearsalContent.of(model, (RehearsalHeld) model.held());
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.CHOOSE,
        Act.UP,
        Act.DOWN,
        Act.DRY_ON,
        Act.DRY_BACK,
        Act.TO_CAUTIONS,
        Act.DRAWN,
        Act.TO_TRAY,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    boolean chosen = !((RehearsalHeld) model.held()).routine().isEmpty();
    List<Act> acts =
        new ArrayList<>(
            chosen ? List.of(Act.DRY_ON, Act.DRY_BACK) : List.of(Act.CHOOSE, Act.UP, Act.DOWN));
    if (!cautions(model).isEmpty()) {
      acts.add(Act.TO_CAUTIONS);
    }
    if (drawings(model) > 0) {
      acts.add(Act.DRAWN);
    }
    if (chosen) {
      acts.add(Act.TO_LOOKUP);
    }
    if (model.job().isEmpty()) {
      acts.add(Act.TO_TRAY);
    }
    return Turning.with(acts, model, this);
  }

  @Override
  public String says(Model model, Act act) {
    RehearsalHeld held = (RehearsalHeld) model.held();
    return switch (act) {
      case TO_CAUTIONS -> held.side() == RehearsalHeld.StepSide.CARDS ? BACK : "its cautions whole";
      case TO_LOOKUP -> held.side() == RehearsalHeld.StepSide.WORDS ? BACK : "its words";
      case DRAWN ->
          held.side() != RehearsalHeld.StepSide.DRAWN
              ? act.words()
              : held.drawing() + 1 < drawings(model) ? "the next drawing" : BACK;
      default -> act.words();
    };
  }

  @Override
  public Turn act(Model model, Act act) {
    RehearsalHeld held = (RehearsalHeld) model.held();
    List<Routine> routines = model.handbook().routines();
    return switch (act) {
      case UP -> Turn.to(model.with(held(model, "", Math.max(0, held.at() - 1))));
      case DOWN ->
          Turn.to(model.with(held(model, "", Math.min(routines.size() - 1, held.at() + 1))));
      case CHOOSE -> shown(model, routines.get(held.at()).id(), 0);
      case DRY_ON -> by(model, held, 1);
      case DRY_BACK -> by(model, held, -1);
      case TO_CAUTIONS -> Turn.to(model.with(held.turnedTo(RehearsalHeld.StepSide.CARDS)));
      case DRAWN -> Turn.to(model.with(held.nextDrawn(drawings(model))));
      case TO_LOOKUP ->
          held.routine().isEmpty()
              ? Turn.goTo(model, act)
              : Turn.to(model.with(held.turnedTo(RehearsalHeld.StepSide.WORDS)));
      case MORE, LESS -> Turn.to(model.with(held.turned(Turning.to(held.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  private static Turn by(Model model, RehearsalHeld held, int by) {
    int steps =
        RehearsalContent.routine(model, held.routine()).map(r -> r.steps().size()).orElse(0);
    int to = held.at() + by;
    if (to < 0 || to >= steps) {
      return Turn.to(
          model.told(
              to < 0
                  ? "This is the first step."
                  : "That was the last step: all of it is rehearsed. "
                      + (model.job().filter(job -> !job.lookOnly()).isPresent()
                          ? "{do:to-bench}"
                          : "{do:leave}")
                      + " leads out."));
    }
    return shown(model, held.routine(), to);
  }

  /** A step of a routine; of a student's own job none that she has still to name. */
  private static Turn shown(Model model, String routine, int at) {
    boolean hers =
        model.job().filter(job -> job.state().course().routine().equals(routine)).isPresent();
    boolean hidden =
        hers
            && RehearsalContent.routine(model, routine)
                .filter(found -> model.learning().hides(found.steps().get(at).id()))
                .isPresent();
    if (!hidden) {
      return Turn.to(model.with(held(model, routine, at)));
    }
    return Turn.goTo(model.told("What comes next is said before it is shown."), PlaceId.BENCH);
  }

  @Override
  public boolean undoes(Model model) {
    return false;
  }

  @Override
  public Turn row(Model model, int row) {
    RehearsalHeld held = (RehearsalHeld) model.held();
    boolean list = held.routine().isEmpty() && row >= 0 && row < model.handbook().routines().size();
    return list ? Turn.to(model.with(held(model, "", row))) : Turn.to(model);
  }
}
