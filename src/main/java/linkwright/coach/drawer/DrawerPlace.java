package linkwright.coach.drawer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import linkwright.coach.content.Content;
import linkwright.coach.content.Fields;
import linkwright.coach.content.Part;
import linkwright.coach.form.Amounts;
import linkwright.coach.form.Asking;
import linkwright.coach.form.Form;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.DraftWords;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.drawer.Drawer;
import linkwright.drawer.Lot;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.quantity.Length;
import linkwright.quantity.UnitStyle;
import linkwright.reference.Reference;
import linkwright.standing.stock.LotQuestions;

/** The drawer: what came is entered, and a lot is set right by one weight. */
public final class DrawerPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(new DrawerHeld(0, Optional.empty(), 0)));
  }

  @Override
  public Content content(Model model) {
    DrawerHeld held = (DrawerHeld) model.held();
    return held.form()
        .map(form -> Content.of("the drawer", new Fields(form)))
        .orElseGet(
            () ->
                new Content(
                    "the drawer",
                    Stream.of(
                            DraftWords.here(model, Form.Purpose.LOT_CAME, Act.LOT_CAME),
                            ofChosen(model, held),
                            lots(model, held))
                        .flatMap(List::stream)
                        .toList()));
  }

  /** What waits of the chosen lot. */
  private static List<Part> ofChosen(Model model, DrawerHeld held) {
    List<Lot> lots = drawer(model).lots();
    if (lots.isEmpty()) {
      return List.of();
    }
    Lot lot = lots.get(Math.min(lots.size() - 1, held.at()));
    UnitStyle units = model.settings().units();
    return Stream.of(
            DraftWords.here(model, DrawerForms.counted(lot, units), Act.LOT_COUNTED),
            DraftWords.here(model, DrawerForms.drawn(lot, units), Act.DRAW))
        .flatMap(List::stream)
        .toList();
  }

  private static List<Part> lots(Model model, DrawerHeld held) {
    return new DrawerContent(model.settings().units())
        .of(drawer(model), held.at(), model.tray(), model.handbook().reference());
  }

  private static Drawer drawer(Model model) {
    return model.handbook().drawer();
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.LOT_CAME,
        Act.THROW_AWAY,
        Act.LOT_COUNTED,
        Act.DRAW,
        Act.UP,
        Act.DOWN,
        Act.TO_EXCHANGE,
        Act.TO_TRAY,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.LOT_CAME));
    if (Drafting.waits(model, Form.Purpose.LOT_CAME)) {
      acts.add(Act.THROW_AWAY);
    }
    if (!drawer(model).lots().isEmpty()) {
      acts.addAll(List.of(Act.LOT_COUNTED, Act.DRAW, Act.UP, Act.DOWN));
    }
    acts.addAll(List.of(Act.TO_EXCHANGE, Act.TO_TRAY));
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    DrawerHeld held = (DrawerHeld) model.held();
    int last = Math.max(0, drawer(model).lots().size() - 1);
    return switch (act) {
      case UP -> Turn.to(model.with(new DrawerHeld(Math.max(0, held.at() - 1), held.form(), 0)));
      case DOWN ->
          Turn.to(model.with(new DrawerHeld(Math.min(last, held.at() + 1), held.form(), 0)));
      case LOT_CAME -> open(model, DrawerForms.came(model));
      case THROW_AWAY -> Drafting.thrownAway(model, Form.Purpose.LOT_CAME);
      case LOT_COUNTED ->
          open(
              model,
              DrawerForms.counted(
                  drawer(model).lots().get(Math.min(last, held.at())), model.settings().units()));
      case DRAW -> draw(model, drawer(model).lots().get(Math.min(last, held.at())));
      case MORE, LESS ->
          Turn.to(
              model.with(
                  new DrawerHeld(held.at(), Optional.empty(), Turning.to(held.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  private static Turn open(Model model, Form form) {
    return Turn.to(
        model.with(new DrawerHeld(((DrawerHeld) model.held()).at(), Optional.of(form), 0)));
  }

  /**
   * Only wire is drawn; what it becomes is another lot, and as many grams leave the one as come.
   */
  private static Turn draw(Model model, Lot lot) {
    return lot.lengthMm().isEmpty()
        ? Turn.to(model.trouble(lot.id() + " is no wire: only wire is drawn down."))
        : open(model, DrawerForms.drawn(lot, model.settings().units()));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    return open(model, textChanged ? form.withTroubles(troubles(model, form)) : form);
  }

  private static Map<String, String> troubles(Model model, Form form) {
    Amounts amounts = new Amounts(form);
    Map<String, String> troubles = new LinkedHashMap<>();
    troubles.putAll(amounts.massTroubles(List.of("mass")));
    troubles.putAll(amounts.troubles(List.of("length"), ""));
    if (!form.text("wire").isEmpty()) {
      Length.readWire(form.text("wire"))
          .problem()
          .ifPresent(sentence -> troubles.put("wire", sentence));
    }
    if (form.purpose() == Form.Purpose.DRAW_LOT
        && troubles.isEmpty()
        && !form.text("wire").isEmpty()) {
      drawn(model, form, troubles);
    }
    return troubles;
  }

  /** Wire comes out thinner and no heavier than it went in. */
  private static void drawn(Model model, Form form, Map<String, String> troubles) {
    Optional<Lot> from = LotQuestions.lot(form.text("lot"), drawer(model));
    if (from.isEmpty()) {
      troubles.put("lot", "There is no lot “" + form.text("lot") + "” in the drawer.");
      return;
    }
    double was = from.get().wireMm().orElse(0);
    if (!from.get().isThickerThan(Length.readWire(form.text("wire")).orThrow().mm())) {
      troubles.put(
          "wire",
          "Drawn wire is thinner than it was: "
              + from.get().id()
              + " is "
              + model.settings().units().wire(was)
              + ".");
      return;
    }
    Lot gone =
        drawer(model)
            .after(
                (LotFact.LotTurned) fact(form, model.handbook().reference()),
                model.handbook().reference());
    if (gone.lengthMm().orElse(0) < -1) {
      troubles.put(
          form.text("length").isEmpty() ? "mass" : "length",
          "That is more metal than is left of "
              + from.get().id()
              + " by the books: weigh it first.");
    }
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    Map<String, String> troubles = troubles(model, form);
    if (form.text("lot").isEmpty()) {
      troubles.put("lot", "Give the lot a name, such as silver 0.9 March.");
    }
    if (form.text("mass").isEmpty() && form.text("length").isEmpty()) {
      troubles.put("mass", "Give its mass or its length, such as 20 g.");
    }
    if (form.purpose() == Form.Purpose.DRAW_LOT) {
      Map.of(
              "into", "Give the new lot a name, such as silver 0.8 April.",
              "wire", "Give its thickness now, such as 0.8 mm.")
          .forEach(
              (id, sentence) -> {
                if (form.text(id).isEmpty()) {
                  troubles.put(id, sentence);
                }
              });
    }
    Fact fact = fact(form, model.handbook().reference());
    if (troubles.isEmpty()) {
      troubles.putAll(wrong(model, fact));
    }
    if (!troubles.isEmpty()) {
      return open(model, form.withTroubles(troubles).atFirstTrouble());
    }
    Map<String, String> questions = questions(model, fact);
    return Asking.first(form, questions)
        .map(asking -> open(model.trouble(Asking.sentence(questions)), asking))
        .orElseGet(() -> Turn.with(model, new Effect.KeepInDrawer(List.of(fact))));
  }

  private static Map<String, String> wrong(Model model, Fact fact) {
    UnitStyle units = model.settings().units();
    if (fact instanceof LotFact.LotArrived came) {
      return LotQuestions.wrong(came, drawer(model), units);
    }
    String name = fact instanceof LotFact.LotCounted counted ? counted.lot() : "";
    Optional<Lot> lot = LotQuestions.lot(name, drawer(model));
    return fact instanceof LotFact.LotCounted counted
        ? lot.map(of -> LotQuestions.wrong(counted, of))
            .orElseGet(() -> Map.of("lot", "There is no lot “" + name + "” in the drawer."))
        : Map.of();
  }

  private static Map<String, String> questions(Model model, Fact fact) {
    UnitStyle units = model.settings().units();
    Reference reference = model.handbook().reference();
    if (fact instanceof LotFact.LotArrived came) {
      return LotQuestions.ofCame(came, reference, units);
    }
    if (fact instanceof LotFact.LotCounted counted) {
      return LotQuestions.lot(counted.lot(), drawer(model))
          .map(lot -> LotQuestions.ofCounted(counted, lot, reference, units))
          .orElse(Map.of());
    }
    return fact instanceof LotFact.LotTurned turned
        ? LotQuestions.lot(turned.lot(), drawer(model))
            .map(lot -> LotQuestions.ofTurned(turned, lot, reference, units))
            .orElse(Map.of())
        : Map.of();
  }

  private static Fact fact(Form form, Reference reference) {
    Amounts amounts = new Amounts(form);
    if (form.purpose() == Form.Purpose.LOT_COUNTED) {
      return new LotFact.LotCounted(
          form.text("lot"), amounts.mm("length"), amounts.grams("mass"), "");
    }
    OptionalDouble wire =
        form.text("wire").isEmpty() || !Length.readWire(form.text("wire")).isGood()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Length.readWire(form.text("wire")).orThrow().mm());
    if (form.purpose() == Form.Purpose.DRAW_LOT) {
      return new LotFact.LotTurned(
          form.text("lot"),
          form.text("into"),
          wire,
          amounts.mm("length"),
          amounts.grams("mass"),
          "");
    }
    return new LotFact.LotArrived(
        form.text("lot"),
        what(form.text("metal"), wire, reference),
        form.text("metal"),
        wire,
        form.text("temper"),
        form.text("batch"),
        amounts.mm("length"),
        amounts.grams("mass"),
        "");
  }

  private static String what(String metal, OptionalDouble wire, Reference reference) {
    return reference.metal(metal).found().isEmpty() && reference.solder(metal).isGood()
        ? "solder"
        : wire.isPresent() ? "wire" : "metal";
  }

  @Override
  public Turn settled(Model model) {
    return Turn.to(
        model.with(new DrawerHeld(((DrawerHeld) model.held()).at(), Optional.empty(), 0)));
  }

  @Override
  public Turn formLeft(Model model) {
    return settled(model);
  }

  @Override
  public Turn row(Model model, int row) {
    return Turn.to(model.with(new DrawerHeld(Math.max(0, row), Optional.empty(), 0)));
  }
}
