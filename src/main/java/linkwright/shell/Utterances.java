package linkwright.shell;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linkwright.coach.content.ActMention;
import linkwright.coach.content.Beside;
import linkwright.coach.content.Figure;
import linkwright.coach.content.Page;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.content.WaitShown;
import linkwright.quantity.Count;

/** What is new on a page since the one before, as sentences to be said aloud. */
final class Utterances {
  /** Seconds left of a wait at which it is told how long it still takes. */
  private static final Map<Integer, String> SET_POINTS =
      Map.of(600, "ten minutes", 300, "five minutes", 60, "one minute");

  private static final Pattern CLOCK = Pattern.compile("(\\d{1,4}):([0-5]\\d)");

  /** Any running clock: with hours, or past its end. */
  private static final Pattern RUNNING = Pattern.compile("-?\\d{1,4}(?::[0-5]\\d){1,2}");

  private static final Set<Prose.Kind> OF_A_CARD =
      EnumSet.of(
          Prose.Kind.CAUTION_TITLE,
          Prose.Kind.SAYS,
          Prose.Kind.DO,
          Prose.Kind.DO_NOT,
          Prose.Kind.IF_SO,
          Prose.Kind.WEAR,
          Prose.Kind.SIGNS,
          Prose.Kind.MAIN);

  private Utterances() {}

