package linkwright.coach.content;

import java.util.List;
import linkwright.coach.keys.Act;

/**
 * Acts as a list to choose from, each with how things stand there.
 *
 * @param choices the acts in order
 */
public record Acts(List<Choice> choices) implements Part {
  public Acts {
    choices = List.copyOf(choices);
  }

  /**
   * An act that can be chosen.
   *
   * @param act what it does
   * @param stands how it stands there
   * @param now whether the work is there
   * @param groupEnds whether the next one belongs to another group
   */
  public record Choice(Act act, String stands, boolean now, boolean groupEnds) {}

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.acts(this);
  }
}
