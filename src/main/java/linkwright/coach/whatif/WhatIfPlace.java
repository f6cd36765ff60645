package linkwright.coach.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Choosing;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Offered;
import linkwright.coach.form.PlanHelp;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.plan.WishKeys;
import linkwright.quantity.Read;
import linkwright.reference.Metal;
import linkwright.standing.reach.WhatIf;

/** The same wish in other metal, wire, ring or length, up to four beside each other. */
public final class WhatIfPlace implements Place {
  private static final String DRAFT = "what-if";

  private static final Map<String, String> LABELS =
      Map.of(
          WishKeys.METAL, "metal",
          WishKeys.WIRE, "wire",
          WishKeys.RING_INSIDE, "ring",
          WishKeys.FINISHED, "length");

  @Override
  public Turn enter(Model model) {
    Map<String, String> typed = model.job().orElseThrow().drafts().getOrDefault(DRAFT, Map.of());
    return Turn.to(model.with(new WhatIfHeld(typed, Optional.empty(), 0)));
  }

  @Override
  public Content content(Model model) {
    WhatIfHeld held = (WhatIfHeld) model.held();
    if (held.form().isPresent()) {
      return Content.of("what if", new Fields(held.form().get()));
    }
    OpenJob job = model.job().orElseThrow();
    List<WhatIf> variants =
        WhatIf.of(
            job.state().course().wish(), job.state(), model.handbook(), variants(held.typed()));
    List<Part> parts = new ArrayList<>(new WhatIfContent(model.settings().units()).of(variants));
    parts.add(
        Prose.aside("{do:what-there-is} finds the longest from your wire, metal, money or hours."));
    return new Content("what if", parts);
  }

  private static List<Map<String, String>> variants(Map<String, String> typed) {
    List<Map<String, String>> variants = new ArrayList<>();
    for (int i = 2; i <= WhatIf.MOST; i++) {
      Map<String, String> one = new LinkedHashMap<>();
      for (String key : WhatIf.ASKED) {
        one.put(key, typed.getOrDefault(key + " " + i, ""));
      }
      variants.add(one);
    }
    return variants;
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.VARY, Act.TO_PLAN, Act.TO_REACH, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    return Turning.with(List.of(Act.VARY, Act.TO_PLAN, Act.TO_REACH), model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    WhatIfHeld held = (WhatIfHeld) model.held();
    return switch (act) {
      case VARY ->
          Turn.to(
              model.with(new WhatIfHeld(held.typed(), Optional.of(form(model, held.typed())), 0)));
      case MORE, LESS -> {
        int turned = Turning.to(held.turned(), act);
        yield Turn.to(model.with(new WhatIfHeld(held.typed(), Optional.empty(), turned)));
      }
      default -> Turn.goTo(model, act);
    };
  }

  private static Form form(Model model, Map<String, String> typed) {
    List<Offered> metals = Choosing.metals(model.handbook().reference().metals());
    List<Field> fields = new ArrayList<>();
    for (int i = 2; i <= WhatIf.MOST; i++) {
      for (String key : WhatIf.ASKED) {
        String id = key + " " + i;
        String label = LABELS.get(key) + " " + i;
        PlanHelp.FieldHelp entry = PlanHelp.of(key);
        Field field =
            key.equals(WishKeys.METAL)
                ? Field.choiceOf(id, label, "", "left and right go through them", metals)
                : Field.of(id, label, "", "empty: as planned")
                    .takes(entry.measure(), model.settings().units());
        fields.add(field.helped(entry.help()));
      }
    }
    return Form.of(Form.Purpose.VARIANTS, "What if it were", "compare them", fields)
        .withTexts(typed);
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    OpenJob job = model.job().orElseThrow();
    Model next = model.with(new WhatIfHeld(form.texts(), Optional.of(form), 0));
    return textChanged
        ? Turn.with(
            next.with(job.withDraft(DRAFT, form.texts())),
            new Effect.KeepDraft(job.slug(), DRAFT, form.texts()))
        : Turn.to(next);
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Map<String, String> troubles = new LinkedHashMap<>();
    Form meant = form.mapFields(field -> metal(model, field, troubles));
    return troubles.isEmpty()
        ? left(edited(model, meant, !meant.texts().equals(form.texts())))
        : edited(model, meant.withTroubles(troubles).atFirstTrouble(), false);
  }

  private Turn left(Turn edited) {
    return formLeft(edited.model()).after(edited);
  }

  private static Field metal(Model model, Field field, Map<String, String> troubles) {
    String typed = field.text().strip();
    if (field.choices().isEmpty() || typed.isEmpty()) {
      return field;
    }
    Read<Metal> known = model.handbook().reference().metal(typed);
    known.problem().ifPresent(problem -> troubles.put(field.id(), problem));
    return known.found().map(metal -> field.withText(metal.id())).orElse(field);
  }

  @Override
  public Turn formLeft(Model model) {
    WhatIfHeld held = (WhatIfHeld) model.held();
    return Turn.to(model.with(new WhatIfHeld(held.typed(), Optional.empty(), 0)));
  }
}
