package linkwright.coach.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Asking;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.keys.Act;
import linkwright.job.Again;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.quantity.Count;
import linkwright.quantity.Read;
import linkwright.quantity.UnitStyle;
import linkwright.routine.AfterFault;
import linkwright.routine.Remedy;
import linkwright.routine.Stage;
import linkwright.standing.JointCount;

/** Joints looked at: so many failed of so many, entered as a maker counts and kept by link. */
public final class JointsPlace implements Place {
  private static final String FAILED = "failed";
  private static final String OF = "of";
  private static final String ON = "on";
  private static final String WHY = "why";

  @Override
  public Content content(Model model) {
    return AtBench.of(model)
        .map(
            at ->
                Content.of(
                    "joints", new Fields(((JointsHeld) model.held()).open()), says(model, at)))
        .orElseGet(() -> Content.of("joints", Prose.says("No step is open.")));
  }

  private static Prose says(Model model, AtBench at) {
    int each = each(model, at);
    return Prose.aside(
        at.available()
            + (" " + at.piece().word(at.available()) + (at.available() == 1 ? " waits" : " wait"))
            + " here, with "
            + each
            + (each == 1 ? " joint each." : " joints each. One that failed fails its link."));
  }

  private static int each(Model model, AtBench at) {
    return JointCount.each(at.piece(), model.job().orElseThrow().standing());
  }

  @Override
  public Turn enter(Model model) {
    Optional<AtBench> at = AtBench.of(model).filter(AtBench::judges);
    return at.map(
            here -> Turn.to(model.with(new JointsHeld(Drafting.resumed(model, form(model, here))))))
        .orElseGet(() -> Turn.goTo(model, PlaceId.BENCH));
  }

  private static Form form(Model model, AtBench at) {
    List<Field> fields = new ArrayList<>();
    UnitStyle units = model.settings().units();
    fields.add(
        Field.of(FAILED, "failed", "", "joints that failed, 6; 0 if none did")
            .takes(Measure.NUMBER, units)
            .helped("Joints with light, a pinhole or flux in them. Their pieces go to the redos."));
    fields.add(
        Field.of(OF, "of", "", "joints that you looked at, 19")
            .takes(Measure.NUMBER, units)
            .helped("All joints that were looked at. Pieces looked at whole are through."));
    if (each(model, at) > 1) {
      fields.add(
          Field.of(ON, "on links", "", "how many links have one that failed")
              .takes(Measure.NUMBER, units)
              .helped("A link may have two that failed: so many links go back."));
    }
    fields.add(
        Field.choice(WHY, "why", "", "left and right go through them", reasons(at))
            .helped("What is seen. The cure of it is shown, and what failed is told by it."));
    return Form.of(Form.Purpose.JOINTS, "Joints looked at", "enter them", fields);
  }

  private static List<Remedy> remedies(AtBench at) {
    return at.step().wrong().stream().filter(remedy -> remedy.then() == AfterFault.REDO).toList();
  }

