package linkwright.coach.reckoner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.form.AskMeasure;
import linkwright.coach.form.Choosing;
import linkwright.coach.form.Field;
import linkwright.coach.form.Form;
import linkwright.coach.form.Measure;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.Fact;
import linkwright.quantity.UnitStyle;
import linkwright.reckon.Ask;
import linkwright.reckon.OwnAnswers;
import linkwright.reckon.Reckoner;
import linkwright.reckon.Reckoning;
import linkwright.reckon.Sum;
import linkwright.routine.TradeWords;

/** The reckoner: a sum is chosen, its form filled, and what it comes to shown while typing. */
public final class ReckonPlace implements Place {
  @Override
  public Content content(Model model) {
    return ReckonContent.of((ReckonerHeld) model.held(), model);
  }

  private static final String DRAFT = "reckon-";

  @Override
  public List<Act> allActs() {
    return List.of(Act.CHOOSE, Act.UP, Act.DOWN, Act.TO_TRAY, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.CHOOSE, Act.UP, Act.DOWN));
    if (model.job().isEmpty()) {
      acts.add(Act.TO_TRAY);
    }
    return Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    ReckonerHeld screen = (ReckonerHeld) model.held();
    return switch (act) {
      case UP -> Turn.to(model.with(list(screen, screen.at() - 1)));
      case DOWN -> Turn.to(model.with(list(screen, screen.at() + 1)));
      case MORE, LESS ->
          Turn.to(model.with(screen.turned(Turning.to(screen.turned(), act) - screen.turned())));
      case CHOOSE -> Turn.to(model.with(opened(model, screen)));
      case TO_TRAY -> Turn.goTo(model, PlaceId.TRAY);
      default -> Turn.goTo(model, act);
    };
  }

  @Override
  public Turn enterAt(Model model, String id) {
    List<String> ids = Reckoner.sums().stream().map(Sum::id).toList();
    ReckonerHeld list = ReckonerHeld.list(Math.max(0, ids.indexOf(id)), Map.of());
    return Turn.to(model.with(opened(model, list)));
  }

  /** Opens the reckoner at its first sum. */
  @Override
  public Turn enter(Model model) {
    return Turn.to(model.with(ReckonerHeld.list(0, Map.of())));
  }

  private static ReckonerHeld list(ReckonerHeld screen, int wanted) {
    int at = Math.max(0, Math.min(Reckoner.sums().size() - 1, wanted));
    return ReckonerHeld.list(at, screen.typed());
  }

  private static Sum sum(ReckonerHeld screen) {
    return Reckoner.sums().get(screen.at());
  }

  private static ReckonerHeld opened(Model model, ReckonerHeld screen) {
    Sum sum = sum(screen);
    List<Field> fields = new ArrayList<>();
    for (Ask ask : sum.asks()) {
      if (ask.kind() != Ask.Kind.FILE) {
        fields.add(field(model, ask).helped(JobWords.tradeWords(model).show(sum.says())));
      }
    }
    Map<String, String> texts = new LinkedHashMap<>(ReckonFill.of(model, sum.id()));
    model
        .job()
        .flatMap(job -> Optional.ofNullable(job.drafts().get(DRAFT + sum.id())))
        .ifPresent(texts::putAll);
    texts.putAll(hers(model, sum, texts));
    texts.putAll(screen.typed().getOrDefault(sum.id(), Map.of()));
    Form form =
        Form.of(
                Form.Purpose.RECKON,
                JobWords.tradeWords(model).show(sum.title()),
                canNote(model) ? "note it in the book" : "back to the sums",
                fields)
            .withTexts(texts);
    return reckoned(model, list(screen, screen.at()), form);
  }

  private static Map<String, String> hers(Model model, Sum sum, Map<String, String> texts) {
    return OwnAnswers.of(
        sum, model.handbook().own(), texts, model.handbook().patterns(), model.settings().units());
  }

  /** Of what stands in the form that which is her bench's. */
  private static Map<String, String> taken(Model model, Sum sum, Map<String, String> texts) {
    Map<String, String> asked = new LinkedHashMap<>(texts);
    asked.keySet().removeAll(OwnAnswers.KEYS);
    Map<String, String> taken = new LinkedHashMap<>(hers(model, sum, asked));
    taken.entrySet().removeIf(each -> !each.getValue().equals(texts.get(each.getKey())));
    return taken;
  }

  private static Field field(Model model, Ask ask) {
    List<String> choices = ask.choices(ReckonFill.given(model, ask.key(), Map.of()));
    TradeWords words = JobWords.tradeWords(model);
    String label = words.show(ask.label());
    UnitStyle units = model.settings().units();
    String hint = Measure.translated(words.show(ask.hint()), units);
    return choices.isEmpty()
        ? Field.of(ask.key(), label, "", hint).takes(AskMeasure.of(ask), units)
        : Field.choiceOf(
            ask.key(),
            label,
            "",
            hint,
            Choosing.known(
                choices, model.handbook().reference().metals(), model.handbook().patterns()));
  }

  private static boolean canNote(Model model) {
    return model.job().map(job -> !job.lookOnly()).orElse(false);
  }

  /** The screen with what the form comes to, and the troubles beside fields that are filled. */
  private static ReckonerHeld reckoned(Model model, ReckonerHeld screen, Form form) {
    String id = sum(screen).id();
    Reckoning result =
        Reckoner.reckon(id, form.texts(), ReckonFill.given(model, id, form.texts()))
            .from(sum(screen), taken(model, sum(screen), form.texts()))
            .inWords(JobWords.tradeWords(model)::show);
    // A field that nobody has come to yet is not wrong; it is only still empty.
    Map<String, String> troubles = new HashMap<>(result.problems());
    form.fields().stream()
        .filter(field -> field.text().isBlank())
        .forEach(field -> troubles.remove(field.id()));
    Map<String, Map<String, String>> typed = new HashMap<>(screen.typed());
    typed.put(id, form.texts());
    return screen.reckoned(form.withTroubles(troubles), result, typed);
  }

  /** Page down and up turn over what the sum comes to. */
  @Override
  public Turn typed(Model model, Key key) {
    return Turn.to(model.with(((ReckonerHeld) model.held()).turned(Turning.by(key))));
  }

  @Override
  public Turn row(Model model, int row) {
    return Turn.to(model.with(list((ReckonerHeld) model.held(), row)));
  }

  @Override
  public Turn edited(Model model, Form form, boolean textChanged) {
    ReckonerHeld screen = (ReckonerHeld) model.held();
    if (!textChanged) {
      return Turn.to(model.with(screen.with(form)));
    }
    Model next = model.with(reckoned(model, screen, form));
    if (!canNote(model)) {
      return Turn.to(next);
    }
    OpenJob job = model.job().orElseThrow();
    String draft = DRAFT + sum(screen).id();
    return Turn.with(
        next.with(job.withDraft(draft, form.texts())),
        new Effect.KeepDraft(job.slug(), draft, form.texts()));
  }

  @Override
  public Turn confirmed(Model model, Form form) {
    ReckonerHeld screen = (ReckonerHeld) model.held();
    if (!canNote(model)) {
      return Turn.to(model.with(list(screen, screen.at())));
    }
    Reckoning result = screen.result().orElseThrow();
    if (!result.good()) {
      Form told = form.withTroubles(result.problems()).atFirstTrouble();
      String why = result.problems().values().stream().findFirst().orElse("");
      return Turn.to(model.with(screen.with(told)).trouble("Nothing to note yet: " + why));
    }
    OpenJob job = model.job().orElseThrow();
    String draft = DRAFT + sum(screen).id();
    Model noted = model.with(list(screen, screen.at())).with(job.withDraft(draft, Map.of()));
    return Turn.keep(
            noted.told("Noted in the book."),
            new Fact.Noted(sum(screen).title() + ": " + String.join(" ", result.lines())))
        .and(new Effect.DropDraft(job.slug(), draft));
  }

  @Override
  public Turn formLeft(Model model) {
    ReckonerHeld screen = (ReckonerHeld) model.held();
    return Turn.to(model.with(list(screen, screen.at())));
  }
}
