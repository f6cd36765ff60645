package linkwright.coach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.coach.keys.Act;
import linkwright.job.BenchFact;
import linkwright.job.EntryId;
import linkwright.job.Fact;
import linkwright.job.FlameWord;
import linkwright.job.HotWork;
import linkwright.job.HotWorkState;
import linkwright.routine.StepId;

/**
 * The one statement by which hot work is shut, asked in front of any place; it stands above the
 * places, and so knows them.
 */
final class HotWorkPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return model.hotWork().open()
        ? Turn.to(model.with(HotWorkHeld.before(model.held())))
        : Turn.to(model.told("No flame is lit by what the books say."));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.FLAMES_OUT, Act.STILL_LIT, Act.STAY);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>(List.of(Act.FLAMES_OUT, Act.STILL_LIT));
    if (((HotWorkHeld) model.held()).then().isPresent()) {
      acts.add(Act.STAY);
    }
    return acts;
  }

  @Override
  public Turn act(Model model, Act act) {
    HotWorkHeld held = (HotWorkHeld) model.held();
    return switch (act) {
      case FLAMES_OUT -> shut(model, held);
      case STILL_LIT -> HotWorkGate.passed(model, held);
      default -> Turn.to(model.with(held.from()));
    };
  }

  /** What is out is what was asked about, word by word, whatever was lit elsewhere since. */
  private static Turn shut(Model model, HotWorkHeld held) {
    HotWork open = model.hotWork();
    return next(model, held.answer(open.stand(), HotWorkWords.statement(open)));
  }

  /** It is said in each book that says it is lit, and names there what it answers. */
  private static Turn next(Model model, HotWorkHeld held) {
    Optional<FlameWord> first =
        held.answered().stream().filter(model.hotWork().stand()::contains).findFirst();
    if (first.isEmpty()) {
      return HotWorkGate.passed(model, held);
    }
    String book = first.get().book();
    List<EntryId> names =
        held.answered().stream()
            .filter(word -> word.book().equals(book))
            .map(FlameWord::id)
            .toList();
    Fact fact =
        new BenchFact.HotWorkSaid(
            HotWorkState.SHUT, StepId.NONE, held.statement(), Optional.of(names), "");
    return Turn.keepIn(model.with(held), book, fact);
  }

  @Override
  public Turn settled(Model model) {
    HotWorkHeld held = (HotWorkHeld) model.held();
    return held.answered().isEmpty() ? Turn.to(model) : next(model, held);
  }

  @Override
  public boolean undoes(Model model) {
    return false;
  }

  @Override
  public String says(Model model, Act act) {
    return act == Act.FLAMES_OUT ? "yes: " + HotWorkWords.statement(model.hotWork()) : act.words();
  }

  @Override
  public Content content(Model model) {
    HotWork open = model.hotWork();
    List<Part> parts = new ArrayList<>();
    parts.add(new Question(HotWorkWords.asks(model), List.of()));
    for (Act act : acts(model)) {
      String pedal = act == Act.FLAMES_OUT ? ", or the pedal" : "";
      String mention = ActMention.of(act) + pedal + ": " + says(model, act);
      parts.add(act == Act.FLAMES_OUT ? new Prose(Prose.Kind.MAIN, mention) : Prose.says(mention));
    }
    open.lit()
        .or(open::hot)
        .ifPresent(word -> parts.add(Prose.aside(HotWorkWords.who(model, word))));
    parts.add(
        Prose.says(
            open.lit().isPresent()
                ? "Look: torch out, valve at the bottle shut, hose emptied as the maker's sheet"
                    + " says. Then the fire watch runs, from the last heat."
                : "Look: switched off, and nothing on it that burns who touches it."));
    return new Content("hot work", parts);
  }
}
