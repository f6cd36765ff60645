package linkwright.coach.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.form.Amounts;
import linkwright.coach.form.Asking;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.plan.ChainWish;
import linkwright.plan.WishedRing;
import linkwright.quantity.Count;
import linkwright.quantity.UnitStyle;
import linkwright.routine.ChainEnds;
import linkwright.standing.TrialLength;
import linkwright.standing.asked.Questions;

/** Trial lengths: a few finished links with candidate rings, hung, measured, one followed. */
public final class TrialPlace implements Place {
  @Override
  public Content content(Model model) {
    return TrialContent.of((TrialHeld) model.held(), model);
  }

  /** What is asked of rings, and not where links join each other. */
  private static final List<String> OF_RINGS = List.of("rings", "ring", "oval");

  private static final List<String> LENGTHS = List.of("ring", "oval", "hung", "clasp");

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.LOG,
        Act.CHOOSE_TRIAL,
        Act.UP,
        Act.DOWN,
        Act.TO_TESTS,
        Act.TO_BENCH,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts =
        List.of(Act.LOG, Act.CHOOSE_TRIAL, Act.UP, Act.DOWN, Act.TO_TESTS, Act.TO_BENCH, Act.UNDO);
    return Turning.with(acts, model, this);
  }

  /** Opens the screen at the last trial. */
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(at(model, Integer.MAX_VALUE)));
  }

  private static TrialHeld at(Model model, int wanted) {
    OpenJob job = model.job().orElseThrow();
    List<TrialLength> rows = TrialLength.of(job.standing(), job.state(), model.handbook());
    int last = Math.max(0, rows.size() - 1);
    return new TrialHeld(Math.max(0, Math.min(last, wanted)), rows, Optional.empty(), 0);
  }

  @Override
  public Turn act(Model model, Act act) {
    TrialHeld screen = (TrialHeld) model.held();
    return switch (act) {
      case LOG -> Turn.to(model.with(screen.with(Optional.of(blank(model)))));
      case UP -> row(model, screen.at() - 1);
      case DOWN -> row(model, screen.at() + 1);
      case MORE, LESS -> Turn.to(model.with(screen.turned(act)));
      case CHOOSE_TRIAL ->
          screen.rows().isEmpty()
              ? Turn.to(
                  model.trouble(
                      "No trial length is logged yet: " + ActMention.of(Act.LOG) + " logs one."))
              : choose(model, screen.rows().get(screen.at()).id());
      case UNDO -> Undo.last(model);
      default -> Turn.goTo(model, act);
    };
  }

  private static Turn choose(Model model, EntryId length) {
    JobState state = model.job().orElseThrow().state();
    boolean already =
        state.trials().chosenLength().filter(length::equals).isPresent()
            && state.trials().wishAtChoice().equals(state.course().wish());
    return already
        ? Turn.to(model.told("The chain follows this trial length already: nothing is entered."))
        : Turn.keep(
            model.told("The chain is counted anew from this trial length."),
            new Fact.TrialChosen(length, sizes(model, state.trials().lengths().get(length))));
  }

  /** Of which sizes the links are that hang in it: as they follow each other in the chain. */
  private static Map<String, Integer> sizes(Model model, Fact.TrialMeasured length) {
    return model
        .job()
        .flatMap(job -> job.standing().counted().plan())
        .map(plan -> plan.inOrder(length.links()))
        .orElse(Map.of());
  }

  @Override
  public Turn row(Model model, int row) {
    return Turn.to(model.with(at(model, row)));
  }

  private static Form blank(Model model) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    Optional<ChainWish> wish = job.standing().counted().wish();
    Optional<WishedRing> ring = wish.flatMap(ChainWish::ring);
    String inside = ring.map(one -> units.length(one.insideMm())).orElse("");
    String oval =
        ring.filter(one -> one.ovalInsideMm().isPresent())
            .map(one -> units.length(one.ovalInsideMm().getAsDouble()))
            .orElse("");
    String rings = ring.isPresent() ? "4" : "0";
    List<Field> fields =
        List.of(
            Field.of("links", "links", "3", "how many finished links hang in it")
                .takes(Measure.NUMBER, units)
                .helped("The links that hang in it. What one link adds follows from their number."),
            Field.of("rings", "rings", rings, "how many rings, those at the ends too")
                .takes(Measure.NUMBER, units)
                .helped("The rings that hang in it, those at the ends too."),
            Field.of(
                    "ring",
                    "ring inside",
                    inside,
                    "the rings tried, before they were ovalled, {mm:3}",
                    Measure.LENGTH,
                    units)
                .helped(
                    "The rings' inside before they were ovalled. The chain is counted with it if it"
                        + " follows this trial."),
            Field.of(
                    "oval",
                    "oval inside",
                    oval,
                    "their width once ovalled; empty: round, {mm:2.4}",
                    Measure.LENGTH,
                    units)
                .helped(
                    "The rings' inside width once they were squeezed; empty if they stay round."),
            Field.of(
                    "hung",
                    "hung length",
                    "",
                    "from inside end to inside end, pulled straight, {mm:52}",
                    Measure.LENGTH,
                    units)
                .helped(
                    "What the whole measures as it hangs. What a link adds to the chain follows"
                        + " from it."),
            Field.of(
                    "clasp",
                    "clasp in it",
                    "",
                    "its length if it hangs along; empty: no clasp, {mm:14}",
                    Measure.LENGTH,
                    units)
                .helped("What of the hung length is the clasp."),
            Field.of("note", "note", "", "how it lies and moves")
                .helped("It stands beside the trial length."));
    boolean linked = ring.isEmpty() && linksJoinEachOther(model);
    return Drafting.resumed(
        model,
        Form.of(
                Form.Purpose.TRIAL_LENGTH,
                "A trial length, hung and measured",
                "log it",
                fields.stream().filter(field -> !linked || !OF_RINGS.contains(field.id())).toList())
            .startingAt("hung"));
  }

  private static boolean linksJoinEachOther(Model model) {
    return model
        .job()
        .flatMap(job -> model.handbook().routine(job.state().course().routine()))
        .filter(routine -> routine.ends() == ChainEnds.LINKS)
        .isPresent();
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    TrialHeld screen = (TrialHeld) model.held();
    Form shown = textChanged ? form.withTroubles(new Amounts(form).troubles(LENGTHS, "")) : form;
    Model next = model.with(screen.with(Optional.of(shown)));
    return textChanged ? Drafting.keep(next, form) : Turn.to(next);
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Amounts amounts = new Amounts(form);
    Map<String, String> troubles = new LinkedHashMap<>(amounts.troubles(LENGTHS, ""));
    Optional<Integer> links = Count.read(form.text("links"), 1, Count.MOST).found();
    boolean noRings = form.fields().stream().noneMatch(field -> field.id().equals("rings"));
    Optional<Integer> rings = noRings ? Optional.of(0) : Count.read(form.text("rings")).found();
    if (links.isEmpty()) {
      troubles.put("links", "Give the number of links that hang, 1 or more, such as 3.");
    }
    if (rings.isEmpty()) {
      troubles.put("rings", "Give the number of rings, such as 4; 0 if links join each other.");
    }
    if (amounts.mm("hung").isEmpty()) {
      troubles.putIfAbsent("hung", "Give the length as it hangs, such as 52 mm.");
    }
    if (rings.orElse(0) > 0 && amounts.mm("ring").isEmpty()) {
      troubles.putIfAbsent("ring", "Give the rings' inside diameter, such as 3 mm.");
    }
    if (!troubles.isEmpty()) {
      Form told = form.withTroubles(troubles).atFirstTrouble();
      return Turn.to(model.with(((TrialHeld) model.held()).with(Optional.of(told))));
    }
    OptionalDouble oval = amounts.mm("oval");
    Fact.TrialMeasured fact =
        new Fact.TrialMeasured(
            links.get(),
            rings.get(),
            amounts.mm("ring").orElse(0),
            oval,
            amounts.mm("hung").orElseThrow(),
            amounts.mm("clasp").orElse(0),
            form.text("note"));
    Map<String, String> questions =
        Questions.ofTrial(fact, model.job().orElseThrow().standing(), model.settings().units());
    Optional<Form> asking = Asking.first(form, questions);
    return asking.isPresent()
        ? Turn.to(
            model.with(((TrialHeld) model.held()).with(asking)).trouble(Asking.sentence(questions)))
        : Turn.keep(model, fact);
  }

  @Override
  public Turn settled(Model model) {
    TrialHeld screen = (TrialHeld) model.held();
    boolean logged = screen.form().isPresent();
    Model next = model.with(at(model, logged ? Integer.MAX_VALUE : screen.at()));
    return screen.form().map(form -> Drafting.entered(next, form)).orElse(Turn.to(next));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(((TrialHeld) model.held()).with(Optional.empty())));
  }
}
