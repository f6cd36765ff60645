package linkwright.coach.saying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linkwright.coach.content.Content;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.asking.AskedContent;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.safety.Cards;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.job.CautionMet;
import linkwright.job.Fact;
import linkwright.job.LessonFact;
import linkwright.lesson.Asked;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.Lesson;

/**
 * A student says what comes before the step is shown; a wrong answer is told, stands in her book,
 * and is asked again at once. What she says of a card stands in the job too, as a card that was
 * met.
 */
public final class SayingPlace implements Place {
  @Override
  public Turn enter(Model model) {
    return next(model, "");
  }

  /** The next question; where none is left, the bench. */
  private static Turn next(Model model, String card) {
    if (waits(model).isPresent()) {
      return Turn.to(model.with(new SayingHeld(false, card, 0)));
    }
    Optional<Item> item = Sayings.item(model);
    if (item.isEmpty()) {
      return Turn.goTo(model, PlaceId.BENCH);
    }
    long seed = model.now().toEpochMilli() * 31 + item.get().id().hashCode();
    return keep(
        model.with(new SayingHeld(false, item.get().caution(), 0)),
        new LessonFact.QuestionAsked(Sayings.lesson(model), item.get().id(), seed));
  }

  private static Turn keep(Model model, LessonFact fact) {
    String id = model.learning().student().orElseThrow().id();
    return Turn.with(model, new Effect.KeepOfStudent(id, id, List.of(fact)));
  }

  /** The question that waits, if it is still the one to be asked. */
  private static Optional<Learner.QuestionPut> waits(Model model) {
    Optional<String> item = Sayings.item(model).map(Item::id);
    return model
        .learning()
        .student()
        .flatMap(Learner::open)
        .filter(asking -> asking.lesson().equals(Sayings.lesson(model)))
        .filter(asking -> item.filter(asking.item()::equals).isPresent());
  }

  @Override
  public Content content(Model model) {
    SayingHeld held = (SayingHeld) model.held();
    String title =
        AtBench.of(model).map(at -> "before step " + at.number()).orElse("before the step");
    return new Content(title, held.told() ? told(model) : question(model));
  }

  private static List<Part> question(Model model) {
    return waits(model)
        .flatMap(
            asking ->
                asked(model, asking)
                    .map(asked -> AskedContent.question(model, head(model, asking), asked)))
        .orElseGet(() -> List.of(Prose.says("The step is shown next.")));
  }

  /** Before the first step, in place of which nothing could be done, the order of some is asked. */
  private static String head(Model model, Learner.QuestionPut asking) {
    return model.learning().name()
        + (asking.item().endsWith("/order")
            ? " says how steps follow: press its number."
            : " says it first: press its number.");
  }

  private static List<Part> told(Model model) {
    Learner learner = model.learning().student().orElseThrow();
    Optional<Learner.QuestionPut> last = learner.answeredLast();
    Optional<Item> item = last.flatMap(asking -> Sayings.find(model, asking.item()));
    Optional<Asked> asked = last.flatMap(asking -> asked(model, asking));
    if (item.isEmpty() || asked.isEmpty()) {
      return List.of(Prose.says("The step is shown next."));
    }
    List<Part> parts =
        new ArrayList<>(
            AskedContent.told(
                model,
                learner,
                item.get(),
                asked.get(),
                last.get().given().orElseThrow(),
                Lesson.Back.AT_ONCE));
    AtBench.of(model).ifPresent(at -> parts.addAll(soFar(model, learner, at)));
    return parts;
  }

  /** What went back here so far, and what helps: for the student and for whoever stands by. */
  private static List<Part> soFar(Model model, Learner learner, AtBench at) {
    String routine = at.routine().id();
    int tried = learner.tried(routine, at.step().id());
    List<Part> parts = new ArrayList<>();
    learner
        .redo(routine, at.step().id())
        .forEach(
            (reason, back) -> {
              String helps =
                  at.step().wrong().stream()
                      .filter(remedy -> remedy.reason().equals(reason))
                      .findFirst()
                      .map(remedy -> ": " + JobWords.fill(remedy.remedy(), model))
                      .orElse("");
              parts.add(
                  new Prose(
                      Prose.Kind.REMEDY,
                      "Here so far: " + reason + " " + back + " of " + tried + helps));
            });
    return parts;
  }

