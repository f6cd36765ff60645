package linkwright.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Page;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.WaitShown;

/** What is new on a page since the one before, as sentences to be said aloud. */
final class Utterances {
  private static final String ONE_MINUTE = "1:00";

  private Utterances() {}

  static List<Utterance> between(Page before, Page now) {
    List<Utterance> said = new ArrayList<>();
    String card = caution(now);
    if (!card.isEmpty() && !card.equals(caution(before))) {
      said.add(new Utterance(Utterance.Kind.CAUTION, verdict(before, now) + card));
    }
    if (!now.hotWork().equals(before.hotWork())) {
      String flame = now.hotWork().isEmpty() ? "Every flame out, gas shut." : flame(now).strip();
      said.add(new Utterance(Utterance.Kind.WAIT, flame));
    }
    now.nextWait().flatMap(wait -> wait(before.nextWait(), wait)).ifPresent(said::add);
    if (!card.isEmpty()) {
      return said;
    }
    Optional<Figure> figure = figure(now);
    boolean sameStep = head(before).equals(head(now));
    if (figure.isPresent() && sameStep && !figure.equals(figure(before))) {
      String number = figure.get().number().replace("/", " of ");
      said.add(new Utterance(Utterance.Kind.COUNT, number + " " + plain(figure.get().word())));
    }
    String asks = question(now);
    if (!asks.isEmpty() && !asks.equals(question(before))) {
      said.add(new Utterance(Utterance.Kind.STEP, asks));
    }
    if (!head(now).isEmpty() && !sameStep) {
      said.add(new Utterance(Utterance.Kind.STEP, step(now) + flame(now)));
      if (!now.still().isEmpty() && !now.still().equals(before.still())) {
        said.add(new Utterance(Utterance.Kind.STILL, now.still() + "."));
      }
    }
    return said;
  }

  private static Optional<Utterance> wait(Optional<WaitShown> before, WaitShown now) {
    boolean wasDue =
        before.filter(wait -> wait.name().equals(now.name())).map(WaitShown::due).orElse(false);
    if (now.due() && !wasDue) {
      return Optional.of(new Utterance(Utterance.Kind.WAIT, now.name() + " is due."));
    }
    boolean minute = now.left().equals(ONE_MINUTE);
    boolean wasMinute = before.map(wait -> wait.left().equals(ONE_MINUTE)).orElse(false);
    return minute && !wasMinute
        ? Optional.of(new Utterance(Utterance.Kind.WAIT, now.name() + ", one minute."))
        : Optional.empty();
  }

  /** That a flame may be lit, as the head of the screen says it at every moment. */
  private static String flame(Page page) {
    return page.hotWork().isEmpty() ? "" : " Mind: " + page.hotWork() + ".";
  }

  /** Where a card is shown for a wrong answer, first that it was wrong, and what is right. */
  private static String verdict(Page before, Page now) {
    return head(now).isEmpty() || head(now).equals(head(before))
        ? ""
        : head(now) + ". " + texts(now, Prose.Kind.MAIN).findFirst().orElse("") + " ";
  }

  private static String head(Page page) {
    return texts(page, Prose.Kind.HEAD).collect(Collectors.joining(" "));
  }

  private static String step(Page page) {
    return Stream.of(Prose.Kind.HEAD, Prose.Kind.MAIN, Prose.Kind.DO)
        .flatMap(kind -> texts(page, kind))
        .map(text -> text.endsWith(".") ? text : text + ".")
        .collect(Collectors.joining(" "));
  }

  private static String caution(Page page) {
    String title = texts(page, Prose.Kind.CAUTION_TITLE).collect(Collectors.joining(" "));
    return title.isEmpty()
        ? ""
        : "Caution. "
            + title
            + ". "
            + texts(page, Prose.Kind.SAYS).collect(Collectors.joining(" "))
            + " "
            + texts(page, Prose.Kind.DO).collect(Collectors.joining(" "));
  }

  /** A question with its answers, each by the number that is pressed for it. */
  private static String question(Page page) {
    return flat(page.body().parts())
        .filter(Question.class::isInstance)
        .map(Question.class::cast)
        .map(
            question ->
                plain(question.asks())
                    + " "
                    + question.answers().stream()
                        .map(answer -> answer.key() + ": " + plain(answer.says()))
                        .collect(Collectors.joining(" ")))
        .collect(Collectors.joining(" "));
  }

  private static Optional<Figure> figure(Page page) {
    return flat(page.body().parts())
        .filter(Figure.class::isInstance)
        .map(Figure.class::cast)
        .findFirst();
  }

  private static Stream<String> texts(Page page, Prose.Kind kind) {
    return flat(page.body().parts())
        .filter(Prose.class::isInstance)
        .map(Prose.class::cast)
        .filter(prose -> prose.kind() == kind)
        .map(prose -> plain(prose.text()));
  }

  private static String plain(String text) {
    return ActMention.fill(text, act -> "its key");
  }

  private static Stream<Part> flat(List<Part> parts) {
    return parts.stream()
        .flatMap(
            part ->
                part instanceof Beside beside
                    ? Stream.concat(flat(beside.first()), flat(beside.second()))
                    : Stream.of(part));
  }
}
