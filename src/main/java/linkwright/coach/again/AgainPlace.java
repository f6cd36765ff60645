package linkwright.coach.again;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.form.Choosing;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.form.PlanHelp;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.plan.WishKeys;
import linkwright.quantity.UnitStyle;
import linkwright.standing.Handbook;
import linkwright.standing.JobPrices;
import linkwright.standing.Standing;
import linkwright.standing.again.MadeAgain;

/** Makes the job that is open again, as a new one: only what may differ is asked. */
public final class AgainPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new AgainHeld(Drafting.resumed(model, form(model)), 0)));
  }

  private static Form form(Model model) {
    OpenJob job = model.job().orElseThrow();
    Map<String, String> wish = job.state().course().wish();
    List<Field> fields = new ArrayList<>();
    fields.add(
        Field.of(WishKeys.JOB, "name", called(job), "what you will look for it by")
            .helped("The name of the new job in the tray."));
    UnitStyle units = model.settings().units();
    String length = wish.getOrDefault(WishKeys.FINISHED, "");
    fields.add(
        Field.of(
                WishKeys.FINISHED,
                "finished length",
                length,
                "clasp and its rings in it, {mm:450}",
                Measure.LENGTH,
                units)
            .helped(PlanHelp.of(WishKeys.FINISHED).help()));
    fields.add(
        Field.choiceOf(
                WishKeys.METAL,
                "metal",
                wish.getOrDefault(WishKeys.METAL, ""),
                "any part of its name or fineness",
                Choosing.metals(model.handbook().reference().metals()))
            .helped(PlanHelp.of(WishKeys.METAL).help()));
    fields.add(
        Field.of(
                WishKeys.WIRE,
                "thickness",
                wish.getOrDefault(WishKeys.WIRE, ""),
                "{wire:0.9}",
                Measure.WIRE,
                units)
            .helped(PlanHelp.of(WishKeys.WIRE).help()));
    boolean chain = job.makesChain();
    return Form.of(
        Form.Purpose.MAKE_AGAIN,
        "Made again",
        "begin it",
        fields.stream().filter(field -> chain || !field.id().equals(WishKeys.FINISHED)).toList());
  }

  /** By its routine and what it is made of: the earlier job's name may hold its customer's. */
  private static String called(OpenJob job) {
    return called(job, job.state().course().wish().getOrDefault(WishKeys.METAL, "").strip());
  }

  /** A name that was offered goes with the metal that is typed; one that she gave stays hers. */
  private static Form named(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    String before = model.held().form().map(was -> was.text(WishKeys.METAL)).orElse("");
    return form.text(WishKeys.JOB).equals(called(job, before))
        ? form.withTexts(Map.of(WishKeys.JOB, called(job, form.text(WishKeys.METAL))))
        : form;
  }

  private static String called(OpenJob job, String metal) {
    String what = job.state().course().routine().replace('-', ' ').strip();
    return (what.isEmpty() ? "job" : what) + (metal.isEmpty() ? "" : " in " + metal);
  }

  /** What is typed otherwise than it was: what stays is no change. */
  private static Map<String, String> changes(OpenJob job, Form form) {
    Map<String, String> changes = new LinkedHashMap<>(form.texts());
    Map<String, String> before = job.state().course().wish();
    changes.entrySet().removeIf(each -> each.getValue().strip().equals(before.get(each.getKey())));
    return changes;
  }

  private static MadeAgain again(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    return MadeAgain.of(
        job.state(), model.handbook(), changes(job, form), model.settings().units());
  }

  @Override
  public Content content(Model model) {
    AgainHeld held = (AgainHeld) model.held();
    MadeAgain again = again(model, held.open());
    // The earlier job teaches the next one, too.
    Handbook next = model.handbook().forJob("", List.of());
    Standing standing =
        Standing.ofTyped(again.wish(), again.begun(model.job().orElseThrow().state(), next), next);
    List<Part> comes =
        new AgainContent(
                model.settings().units(),
                JobPrices.of(model.job().orElseThrow().state(), model.handbook()))
            .of(again, standing);
    return Content.of("made again", new Beside(List.of(new Fields(held.open())), comes));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.KEEP);
  }

  @Override
  public List<Act> acts(Model model) {
    return List.of(Act.KEEP);
  }

  @Override
  public Turn act(Model model, Act act) {
    return Turn.to(model);
  }

  /** Page down and up turn over what it comes to. */
  @Override
  public Turn typed(Model model, Key key) {
    AgainHeld held = (AgainHeld) model.held();
    return Turn.to(model.with(new AgainHeld(held.open(), held.turned() + Turning.by(key))));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form named = textChanged ? named(model, form) : form;
    Form shown = textChanged ? named.withTroubles(troubles(model, named)) : form;
    Model next = model.with(new AgainHeld(shown, ((AgainHeld) model.held()).turned()));
    return textChanged ? Drafting.keep(next, named) : Turn.to(next);
  }

  /** What is wrong with what may differ; what carries over was right before. */
  private static Map<String, String> troubles(Model model, Form form) {
    Map<String, String> troubles = new LinkedHashMap<>();
    if (form.text(WishKeys.JOB).isEmpty()) {
      troubles.put(WishKeys.JOB, "Give the job a name, such as “Anna's bracelet, again”.");
    }
    OpenJob job = model.job().orElseThrow();
    if (!job.state().course().wish().isEmpty()) {
      MadeAgain again = again(model, form);
      Standing.ofTyped(again.wish(), again.begun(job.state(), model.handbook()), model.handbook())
          .counted()
          .saidIn(model.settings().units())
          .troubles()
          .forEach(
              (key, sentence) ->
                  troubles.putIfAbsent(
                      MadeAgain.ASKED.contains(key) ? key : WishKeys.WIRE, sentence));
    }
    return troubles;
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    Map<String, String> troubles = troubles(model, form);
    if (!troubles.isEmpty()) {
      Form told = form.withTroubles(troubles).atFirstTrouble();
      return Turn.to(model.with(new AgainHeld(told, ((AgainHeld) model.held()).turned())));
    }
    MadeAgain again = again(model, form);
    return Turn.with(
        model.told("Begun again from " + job.state().course().name() + "."),
        new Effect.BeginJob(form.text(WishKeys.JOB), again.facts(job.entries(), job.state())));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.goTo(model, PlaceId.ROUND);
  }
}
