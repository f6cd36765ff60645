package linkwright.coach.content;

import java.util.List;

/**
 * Two groups that belong side by side where there is room, else one after the other.
 *
 * @param first the group that is read first
 * @param second the other
 */
public record Beside(List<Part> first, List<Part> second) implements Part {
  public Beside {
    first = List.copyOf(first);
    second = List.copyOf(second);
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.beside(this);
  }
}
