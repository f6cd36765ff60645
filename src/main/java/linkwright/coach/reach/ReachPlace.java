package linkwright.coach.reach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.plan.Plan;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.standing.JobPrices;
import linkwright.standing.PlanDefaults;
import linkwright.standing.reach.Bound;
import linkwright.standing.reach.OnHand;
import linkwright.standing.reach.WithinReach;

/** The longest chain or the heaviest wire that can be had from wire, metal, money or hours. */
public final class ReachPlace implements Place {
  private static final String DRAFT = "what-there-is";
  private static final String TITLE = "from what there is";

  @Override
  public Turn enter(Model model) {
    Map<String, String> typed = model.job().orElseThrow().drafts().getOrDefault(DRAFT, Map.of());
    boolean said = typed.values().stream().anyMatch(text -> !text.isBlank());
    return said ? reckoned(model, typed) : Turn.to(model.with(asking(model, typed)));
  }

  private static Turn reckoned(Model model, Map<String, String> typed) {
    Map<String, String> wish = model.job().orElseThrow().state().course().wish();
    OnHand.Reading read = OnHand.read(typed, wish, model.handbook());
    if (!read.troubles().isEmpty()) {
      ReachHeld asking = asking(model, typed);
      Form told = asking.form().orElseThrow().withTroubles(read.troubles()).atFirstTrouble();
      return Turn.to(model.with(new ReachHeld(typed, Optional.empty(), Optional.of(told), 0)));
    }
    WithinReach reach =
        WithinReach.of(
            wish,
            model.job().orElseThrow().state(),
            model.handbook(),
            read.onHand(),
            model.settings().units());
    return Turn.to(model.with(new ReachHeld(typed, Optional.of(reach), Optional.empty(), 0)));
  }

  private static ReachHeld asking(Model model, Map<String, String> typed) {
    String currency = currency(model);
    UnitStyle units = model.settings().units();
    Form form =
        Form.of(
                Form.Purpose.WHAT_THERE_IS,
                "What there is; what is left empty is no limit",
                "what can be had",
                List.of(
                    Field.of(
                            Bound.WIRE.word(),
                            "wire",
                            "",
                            "lengths or a mass, as thick as wished",
                            Measure.LENGTH,
                            units)
                        .helped("The links' wire that is there: 420 mm, 260 mm, or 12 g."),
                    Field.of(
                            Bound.METAL.word(),
                            "metal",
                            "",
                            "{g:20} in all, to draw it from",
                            Measure.MASS,
                            units)
                        .helped("Metal from which wire is drawn, kerf and points taken off."),
                    Field.of(
                            Bound.MONEY.word(),
                            "money",
                            "",
                            ("what the first may cost: 90 " + currency).strip())
                        .helped("The whole first chain by your prices, work and trials in it."),
                    Field.of(Bound.HOURS.word(), "hours", "", "6 h at the bench, trials in them")
                        .helped("Hours at the bench for the first; a number alone is hours.")))
            .withTexts(typed);
    return new ReachHeld(typed, Optional.empty(), Optional.of(form), 0);
  }

  private static String currency(Model model) {
    return JobPrices.of(model.job().orElseThrow().state(), model.handbook()).currency();
  }

  @Override
  public Content content(Model model) {
    ReachHeld held = (ReachHeld) model.held();
    if (held.form().isPresent()) {
      return Content.of(TITLE, new Fields(held.form().get()));
    }
    return held.reach()
        .map(
            reach ->
                new Content(
                    TITLE,
                    new ReachContent(model.settings().units(), currency(model))
                        .of(reach, held.typed())))
        .orElseGet(() -> Content.of(TITLE, Prose.says("{do:say-what-there-is} comes first.")));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.SAY_WHAT_THERE_IS, Act.PLAN_SO_LONG, Act.TO_PLAN, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.SAY_WHAT_THERE_IS));
    if (longest(model).isPresent()) {
      acts.add(Act.PLAN_SO_LONG);
    }
    acts.add(Act.TO_PLAN);
    return Turning.with(acts, model, this);
  }

  private static Optional<Plan> longest(Model model) {
    boolean closed = model.job().orElseThrow().state().course().closed();
    return ((ReachHeld) model.held())
        .reach()
        .filter(any -> !closed)
        .flatMap(reach -> reach.together().longest());
  }

  @Override
  public Turn act(Model model, Act act) {
    ReachHeld held = (ReachHeld) model.held();
    return switch (act) {
      case SAY_WHAT_THERE_IS -> Turn.to(model.with(asking(model, held.typed())));
      case PLAN_SO_LONG -> longest(model).map(plan -> take(model, plan)).orElse(Turn.to(model));
      case MORE, LESS ->
          Turn.to(
              model.with(
                  new ReachHeld(
                      held.typed(),
                      held.reach(),
                      Optional.empty(),
                      Turning.to(held.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  /** The longest becomes what is wished, in whole hundredths so that it counts as many links. */
  private static Turn take(Model model, Plan longest) {
    OpenJob job = model.job().orElseThrow();
    Map<String, String> wish = new LinkedHashMap<>(job.state().course().wish());
    wish.put(WishKeys.FINISHED, model.settings().units().typed(longest.lengthMm()));
    String told =
        "Planned "
            + model.settings().units().roundedBy(longest.lengthMm(), longest.plusMinusMm())
            + " long.";
    return Turn.keep(model.told(told), PlanDefaults.kept(wish, job.state(), model.handbook()));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    OpenJob job = model.job().orElseThrow();
    ReachHeld held = new ReachHeld(form.texts(), Optional.empty(), Optional.of(form), 0);
    return textChanged
        ? Turn.with(
            model.with(held).with(job.withDraft(DRAFT, form.texts())),
            new Effect.KeepDraft(job.slug(), DRAFT, form.texts()))
        : Turn.to(model.with(held));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    boolean said = form.texts().values().stream().anyMatch(text -> !text.isBlank());
    return said
        ? reckoned(model, form.texts())
        : Turn.to(
            model
                .with(new ReachHeld(form.texts(), Optional.empty(), Optional.of(form), 0))
                .told("Say what there is: wire, metal, money or hours."));
  }

  @Override
  public Turn formLeft(Model model) {
    ReachHeld held = (ReachHeld) model.held();
    boolean said = held.typed().values().stream().anyMatch(text -> !text.isBlank());
    return said ? reckoned(model, held.typed()) : Turn.goTo(model, Act.ROUND);
  }

  @Override
  public Turn settled(Model model) {
    return enter(model);
  }
}
