package linkwright.coach.content;

/**
 * The one number of a place, to be read from across the room.
 *
 * @param number the number or the time left
 * @param word what it counts
 * @param emphasis {@link Emphasis#TROUBLE} where it is due
 */
public record Figure(String number, String word, Emphasis emphasis) implements Part {
  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.figure(this);
  }
}
