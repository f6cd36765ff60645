package linkwright.coach.persons;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Prose;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.Fact;
import linkwright.lesson.Roster;
import linkwright.quantity.Nearest;

/** Who works at this machine. Another one's sitting begins as the one before ends. */
public final class PersonsPlace implements Place {
  private static final String WHO = "who";

  @Override
  public Turn enter(Model model) {
    if (model.job().map(OpenJob::lookOnly).orElse(true)) {
      return Turn.to(
          model.told("Who works is entered in a job's book: open one that is not being written."));
    }
    return Turn.to(model.with(PersonsHeld.of(Drafting.resumed(model, form(model)), "")));
  }

  private static Form form(Model model) {
    String known = String.join(", ", model.handbook().own().persons());
    return Form.of(
        Form.Purpose.PERSON,
        "Who works now",
        "begin her sitting",
        List.of(
            Field.of(WHO, "name", "", known.isEmpty() ? "as the book is to say" : known)
                .helped("What is entered from now on is hers: counts, hours, what she learns.")));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.KEEP, Act.TO_BENCH);
  }

  @Override
  public List<Act> acts(Model model) {
    return List.of(Act.TO_BENCH);
  }

  @Override
  public Turn act(Model model, Act act) {
    return Turn.goTo(model, act);
  }

  @Override
  public Content content(Model model) {
    String now =
        model.person().isEmpty()
            ? "Nobody said so far."
            : "Now: " + name(model, model.person()) + ".";
    Map<String, String> names = model.learning().roster().names();
    String students = names.isEmpty() ? "" : "Students: " + String.join(", ", names.values()) + ".";
    return ((PersonsHeld) model.held())
        .form()
        .map(
            form ->
                Content.of("who works", Prose.says(now), Prose.aside(students), new Fields(form)))
        .orElseGet(() -> Content.of("who works", Prose.says(now)));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form shown = textChanged ? form.withTroubles(Map.of()) : form;
    Model next = model.with(PersonsHeld.of(shown, asked(model)));
    return textChanged ? Drafting.keep(next, shown) : Turn.to(next);
  }

  /** The one student whose name begins so. */
  private static Optional<String> student(Model model, String typed) {
    List<String> ids =
        model.learning().roster().names().entrySet().stream()
            .filter(
                each ->
                    each.getValue()
                        .toLowerCase(Locale.ROOT)
                        .startsWith(typed.toLowerCase(Locale.ROOT)))
            .map(Map.Entry::getKey)
            .toList();
    return ids.size() == 1 ? Optional.of(ids.get(0)) : Optional.empty();
  }

  private static String asked(Model model) {
    return model.held() instanceof PersonsHeld held ? held.asked() : "";
  }

  /** A few letters do for a name that is known. */
  @Override
  public Turn confirmed(Model model, Form form) {
    String typed = form.text(WHO).strip();
    if (typed.isEmpty()) {
      Form told = form.withTroubles(Map.of(WHO, "Say who, in her own words.")).atFirstTrouble();
      return Turn.to(model.with(PersonsHeld.of(told, "")));
    }
    List<String> known =
        model.handbook().own().persons().stream()
            .filter(
                name -> name.toLowerCase(Locale.ROOT).startsWith(typed.toLowerCase(Locale.ROOT)))
            .toList();
    String person =
        model
            .learning()
            .roster()
            .find(typed)
            .or(() -> student(model, typed))
            .orElseGet(() -> known.size() == 1 ? known.get(0) : typed);
    if (isNobodyKnown(model, person) && !asked(model).equals(person)) {
      Form told = form.withTroubles(Map.of(WHO, noStudent(model, person))).atFirstTrouble();
      return Turn.to(model.with(PersonsHeld.of(told, person)));
    }
    boolean sits = model.job().orElseThrow().state().times().sittingAt(model.now());
    List<Fact> facts = new ArrayList<>();
    if (sits) {
      facts.add(new BenchFact.SittingEnded(model.person()));
    }
    facts.add(new Fact.SittingStarted(person));
    return Turn.keep(
        model
            .with(new PersonsHeld(Optional.empty(), ""))
            .told(
                lit(model) + "At the bench: “" + name(model, person) + "”." + before(model, sits)),
        facts);
  }

  /** Whose sitting ended with it. */
  private static String before(Model model, boolean sits) {
    if (!sits) {
      return "";
    }
    return model.person().isEmpty()
        ? " The sitting before it is ended."
        : " The sitting of “" + name(model, model.person()) + "” is ended.";
  }

  /** Whoever takes over takes the flame over with it: it stands first, for the rest may be cut. */
  private static String lit(Model model) {
    return model.hotWork().lit().isPresent()
        ? "A flame is lit: look together, {do:to-hot-work} asks. "
        : "";
  }

  /** Where there are students, a name that is none of theirs may be one that was mistyped. */
  private static boolean isNobodyKnown(Model model, String person) {
    Map<String, String> names = model.learning().roster().names();
    return !names.isEmpty()
        && !names.containsKey(person)
        && !person.equals(Roster.OWN)
        && !model.handbook().own().persons().contains(person)
        && !model.job().orElseThrow().cautionsMet().last().containsKey(person);
  }

  private static String noStudent(Model model, String person) {
    return "No student is called “"
        + person
        + "”."
        + Nearest.of(person, model.learning().roster().names().values())
            .map(near -> " Is " + near + " meant?")
            .orElse("")
        + " As typed the name stands in the job's book, for all who read it: {do:keep} once more"
        + " enters it so.";
  }

  /** A student is an id in the book, and is called by her name. */
  private static String name(Model model, String person) {
    return model.learning().roster().name(person);
  }

  @Override
  public Turn settled(Model model) {
    return Drafting.entered(model, form(model)).thenGoTo(PlaceId.BENCH);
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.goTo(model, PlaceId.BENCH);
  }
}