  private static Optional<Asked> asked(Model model, Learner.QuestionPut asking) {
    return Sayings.find(model, asking.item())
        .map(item -> item.draw(asking.seed(), model.settings().units()));
  }

  @Override
  public List<Act> allActs() {
    return List.of(Act.NEXT_QUESTION, Act.MORE, Act.LESS);
  }

  @Override
  public List<Act> acts(Model model) {
    List<Act> acts = new ArrayList<>();
    if (((SayingHeld) model.held()).told()) {
      acts.add(Act.NEXT_QUESTION);
    }
    return ((SayingHeld) model.held()).told()
        ? AskedContent.acts(acts, model, this)
        : Turning.with(acts, model, this);
  }

  @Override
  public Turn act(Model model, Act act) {
    SayingHeld held = (SayingHeld) model.held();
    return switch (act) {
      case NEXT_QUESTION -> onward(model, held);
      case MORE, LESS ->
          Turn.to(
              model.with(new SayingHeld(held.told(), held.card(), Turning.to(held.turned(), act))));
      default -> Turn.goTo(model, act);
    };
  }

  /**
   * A card that was asked about is entered in the job as met, right or wrong; then what is next.
   */
  private static Turn onward(Model model, SayingHeld held) {
    boolean right =
        model
            .learning()
            .student()
            .flatMap(Learner::answeredLast)
            .flatMap(Learner.QuestionPut::given)
            .map(Learner.AnswerGiven::right)
            .orElse(false);
    Optional<AtBench> at = AtBench.of(model);
    Optional<Cards.Card> card =
        at.flatMap(
            here ->
                Cards.of(model, here).all().stream()
                    .filter(each -> each.caution().id().equals(held.card()))
                    .findFirst());
    if (card.isEmpty()) {
      return next(model, "");
    }
    CautionMet how = right ? CautionMet.ASKED_RIGHT : CautionMet.ASKED_WRONG;
    return Turn.keep(
        model.with(new SayingHeld(false, "", 0)),
        new Fact.CautionSeen(held.card(), how, card.get().digest(), at.orElseThrow().step().id()));
  }

  @Override
  public Turn settled(Model model) {
    SayingHeld held = (SayingHeld) model.held();
    return held.told() ? Turn.to(model) : next(model, held.card());
  }

  @Override
  public Turn typed(Model model, Key key) {
    SayingHeld held = (SayingHeld) model.held();
    Optional<Learner.QuestionPut> waits = held.told() ? Optional.empty() : waits(model);
    Optional<Asked> asked = waits.flatMap(asking -> asked(model, asking));
    if (asked.isEmpty()) {
      return Turn.to(model);
    }
    for (int i = 0; i < asked.get().answers().size(); i++) {
      if (key.is(Integer.toString(i + 1))) {
        return answer(model, held, waits.get(), asked.get(), i);
      }
    }
    return key.is(AskedContent.NOT_KNOWN)
        ? answer(model, held, waits.get(), asked.get(), -1)
        : AskedContent.noAnswer(model, key);
  }

  private static Turn answer(
      Model model, SayingHeld held, Learner.QuestionPut asking, Asked asked, int chosen) {
    String given = chosen < 0 ? "" : asked.answers().get(chosen);
    return keep(
        model.with(new SayingHeld(true, held.card(), 0)),
        new LessonFact.QuestionAnswered(asking.entry(), given, chosen == asked.right()));
  }

  @Override
  public Turn row(Model model, int row) {
    return typed(model, Key.of(Integer.toString(row + 1)));
  }

  @Override
  public boolean undoes(Model model) {
    return false;
  }
}
