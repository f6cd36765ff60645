package linkwright.coach.kernel.asking;

import java.util.ArrayList;
import java.util.List;
import linkwright.coach.content.Part;
import linkwright.coach.content.Prose;
import linkwright.coach.content.Question;
import linkwright.coach.kernel.Model;
import linkwright.coach.kernel.Place;
import linkwright.coach.kernel.Turn;
import linkwright.coach.kernel.drawn.JobWords;
import linkwright.coach.kernel.drawn.PictureContent;
import linkwright.coach.kernel.safety.CardContent;
import linkwright.coach.kernel.turning.AskedOnce;
import linkwright.coach.kernel.turning.Turning;
import linkwright.coach.keys.Act;
import linkwright.coach.keys.Key;
import linkwright.lesson.Asked;
import linkwright.lesson.Item;
import linkwright.lesson.Learner;
import linkwright.lesson.Lesson;
import linkwright.lesson.Recall;

/** A student's question as it is put, and what is said once it is answered. */
public final class AskedContent {
  /** What is pressed by whoever does not know. */
  public static final String NOT_KNOWN = "0";

  /** What is told of whatever does not answer. */
  public static final String FIRST = "The question that stands here is answered first.";

  private static final String RIGHT = "Right";
  private static final String NOT_SO = "Not so";

  private AskedContent() {}

  /** Whether an answer is told here: each verdict is news, however like the last it is. */
  public static boolean tells(List<Part> parts) {
    return parts.stream()
        .anyMatch(
            part ->
                part instanceof Prose prose
                    && prose.kind() == Prose.Kind.HEAD
                    && List.of(RIGHT, NOT_SO).contains(prose.text()));
  }

  /** What comes of a key that is none of the answers: a number is told that it is none. */
  public static Turn noAnswer(Model model, Key key) {
    boolean digit = !key.ctrl() && key.text().matches("[0-9]");
    return Turn.to(digit ? model.told(FIRST) : model);
  }

  /** The question with its answers, below a line that says which one it is. */
  public static List<Part> question(Model model, String which, Asked asked) {
    List<Question.Answer> answers = new ArrayList<>();
    for (int i = 0; i < asked.answers().size(); i++) {
      answers.add(
          new Question.Answer(
              Integer.toString(i + 1), JobWords.fill(asked.answers().get(i), model), ""));
    }
    answers.add(new Question.Answer(NOT_KNOWN, "I do not know", ""));
    List<Part> parts = new ArrayList<>(List.of(Prose.aside(which)));
    asked
        .drawn()
        .forEach(picture -> parts.add(PictureContent.unnamed(picture, JobWords.tradeWords(model))));
    parts.add(new Question(JobWords.fill(asked.asks(), model), answers));
    return parts;
  }

  /**
   * Whether it was right, what is right, and why; a caution that was missed is shown whole.
   *
   * @param back when it comes back here
   */
  public static List<Part> told(
      Model model,
      Learner learner,
      Item item,
      Asked asked,
      Learner.AnswerGiven given,
      Lesson.Back back) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Prose(Prose.Kind.HEAD, given.right() ? RIGHT : NOT_SO));
    parts.add(Prose.aside(JobWords.fill(asked.asks(), model)));
    if (!given.right()) {
      String said = JobWords.fill(given.said(), model);
      parts.add(Prose.says(said.isEmpty() ? "Not answered." : "Said: " + said));
    }
    parts.add(new Prose(Prose.Kind.MAIN, "It is: " + JobWords.fill(asked.rightAnswer(), model)));
    boolean card = !given.right() && !item.caution().isEmpty();
    if (!asked.after().isBlank() && !card) {
      parts.add(new Prose(Prose.Kind.MAIN, JobWords.fill(asked.after(), model)));
    }
    parts.add(Prose.aside(comesBack(learner.learnt(), item, given.right(), back)));
    if (card) {
      model
          .handbook()
          .caution(item.caution())
          .map(missed -> CardContent.of(model, missed, ""))
          .ifPresent(parts::addAll);
    }
    return parts;
  }

  /**
   * The acts where an answer is told: what has no room at once is turned to before anything goes
   * on, so that no card is passed unread.
   */
  public static List<Act> acts(List<Act> acts, Model model, Place place) {
    boolean unread = model.held().turned() < model.parts(AskedOnce.content(place, model)) - 1;
    if (!unread) {
      return Turning.with(acts, model, place);
    }
    List<Act> first = new ArrayList<>(List.of(Act.MORE, Act.LESS));
    first.addAll(acts);
    first.remove(Act.NEXT_QUESTION);
    return List.copyOf(first);
  }

  /** When it comes back. */
  private static String comesBack(Recall learnt, Item item, boolean right, Lesson.Back back) {
    if (learnt.known(item.id())) {
      return "Right on " + Recall.DAYS_RIGHT + " days: it is known.";
    }
    String day = learnt.due(item.id()).map(on -> "on " + on).orElse("");
    if (right) {
      return "It comes back "
          + day
          + (back == Lesson.Back.PERHAPS ? ", and in this lesson perhaps." : ".");
    }
    return switch (back) {
      case AT_ONCE -> "It comes back now, and " + day + ".";
      case LATER -> "It comes back later in this lesson, and " + day + ".";
      case ANOTHER_DAY, PERHAPS ->
          "Enough of it for today: it stays open, and comes back " + day + ".";
    };
  }
}
