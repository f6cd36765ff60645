package linkwright.coach.content;

import java.util.List;
import java.util.stream.Stream;

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

  /** All parts one after the other, whichever stand side by side. */
  public static Stream<Part> flat(List<Part> parts) {
    return parts.stream()
        .flatMap(
            part ->
                part instanceof Beside beside
                    ? Stream.concat(flat(beside.first), flat(beside.second))
                    : Stream.of(part));
  }

  @Override
  public <R> R answer(PartCases<R> cases) {
    return cases.beside(this);
  }
}