  /** What stands as a question where the program begins: nobody hears what is waited for else. */
  static List<Utterance> asked(Page now) {
    String asks = question(now);
    return asks.isEmpty() ? List.of() : List.of(new Utterance(Utterance.Kind.STEP, asks));
  }

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
    said.addAll(waits(before, now));
    if (!card.isEmpty()) {
      return said;
    }
    Optional<Figure> figure = figure(now);
    boolean sameStep = head(before).equals(head(now));
    if (figure.filter(each -> !runs(each)).isPresent()
        && sameStep
        && !figure.equals(figure(before))) {
      String number = figure.get().number().replace("/", " of ");
      String counted = number + " " + plain(figure.get().word());
      said.add(new Utterance(Utterance.Kind.COUNT, stopped(counted)));
    }
    String asks = question(now);
    if (!asks.isEmpty() && !asks.equals(question(before))) {
      said.add(new Utterance(Utterance.Kind.STEP, asks));
    }
    if (!head(now).isEmpty() && !sameStep) {
      String warnings = warnings(now);
      if (!warnings.isEmpty()) {
        said.add(new Utterance(Utterance.Kind.CAUTION, warnings));
      }
      said.add(new Utterance(Utterance.Kind.STEP, step(now) + flame(now)));
      if (!now.still().isEmpty() && !now.still().equals(before.still())) {
        said.add(new Utterance(Utterance.Kind.STILL, now.still() + "."));
      }
    }
    return said;
  }

  /** Kinds of which nothing is worth saying any more: what it was said of was left. */
  static Set<Utterance.Kind> left(Page before, Page now) {
    boolean same = head(before).equals(head(now)) && caution(before).equals(caution(now));
    if (same) {
      return Set.of();
    }
    // A card that was passed by before it was heard belongs to the step that it stood before.
    boolean passed = !caution(before).isEmpty() && caution(now).isEmpty();
    Set<Utterance.Kind> left =
        EnumSet.of(Utterance.Kind.COUNT, Utterance.Kind.STEP, Utterance.Kind.STILL);
    if (!passed) {
      left.add(Utterance.Kind.CAUTION);
    }
    return left;
  }

  /** Waits that have become due since, the one that ended first at the top. */
  static List<WaitShown> newlyDue(Page before, Page now) {
    return now.waits().stream()
        .filter(WaitShown::due)
        .filter(wait -> same(before, wait).filter(WaitShown::due).isEmpty())
        .toList();
  }

  static String isDue(WaitShown wait) {
    return called(wait) + " is due";
  }

  /** A wait as it is called aloud; whose it is, where it is another job's. */
  private static String called(WaitShown wait) {
    return wait.name() + (wait.job().isEmpty() ? "" : ", " + wait.job());
  }

  /** All waits that have something to tell, whichever is the nearest; what is due comes first. */
  private static List<Utterance> waits(Page before, Page now) {
    Stream<String> due = newlyDue(before, now).stream().map(wait -> isDue(wait) + ".");
    Stream<String> run =
        now.waits().stream()
            .flatMap(wait -> same(before, wait).flatMap(was -> setPoint(was, wait)).stream());
    return Stream.concat(due, run).map(text -> new Utterance(Utterance.Kind.WAIT, text)).toList();
  }

  private static Optional<WaitShown> same(Page page, WaitShown wait) {
    return page.waits().stream().filter(each -> each.id().equals(wait.id())).findFirst();
  }

  private static Optional<String> setPoint(WaitShown before, WaitShown now) {
    Optional<Integer> left = seconds(now.left());
    Optional<Integer> was = seconds(before.left());
    if (now.due() || left.isEmpty() || was.isEmpty()) {
      return Optional.empty();
    }
    return SET_POINTS.entrySet().stream()
        .filter(each -> left.get() <= each.getKey() && was.get() > each.getKey())
        .min(Map.Entry.comparingByKey())
        .map(each -> called(now) + ", " + each.getValue() + ".");
  }

  /** A running clock, minutes and seconds, in seconds; empty for what is none. */
  private static Optional<Integer> seconds(String clock) {
    Matcher read = CLOCK.matcher(clock);
    return read.matches()
        ? Count.inDigits(read.group(1), 4)
            .flatMap(
                minutes -> Count.inDigits(read.group(2), 2).map(seconds -> minutes * 60 + seconds))
        : Optional.empty();
  }

  /** A figure that runs by itself, or on past its end, is told by the wait, at its set points. */
  private static boolean runs(Figure figure) {
    return RUNNING.matcher(figure.number()).matches();
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
        .map(Utterances::stopped)
        .collect(Collectors.joining(" "));
  }

  /** A card whole, from its title to whose rules come first; each line by the word before it. */
  private static String caution(Page page) {
    List<Prose> card =
        prose(page)
            .dropWhile(prose -> prose.kind() != Prose.Kind.CAUTION_TITLE)
            .filter(prose -> OF_A_CARD.contains(prose.kind()))
            .toList();
    return card.isEmpty() ? "" : "Caution. " + aloud(card);
  }

  /** What a step warns of, in short, as it stands above what is to be done. */
  private static String warnings(Page page) {
    return aloud(
        prose(page)
            .filter(prose -> prose.kind() == Prose.Kind.CAUTION || prose.kind() == Prose.Kind.MIND)
            .toList());
  }

  /** Sentences one after the other; the word of the margin once, before the first of its kind. */
  private static String aloud(List<Prose> lines) {
    List<String> said = new ArrayList<>();
    Prose.Kind before = Prose.Kind.HEAD;
    for (Prose line : lines) {
      String text = plain(line.text()).strip();
      if (!text.isEmpty()) {
        String label = line.kind() == before ? "" : line.kind().label();
        said.add((label.isEmpty() ? "" : capital(label) + ": ") + stopped(text));
        before = line.kind();
      }
    }
    return String.join(" ", said);
  }

  private static String capital(String label) {
    return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
  }

  private static String stopped(String text) {
    return text.matches("(?s).*[.!?:]") ? text : text + ".";
  }

  /** A question with its answers, each by the number that is pressed for it. */
  private static String question(Page page) {
    return Beside.flat(page.body().parts())
        .filter(Question.class::isInstance)
        .map(Question.class::cast)
        .map(
            question ->
                stopped(plain(question.asks()))
                    + " "
                    + question.answers().stream()
                        .map(answer -> answer.key() + ": " + stopped(plain(answer.says())))
                        .collect(Collectors.joining(" ")))
        .collect(Collectors.joining(" "));
  }

  private static Optional<Figure> figure(Page page) {
    return Beside.flat(page.body().parts())
        .filter(Figure.class::isInstance)
        .map(Figure.class::cast)
        .findFirst();
  }

  private static Stream<String> texts(Page page, Prose.Kind kind) {
    return prose(page).filter(prose -> prose.kind() == kind).map(prose -> plain(prose.text()));
  }

  private static Stream<Prose> prose(Page page) {
    return Beside.flat(page.body().parts()).filter(Prose.class::isInstance).map(Prose.class::cast);
  }

  private static String plain(String text) {
    // A gap parts a title from what it belongs to, where it is read.
    return ActMention.fill(text, act -> "its key").replaceAll("(?<=\\S) {2,}", ", ");
  }
}
