package linkwright.coach.kernel.turning;

import java.util.AbstractList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.function.BooleanSupplier;
import linkwright.coach.keys.Act;

/**
 * The acts of a place, and turning on and back behind them if all that it says has no room at once,
 * which is asked when the acts before them are gone through, and once.
 */
final class ActsAndTurning extends AbstractList<Act> {
  private static final List<Act> TURNING = List.of(Act.MORE, Act.LESS);

  private final List<Act> acts;
  private final BooleanSupplier hasMore;
  private Optional<List<Act>> behind = Optional.empty();

  ActsAndTurning(List<Act> acts, BooleanSupplier hasMore) {
    this.acts = List.copyOf(acts);
    this.hasMore = hasMore;
  }

  private List<Act> behind() {
    if (behind.isEmpty()) {
      behind = Optional.of(hasMore.getAsBoolean() ? TURNING : List.of());
    }
    return behind.get();
  }

  @Override
  public Act get(int index) {
    return index < acts.size() ? acts.get(index) : behind().get(index - acts.size());
  }

  @Override
  public int size() {
    return acts.size() + behind().size();
  }

  @Override
  public boolean isEmpty() {
    return acts.isEmpty() && behind().isEmpty();
  }

  @Override
  public Iterator<Act> iterator() {
    return new Iterator<>() {
      private int at;

      @Override
      public boolean hasNext() {
        return at < acts.size() || at < size();
      }

      @Override
      public Act next() {
        if (!hasNext()) {
          throw new NoSuchElementException("acts: " + at);
        }
        return get(at++);
      }
    };
  }

  @Override
  public boolean contains(Object act) {
    return acts.contains(act) || behind().contains(act);
  }

  @Override
  public Spliterator<Act> spliterator() {
    return Spliterators.spliteratorUnknownSize(iterator(), Spliterator.ORDERED);
  }
}
