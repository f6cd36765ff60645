package linkwright.coach.piles;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.WaitingWords;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.routine.StepId;
import linkwright.standing.WaitingPiece;

/** The piles: where every piece is, where each pile lies, and one key to where it goes on. */
public final class PilesPlace implements Place {
  @Override
  public Content content(Model model) {
    return PilesContent.of(model, held(model));
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.TAKE_UP,
        Act.SAY_WHERE,
        Act.UP,
        Act.DOWN,
        Act.TO_FAILED,
        Act.TO_BENCH,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>();
    Optional<WaitingPiece> chosen = chosen(model);
    if (chosen.filter(WaitingPiece::waits).isPresent()) {
      acts.add(Act.TAKE_UP);
    }
    if (chosen.isPresent()) {
      acts.addAll(List.of(Act.SAY_WHERE, Act.UP, Act.DOWN));
    }
    acts.add(Act.TO_BENCH);
    acts.add(Act.TO_FAILED);
    acts.add(Act.UNDO);
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    PilesHeld held = held(model);
    return switch (act) {
      case UP -> Turn.to(model.with(at(model, held.at() - 1)));
      case DOWN -> Turn.to(model.with(at(model, held.at() + 1)));
      case TAKE_UP -> takeUp(model);
      case MORE, LESS ->
          Turn.to(
              model.with(
                  new PilesHeld(held.at(), Optional.empty(), Turning.to(held.turned(), act))));
      case SAY_WHERE ->
          chosen(model)
              .map(
                  pile ->
                      Turn.to(model.with(new PilesHeld(held.at(), Optional.of(form(model, pile))))))
              .orElseGet(() -> Turn.to(model));
      case UNDO -> Undo.last(model);
      default -> Turn.goTo(model, act);
    };
  }

  /** Opens the step in the book and goes to the bench. */
  private static Turn takeUp(Model model) {
    Optional<WaitingPiece> pile = chosen(model).filter(WaitingPiece::waits);
    if (pile.isEmpty()) {
      return Turn.to(model.told("Nothing more is done to them."));
    }
    OpenJob job = model.job().orElseThrow();
    if (job.lookOnly() || job.state().course().closed()) {
      return Turn.to(model.trouble("No step is opened here: the job is closed, or open to look."));
    }
    StepId step = pile.get().step().orElseThrow().id();
    Turn there = Turn.goTo(model, PlaceId.BENCH);
    return job.state().course().step().equals(step)
        ? there
        : Turn.keep(model, new Fact.StepOpened(step));
  }

  /** A step that was opened from here is gone to. */
  @Override
  public Turn settled(Model model) {
    PilesHeld held = held(model);
    if (held.form().isPresent()) {
      Model next = model.with(at(model, held.at()));
      return Drafting.entered(next, held.form().get());
    }
    boolean opened =
        model
            .job()
            .map(OpenJob::entries)
            .filter(all -> !all.isEmpty())
            .map(all -> all.get(all.size() - 1).fact() instanceof Fact.StepOpened)
            .orElse(false);
    return opened ? Turn.goTo(model, PlaceId.BENCH) : Turn.to(model);
  }

  private static Form form(Model model, WaitingPiece pile) {
    return Drafting.resumed(
        model,
        Form.of(
            Form.Purpose.PILE,
            pile.counted() + ", " + pile.spot().stage(),
            "keep it",
            List.of(
                Field.of("lies", "lie in", pile.lies(), "the blue tin, the tray by the window")
                    .helped(
                        "Where they are to be found. It stands beside the pile till they move."))));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form shown = textChanged ? form.withTroubles(Map.of()) : form;
    Model next = model.with(new PilesHeld(held(model).at(), Optional.of(shown)));
    return textChanged ? Drafting.keep(next, shown) : Turn.to(next);
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Optional<WaitingPiece> pile = chosen(model);
    if (pile.isEmpty()) {
      return Turn.to(model.with(at(model, 0)));
    }
    String lies = form.text("lies");
    if (lies.isEmpty()) {
      Form told =
          form.withTroubles(Map.of("lies", "Say where they lie, in your own words."))
              .atFirstTrouble();
      return Turn.to(model.with(new PilesHeld(held(model).at(), Optional.of(told))));
    }
    return Turn.keep(
        model,
        new BenchFact.PilePlaced(
            pile.get().spot().piece(),
            pile.get().spot().stage(),
            pile.get().spot().redo(),
            lies,
            pile.get().spot().size()));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(at(model, held(model).at())));
  }

  @Override
  public Turn row(Model model, int row) {
    return Turn.to(model.with(at(model, row)));
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(at(model, 0)));
  }

  private static Optional<WaitingPiece> chosen(Model model) {
    List<WaitingPiece> piles = WaitingWords.of(model);
    return piles.isEmpty()
        ? Optional.empty()
        : Optional.of(piles.get(Math.min(held(model).at(), piles.size() - 1)));
  }

  private static PilesHeld at(Model model, int wanted) {
    int last = Math.max(0, WaitingWords.of(model).size() - 1);
    return new PilesHeld(Math.max(0, Math.min(last, wanted)), Optional.empty());
  }

  private static PilesHeld held(Model model) {
    return model.held() instanceof PilesHeld piles ? piles : new PilesHeld(0, Optional.empty());
  }
}
