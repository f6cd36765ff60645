package linkwright.coach.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.form.Amounts;
import linkwright.coach.form.Asking;
import linkwright.coach.form.Form;
import linkwright.coach.form.ShortageWords;
import linkwright.coach.form.WeighOutForm;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drafting.Drafting;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.kernel.undo.Undo;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Fact;
import linkwright.job.LotFact;
import linkwright.plan.ChainWish;
import linkwright.plan.LinksOfSize;
import linkwright.quantity.Count;
import linkwright.quantity.UnitStyle;
import linkwright.routine.PieceKind;
import linkwright.standing.StillToDo;
import linkwright.standing.WireStand;
import linkwright.standing.asked.Questions;

/** Wire: what came, what was cut and lost, what is short, and drawing it down. */
public final class WirePlace implements Place {
  @Override
  public Content content(Model model) {
    return WireContent.of((WireHeld) model.held(), model);
  }

  @Override
  public List<Act> allActs() {
    return List.of(
        Act.ADD_WIRE,
        Act.CUT,
        Act.DISCARD,
        Act.DRAW,
        Act.WEIGH_OUT,
        Act.TO_BENCH,
        Act.RETURN_WIRE,
        Act.TAKE_SOLDER,
        Act.MORE,
        Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts =
        new ArrayList<>(
            List.of(
                Act.ADD_WIRE,
                Act.CUT,
                Act.DISCARD,
                Act.DRAW,
                Act.WEIGH_OUT,
                Act.TO_BENCH,
                Act.UNDO));
    if (!model.handbook().drawer().lots().isEmpty()) {
      acts.add(Act.RETURN_WIRE);
    }
    if (!WireForms.solders(model).isEmpty()) {
      acts.add(Act.TAKE_SOLDER);
    }
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(screen(model)));
  }

  private static WireHeld screen(Model model) {
    OpenJob job = model.job().orElseThrow();
    Map<String, String> typed = job.drafts().getOrDefault("draw-down", Map.of());
    return new WireHeld(job.standing().wire(), drawn(model, typed), Optional.empty(), 0);
  }

  private static DrawDown drawn(Model model, Map<String, String> texts) {
    return WireForms.wish(model.job().orElseThrow())
        .map(wish -> DrawDown.of(texts, wish, model.settings().units()))
        .orElse(DrawDown.NOTHING);
  }

  @Override
  public Turn act(Model model, Act act) {
    return switch (act) {
      case ADD_WIRE -> open(model, WireForms.added(model));
      case CUT -> open(model, WireForms.cut(model));
      case DISCARD -> open(model, WireForms.discarded(model));
      case RETURN_WIRE -> open(model, WireForms.returned(model));
      case TAKE_SOLDER -> open(model, WireForms.soldered(model));
      case WEIGH_OUT -> open(model, WeighOutForm.of(model.settings().units()));
      case DRAW -> draw(model);
      case MORE, LESS ->
          Turn.to(
              model.with(
                  shown(model)
                      .turned(Turning.to(shown(model).turned(), act) - shown(model).turned())));
      case UNDO -> Undo.last(model);
      default -> Turn.goTo(model, act);
    };
  }

  private static Turn open(Model model, Form form) {
    boolean byWeight =
        form.purpose() == Form.Purpose.WEIGH_OUT || form.purpose() == Form.Purpose.TAKE_SOLDER;
    if (!byWeight && shown(model).stand().isEmpty()) {
      return Turn.to(
          model.trouble(
              model.job().orElseThrow().makesChain()
                  ? "The job has no plan yet: set it first, then wire can be counted."
                  : "Wire is counted for chains alone; "
                      + ActMention.of(Act.WEIGH_OUT)
                      + " weighs metal out, the reckoner draws wire down."));
    }
    Form resumed = Drafting.resumed(model, form);
    return Turn.to(model.with(shown(model).with(Optional.of(resumed))));
  }

  private static Turn draw(Model model) {
    double wanted = shown(model).stand().map(WireStand::shortMm).orElse(0.0);
    Turn opened = open(model, WireForms.drawnDown(model, wanted));
    return opened
        .model()
        .held()
        .form()
        .map(form -> Turn.to(worked(opened.model(), form)))
        .orElse(opened);
  }

