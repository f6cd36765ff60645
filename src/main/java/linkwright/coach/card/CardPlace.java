package linkwright.coach.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.form.CardWords;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.JobCard;
import linkwright.quantity.Money;

/** The job card: what was agreed with the customer, written once and changed as it comes. */
public final class CardPlace implements Place {
  private static final String TITLE = "job card";

  @Override
  public Turn enter(Model model) {
    return shown(model, Optional.empty());
  }

  private static Turn shown(Model model, Optional<Form> form) {
    return Turn.to(model.with(new CardHeld(form, 0)));
  }

  @Override
  public Content content(Model model) {
    CardHeld held = (CardHeld) model.held();
    return held.form()
        .map(form -> Content.of(TITLE, new Fields(form)))
        .orElseGet(() -> new Content(TITLE, JobCardContent.of(model)));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.WRITE_CARD, Act.TO_WEIGH_IN, Act.TO_BENCH, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.WRITE_CARD, Act.TO_WEIGH_IN, Act.TO_BENCH));
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    return switch (act) {
      case WRITE_CARD -> shown(model, Optional.of(Drafting.resumed(model, form(model))));
      case MORE, LESS -> {
        int turned = Turning.to(((CardHeld) model.held()).turned(), act);
        yield Turn.to(model.with(new CardHeld(Optional.empty(), turned)));
      }
      default -> Turn.goTo(model, act);
    };
  }

  private static Form form(Model model) {
    JobCard card = model.job().orElseThrow().state().card();
    List<Field> fields =
        JobCard.KEYS.stream()
            .map(
                key ->
                    Field.of(key, CardWords.label(key), card.of(key), hint(key)).helped(help(key)))
            .toList();
    return Form.of(Form.Purpose.CARD, "The job card", "keep it", fields);
  }

  private static String help(String key) {
    return switch (key) {
      case JobCard.CUSTOMER -> "For whom. It stays in this book and goes into no file for others.";
      case JobCard.PROMISED -> "When it is to be ready. The tray tells how many days are left.";
      case JobCard.QUOTE, JobCard.DEPOSIT -> "What is to be paid follows from price and deposit.";
      case JobCard.OWN_METAL -> "What was handed over, so that it can be given back or credited.";
      case JobCard.SOLDER -> "Whoever repairs it must know where each solder is.";
      case JobCard.CLASP -> "The clasp as it was agreed. The plan's own stands in the plan.";
      default -> "What is struck into it. With none the step of the mark is left out.";
    };
  }

  private static String hint(String key) {
    return switch (key) {
      case JobCard.CUSTOMER -> "who it is for, in your own words";
      case JobCard.PROMISED -> "the day: 2026-12-20";
      case JobCard.QUOTE -> "the price you named: 180 EUR";
      case JobCard.DEPOSIT -> "paid ahead: 60 EUR";
      case JobCard.OWN_METAL -> "what the customer brought: old ring, 750, 4.2 g";
      case JobCard.SOLDER -> "which is in it: hard, extra easy at the clasp";
      case JobCard.CLASP -> "the clasp: box clasp, 14 mm";
      default -> "to be struck: 925 and your own; none: its step is left out";
    };
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form seen = textChanged ? form.withTroubles(troubles(form)) : form;
    Model next = model.with(new CardHeld(Optional.of(seen), 0));
    return textChanged ? Drafting.keep(next, seen) : Turn.to(next);
  }

  private static Map<String, String> troubles(Form form) {
    Map<String, String> troubles = new LinkedHashMap<>();
    if (!form.text(JobCard.PROMISED).isEmpty()) {
      JobCard.readDay(form.text(JobCard.PROMISED))
          .problem()
          .ifPresent(sentence -> troubles.put(JobCard.PROMISED, sentence));
    }
    for (String key : List.of(JobCard.QUOTE, JobCard.DEPOSIT)) {
      if (!form.text(key).isEmpty()) {
        Money.read(form.text(key)).problem().ifPresent(sentence -> troubles.put(key, sentence));
      }
    }
    return troubles;
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Map<String, String> troubles = troubles(form);
    if (!troubles.isEmpty()) {
      return shown(model, Optional.of(form.withTroubles(troubles).atFirstTrouble()));
    }
    Map<String, String> said = new LinkedHashMap<>();
    for (String key : JobCard.KEYS) {
      if (!form.text(key).isEmpty()) {
        said.put(key, form.text(key));
      }
    }
    Model next = model.with(new CardHeld(Optional.of(form), 0));
    return said.equals(model.job().orElseThrow().state().card().said())
        ? left(next.told("The card is as it was."))
        : Turn.keep(next, new BenchFact.CardSet(said));
  }

  private static Turn left(Model model) {
    return shown(model, Optional.empty());
  }

  @Override
  public Turn settled(Model model) {
    return ((CardHeld) model.held())
        .form()
        .map(
            form -> {
              Turn entered = Drafting.entered(model, form);
              return new Turn(
                  entered.model().with(new CardHeld(Optional.empty(), 0)),
                  entered.effects(),
                  Optional.empty());
            })
        .orElseGet(() -> Turn.to(model));
  }

  @Override
  public Turn formLeft(Model model) {
    return left(model);
  }
}
