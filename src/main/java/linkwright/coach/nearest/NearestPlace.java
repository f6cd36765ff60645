package linkwright.coach.nearest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.plan.Plan;
import linkwright.quantity.UnitStyle;
import linkwright.standing.PlanDefaults;
import linkwright.standing.nearest.ChainChoice;
import linkwright.standing.nearest.ChainChoices;

/** Chains near the one wished: one key plans the chain so. */
public final class NearestPlace implements Place {
  /** Where what is typed into the plan and not kept yet waits. */
  private static final String DRAFT = "plan";

  static Act actOf(ChainChoice.Way way) {
    return switch (way) {
      case FIT_RING -> Act.FIT_RING;
      case FIT_LINK -> Act.FIT_LINK;
      case ONE_FEWER -> Act.ONE_FEWER;
      case ONE_MORE -> Act.ONE_MORE;
      case JUMP_RINGS -> Act.JUMP_RINGS;
      case CLASP -> Act.OTHER_CLASP;
    };
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(held(model)));
  }

  private static NearestHeld held(Model model) {
    OpenJob job = model.job().orElseThrow();
    return new NearestHeld(
        ChainChoices.of(job.state().course().wish(), job.state(), model.handbook()), 0);
  }

  @Override
  public Content content(Model model) {
    return NearestContent.of(model, (NearestHeld) model.held());
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.FIT_RING,
        Act.FIT_LINK,
        Act.ONE_FEWER,
        Act.ONE_MORE,
        Act.JUMP_RINGS,
        Act.OTHER_CLASP,
        Act.TO_PLAN,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>();
    ((NearestHeld) model.held()).choices().forEach(choice -> acts.add(actOf(choice.way())));
    acts.add(Act.TO_PLAN);
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    NearestHeld held = (NearestHeld) model.held();
    if (act == Act.MORE || act == Act.LESS) {
      return Turn.to(model.with(new NearestHeld(held.choices(), Turning.to(held.turned(), act))));
    }
    Optional<ChainChoice> chosen =
        held.choices().stream().filter(choice -> actOf(choice.way()) == act).findFirst();
    return chosen.map(choice -> take(model, choice)).orElseGet(() -> Turn.goTo(model, act));
  }

  private static Turn take(Model model, ChainChoice choice) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    Map<String, String> wish = changed(job.state().course().wish(), choice);
    wish.values().removeIf(String::isBlank);
    double doubt = job.standing().counted().plan().map(Plan::plusMinusMm).orElse(0.0);
    String told =
        "Planned with "
            + choice.saysWithLinks(units)
            + ": "
            + units.roundedBy(choice.lengthMm(), doubt);
    Map<String, String> typed = job.drafts().getOrDefault(DRAFT, Map.of());
    if (typed.isEmpty()) {
      return Turn.keep(
          model.told(told + "."),
          PlanDefaults.kept(wish, model.job().orElseThrow().state(), model.handbook()));
    }
    // What is typed into the plan and not kept stays typed, with the choice in it.
    Map<String, String> draft = changed(typed, choice);
    return Turn.keep(
            model.with(job.withDraft(DRAFT, draft)).told(told + "."),
            PlanDefaults.kept(wish, model.job().orElseThrow().state(), model.handbook()))
        .and(new Effect.KeepDraft(job.slug(), DRAFT, draft));
  }

  private static Map<String, String> changed(Map<String, String> texts, ChainChoice choice) {
    Map<String, String> changed = new LinkedHashMap<>(texts);
    changed.putAll(choice.change());
    return changed;
  }

  @Override
  public Turn settled(Model model) {
    return enter(model);
  }
}
