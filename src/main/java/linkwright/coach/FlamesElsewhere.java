package linkwright.coach;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linkwright.coach.bench.BenchAnswers;
import linkwright.coach.kernel.Effect;
import linkwright.coach.kernel.InMind;
import linkwright.coach.kernel.Message;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.PlaceId;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.Writing;
import linkwright.coach.kernel.safety.HotWorkWords;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Pauses;
import linkwright.job.FlameWord;

/**
 * What another window's book says of flames while the bench stands here. The common key means
 * another thing by it: a press that answers the screen from before tells it and does nothing.
 */
final class FlamesElsewhere {
  /** What the common key may have become, or have been, by such a word. */
  private static final Set<Act> WORKS =
      Set.of(
          Act.LIT,
          Act.HOT_ON,
          Act.THROUGH,
          Act.CUT_ONE,
          Act.BEGIN_ONE,
          Act.TOGETHER,
          Act.DONE,
          Act.ALL,
          Act.WAIT,
          Act.WAIT_FIRST,
          Act.MEANWHILE,
          Act.SHUT_FIRST);

  private FlamesElsewhere() {}

  /** What comes before an act at the bench: what was not seen yet, then a look at the books. */
  static Optional<Turn> before(Model model, Act act) {
    if (model.held().place() != PlaceId.BENCH || !WORKS.contains(act)) {
      return Optional.empty();
    }
    Optional<InMind.Meanwhile> unseen = model.bench().mind().meanwhile();
    if (unseen.isPresent()) {
      return Optional.of(Turn.to(told(model, unseen.get().sentence())));
    }
    long looked = model.bench().lookedAt();
    boolean fresh = looked == 0 || looked == model.lookingRound().bench().lookedAt();
    // What says of a flame that it burns: the other books are looked at first.
    if (fresh || !BenchAnswers.lights(model, act)) {
      return Optional.empty();
    }
    Effect look = new Effect.ReadBench();
    Writing pending =
        new Writing.Pending(
            look, model.held(), model.notice(), List.of(new Message.ActChosen(act)));
    return Optional.of(
        new Turn(model.lookingRound().with(pending), List.of(look), Optional.empty()));
  }

  /** Whether an act waits for that look. */
  static boolean isAsked(Model model) {
    return model.writing() instanceof Writing.Pending pending
        && pending.asked() instanceof Effect.ReadBench;
  }

  /** The act that waited, where the books say what they said; else it is told what they say. */
  static Turn answered(Model before, Model read) {
    Model free = read.with(new Writing.Nothing());
    List<Message> waiting = ((Writing.Pending) before.writing()).waiting();
    return said(before, read)
        .map(
            sentence ->
                UserMessages.read(
                    Turn.to(told(free, sentence)), waiting.subList(1, waiting.size())))
        .orElseGet(() -> UserMessages.read(Turn.to(free), waiting));
  }

  private static Model told(Model model, String sentence) {
    return model
        .meanwhile(Optional.empty())
        .trouble(sentence + " That press entered nothing: look what the key does now.");
  }

  /** What was read by itself, told at the bench if it is another thing than stood there. */
  static Model noted(Model before, Model read) {
    boolean known = before.bench().mind().asked() && before.held().place() == PlaceId.BENCH;
    return said(before, read)
        .filter(sentence -> known)
        .map(
            sentence ->
                read.told(sentence)
                    .meanwhile(Optional.of(new InMind.Meanwhile(read.steady(), sentence))))
        .orElse(read);
  }

  /** It is seen once it stood on the screen as long as anybody needs to read it. */
  static Model drawn(Model model, Optional<Instant> since) {
    boolean seen =
        model
            .bench()
            .mind()
            .meanwhile()
            .flatMap(unseen -> since.filter(at -> !at.isBefore(unseen.at())))
            .filter(at -> Duration.between(at, model.steady()).compareTo(Pauses.UNREAD) >= 0)
            .isPresent();
    return seen ? model.meanwhile(Optional.empty()) : model;
  }

  private static Optional<String> said(Model before, Model read) {
    List<FlameWord> stood = before.hotWork().stand();
    List<FlameWord> stand = read.hotWork().stand();
    if (stood.equals(stand)) {
      return Optional.empty();
    }
    return Optional.of(
        stand.stream()
            .filter(word -> !stood.contains(word))
            .findFirst()
            .map(
                word ->
                    "Another window says: " + HotWorkWords.head(read) + " (" + word.job() + ").")
            .orElseGet(
                () -> "Another window says: " + HotWorkWords.statement(before.hotWork()) + "."));
  }
}