  /** The form of drawing down with what it comes to so far. */
  private static Model worked(Model model, Form form) {
    DrawDown drawn = drawn(model, form.texts());
    Form told = form.withTroubles(drawn.troubles());
    return model.with(shown(model).with(Optional.of(told)).drawn(drawn));
  }

  private static WireHeld shown(Model model) {
    return (WireHeld) model.held();
  }

  /** Page down and up turn over what drawing down comes to. */
  @Override
  public Turn typed(Model model, Key key) {
    return Turn.to(model.with(shown(model).turned(Turning.by(key))));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    if (!textChanged) {
      Form fitted = WireForms.fitted(model, form);
      return Turn.to(model.with(shown(model).with(Optional.of(fitted))));
    }
    if (form.purpose() == Form.Purpose.DRAW_DOWN) {
      return Drafting.keep(worked(model, form), form);
    }
    Form told = form.withTroubles(troubles(model, form));
    return Drafting.keep(model.with(shown(model).with(Optional.of(told))), told);
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    if (form.purpose() == Form.Purpose.DRAW_DOWN) {
      return drawnDown(model, form);
    }
    Map<String, String> troubles = troubles(model, form);
    missing(form, troubles);
    Form told = form.withTroubles(troubles).atFirstTrouble();
    Model next = model.with(shown(model).with(Optional.of(told)));
    if (!troubles.isEmpty()) {
      return Turn.to(next);
    }
    Map<String, String> questions = questions(model, form);
    Optional<Form> asking = Asking.first(form, questions);
    return asking.isPresent()
        ? Turn.to(model.with(shown(model).with(asking)).trouble(Asking.sentence(questions)))
        : keep(next, form);
  }

  private static Map<String, String> questions(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    UnitStyle units = model.settings().units();
    return switch (form.purpose()) {
      case ADD_WIRE -> {
        List<Double> lengths =
            came(model, form).stream().map(fact -> ((Fact.WireAdded) fact).lengthMm()).toList();
        yield Questions.ofWire(lengths, job.standing(), units);
      }
      case CUT_WIRE ->
          Questions.ofCut(count(form).orElseThrow(), WireForms.piece(form), job.standing(), units);
      case WEIGH_OUT -> WeighOutForm.questions(form);
      default -> Map.of();
    };
  }

  private static Turn drawnDown(Model model, Form form) {
    Model worked = worked(model, form);
    WireHeld screen = shown(worked);
    if (screen.drawn().none()) {
      Form told = screen.form().orElse(form).atFirstTrouble();
      return Turn.to(worked.with(screen.with(Optional.of(told))));
    }
    return Turn.to(worked.with(screen.with(Optional.empty())));
  }

  private static void missing(Form form, Map<String, String> troubles) {
    Map<String, String> asked =
        switch (form.purpose()) {
          case ADD_WIRE -> Map.of("lengths", "Give what came, such as 2 m.");
          case CUT_WIRE -> Map.of("count", "Give how many were cut, such as 12.");
          case RETURN_WIRE ->
              form.text("mass").isEmpty()
                  ? Map.of("length", "Give the length that goes back, such as 60 mm, or its mass.")
                  : Map.of();
          case DISCARD_WIRE -> Map.of("length", "Give the length that is gone, such as 60 mm.");
          case TAKE_SOLDER -> Map.of("mass", "Give what you took, such as 1.2 g.");
          default -> Map.of("mass", "Give what was weighed out, such as 14.5 g.");
        };
    asked.forEach(
        (id, sentence) -> {
          if (form.text(id).isEmpty()) {
            troubles.put(id, sentence);
          }
        });
  }

