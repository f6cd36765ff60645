package linkwright.coach.saying;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import linkwright.coach.kernel.AtBench;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.OpenJob;
import linkwright.coach.kernel.asking.Banks;
import linkwright.coach.kernel.safety.Cards;
import linkwright.job.CautionsMet;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.Topic;
import linkwright.routine.StepId;

/**
 * What a student has still to say before the open step: which step comes; and now and then, in
 * place of a card that she has met before, a question of that card. Nothing is asked while hot work
 * is open: a lit torch wants both eyes.
 */
public final class Sayings {
  private static final String OF_A_CARD = "card/";

  private Sayings() {}

  /** Whether she has to say something; cheap, for it is asked after every key. */
  public static boolean asks(Model model) {
    Optional<AtBench> at = open(model);
    return at.isPresent()
        && model
            .learning()
            .student()
            .filter(learner -> waits(model, learner, at.get()))
            .isPresent();
  }

  /** The open step, where she has still to say that it comes; none at any other time. */
  public static StepId unsaid(Model model) {
    return open(model)
        .filter(at -> !isSaid(model.learning().student().orElseThrow(), model, at))
        .map(at -> at.step().id())
        .orElse(StepId.NONE);
  }

  /** Whether she said it, or whether it cannot be asked. */
  private static boolean isSaid(Learner learner, Model model, AtBench at) {
    return next(model, at).filter(item -> !isRight(learner, lesson(model), item.id())).isEmpty();
  }

  /** The open step, where a student stands at it and no flame is lit. */
  private static Optional<AtBench> open(Model model) {
    Optional<OpenJob> job = model.job().filter(open -> !open.lookOnly());
    boolean hers =
        model
            .learning()
            .student()
            .filter(her -> job.filter(open -> open.person().equals(her.id())).isPresent())
            .isPresent();
    return job.isPresent() && hers && !model.hotWork().open()
        ? AtBench.of(model)
        : Optional.empty();
  }

  private static boolean waits(Model model, Learner learner, AtBench at) {
    return !isSaid(learner, model, at) || card(model).isPresent();
  }

  /** The item that waits for an answer; empty for none. */
  static Optional<Item> item(Model model) {
    Optional<AtBench> at = open(model);
    Optional<Learner> learner = model.learning().student();
    if (at.isEmpty() || learner.isEmpty()) {
      return Optional.empty();
    }
    if (!isSaid(learner.get(), model, at.get())) {
      return next(model, at.get());
    }
    return card(model);
  }

  static Optional<Item> find(Model model, String id) {
    return AtBench.of(model).flatMap(at -> find(bank(model, at), id));
  }

  private static Optional<Item> find(List<Item> bank, String id) {
    return bank.stream().filter(item -> item.id().equals(id)).findFirst();
  }

  private static List<Item> bank(Model model, AtBench at) {
    // All of the routine: a step that this job leaves out is a likely answer all the same.
    return Banks.of(model, at.routine().id());
  }

  /** By what her book knows what is said at this job. */
  static String lesson(Model model) {
    return "bench/" + model.job().map(OpenJob::slug).orElse("");
  }

  /** What is said of the open step before it is shown; empty where it cannot be asked. */
  private static Optional<Item> next(Model model, AtBench at) {
    return bank(model, at).stream()
        .filter(item -> item.topic() == Topic.NEXT && item.step().equals(at.step().id()))
        .findFirst();
  }

  /** What can be asked of a card here: what can happen at this step, and what it asks itself. */
  private static List<Item> of(Model model, AtBench at, String card) {
    String here = at.routine().id() + "/danger/" + at.step().id() + "/" + card;
    return bank(model, at).stream()
        .filter(item -> item.caution().equals(card))
        .filter(item -> item.id().equals(here) || item.id().startsWith(OF_A_CARD))
        .toList();
  }

  private static boolean isRight(Learner learner, String lesson, String item) {
    return learner.askings().stream()
        .anyMatch(
            asking ->
                asking.lesson().equals(lesson)
                    && asking.item().equals(item)
                    && asking.given().filter(Learner.AnswerGiven::right).isPresent());
  }

  /** Whether it comes whole only because she met it long ago, and so can be asked in its place. */
  private static boolean isReread(Model model, Cards.Card card) {
    OpenJob job = model.job().orElseThrow();
    return job.cautionsMet()
        .isReread(job.person(), card.caution().id(), card.digest(), model.now());
  }

  /** Whether it is a gap since she was last shown it whole. */
  private static boolean isLongAgo(Model model, String caution) {
    OpenJob job = model.job().orElseThrow();
    int days = model.learning().roster().gapDays();
    return Optional.ofNullable(
            job.cautionsMet().last().getOrDefault(job.person(), Map.of()).get(caution))
        .flatMap(CautionsMet.Last::whole)
        .filter(shown -> !shown.plus(Duration.ofDays(days)).isAfter(model.now()))
        .isPresent();
  }

  /** What was just missed of a card here: it is shown whole, and asked again before she goes on. */
  private static Optional<Item> missed(Model model, Learner learner, AtBench at) {
    return learner
        .answeredLast()
        .filter(put -> put.lesson().equals(lesson(model)) && put.day().equals(model.today()))
        .filter(put -> put.given().filter(given -> !given.right()).isPresent())
        .flatMap(put -> find(bank(model, at), put.item()))
        .filter(item -> of(model, at, item.caution()).contains(item))
        .filter(
            item ->
                Cards.of(model, at).all().stream()
                    .anyMatch(card -> card.caution().id().equals(item.caution())));
  }

  /** Of a card that was met before: not asked for a gap, and none other today. */
  private static Optional<Item> card(Model model) {
    Learner learner = model.learning().student().orElseThrow();
    AtBench at = open(model).orElseThrow();
    Optional<Item> again = missed(model, learner, at);
    if (again.isPresent() || isAskedToday(model, learner)) {
      return again;
    }
    return Cards.of(model, at).all().stream()
        .filter(card -> !card.whole() || isReread(model, card))
        .map(card -> card.caution().id())
        .filter(id -> isLongAgo(model, id))
        .flatMap(id -> of(model, at, id).stream())
        .filter(item -> isDue(model, learner, item.id()))
        .findFirst();
  }

  private static boolean isAskedToday(Model model, Learner learner) {
    String lesson = lesson(model);
    return learner.askings().stream()
        .filter(asking -> asking.lesson().equals(lesson) && asking.day().equals(model.today()))
        .filter(asking -> asking.given().isPresent())
        .anyMatch(
            asking -> asking.item().contains("/danger/") || asking.item().startsWith(OF_A_CARD));
  }

  private static boolean isDue(Model model, Learner learner, String item) {
    return learner.learnt().answers(item).isEmpty()
        || learner.learnt().due(item).filter(day -> !day.isAfter(model.today())).isPresent();
  }
}
