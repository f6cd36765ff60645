package linkwright.coach.content;

import java.util.List;

/**
 * Lengths as bars to one scale.
 *
 * @param title what they are
 * @param bars a bar each
 */
public record Bars(String title, List<Bar> bars) implements Part {
  public Bars {
    bars = List.copyOf(bars);
  }

  /** What became of a stretch, or will. */
  public enum Use {
    CUT("cut"),
    LOST("lost"),
    PLANNED("to be cut"),
    LEFT("over");

    private final String word;

    Use(String word) {
      this.word = word;
    }

    /** The word for it. */
    public String word() {
      return word;
    }
  }

  /**
   * A stretch of a bar.
   *
   * @param mm its length
   * @param use what becomes of it
   * @param label what is written in it; empty for nothing
   */
  public record Stretch(double mm, Use use, String label) {}

  /**
   * A length.
   *
   * @param amount its whole length in the user's units
   * @param stretches from its beginning to its end
   * @param words what is to be said of it
   */
  public record Bar(String amount, List<Stretch> stretches, String words) {
    public Bar {
      stretches = List.copyOf(stretches);
    }

    /** The whole, mm. */
    public double mm() {
      return stretches.stream().mapToDouble(Stretch::mm).sum();
    }
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.bars(this);
  }
}
