package linkwright.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What was answered last, by all that it follows from. A plan that is typed, what if and the tray
 * ask the same again at every key, and an answer can take 50 ms.
 *
 * @param <T> an answer that never changes
 */
public final class LastAnswers<T> {
  private final Map<List<Object>, T> known;

  /**
   * Nothing answered yet.
   *
   * @param most so many are kept, the one least lately asked for goes first
   */
  public LastAnswers(int most) {
    known =
        new LinkedHashMap<>(most, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<List<Object>, T> eldest) {
            return size() > most;
          }
        };
  }

  /**
   * The answer that follows from all that is asked.
   *
   * @param asked all that it follows from, each with an equality by value
   * @param answered finds it where it is not known
   */
  public T of(List<Object> asked, Supplier<T> answered) {
    synchronized (known) {
      T before = known.get(asked);
      if (before != null) {
        return before;
      }
    }
    T found = answered.get();
    synchronized (known) {
      known.put(asked, found);
    }
    return found;
  }
}