  private static Map<String, String> troubles(Model model, Form form) {
    Map<String, String> troubles = new LinkedHashMap<>();
    Amounts amounts = new Amounts(form);
    WireForms.pieceTrouble(form).ifPresent(sentence -> troubles.put("piece", sentence));
    switch (form.purpose()) {
      case ADD_WIRE -> {
        ChainWish wish = WireForms.wish(model.job().orElseThrow()).orElseThrow();
        troubles.putAll(WireCame.troubles(form, wish, model.settings().units()));
        if (troubles.isEmpty()) {
          LotOfForm.wrong(model, form, wish).ifPresent(sentence -> troubles.put("lot", sentence));
        }
      }
      case CUT_WIRE -> {
        if (!form.text("count").isEmpty() && count(form).isEmpty()) {
          troubles.put(
              "count", "“" + form.text("count") + "” is no number of pieces. Write 12, say.");
        }
      }
      case DISCARD_WIRE -> troubles.putAll(amounts.troubles(List.of("length"), ""));
      case RETURN_WIRE -> troubles.putAll(LotOfForm.returned(model, form));
      default -> {
        troubles.putAll(amounts.massTroubles(List.of("mass")));
        if (form.purpose() == Form.Purpose.TAKE_SOLDER && troubles.isEmpty()) {
          LotOfForm.tooMuch(model, form).ifPresent(sentence -> troubles.put("mass", sentence));
        }
      }
    }
    return troubles;
  }

  private static Optional<Integer> count(Form form) {
    return Count.read(form.text("count"), 1, Count.MOST).found();
  }

  private static Turn keep(Model model, Form form) {
    OpenJob job = model.job().orElseThrow();
    PieceKind piece = WireForms.piece(form);
    return switch (form.purpose()) {
      case ADD_WIRE -> Turn.keep(model, came(model, form));
      case CUT_WIRE -> {
        int count = count(form).orElseThrow();
        Optional<LinksOfSize> size = WireForms.size(job, form);
        String name = size.map(LinksOfSize::name).orElse("");
        double each = job.standing().takesMm(piece, name);
        StillToDo left = job.standing().left().get(piece);
        boolean tooMany = left != null && count > left.of(name).canCut();
        Fact cut = new Fact.WireCut(piece, count, each, name);
        String lacking =
            tooMany
                ? ShortageWords.after(
                    job.standing(),
                    job.standingWith(cut, model.now(), model.handbook()),
                    piece,
                    name,
                    count)
                : "";
        Model told = lacking.isEmpty() ? model : model.trouble(lacking);
        yield Turn.keep(told, cut);
      }
      case DISCARD_WIRE -> discard(model, form, piece);
      case RETURN_WIRE ->
          LotOfForm.of(model, form)
              .map(back -> Turn.keep(model, back))
              .orElseGet(() -> discard(model, form, piece));
      case TAKE_SOLDER ->
          Turn.keep(
              model,
              new LotFact.StockTaken(
                  form.text("lot"),
                  PieceKind.NONE,
                  OptionalDouble.empty(),
                  new Amounts(form).grams("mass"),
                  ""));
      default ->
          Turn.keep(
              model,
              new Fact.MetalWeighedOut(
                  new Amounts(form).grams("mass").orElseThrow(), form.text("what")));
    };
  }

  private static Turn discard(Model model, Form form, PieceKind piece) {
    double gone = LotOfForm.wireMm(model, form);
    double left = model.job().orElseThrow().standing().stockLeft().leftMm(piece);
    if (gone > left) {
      String sentence =
          "By the book only "
              + model.settings().units().length(left)
              + " of that wire are on hand: enter what came first, or a shorter length.";
      String field = form.text("length").isEmpty() ? "mass" : "length";
      Form told = form.withTroubles(Map.of(field, sentence)).atFirstTrouble();
      return Turn.to(model.with(shown(model).with(Optional.of(told))));
    }
    return Turn.keep(
        model,
        form.purpose() == Form.Purpose.RETURN_WIRE
            ? new LotFact.StockReturned(
                form.text("lot"), piece, OptionalDouble.of(gone), OptionalDouble.empty(), "")
            : new Fact.WireDiscarded(piece, gone, form.text("why")));
  }

  private static List<Fact> came(Model model, Form form) {
    ChainWish wish = WireForms.wish(model.job().orElseThrow()).orElseThrow();
    return WireCame.facts(form, wish, model.handbook().drawer());
  }

  @Override
  public Turn settled(Model model) {
    WireHeld before = shown(model);
    Model next = model.with(screen(model));
    return before.form().map(form -> Drafting.entered(next, form)).orElse(Turn.to(next));
  }

  @Override
  public Turn formLeft(Model model) {
    return Turn.to(model.with(screen(model)));
  }
}
