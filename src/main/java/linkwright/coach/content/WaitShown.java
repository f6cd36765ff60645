package linkwright.coach.content;

/**
 * A wait that runs or is due.
 *
 * @param id what tells it from every other wait, whatever it is called
 * @param name what is waited for
 * @param job the job it belongs to; empty for the one at hand
 * @param left the time left, as a clock shows it
 * @param due whether it is over
 * @param loud whether it stands out at this moment; where it may flash, every other second
 * @param ends how it ends, in a few words; empty where the place says it
 * @param watch whether it is the fire watch, which no other wait keeps out of sight
 */
public record WaitShown(
    String id,
    String name,
    String job,
    String left,
    boolean due,
    boolean loud,
    String ends,
    boolean watch)
    implements Part {
  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.waiting(this);
  }
}
