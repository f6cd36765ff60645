package linkwright.coach.ownbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.standing.typed.TypedTwice;

/** Her bench: what is hers whatever the job, to be seen and changed. */
public final class OwnBenchPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new OwnBenchHeld(Optional.empty(), 0)));
  }

  @Override
  public Content content(Model model) {
    OwnBenchHeld held = (OwnBenchHeld) model.held();
    return held.form()
        .map(form -> Content.of("your bench", new Fields(form)))
        .orElseGet(
            () ->
                new Content(
                    "your bench",
                    Stream.concat(
                            DraftWords.here(model, Form.Purpose.OWN_BENCH, Act.CHANGE_BENCH)
                                .stream(),
                            known(model).stream())
                        .toList()));
  }

  private static List<Part> known(Model model) {
    return new OwnBenchContent(
            model.settings().units(), model.now().atZone(model.settings().zone()).toLocalDate())
        .of(model.handbook());
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.CHANGE_BENCH, Act.THROW_AWAY, Act.KEEP_TYPED, Act.TO_TRAY, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.CHANGE_BENCH));
    if (Drafting.waits(model, Form.Purpose.OWN_BENCH)) {
      acts.add(Act.THROW_AWAY);
    }
    if (!TypedTwice.of(model.handbook()).isEmpty()) {
      acts.add(Act.KEEP_TYPED);
    }
    acts.add(Act.TO_TRAY);
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    OwnBenchHeld held = (OwnBenchHeld) model.held();
    return switch (act) {
      case CHANGE_BENCH -> Turn.to(model.with(new OwnBenchHeld(Optional.of(form(model)), 0)));
      case THROW_AWAY -> Drafting.thrownAway(model, Form.Purpose.OWN_BENCH);
      case KEEP_TYPED -> Turn.with(model, new Effect.ChangeBench(TypedTwice.of(model.handbook())));
      case MORE, LESS ->
          Turn.to(model.with(new OwnBenchHeld(Optional.empty(), Turning.to(held.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  private static Form form(Model model) {
    return OwnBenchFields.form(model.handbook().own(), model.settings().units());
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form shown = textChanged ? form.withTroubles(OwnBenchFields.troubles(form)) : form;
    return Turn.to(model.with(new OwnBenchHeld(Optional.of(shown), 0)));
  }

  /** What the file's own reading finds wrong is told, and the form stays open. */
  @Override
  public Turn confirmed(Model model, Form form) {
    Map<String, String> troubles = OwnBenchFields.troubles(form);
    if (!troubles.isEmpty()) {
      Form told = form.withTroubles(troubles).atFirstTrouble();
      return Turn.to(model.with(new OwnBenchHeld(Optional.of(told), 0)));
    }
    Map<String, String> changes = OwnBenchFields.changes(form(model), form);
    return changes.isEmpty()
        ? formLeft(model.told("Your bench is as it was."))
        : Turn.with(model, new Effect.ChangeBench(changes));
  }

  @Override
  public Turn settled(Model model) {
    return Turn.to(model.with(new OwnBenchHeld(Optional.empty(), 0)));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(new OwnBenchHeld(Optional.empty(), 0)));
  }
}
