package linkwright.coach.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import linkwright.coach.content.Content;
import linkwright.coach.form.Amounts;
import linkwright.coach.form.Asking;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.form.PriceWords;
import linkwright.coach.form.WeighOutForm;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.TypedBefore;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.job.Accounts;
import linkwright.job.Fact;
import linkwright.job.JobState;
import linkwright.job.PriceList;
import linkwright.quantity.Decimals;
import linkwright.quantity.UnitStyle;
import linkwright.standing.ClosedFigures;
import linkwright.standing.JobPrices;
import linkwright.standing.Standing;
import linkwright.standing.asked.Questions;

/** Weighing in, the price, and closing the job. */
public final class WeighPlace implements Place {
  @Override
  public Content content(Model model) {
    return WeighContent.of(model, (WeighHeld) model.held());
  }

  private static final List<String> MASSES =
      List.of("chain", "wire", "clean", "soldered", "filings", "sweeps");

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.WEIGH,
        Act.WEIGH_OUT,
        Act.PRICE,
        Act.HOURS,
        Act.CLOSE,
        Act.KEEP_FOR_ALL,
        Act.REOPEN,
        Act.MAKE_AGAIN,
        Act.TO_BENCH,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    // Nothing of a closed job is weighed or priced: its figures stay until it is opened again.
    List<Act> acts =
        new ArrayList<>(
            closed(model)
                ? List.of(Act.REOPEN, Act.MAKE_AGAIN)
                : List.of(Act.WEIGH, Act.CLOSE, Act.WEIGH_OUT, Act.PRICE, Act.HOURS));
    if (TypedBefore.any(model)) {
      acts.add(Act.KEEP_FOR_ALL);
    }
    acts.addAll(List.of(Act.MORE, Act.LESS, Act.TO_BENCH, Act.UNDO));
    acts.add(closed(model) ? Act.CLOSE : Act.REOPEN);
    return acts;
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new WeighHeld(Optional.empty())));
  }

  @Override
  public Turn act(Model model, Act act) {
    return switch (act) {
      case WEIGH -> open(model, weighIn(model));
      case WEIGH_OUT -> open(model, WeighOutForm.of(model.settings().units()));
      case PRICE -> open(model, prices(model));
      case HOURS -> open(model, HoursForm.of(model));
      case CLOSE -> close(model);
      case KEEP_FOR_ALL -> TypedBefore.keep(model);
      case REOPEN ->
          closed(model)
              ? Turn.keep(model.told("The job is open again."), new Fact.JobReopened(""))
              : Turn.to(model.told("The job is open."));
      case MORE, LESS -> {
        int turned = Turning.to(((WeighHeld) model.held()).turned(), act);
        yield Turn.to(model.with(new WeighHeld(Optional.empty(), turned)));
      }
      case UNDO -> Undo.last(model);
      default -> Turn.goTo(model, act);
    };
  }

  private static boolean closed(Model model) {
    return model.job().orElseThrow().state().course().closed();
  }

  private static Turn open(Model model, Form form) {
    return Turn.to(model.with(new WeighHeld(Optional.of(Drafting.resumed(model, form)))));
  }

  private static Form weighIn(Model model) {
    Fact.WeighedIn last = model.job().orElseThrow().state().accounts().weighedIn();
    boolean chain = model.job().orElseThrow().makesChain();
    UnitStyle units = model.settings().units();
    return Form.of(
        Form.Purpose.WEIGH_IN,
        "Weigh and measure what came of it",
        "weigh in",
        List.of(
            mass(
                "chain",
                chain ? "chain" : "pieces",
                chain ? "finished, with its clasp, {g:9.2}" : "all that were made, {g:2.1}",
                last.chainG(),
                units),
            Field.of(
                    "length",
                    "length",
                    last.lengthMm().isPresent() ? units.length(last.lengthMm().getAsDouble()) : "",
                    chain
                        ? "laid straight, from inside end to inside end, {mm:450}"
                        : "of one, where it has a length",
                    Measure.LENGTH,
                    units)
                .helped(
                    chain
                        ? "What the chain measures. It is set against the wish and the plan."
                        : "What one of them measures. It stands in the book beside the weight."),
            mass(
                "wire",
                "wire returned",
                "uncut and offcuts worth keeping",
                last.wireReturnedG(),
                units),
            mass(
                "clean",
                "clean scrap",
                "no solder on it: it may go into the ingot",
                last.cleanScrapG(),
                units),
            mass("soldered", "soldered scrap", "not into the ingot", last.solderedScrapG(), units),
            mass("filings", "filings", "lemel from filing and sawing", last.filingsG(), units),
            mass("sweeps", "sweeps", "from bench and floor", last.sweepsG(), units)));
  }

  private static Field mass(
      String id, String label, String hint, OptionalDouble last, UnitStyle units) {
    String text = last.isPresent() ? units.mass(last.getAsDouble()) : "";
    return Field.of(id, label, text, hint, Measure.MASS, units)
        .helped("What the scale says. All of it is set against what was weighed out.");
  }

  private static Form prices(Model model) {
    Accounts accounts = JobPrices.of(model.job().orElseThrow().state(), model.handbook());
    Map<String, Double> known = accounts.prices();
    List<Field> fields = new ArrayList<>();
    fields.add(
        Field.of("currency", "money in", accounts.currency(), "what you write for it, EUR")
            .helped("It stands behind every price of this job."));
    for (String name : PriceList.NAMES) {
      String text =
          !known.containsKey(name)
              ? ""
              : PriceWords.isShare(name)
                  ? Decimals.percent(known.get(name), 4)
                  : PriceWords.plain(known.get(name));
      Measure measure = PriceWords.isShare(name) ? Measure.SHARE : Measure.NUMBER;
      fields.add(
          Field.of(name, PriceWords.label(name), text, PriceWords.hint(name))
              .takes(measure, model.settings().units())
              .helped(PriceWords.help(name)));
    }
    return Form.of(Form.Purpose.PRICES, "Your own figures", "keep them", fields);
  }

  private static Turn close(Model model) {
    if (closed(model)) {
      return Turn.to(model.told("This job is closed already."));
    }
    OpenJob job = model.job().orElseThrow();
    // What is typed goes on behind it, as a sentence of its own.
    String learnt =
        NextTime.of(job, model.settings().units()).stream()
            .map(sentence -> sentence + " ")
            .collect(Collectors.joining());
    return open(
        model,
        Form.of(
            Form.Purpose.CLOSE,
            "Close the job",
            "close it",
            List.of(
                Field.of("next", "next time", learnt, "what to do differently")
                    .helped("Whoever makes it again reads this first."))));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    Form shown = textChanged ? form.withTroubles(troubles(form)) : form;
    Model next = model.with(new WeighHeld(Optional.of(shown)));
    return textChanged ? Drafting.keep(next, form) : Turn.to(next);
  }

  private static Map<String, String> troubles(Form form) {
    Amounts amounts = new Amounts(form);
    Map<String, String> troubles = new LinkedHashMap<>();
    switch (form.purpose()) {
      case WEIGH_IN -> {
        troubles.putAll(amounts.massTroubles(MASSES));
        troubles.putAll(amounts.troubles(List.of("length"), ""));
      }
      case WEIGH_OUT -> troubles.putAll(amounts.massTroubles(List.of("mass")));
      case PRICES -> troubles.putAll(PriceWords.troubles(form));
      case HOURS -> troubles.putAll(HoursForm.troubles(form, false));
      default -> {}
    }
    return troubles;
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Map<String, String> troubles = troubles(form);
    if (form.purpose() == Form.Purpose.WEIGH_OUT && form.text("mass").isEmpty()) {
      troubles.put("mass", "Give what was weighed out, such as 14.5 g.");
    }
    if (form.purpose() == Form.Purpose.WEIGH_IN && form.text("chain").isEmpty()) {
      troubles.put(
          "chain",
          model.job().orElseThrow().makesChain()
              ? "Give what the chain weighs, such as 9.2 g."
              : "Give what the pieces weigh together, such as 2.1 g.");
    }
    if (form.purpose() == Form.Purpose.HOURS) {
      troubles.putAll(HoursForm.troubles(form, true));
    }
    if (!troubles.isEmpty()) {
      Form told = form.withTroubles(troubles).atFirstTrouble();
      return Turn.to(model.with(new WeighHeld(Optional.of(told))));
    }
    Map<String, String> questions = questions(model, form);
    Optional<Form> asking = Asking.first(form, questions);
    return asking.isPresent()
        ? Turn.to(model.with(new WeighHeld(asking)).trouble(Asking.sentence(form, questions)))
        : Turn.keep(model, facts(model, form));
  }

  private static Map<String, String> questions(Model model, Form form) {
    if (form.purpose() == Form.Purpose.CLOSE) {
      return WorkUndone.questions(model);
    }
    if (form.purpose() == Form.Purpose.WEIGH_OUT) {
      return WeighOutForm.questions(form);
    }
    Standing standing = model.job().orElseThrow().standing();
    return fact(model, form) instanceof Fact.WeighedIn in
        ? Questions.ofWeighing(in, standing, model.settings().units())
        : Map.of();
  }

  /** What a job is closed with stays: her bench's prices go into its book before. */
  private static List<Fact> facts(Model model, Form form) {
    JobState state = model.job().orElseThrow().state();
    if (form.purpose() == Form.Purpose.CLOSE && JobPrices.fromBench(state, model.handbook())) {
      Accounts accounts = JobPrices.of(state, model.handbook());
      return List.of(new Fact.PricesSet(accounts.prices(), accounts.currency()), fact(model, form));
    }
    return List.of(fact(model, form));
  }

  private static Fact fact(Model model, Form form) {
    Amounts amounts = new Amounts(form);
    return switch (form.purpose()) {
      case WEIGH_OUT ->
          new Fact.MetalWeighedOut(amounts.grams("mass").orElseThrow(), form.text("what"));
      case HOURS -> HoursForm.fact(model, form);
      case PRICES -> new Fact.PricesSet(PriceWords.prices(form), form.text("currency"));
      case CLOSE ->
          new Fact.JobClosed(
              form.text("next").strip(),
              ClosedFigures.of(
                  model.job().orElseThrow().state(),
                  model.job().orElseThrow().standing(),
                  model.handbook()));
      default ->
          new Fact.WeighedIn(
              amounts.grams("chain"),
              amounts.mm("length"),
              amounts.grams("wire"),
              amounts.grams("clean"),
              amounts.grams("soldered"),
              amounts.grams("filings"),
              amounts.grams("sweeps"));
    };
  }

  @Override
  public Turn settled(Model model) {
    Model next = model.with(new WeighHeld(Optional.empty()));
    return model.held().form().map(form -> Drafting.entered(next, form)).orElse(Turn.to(next));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(new WeighHeld(Optional.empty())));
  }
}
