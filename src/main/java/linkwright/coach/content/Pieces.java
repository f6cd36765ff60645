package linkwright.coach.content;

import java.util.List;

/**
 * Pieces of one kind by how far they have come: those that have come furthest first, or, where they
 * are of several sizes, in the order of the chain.
 *
 * @param kind what they are, in the plural
 * @param portions pieces at one stage each
 * @param stages how many stages there are
 */
public record Pieces(String kind, List<Portion> portions, int stages) implements Part {
  public Pieces {
    portions = List.copyOf(portions);
  }

  /**
   * Pieces at one stage.
   *
   * @param stage its name
   * @param count how many
   * @param reached stages passed, 0 for none
   * @param redo whether they are to be done again
   */
  public record Portion(String stage, int count, int reached, boolean redo) {}

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.pieces(this);
  }
}
