package linkwright.lesson;

import java.util.List;
import linkwright.quantity.UnitStyle;
import linkwright.routine.StepId;

/**
 * One thing to be known. However often it is asked, with whatever answers beside the right one and
 * whatever numbers, it is the same item.
 */
public sealed interface Item
    permits Item.TextItem,
        Item.FateItem,
        Item.NumbersItem,
        Item.OwnItem,
        DrawnItem,
        OrderItem,
        PairItem {
  /** By what books know it. */
  String id();

  /** What it is about. */
  Topic topic();

  /** The step it belongs to; empty if to none. */
  default StepId step() {
    return StepId.NONE;
  }

  /** The caution that a wrong answer shows whole; empty for none. */
  default String caution() {
    return "";
  }

  /** The question as a seed puts it; answers that fit the question are drawn, and shuffled. */
  Asked draw(long seed, UnitStyle units);

  /**
   * One whose right answer is a text, among others of its kind.
   *
   * @param pool answers that are likely and wrong; at least three
   * @param subject what it is about: the question, and the title of its card
   */
  record TextItem(
      String id,
      Topic topic,
      StepId step,
      String caution,
      String asks,
      String right,
      List<String> pool,
      String after,
      String subject)
      implements Item {
    public TextItem {
      pool = List.copyOf(pool);
    }

    /** One that is about what it asks and nothing besides. */
    TextItem(
        String id,
        Topic topic,
        StepId step,
        String caution,
        String asks,
        String right,
        List<String> pool,
        String after) {
      this(id, topic, step, caution, asks, right, pool, after, asks);
    }

    @Override
    public Asked draw(long seed, UnitStyle units) {
      Chance chance = new Chance(seed);
      return Asked.shuffled(
          asks, right, WrongAnswers.three(subject, right, pool, chance), after, chance);
    }
  }

  /** What becomes of a piece: redo, scrap, or go on. */
  record FateItem(
      String id, StepId step, String asks, linkwright.routine.AfterFault then, String after)
      implements Item {
    @Override
    public Topic topic() {
      return Topic.FATE;
    }

    @Override
    public Asked draw(long seed, UnitStyle units) {
      return AfterFaultWords.draw(this, new Chance(seed));
    }
  }

  /** A sum whose numbers are drawn anew each time. */
  record NumbersItem(String id, SumItems numbers) implements Item {
    @Override
    public Topic topic() {
      return Topic.NUMBER;
    }

    @Override
    public Asked draw(long seed, UnitStyle units) {
      return numbers.draw(new Chance(seed), units);
    }
  }

  /** A question with answers of its own; the right one stands first. */
  record OwnItem(String id, StepId step, String asks, List<String> answers, String after)
      implements Item {
    public OwnItem {
      answers = List.copyOf(answers);
    }

    @Override
    public Topic topic() {
      return Topic.OWN;
    }

    @Override
    public Asked draw(long seed, UnitStyle units) {
      List<String> wrong = answers.subList(1, answers.size());
      return Asked.shuffled(asks, answers.get(0), wrong, after, new Chance(seed));
    }
  }
}
