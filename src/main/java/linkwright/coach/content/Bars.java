package linkwright.coach.content;

import java.util.List;

/**
 * Lengths as bars, all of them to one scale.
 *
 * @param groups lengths of one kind each
 */
public record Bars(List<Group> groups) implements Part {
  public Bars {
    groups = List.copyOf(groups);
  }

  /**
   * Lengths of one kind.
   *
   * @param title what they are
   * @param bars a bar each
   */
  public record Group(String title, List<Bar> bars) {
    public Group {
      bars = List.copyOf(bars);
    }
  }

  /** What became of a stretch, or will. */
  public enum Use {
    CUT("cut"),
    PLANNED("to be cut"),
    LEFT("over"),
    LOST("lost");

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
  public record Segment(double mm, Use use, String label) {}

  /**
   * A length.
   *
   * @param amount its whole length in the user's units
   * @param stretches from its beginning to its end
   * @param words what is to be said of it
   */
  public record Bar(String amount, List<Segment> stretches, String words) {
    public Bar {
      stretches = List.copyOf(stretches);
    }

    /** The whole, mm. */
    public double mm() {
      return stretches.stream().mapToDouble(Segment::mm).sum();
    }
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.bars(this);
  }
}