  private static List<String> reasons(AtBench at) {
    List<String> reasons =
        new ArrayList<>(remedies(at).stream().map(Remedy::reason).distinct().toList());
    reasons.removeIf(String::isEmpty);
    reasons.add("other");
    return reasons;
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
    return Turn.goTo(model, act);
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form shown = textChanged ? form.withTroubles(Map.of()) : form;
    Model next = model.with(new JointsHeld(shown));
    return textChanged ? Drafting.keep(next, shown) : Turn.to(next);
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Optional<AtBench> found = AtBench.of(model).filter(AtBench::judges);
    if (found.isEmpty()) {
      return Turn.goTo(
          model.trouble("Nothing is checked at the step that is open."), PlaceId.BENCH);
    }
    AtBench at = found.get();
    Map<String, String> troubles = new LinkedHashMap<>();
    Optional<Integer> of = count(form, OF, 1, troubles);
    Optional<Integer> failed = count(form, FAILED, 0, troubles);
    if (troubles.isEmpty() && failed.orElseThrow() > of.orElseThrow()) {
      troubles.put(FAILED, "Not more can fail than you looked at, " + of.get() + ".");
    }
    if (!troubles.isEmpty()) {
      return told(model, form, troubles);
    }
    JointCount joints = new JointCount(failed.orElseThrow(), of.orElseThrow(), each(model, at));
    if (joints.pieces() > at.available()) {
      troubles.put(
          OF,
          joints.of()
              + " joints are "
              + joints.pieces()
              + " "
              + at.piece().many()
              + ", and "
              + at.available()
              + " wait here.");
      return told(model, form, troubles);
    }
    int on = on(form, joints, troubles);
    if (!troubles.isEmpty()) {
      return told(model, form, troubles);
    }
    Map<String, String> questions =
        joints.over() == 0
            ? Map.of()
            : Map.of(
                OF,
                joints.of()
                    + " joints at "
                    + joints.each()
                    + " a link: one link was not looked at whole and stays?");
    Optional<Form> asking = Asking.first(form, questions);
    return asking.isPresent()
        ? Turn.to(model.with(new JointsHeld(asking.get())).trouble(Asking.sentence(questions)))
        : Turn.keep(model, facts(form, at, joints, on));
  }

  private static Turn told(Model model, Form form, Map<String, String> troubles) {
    return Turn.to(model.with(new JointsHeld(form.withTroubles(troubles).atFirstTrouble())));
  }

  private static Optional<Integer> count(
      Form form, String id, int least, Map<String, String> troubles) {
    Read<Integer> read = Count.read(form.text(id), least, Count.MOST);
    if (!read.isGood()) {
      troubles.put(
          id,
          id.equals(OF)
              ? "Give how many joints you looked at, such as 19."
              : "Give how many joints failed, such as 6; 0 if none did.");
    }
    return read.found();
  }

  /** How many pieces the failed joints are on; asked where that can be more than one number. */
  private static int on(Form form, JointCount joints, Map<String, String> troubles) {
    if (joints.fewestFailed() == joints.mostFailed()) {
      return joints.mostFailed();
    }
    Optional<Integer> on =
        Count.read(form.text(ON), joints.fewestFailed(), joints.mostFailed()).found();
    if (on.isEmpty()) {
      troubles.put(
          ON,
          joints.failed()
              + " failed joints are on "
              + joints.fewestFailed()
              + " to "
              + joints.mostFailed()
              + " links: give how many.");
    }
    return on.orElse(0);
  }

  private static List<Fact> facts(Form form, AtBench at, JointCount joints, int on) {
    String reason = form.text(WHY).isEmpty() ? "other" : form.text(WHY);
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new BenchFact.JointsChecked(
            at.piece(),
            joints.failed(),
            joints.of(),
            joints.failed() == 0 ? "" : reason,
            at.step().id()));
    if (on > 0) {
      Stage back =
          remedies(at).stream()
              .filter(
                  remedy -> remedy.reason().equals(reason) && !remedy.backTo().equals(Stage.NONE))
              .map(Remedy::backTo)
              .findFirst()
              .orElse(at.usualRedoStage());
      facts.add(
          new Fact.PiecesSentBack(
              at.piece(), on, at.stage(), back, at.fromRedo(), reason, Again.NOT_SAID, at.size()));
    }
    int good = joints.good(on);
    if (good > 0) {
      facts.add(
          new Fact.PiecesThrough(
              Map.of(at.piece(), good),
              at.stage(),
              at.fromRedo(),
              at.step().id(),
              at.size().isEmpty() ? Map.of() : Map.of(at.size(), good)));
    }
    return facts;
  }

  @Override
  public Turn settled(Model model) {
    return Drafting.entered(model.told("Joints entered."), ((JointsHeld) model.held()).open())
        .thenGoTo(PlaceId.BENCH);
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.goTo(model, PlaceId.BENCH);
  }
}
